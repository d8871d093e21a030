using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Workings;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;

namespace Handwheel.Plan.Cranking;

// The machine in one holding: moves one axis at a time, writes each as a line and an event, and cuts the planned metal with it.
internal sealed class Machine(Shop shop, HeldMetal metal, MoveNumbers numbers, Figures figures)
{
    private readonly List<CourseEvent> events = [];
    private readonly List<SheetLine> lines = [];
    private readonly Gearing gearing = new(shop, metal.Setup.Rotary is { Lies: true });
    private readonly Dials dials = new(metal.Setup, figures);
    private double broachTurn;
    private bool watched;
    private bool turning;
    private bool turnedDry;

    // Where the axes are meant to stand; a dial come to from the other side than its zero reads otherwise.
    internal Reading At { get; private set; }

    internal Dials Dials => dials;

    internal Cutter? Cutter { get; private set; }

    internal CutterShape? Shape { get; private set; }

    internal double Feed { get; private set; }

    internal double Rpm { get; private set; }

    internal HeldMetal Metal => metal;

    internal SetupFacts Setup => metal.Setup;

    internal double Minutes { get; private set; }

    // Whether a cutting move since Watch met metal, as far as a net of places tells.
    internal bool Met { get; private set; }

    // Whether anything was cut in this holding: what then is touched may carry a burr.
    internal bool HasCut { get; private set; }

    // What was written since the last step, taken out.
    internal (IReadOnlyList<CourseEvent> Events, IReadOnlyList<SheetLine> Lines, double Minutes) Take()
    {
        (IReadOnlyList<CourseEvent>, IReadOnlyList<SheetLine>, double) taken = ([.. events], [.. lines], Minutes);
        events.Clear();
        lines.Clear();
        Minutes = 0;
        watched = false;
        return taken;
    }

    internal void Watch() => (watched, Met) = (true, false);

    internal void Put(Cutter cutter, double across, double rpm, double feed, double high, double turn = 0)
    {
        Cutter = CutterShapes.SetTo(cutter, across);
        Shape = CutterShapes.Turns(cutter) ? CutterShapes.Of(Cutter, shop.Mill) : null;
        Stop();
        (Feed, Rpm) = (feed, rpm);
        At = At with { Z = high };
        broachTurn = turn;
        events.Add(new CutterIn(cutter.Name, rpm) { Across = across, Turn = turn });
        lines.Add(new CutterLine { Cutter = cutter.Name, Rpm = rpm, Out = cutter.Out, Remark = across > 0 ? "in the boring head" : Shape is null ? Squared(turn) : string.Empty });
        Minutes += 3;
    }

    // The head opened with the bar left in it: Z stands.
    internal void Open(Cutter cutter, double rpm, double feed, HeadLine line)
    {
        Stop();
        Cutter = CutterShapes.SetTo(cutter, line.Across);
        Shape = CutterShapes.Of(Cutter, shop.Mill);
        (Rpm, Feed) = (rpm, feed);
        events.Add(new HeadOpened(line.Across, rpm));
        lines.Add(line);
        Minutes += 2;
    }

    private static string Squared(double turn) => Math.Abs(turn) < 1e-6
        ? "spindle locked, one side swept parallel to Y by indicator"
        : $"spindle locked, the normal of one side {Figures.Deg(turn)} deg from X, counterclockwise from above";

    internal void Touch(TouchOffLine line)
    {
        dials.Set(line.TouchOff.Axis, line.TouchOff.Way);
        events.Add(line.TouchOff);
        lines.Add(line with { Arrive = dials.Arrive(line.TouchOff) });
        Minutes += 2;
        if (line.TouchOff.Axis == Axis.Z)
        {
            At = At with { Z = line.TouchOff.SetTo };
        }
        else
        {
            At = line.TouchOff.Axis switch { Axis.X => At with { X = line.TouchOff.SetTo }, Axis.Y => At with { Y = line.TouchOff.SetTo }, _ => At with { T = line.TouchOff.SetTo } };
        }
    }

    // The spindle stopped, where the row that follows says so.
    internal void Stop()
    {
        if (turning)
        {
            turning = false;
            events.Add(new Spindle(0));
        }
    }

    // The spindle stopped, with a row of its own that says why.
    internal void Stop(string why)
    {
        if (turning)
        {
            Stop();
            lines.Add(new SpindleLine { Rpm = 0, Remark = why });
        }
    }

    // Something to do by hand between the rows, which takes no metal.
    internal void Tell(SheetLine line)
    {
        lines.Add(line);
        Minutes += 1;
    }

    internal void Add(CourseEvent one, SheetLine line)
    {
        events.Add(one);
        lines.Add(line);
        Minutes += 2;
    }

    // A move on its own; nothing where the axis stands there already. A dial is come to the way its zero was, past it first where need be.
    internal void Go(Crank crank)
    {
        DryTurn([crank], crank.Cutting);
        Start(crank.Cutting || (crank.Axis == Axis.Z && crank.To.Result < At.Z - 1e-9));
        if (dials.Past(crank, Value(crank.Axis), IsDown(At.Z)) is { } past)
        {
            Once(past);
        }

        Once(crank);
    }

    // The same lines at each depth: the depth move, then the body.
    internal void Passes(IReadOnlyList<Working> depths, bool plunges, IReadOnlyList<Crank> body)
    {
        DryTurn(body, isDown: false);
        if (depths.Count == 1 || TurnsAbout(body, depths[^1].Result))
        {
            foreach (var crank in depths.SelectMany(d => body.Prepend(new Crank(Axis.Z, d, plunges))))
            {
                Go(crank);
            }

            return;
        }

        Start(needed: true);
        var whole = Moving(WithSlack(body, depths[^1].Result), depths);
        var numbered = whole.Select(_ => 0).ToArray();
        var number = numbers.Next();
        List<MoveLine> deep = [], first = [], last = [];
        foreach (var depth in depths)
        {
            deep.Add(Apply(new Crank(Axis.Z, depth, plunges), number));
            last.Clear();
            for (var k = 0; k < whole.Count; k++)
            {
                numbered[k] = numbered[k] == 0 ? numbers.Next() : numbered[k];
                last.Add(Apply(whole[k], numbered[k]));
            }

            first = first.Count == 0 ? [.. last] : [.. first.Zip(last, (f, l) => f.From == f.To ? l : f)];
        }

        lines.Add(new PassBracket
        {
            Number = number,
            Depths = [.. depths.Select(d => d.Result)],
            DepthWorkings = [.. depths],
            DepthMoves = deep,
            Lines = [.. first.Zip(last, (f, l) => Alike(f, l) ? f : f with { Last = l })],
        });
    }

    // Started before a cutter comes down or cuts.
    private void Start(bool needed)
    {
        if (needed && !turning && Rpm > 0 && Shape is not null)
        {
            turning = true;
            events.Add(new Spindle(Rpm));
            lines.Add(new SpindleLine { Rpm = Rpm });
        }
    }

    // Before the first large turn of a holding: once round by hand, with nothing running (common practice, no source).
    private void DryTurn(IReadOnlyList<Crank> cranks, bool isDown)
    {
        if (turnedDry || Setup.Rotary is not { Lies: false } || !cranks.Any(c => c.Axis == Axis.T && (c.WholeTurn || Math.Abs(c.From(At.T) - At.T) >= 90)))
        {
            return;
        }

        turnedDry = true;
        Stop();
        var off = Setup.Fixtures.Any(f => f.Name == "fixed jaw") ? "vise handle off" : Setup.Fixtures.Any(f => f.Name == "chuck") ? "chuck key out" : "spanners off";
        Tell(new HandLine { Says = $"Spindle stopped, cutter up, {off}: turn the work once round by the crank. All that turns must clear the column, the knee and the hoses. Turn it back past its reading and come to it clockwise, the slack taken up{(isDown ? ", and the cutter down again" : string.Empty)}." });
    }

    // Whether a move begins at the same place in both passes; whole turns of the rotary do not tell.
    private static bool Alike(MoveLine a, MoveLine b)
    {
        var apart = Math.Abs(a.From - b.From);
        return Math.Abs(a.Turns - b.Turns) < 1e-9 && (a.Axis == Axis.T ? Math.Abs(Math.IEEERemainder(apart, 360)) : apart) < 1e-7;
    }

    // What stands where it is to go in every pass is no move.
    private List<Crank> Moving(IReadOnlyList<Crank> body, IReadOnlyList<Working> depths)
    {
        var stands = Stands();
        var moves = new bool[body.Count];
        foreach (var depth in depths)
        {
            stands[Axis.Z] = depth.Result;
            for (var k = 0; k < body.Count; k++)
            {
                var to = body[k].From(stands[body[k].Axis]);
                moves[k] |= Math.Abs(to - stands[body[k].Axis]) > 1e-9;
                stands[body[k].Axis] = to;
            }
        }

        return [.. body.Where((_, k) => moves[k])];
    }

    private Dictionary<Axis, double> Stands() => new() { [Axis.X] = At.X, [Axis.Y] = At.Y, [Axis.Z] = At.Z, [Axis.T] = At.T };

    private void Once(Crank crank)
    {
        if (crank.WholeTurn || Math.Abs(crank.From(Value(crank.Axis)) - Value(crank.Axis)) > 1e-9)
        {
            lines.Add(Apply(crank, numbers.Next()));
        }
    }

    // The body with every dial come to the way its zero was, as it is gone through again and again.
    private List<Crank> WithSlack(IReadOnlyList<Crank> body, double depth)
    {
        var pasts = new Crank?[body.Count];
        foreach (var (k, at, isDown) in Twice(body, depth))
        {
            pasts[k] ??= dials.Past(body[k], at, isDown);
        }

        return [.. body.SelectMany((c, k) => pasts[k] is { } past ? [past, c] : new[] { c })];
    }

    // Whether the slack is reckoned into a move one time through and not the other: then no one reading is true of all passes.
    private bool TurnsAbout(IReadOnlyList<Crank> body, double depth)
    {
        var moves = Twice(body, depth).Where(m => Math.Abs(body[m.Index].From(m.At) - m.At) > 1e-9).GroupBy(m => m.Index);
        return moves.Any(g => g.Select(m => dials.Reckons(body[m.Index], m.At, m.IsDown)).Distinct().Count() > 1);
    }

    // The body gone through twice at a depth: each move's place in it, where its axis stands before, and whether the cutter is down among the metal.
    private List<(int Index, double At, bool IsDown)> Twice(IReadOnlyList<Crank> body, double depth)
    {
        var stands = Stands();
        List<(int, double, bool)> moves = [];
        for (var k = 0; k < 2 * body.Count; k++)
        {
            stands[Axis.Z] = k % body.Count == 0 ? depth : stands[Axis.Z];
            var crank = body[k % body.Count];
            moves.Add((k % body.Count, stands[crank.Axis], IsDown(stands[Axis.Z])));
            stands[crank.Axis] = crank.From(stands[crank.Axis]);
        }

        return moves;
    }

    private bool IsDown(double z) => Shape is { } shape && z + Math.Min(0, shape.LowestPoint) < metal.Heights().High - 1e-6;

    private double Value(Axis axis) => axis switch { Axis.X => At.X, Axis.Y => At.Y, Axis.Z => At.Z, _ => At.T };

    private MoveLine Apply(Crank crank, int number)
    {
        var from = At;
        var before = Value(crank.Axis);
        var after = crank.From(before);
        var (said, told) = (before + dials.Over(crank.Axis), dials.Reckon(crank, before, IsDown(from.Z)));
        At = crank.Axis switch { Axis.X => At with { X = after }, Axis.Y => At with { Y = after }, Axis.Z => At with { Z = after }, _ => At with { T = after } };
        if (crank.Axis == Axis.T && Setup.Rotary is { Lies: true })
        {
            metal.Standing = At.T;
        }

        var locks = crank.Cutting ? gearing.Locks(crank.Axis, Setup) : [];
        events.Add(new Move { Number = number, To = dials.Says(At), Cutting = crank.Cutting, Feed = crank.Cutting ? Feed : 0, Locked = locks });
        HasCut |= crank.Cutting;
        if (crank.Cutting && Shape is { } shape && shape.Pieces.Any(p => p.Cuts))
        {
            Met |= watched && !Met && Meets(shape, from, At);
            Sweep(shape, from, At);
        }
        else if (crank is { Cutting: true, Axis: Axis.Z } && Cutter is { Kind: CutterKind.Broach } broach)
        {
            var start = Poses.Turn(Setup, from.T).Inverse().Apply(new Point3(from.X, from.Y, from.Z)) with { Z = from.Z };
            if (CutterShapes.Push(broach, start, At.Z, (broachTurn - from.T) / 180 * Math.PI) is { } pushed)
            {
                metal.Cut(new Placed(pushed, Poses.Of(Setup).Inverse()));
            }
        }

        var line = gearing.Line(told, number, said, after + dials.Over(crank.Axis), crank.Cutting ? Feed : 0, Radius(), locks);
        Minutes += gearing.Minutes(line, crank.Cutting ? Feed : 0, Radius());
        return line;
    }

    private double Radius() => Setup.Rotary is { Lies: false } r ? Math.Max(1, Math.Sqrt(((At.X - r.X) * (At.X - r.X)) + ((At.Y - r.Y) * (At.Y - r.Y)))) : 1;

    // Whether metal stands above the cutter's end anywhere under it on its way.
    private bool Meets(CutterShape shape, Reading from, Reading to)
    {
        const int Along = 48;
        var z = Math.Min(from.Z, to.Z) + 1e-6;
        for (var i = 0; i <= Along; i++)
        {
            var share = i / (double)Along;
            var theta = from.T + ((to.T - from.T) * share);
            Point2 at = new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));
            for (var k = 0; k < 24; k++)
            {
                var r = shape.GreatestRadius * (0.05 + (0.94 * (k % 4) / 3));
                if (metal.Above(new(at.X + (r * Math.Cos(k * Math.PI / 12)), at.Y + (r * Math.Sin(k * Math.PI / 12))), z, theta))
                {
                    return true;
                }
            }
        }

        return false;
    }

    // Fixed to the work the cutter goes straight, or round the rotary's axis the other way.
    private void Sweep(CutterShape shape, Reading from, Reading to)
    {
        if (Setup.Rotary is { Lies: true })
        {
            metal.Cut(new SweptCut(shape, CutterPath.Straight(new(from.X, from.Y, from.Z), new(to.X, to.Y, to.Z)), Poses.At(Setup, to.T).Inverse()));
            return;
        }

        var back = Poses.Turn(Setup, from.T).Inverse();
        var start = back.Apply(new Point3(from.X, from.Y, from.Z)) with { Z = from.Z };
        var path = from.T != to.T && Setup.Rotary is { } r
            ? CutterPath.Arc(new(r.X, r.Y), start, (from.T - to.T) / 180 * Math.PI)
            : CutterPath.Straight(start, back.Apply(new Point3(to.X, to.Y, to.Z)) with { Z = to.Z });
        metal.Cut(new SweptCut(shape, path, Poses.Of(Setup).Inverse()));
    }
}
