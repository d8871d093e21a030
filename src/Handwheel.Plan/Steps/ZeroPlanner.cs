using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// Finds zeros: what to do and what to set the readout to.
internal sealed class ZeroPlanner(Bench bench, Toucher toucher)
{
    // Paper where neither the line nor the shop says: 0.05 mm (common practice, no source).
    private const double UsualPaper = 0.05;

    internal void Plan(ZeroStep step)
    {
        foreach (var axis in step.Axes)
        {
            if (axis == 'z')
            {
                Height(step);
            }
            else
            {
                Sideways(step, axis == 'x' ? Axis.X : Axis.Y);
            }
        }

        if (bench.Machine.Setup.Rotary is { Lies: true })
        {
            if (step.On == ZeroOn.RotaryCentre)
            {
                Indexed();
            }
        }
        else if (step.On == ZeroOn.RotaryCentre && bench.Machine.Setup.Rotary is not null)
        {
            Rotary();
        }
    }

    // The indexer's own zero: the pin in a hole, as the work then stands.
    private void Indexed() => bench.Machine.Touch(new()
    {
        TouchOff = new() { Axis = Axis.T, On = "rotary centre", Surface = "indexer", At = default, With = "indicator", Way = bench.Way(Axis.T, 1), SetTo = 0 },
        Says = "Grip the work, a flat of it level where it has one (indicator along Y); the index pin in a hole, mark the hole: that is 0. Lock the spindle before each cut.",
        Working = Work.Value(new("T set", "0", "0", 0, Work.Practice), "deg"),
    });

    // The rotary's own zero: the jaw swept along X; a round in a chuck has no side of its own yet.
    private void Rotary()
    {
        var jaw = bench.Machine.Setup.Fixtures.Any(f => f.Name == "fixed jaw");
        bench.Machine.Touch(new()
        {
            TouchOff = new() { Axis = Axis.T, On = "fixture", Surface = jaw ? "fixed jaw" : "rotary", At = default, With = "indicator", Way = bench.Way(Axis.T, -1), SetTo = 0 },
            Says = !jaw ? "Turn the rotary to 0 on its rim, the work clockwise at the last, and set its dial to 0."
                : bench.Holding.Slid ? "The vise was not moved: with the dial at 0, come to with the work turning clockwise, an indicator stands still along the fixed jaw. If not, turn until it does and set the dial to 0."
                : "Now set the vise and the work, as the set-up says, and bolt them. Indicator in the spindle, X cranked along the fixed jaw: turn the rotary until the needle stands still, the work clockwise at the last. Set its dial to 0.",
            Working = Work.Value(new("T set", "0", "0", 0, Work.Practice), "deg"),
        });
    }

    // Z belongs to a cutter: the first that this holding uses.
    private void Height(ZeroStep step)
    {
        if (step.SetTo is not null || step.On is not (ZeroOn.StockTop or ZeroOn.FeatureTop))
        {
            bench.Cannot(step, "Z found elsewhere than on top of the work, or set otherwise than as drawn, cannot be worked out", "Find it on the work: 'zero z on bar top by paper 0.05', or on a feature's top.");
            return;
        }

        if (step.Face is { } face && !LooksUp(face))
        {
            bench.Cannot(step, $"The {face}{(face is "underside" ? string.Empty : " side")} of '{step.Feature}' does not look up in this holding.", "Name the face that looks up, or hold the work so that this one does.");
            return;
        }

        bench.ZeroZ = true;
        bench.Paper = step.Size?.Value ?? Gauge("paper") ?? UsualPaper;
        var name = step.Cutter ?? bench.Holding.Steps.SkipWhile(s => !ReferenceEquals(s, step)).Select(s => s.Cutter).FirstOrDefault(c => c is not null && bench.Shop.Cutters.TryGetValue(c, out var k) && CutterShapes.Turns(k));
        if (name is not null && bench.Shop.Cutters.TryGetValue(name, out var cutter))
        {
            _ = toucher.Use(step, cutter, 0, null);
        }
    }

    // Whether a face of the part looks up as the work lies.
    private bool LooksUp(string face) => bench.AtZero.Placement.Direction(face switch
    {
        "underside" => new(0, 0, -1),
        "left" => new(-1, 0, 0),
        "right" => new(1, 0, 0),
        "near" => new(0, -1, 0),
        _ => new(0, 1, 0),
    }).Z > 0.9;

    private void Sideways(ZeroStep step, Axis axis)
    {
        switch (step.On)
        {
            case ZeroOn.RotaryCentre:
                if (bench.Machine.Setup.Rotary is { Lies: true } && axis == Axis.X)
                {
                    bench.Cannot(step, "An indexer's axis lies along X: it has no X of its own.", "Find X on an end of the work: 'zero x on right end of stock by finder'.");
                    break;
                }

                OnCentre(step, axis);
                break;
            case ZeroOn.FeatureAxis:
                OnAxis(step, axis);
                break;
            case ZeroOn.FixedJaw:
                OnJaw(step, axis);
                break;
            default:
                OnSide(step, axis);
                break;
        }
    }

    private void Found(Axis axis, TouchOff touch, string putIn, string says)
    {
        var set = Work.Value(new($"{axis} set", "place of what is found, less or more half of what finds it", putIn, touch.SetTo, Work.Practice), "mm");
        bench.Machine.Touch(new()
        {
            TouchOff = touch,
            Says = says,
            Working = set,
        });
    }

    // The spindle over the rotary; where a feature is named, the work is first brought so that it stands there.
    private void OnCentre(ZeroStep step, Axis axis)
    {
        var set = bench.Figures.R(0, bench.Work.Facts(axis).Step);
        var stands = bench.Machine.Setup.Rotary is { Lies: true } || bench.Plan.Find(step.Feature) is not { } f || Standing.Stands(bench.Metal, f);
        var last = step.Axes[^1] == (axis == Axis.X ? 'x' : 'y');
        if (!stands && last)
        {
            bench.Say(FindingCatalogue.NotCutYet(new FindingPlace(step.Id, step.Where), step.Feature!, step.By));
        }

        var says = (step.Feature, axis) switch
        {
            _ when bench.Machine.Setup.Rotary is { Lies: true } => $"Spindle stopped. Find both sides of a true bar in the indexer's chuck with the finder; crank {axis} to the middle between them: the spindle stands over the indexer's axis. Set {axis} {set}.",
            (null, Axis.X) => Centre(axis, set),
            (null, _) => $"In the same place, set {axis} {set}.",
            ({ } name, _) when !stands => (axis == Axis.X ? Centre(axis, set) : $"In the same place, set {axis} {set}.") + (last ? " " + ByTheStock(step, name) : string.Empty),
            ({ } name, Axis.X) => $"Spindle stopped, over the rotary's centre ({FoundBefore()}). Slide the work until the {name} stands there: {Fits(step)}, an indicator in the spindle against it, turn the rotary and tap the work along until the needle stands still. Clamp, turn once more to see that it stayed. Set {axis} {set}.",
            ({ } name, _) => $"The {name} runs true: set {axis} {set}.{(bench.Machine.Setup.Fixtures.Any(f => f.Name == "fixed jaw") ? $" Still out across the jaws: slacken the vise, tap it over by half the swing (or shim at the fixed jaw), sweep the jaw and true the {name} again." : string.Empty)}",
        };
        bench.Machine.Touch(new()
        {
            TouchOff = new() { Axis = axis, On = "rotary centre", Surface = "rotary centre", At = default, With = "indicator", Way = bench.Way(axis, CentreWay(axis)), SetTo = 0 },
            Says = says,
            Working = Work.Value(new($"{axis} set", "the rotary's centre is the zero", "0", 0, Work.Practice), "mm"),
        });
    }

    // A round is cut coming in from X plus: its zero is then come to from there too, and no slack need be reckoned.
    private int CentreWay(Axis axis) => axis == Axis.X && bench.Holding.Steps.Any(s => s is RoundStep { Inside: false }) ? -1 : 1;

    private string Centre(Axis axis, string set) =>
        $"Spindle stopped, a true pin in it; an indicator on the rotary's table, its needle on the pin. Turn the rotary once round and crank X and Y until the needle stands still: the spindle is over the rotary's centre. Set {axis} {set}.";

    // Where the rotary's centre was found already its readings are told; else how it is found.
    private string FoundBefore()
    {
        var before = bench.Job.Stages.OfType<Holding>().TakeWhile(h => !ReferenceEquals(h, bench.Holding)).LastOrDefault();
        var found = before?.OnRotary == true && before.Steps.OfType<ZeroStep>().Any(z => z.On == ZeroOn.RotaryCentre);
        return found
            ? $"where {before!.Name} read X {bench.Figures.R(0, bench.Work.Facts(Axis.X).Step)}, Y {bench.Figures.R(0, bench.Work.Facts(Axis.Y).Step)}: crank there"
            : "a true pin in the spindle, an indicator on the rotary, X and Y cranked until its needle stands still as the rotary turns";
    }

    // What is not cut yet comes over the centre by the sides of the stock, each met where the readout says it stands.
    private string ByTheStock(ZeroStep step, string name)
    {
        var half = (Gauge("finder") ?? 10) / 2;
        List<string> sides = [];
        if (step.Axes.Contains('x', StringComparison.Ordinal) && Surface(Axis.X, high: false) is { } left)
        {
            sides.Add($"the stock's left end is met at X {bench.Figures.R(Snap(Axis.X, left.Place - half), bench.Work.Facts(Axis.X).Step)}");
        }

        if (step.Axes.Contains('y', StringComparison.Ordinal) && Surface(Axis.Y, high: false) is { } near)
        {
            sides.Add($"its near side at Y {bench.Figures.R(Snap(Axis.Y, near.Place - half), bench.Work.Facts(Axis.Y).Step)}");
        }

        return $"The {name} is not cut yet: with a finder of {bench.Figures.LU(2 * half)} slide the work until {string.Join(" and ", sides)}; then the place of the {name} is over the rotary's centre. Clamp, and find them once more.";
    }

    // A pin is told to 0.02 mm, or a thousandth of an inch: it is picked to fit the hole as it came out.
    private double Close(double across)
    {
        var grain = bench.Job.Unit == LengthUnit.Inch ? 0.001 * LengthUnit.Inch.MillimetresPerUnit() : 0.02;
        return Math.Round(across / grain) * grain;
    }

    private string Fits(ZeroStep step) => bench.Plan.Find(step.Feature) is { Feature.IsCut: true } hole && AimedDrawing.RadiusOf(hole.Feature) is { } r
        ? $"a close pin of {bench.Figures.LU(Close(2 * r))} in it"
        : "its own round swept";

    private void OnAxis(ZeroStep step, Axis axis)
    {
        if (bench.Plan.Find(step.Feature) is not { } f)
        {
            bench.Cannot(step, $"'{step.Feature}' does not stand upright in this holding.", "Name a hole or boss whose axis is upright.");
            return;
        }

        if (!Standing.Stands(bench.Metal, f))
        {
            bench.Cannot(step, $"The {f.Feature.Name} is not cut yet: nothing of it stands to be found", $"Find X and Y on the stock, 'zero x on left end of stock by finder' and 'zero y on fixed jaw by indicator': the {f.Feature.Name} is then reached by its drawn distance from there. Or cut it first.");
            return;
        }

        var to = axis == Axis.X ? f.Centre.X : f.Centre.Y;
        var set = Snap(axis, to);
        var says = $"Spindle stopped. Bring it over the axis of {f.Feature.Name} by {step.By}, turned round by hand until it reads the same all round; set {axis} {bench.Figures.R(set, bench.Work.Facts(axis).Step)}.";
        Found(axis, new() { Axis = axis, On = "axis", Surface = f.Feature.Name, At = new(f.Centre.X, f.Centre.Y, f.High), With = step.By, Way = bench.Way(axis, 1), SetTo = set }, Figures(to), says);
    }

    private void OnJaw(ZeroStep step, Axis axis)
    {
        if (bench.Machine.Setup.Fixtures.FirstOrDefault(f => f.Name == "fixed jaw") is not { } jaw)
        {
            bench.Cannot(step, "This holding has no fixed jaw.", "Find the zero on a side of the stock.");
            return;
        }

        if ((axis == Axis.X) != bench.Holding.JawsAlongY)
        {
            bench.Cannot(step, $"The fixed jaw's face gives no {axis} here: it lies along {axis}.", $"Find {axis} on the work: 'zero {(axis == Axis.X ? "x on left end" : "y on near side")} of stock by finder'; or write 'jaws along {(axis == Axis.X ? "y" : "x")}' where they lie so.");
            return;
        }

        var face = axis == Axis.X ? jaw.Least.X : jaw.Least.Y;
        var set = Snap(axis, face);
        var put = $"set {axis} {bench.Figures.R(set, bench.Work.Facts(axis).Step)}";
        var says = step.By == "indicator"
            ? $"Spindle stopped, an indicator in it. Read the fixed jaw's face, turn the spindle half round and read a parallel held against that face; crank {axis} until both read alike: the spindle's axis is over the face. Now {put}."
            : $"Bring the {step.By} against the fixed jaw's face and allow half of it: with the spindle's axis over the face {put}.";
        Found(axis, new() { Axis = axis, On = "fixture", Surface = "fixed jaw", At = new(jaw.Least.X, jaw.Least.Y, jaw.Most.Z), Towards = 1, With = step.By, Way = bench.Way(axis, 1), SetTo = set }, Figures(face), says);
    }

    private void OnSide(ZeroStep step, Axis axis)
    {
        var high = step.On is ZeroOn.RightEnd or ZeroOn.FarSide or ZeroOn.Middle;
        if (Surface(axis, high) is not { } s)
        {
            bench.Cannot(step, "There is no side of the metal that can be reached here.", "Let the work stand higher, or find the zero elsewhere.");
            return;
        }

        var half = (step.Size?.Value ?? Gauge("finder") ?? 10) / 2;
        var place = s.Place;
        var to = Snap(axis, step.SetTo is { } typed && step.On != ZeroOn.Middle ? typed.Value : high ? place + half : place - half);
        var touch = new TouchOff
        {
            Axis = axis,
            On = "metal",
            Surface = Word(step.On, axis),
            At = axis == Axis.X ? new(high ? place + half : place - half, s.Across, s.Height) : new(s.Across, high ? place + half : place - half, s.Height),
            Towards = high ? -1 : 1,
            With = "finder",
            Half = half,
            Way = bench.Way(axis, high ? -1 : 1),
            SetTo = to,
        };
        Found(axis, touch, $"{Figures(place)} {(high ? "+" : "-")} {Figures(2 * half)}/2", Against(step.On == ZeroOn.Middle ? Between(axis, place, !high) : null, touch));
    }

    // The middle of a side and the one opposite.
    private double Between(Axis axis, double place, bool high) => (place + (Surface(axis, high)?.Place ?? place)) / 2;

    // What to do at a side, or at both where the middle is found.
    private string Against(double? middle, TouchOff touch)
    {
        var axis = touch.Axis;
        var finder = $"a finder of {bench.Figures.LU(2 * touch.Half)}";
        var set = $"set {axis} {bench.Figures.R(touch.SetTo, bench.Work.Facts(axis).Step)}";
        return middle is { } amid
            ? $"Touch both {(axis == Axis.X ? "ends" : "sides")} with {finder} and note {axis} at each{Other(axis)}; half way between is the middle, {axis} {bench.Figures.R(amid, bench.Work.Facts(axis).Step)}. So against the {touch.Surface} {set}."
            : $"Bring {finder} against the {touch.Surface} from outside until it kicks or lights, and {set}.";
    }

    // The first of two sides is come to the other way than the second, on whose slack the dial is set.
    private string Other(Axis axis) => bench.Machine.Dials.Slack(axis) is > 0 and var slack
        ? $", the {(axis == Axis.X ? "left end" : "near side")} first; take the slack, {bench.Figures.LU(slack)}, off what {axis} read there, for it was come to the other way"
        : string.Empty;

    private static string Word(ZeroOn on, Axis axis) => on switch
    {
        ZeroOn.LeftEnd => "left end",
        ZeroOn.RightEnd => "right end",
        ZeroOn.NearSide => "near side",
        ZeroOn.FarSide => "far side",
        _ => axis == Axis.X ? "right end" : "far side",
    };

    private (double Place, double Across, double Height)? Surface(Axis axis, bool high) =>
        new SidePlaces(bench.Metal, axis == Axis.X, high).Outermost(bench.Machine.Setup.Fixtures.Where(f => f.Holds).Select(f => (double?)f.Most.Z).Max());

    private double? Gauge(string kind) => bench.Shop.Gauges.Values.Where(g => g.Kind == kind && g.Size > 0).Select(g => (double?)g.Size).FirstOrDefault();

    private double Snap(Axis axis, double value) => Rounding.ToStep(value, bench.Work.Facts(axis).Step, Toward.Nearest);

    private string Figures(double value) => bench.Figures.L(value);
}
