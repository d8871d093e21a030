using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Cranking;

// Follows the machine while planning, and writes each line of the sheet together with the event the proof is given, so that they cannot drift apart.
internal sealed class Recorder
{
    private readonly PlannedMetal metal;
    private readonly Shop shop;
    private List<SheetLine> lines = [];
    private List<CourseEvent> events = [];
    private int number;
    private bool silent;

    internal Recorder(PlannedMetal metal, Shop shop)
    {
        this.metal = metal;
        this.shop = shop;
    }

    internal Reading At { get; private set; }

    internal Cutter? Cutter { get; private set; }

    internal CutterProfile? Profile { get; private set; }

    internal bool ZKnown { get; private set; }

    internal double Feed { get; set; }

    internal HoldingPlan? Holding { get; set; }

    internal Point2 Centre { get; set; }

    internal double Minutes { get; private set; }

    internal (IReadOnlyList<SheetLine> Lines, IReadOnlyList<CourseEvent> Events) Take()
    {
        var taken = (lines, events);
        (lines, events) = ([], []);
        return taken;
    }

    internal double TakeMinutes()
    {
        var m = Minutes;
        Minutes = 0;
        return m;
    }

    internal void Begin(Reading at)
    {
        At = at;
        ZKnown = false;
        Cutter = null;
    }

    internal void Put(Cutter cutter, double rpm, double z)
    {
        Cutter = cutter;
        Profile = CutterProfile.Of(cutter);
        ZKnown = false;
        At = At with { Z = z };
        Line(new CutterLine { Cutter = cutter.Name, Rpm = rpm, Out = cutter.Out });
        events.Add(new CutterIn(cutter.Name, rpm));
        Minutes += 2;
    }

    internal void Touch(TouchOff touch, string says, Working working)
    {
        Line(new TouchOffLine { TouchOff = touch, Says = says, Working = working });
        events.Add(touch);
        if (touch.Axis == Axis.Z)
        {
            ZKnown = true;
            At = At with { Z = touch.SetTo };
        }

        Minutes += 1;
    }

    internal void Say(SheetLine line, CourseEvent? happens = null)
    {
        Line(line);
        if (happens is not null)
        {
            events.Add(happens);
        }
    }

    // Brings one axis to a reading; nothing happens where it already stands there.
    internal void Go(Axis axis, Working to, bool cutting = false, double radius = 0, string remark = "", params Axis[] locked)
    {
        var from = Of(axis);
        if (Math.Abs(from - to.Result) < 1e-9)
        {
            return;
        }

        number++;
        var line = Move(axis, from, to, cutting, radius, remark, locked);
        Line(line);
        Bring(axis, to.Result, cutting, locked);
    }

    // The body is gone through at each depth; the depth line and the lines in it carry one number each.
    internal void Passes(IReadOnlyList<Working> depths, bool depthCuts, string remark, Action body)
    {
        number++;
        var first = number;
        var outer = lines;
        List<SheetLine>? inside = null;
        foreach (var depth in depths)
        {
            number = first;
            Bring(Axis.Z, depth.Result, depthCuts, depthCuts ? [Axis.X, Axis.Y, Axis.T] : []);
            lines = [];
            silent = inside is not null;
            body();
            inside ??= lines;
        }

        silent = false;
        lines = outer;
        Line(new PassBracket
        {
            Number = first,
            Depths = [.. depths.Select(d => d.Result)],
            DepthWorkings = depths,
            Lines = inside ?? [],
            Remark = remark,
        });
    }

    private double Of(Axis axis) => axis switch
    {
        Axis.X => At.X,
        Axis.Y => At.Y,
        Axis.Z => At.Z,
        _ => At.T,
    };

    private void Line(SheetLine line)
    {
        if (!silent)
        {
            lines.Add(line);
        }
    }

    private void Bring(Axis axis, double to, bool cutting, Axis[] locked)
    {
        var from = At;
        At = axis switch
        {
            Axis.X => At with { X = to },
            Axis.Y => At with { Y = to },
            Axis.Z => At with { Z = to },
            _ => At with { T = to },
        };
        events.Add(new Move { Number = number, To = At, Cutting = cutting, Feed = cutting ? Feed : 0, Locked = [.. locked] });
        if (ZKnown && Profile is not null && Holding is not null)
        {
            metal.Add(new PlannedCut(Holding.Placement, Centre, from, At, Profile));
        }

        Minutes += 0.15 + (cutting && Feed > 0 ? Along(axis, from) / Feed : 0);
    }

    private double Along(Axis axis, Reading from) => axis == Axis.T
        ? Math.Abs(At.T - from.T) / Plane.ToDegrees * Plane.Distance(new(At.X, At.Y), Centre)
        : Math.Abs(Of(axis) - (axis == Axis.X ? from.X : axis == Axis.Y ? from.Y : from.Z));

    private MoveLine Move(Axis axis, double from, Working to, bool cutting, double radius, string remark, Axis[] locked)
    {
        var grows = to.Result > from;
        var (clockwise, perTurn) = Crank(axis, grows);
        var turns = Math.Abs(to.Result - from) / perTurn;
        var path = axis == Axis.T ? perTurn / Plane.ToDegrees * radius : perTurn;
        return new()
        {
            Number = number,
            Axis = axis,
            From = from,
            To = to.Result,
            Cutting = cutting,
            Arrive = axis == Axis.Z && !cutting ? string.Empty : grows ? "from -" : "from +",
            CrankClockwise = clockwise,
            Turns = turns,
            Pace = cutting && Feed > 0 ? 60 * path / Feed : 0,
            Lock = locked,
            WorkTurns = axis != Axis.T ? string.Empty : grows ? "counterclockwise" : "clockwise",
            Working = to,
            Remark = remark,
        };
    }

    private (bool Clockwise, double PerTurn) Crank(Axis axis, bool grows)
    {
        if (axis == Axis.T)
        {
            var worm = shop.Rotary?.Worm ?? shop.Indexer?.Worm ?? 1;
            return ((shop.Rotary?.CrankClockwiseTurnsClockwise ?? true) != grows, 360 / worm);
        }

        var facts = axis == Axis.X ? shop.Mill!.X : axis == Axis.Y ? shop.Mill!.Y : shop.Mill!.Z;
        return (facts.ClockwiseGrows == grows, facts.PerTurn);
    }
}
