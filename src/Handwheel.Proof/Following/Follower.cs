using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Following;

/// <summary>
/// Follows a course as the machine truly would, from the bare stock: a touch-off finds what is truly there, a move sweeps the cutter from where it stands
/// to where it is cranked and takes all metal it meets. Mutable inside one proof.
/// </summary>
internal sealed class Follower
{
    private readonly Course course;
    private readonly Shop shop;
    private readonly DrawnPart most;
    private readonly List<FollowedStep> steps = [];
    private readonly List<Stroke> strokes = [];
    private readonly List<FollowedTouch> touches = [];
    private readonly List<FollowedChange> changes = [];
    private readonly List<FollowedMeasure> measures = [];
    private readonly List<(FollowedStage Stage, Metal Metal)> held = [];
    private readonly List<Finding> findings = [];
    private readonly HashSet<(int Stage, Axis Axis, string Cutter)> told = [];
    private readonly MachineState machine = new();
    private readonly CutterRack rack;
    private Metal metal;
    private int lastZ = -1;
    private bool incomplete;
    private bool? turning;
    private Cutter? cutter;
    private CutterShape? shape;
    private string? inSpindle;
    private double turn;
    private Stroke? waste;
    private ISolid? wasteSolid;

    /// <summary>Prepares to follow.</summary>
    /// <param name="course">The course.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="bare">The bare stock.</param>
    /// <param name="most">Most metal of the drawing: what filing stops at.</param>
    public Follower(Course course, Shop shop, ISolid bare, DrawnPart most)
    {
        this.course = course;
        this.shop = shop;
        this.most = most;
        metal = Metal.Of(bare);
        rack = new CutterRack(shop);
    }

    /// <summary>Follows the whole course.</summary>
    /// <returns>What happened.</returns>
    public Trace Follow()
    {
        var bare = metal;
        for (var i = 0; i < course.Stages.Count; i++)
        {
            var facts = course.Stages[i];
            var stage = new FollowedStage(i, facts, facts.Setup is { } setup ? new HoldingFrame(setup) : null);
            Enter(stage);
            foreach (var step in facts.Steps)
            {
                var before = metal;
                foreach (var one in step.Events)
                {
                    Happen(stage, step, one);
                }

                steps.Add(new FollowedStep(stage, step, before, metal));
            }
        }

        return new Trace
        {
            Steps = steps,
            Strokes = strokes,
            Touches = touches,
            Changes = changes,
            Measures = measures,
            Held = held,
            Bare = bare,
            Last = metal,
            Findings = findings,
            Incomplete = incomplete,
        };
    }

    private void Enter(FollowedStage stage)
    {
        if (stage.Facts.Setup is { } setup)
        {
            TakeOutWaste();
            held.Add((stage, metal));
            machine.NewHolding(setup.Carried);
            if (!setup.Carried.Contains("z", StringComparer.Ordinal))
            {
                inSpindle = null;
                cutter = null;
                shape = null;
            }
        }
    }

    private void Happen(FollowedStage stage, CourseStep step, CourseEvent one)
    {
        switch (one)
        {
            case CutterIn put:
                Put(stage, step, put);
                break;
            case HeadOpened opened:
                Open(step, opened);
                break;
            case Spindle spindle:
                turning = spindle.Rpm > 0;
                break;
            case TouchOff touch:
                TouchOn(stage, step, touch);
                break;
            case Move move:
                Go(stage, step, move);
                break;
            case Measured measured:
                Near(step, $"{measured.Size} is measured");
                measures.Add(new FollowedMeasure(stage, step, measured, strokes.Count));
                break;
            case Handwork hand:
                Near(step, $"hands are at the work ({hand.Work})");
                ByHand(stage, step, hand);
                break;
            default:
                break;
        }
    }

    private void Put(FollowedStage stage, CourseStep step, CutterIn put)
    {
        if (machine[Axis.Z].Placed && shape is not null)
        {
            changes.Add(new FollowedChange(stage, step, machine.True, shape, inSpindle ?? string.Empty, metal));
        }

        Near(step, $"{put.Cutter} is put in");
        turning = null;
        machine.NewCutter();
        lastZ = -1;
        inSpindle = put.Cutter;
        turn = put.Turn;
        cutter = rack.Cutter(put.Cutter, put.Across);
        shape = rack.Shape(put.Cutter, put.Across);
        if (cutter is null)
        {
            incomplete = true;
            findings.Add(FindingCatalogue.NotOnHand(new FindingPlace(step.Id, step.Where), "cutter", put.Cutter, NearestName.Of(put.Cutter, shop.Cutters.Keys)));
        }
    }

    // The bar stays in its head; what is no boring bar opens nothing.
    private void Open(CourseStep step, HeadOpened opened)
    {
        Near(step, $"the head of {inSpindle ?? "the spindle"} is set");
        if (inSpindle is { } name)
        {
            cutter = rack.Cutter(name, opened.Across);
            shape = rack.Shape(name, opened.Across);
        }
    }

    // Hands where something turns; told once a step.
    private void Near(CourseStep step, string doing)
    {
        if (turning == true)
        {
            turning = null;
            findings.Add(FindingCatalogue.SpindleTurns(new FindingPlace(step.Id, step.Where), doing, inSpindle ?? "the spindle"));
        }
    }

    private void TouchOn(FollowedStage stage, CourseStep step, TouchOff touch)
    {
        if (stage.Facts.Setup is not { } setup || stage.Frame is not { } frame)
        {
            findings.Add(FindingCatalogue.NotFollowed(new FindingPlace(step.Id, step.Where), "A touch-off stands among work by hand, where there is no machine"));
            return;
        }

        if (touch.With == inSpindle && touch.Paper > 0)
        {
            Near(step, $"{touch.With} is touched off on paper held by hand");
        }

        var axis = machine[touch.Axis];
        var at = new TrueReading(
            machine[Axis.X].TruthOf(touch.At.X),
            machine[Axis.Y].TruthOf(touch.At.Y),
            machine[Axis.Z].TruthOf(touch.At.Z),
            machine[Axis.T].Placed ? machine[Axis.T].True : 0);
        var found = TouchingOff.Find(touch, at, setup, frame, metal, shape);
        found = OnSawFace(touch, found);
        var gone = found.True is not { } stands || Math.Abs(stands - touch.SetTo) > TouchingOff.SameSurface;
        touches.Add(new FollowedTouch(stage, step, touch, inSpindle, at, found, metal, gone));
        var centred = touch.On is "rotary centre" or "axis";
        var untold = centred || touch.Axis == Axis.T ? 0 : touch.Towards;
        axis.Zero(gone ? touch.SetTo : found.True!.Value, touch.SetTo, touch.Way != 0 ? touch.Way : untold);
        if (touch.Axis == Axis.Z)
        {
            lastZ = touches.Count - 1;
            axis.Lift();
        }
        else if (touch.Axis is Axis.X or Axis.Y && !centred)
        {
            machine[Axis.Z].Lift();
        }
    }

    // A saw touched with its upper face stands lower by its thickness than one touched with its lower face.
    private Touched OnSawFace(TouchOff touch, Touched found) =>
        touch.Axis == Axis.Z && touch.On != "metal" && touch.Face == "upper" && cutter is { Thick: > 0 } saw && found.True is { } stands
            ? found with { True = stands - saw.Thick }
            : found;

    private void Go(FollowedStage stage, CourseStep step, Move move)
    {
        if (stage.Facts.Setup is not { } setup || stage.Frame is not { } frame)
        {
            findings.Add(FindingCatalogue.NotFollowed(new FindingPlace(step.Id, step.Where, move.Number), "A move stands among work by hand, where there is no machine"));
            return;
        }

        CheckZero(stage, step, move, frame);
        var says = machine.Says;
        var quillUp = !machine[Axis.Z].Placed;
        var placed = machine[Axis.X].Placed && machine[Axis.Y].Placed;
        var before = machine.True;
        Crank(setup.Axes, move.To, frame);
        var to = machine.True;
        var from = quillUp ? before with { Z = Math.Max(to.Z, Sweeping.QuillUp) } : before;
        if (!placed)
        {
            from = to with { Z = Math.Max(to.Z, Sweeping.QuillUp) };
        }

        // With the quill up it comes to its place first and then goes down, whatever the move.
        var legs = Sweeping.Legs(frame, from, to, move.Cutting && !quillUp && placed);
        Record(new Stroke
        {
            Index = strokes.Count,
            Stage = stage,
            Step = step,
            Move = move,
            Cutter = cutter,
            Shape = shape,
            Legs = legs,
            Turning = turning,
            SaysBefore = says,
            RestsOn = lastZ,
            Before = metal,
            After = metal,
        });
    }

    private void Crank(AxesFacts facts, Reading to, HoldingFrame frame)
    {
        machine[Axis.X].CrankTo(to.X, facts.X);
        machine[Axis.Y].CrankTo(to.Y, facts.Y);
        machine[Axis.Z].CrankTo(to.Z, facts.Z);
        if (frame.Turns)
        {
            machine[Axis.T].CrankTo(to.T, facts.T);
        }
    }

    private void Record(Stroke stroke)
    {
        if (stroke is { Cutter: { Kind: CutterKind.Broach } broach, Cutting: true })
        {
            foreach (var leg in stroke.Legs.Where(l => l.IsAlongZ))
            {
                if (CutterShapes.Push(broach, leg.Path.From, leg.Path.To.Z, HoldingFrame.Radians(turn - leg.To.T)) is { } pushed)
                {
                    metal = metal.Without(new CutMade(new Placed(pushed, leg.ToPart), stroke.Index));
                }
            }
        }

        if (stroke.Shape is { } body)
        {
            foreach (var leg in stroke.Legs)
            {
                if (CutterRack.Cut(body, leg) is { } volume)
                {
                    metal = metal.Without(new CutMade(volume, stroke.Index));
                }
            }
        }

        strokes.Add(stroke with { After = metal });
    }

    private void CheckZero(FollowedStage stage, CourseStep step, Move move, HoldingFrame frame)
    {
        foreach (var axis in new[] { Axis.X, Axis.Y, Axis.Z, Axis.T })
        {
            var state = machine[axis];
            if (state.Zeroed || (axis == Axis.T && (!frame.Turns || move.To.T == 0 || stage.Facts.Setup is null)))
            {
                continue;
            }

            // A rotary whose own zero nobody sets is taken to stand as set up: its dial is read as it is.
            if (axis == Axis.T || (axis == Axis.Z && !move.Cutting) || !told.Add((stage.Index, axis, axis == Axis.Z ? inSpindle ?? string.Empty : string.Empty)))
            {
                continue;
            }

            var name = MachineState.NameOf(axis);
            var why = axis == Axis.Z
                ? $"{inSpindle ?? "no cutter"} was not touched off since it was put in"
                : $"{name} was not touched off in holding {stage.Facts.Name}";
            findings.Add(FindingCatalogue.ZeroMissing(new FindingPlace(step.Id, step.Where, move.Number), name, why));
        }
    }

    // The work is held anew: what was parted from it is no longer there.
    private void TakeOutWaste()
    {
        if (waste is null || wasteSolid is null)
        {
            return;
        }

        var before = metal;
        metal = metal.Without(new CutMade(wasteSolid, strokes.Count));
        strokes.Add(waste with { Index = strokes.Count, Before = before, After = metal });
        waste = null;
    }

    private void ByHand(FollowedStage stage, CourseStep step, Handwork hand)
    {
        var place = new FindingPlace(step.Id, step.Where);
        var used = hand.Cutter is null ? null : shop.Cutters.GetValueOrDefault(hand.Cutter);
        if (hand.Cutter is not null && used is null)
        {
            incomplete = true;
            findings.Add(FindingCatalogue.NotOnHand(place, "cutter", hand.Cutter, NearestName.Of(hand.Cutter, shop.Cutters.Keys)));
            return;
        }

        var volume = HandWorking.Volume(hand, used, rack, strokes, most, out var why);
        if (volume is null)
        {
            if (why is not null)
            {
                incomplete = true;
                findings.Add(FindingCatalogue.NotFollowed(place, why));
            }

            return;
        }

        var before = metal;
        metal = metal.Without(new CutMade(volume, strokes.Count));
        strokes.Add(new Stroke
        {
            Index = strokes.Count,
            Stage = stage,
            Step = step,
            Hand = hand,
            Cutter = used,
            Shape = rack.Shape(used?.Name),
            Legs = [],
            Before = before,
            After = metal,
        });
        if (hand.Work == "break web")
        {
            (waste, wasteSolid) = (strokes[^1], HandWorking.Waste([.. strokes], most.Solid));
        }
    }
}
