using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// Puts a cutter in and finds its Z: after every change, on what then is the top.
internal sealed class Toucher(Bench bench)
{
    // A face is cut where metal stands within so much of where it is drawn, millimetres (common practice, no source).
    private const double Cut = 0.3;

    // False where it cannot be; a finding is made. A boring head may run as it does once it is opened.
    internal bool Use(Step step, double across = 0, Point2? pilot = null, double runs = 0)
    {
        if (step.Cutter is not { } name || !bench.Shop.Cutters.TryGetValue(name, out var cutter))
        {
            bench.Cannot(step, "This step has no cutter of the shop.", "Name one after 'with'.");
            return false;
        }

        return Use(step, cutter, across, pilot, runs);
    }

    internal bool Use(Step step, Cutter cutter, double across, Point2? pilot, double runs = 0)
    {
        if (!CutterShapes.Turns(cutter))
        {
            bench.Cannot(step, $"{cutter.Name} does not turn: it is pressed, not run in the spindle.", "Press it by hand: 'by hand', then 'press socket with sq4'.");
            return false;
        }

        var set = CutterShapes.SetTo(cutter, across);
        if (bench.Cutter is { } now && now.Name == cutter.Name && Math.Abs(now.TrueAcross - set.TrueAcross) < 1e-9)
        {
            return true;
        }

        bench.Straighten();
        var (rpm, feed) = Running(step, runs > 0 ? CutterShapes.SetTo(cutter, runs) : set);
        bench.Machine.Put(cutter, across, rpm, feed, bench.Safe().Result + (25 * bench.Clear));
        return Touch(step, cutter, bench.Machine.Shape!, pilot);
    }

    // A broach in the locked spindle, its side's normal at an angle in degrees from X.
    internal bool Push(Step step, Cutter broach, double turn)
    {
        bench.Straighten();
        bench.Machine.Put(broach, 0, 0, 0, bench.Safe().Result + (25 * bench.Clear), turn);
        var corner = Math.Max(broach.TrueAcross, broach.OtherSide) / Math.Cos(Math.PI / 4);
        return Touch(step, broach, CutterShape.EndMill(corner, 1, corner, 10), null);
    }

    // Turns a minute, and millimetres a minute; a tap is turned by hand unless a speed was asked for.
    internal (double Rpm, double Feed) Running(Step step, Cutter set)
    {
        if (set.Kind == CutterKind.Tap && step.Speed is null)
        {
            if (set.Pitch > 0)
            {
                _ = bench.Show(Work.Value(new($"{set.Name} goes on each turn", "its pitch", bench.Figures.L(set.Pitch), set.Pitch, Work.Geometry), "mm"));
            }

            return (0, 0);
        }

        var rpm = bench.Show(step.Speed is { } asked ? Asked(asked.Value) : bench.Speeds.Rpm(set));
        if (bench.Speeds.Eased(set) is { } chip)
        {
            _ = bench.Show(chip);
        }

        var feed = bench.Show(bench.Speeds.Feed(set, rpm));
        return (rpm.Result, feed.Result * bench.Job.Unit.MillimetresPerUnit());
    }

    private static Working Asked(double rpm) =>
        Work.Value(new("speed", "as typed", Figures.Bare(rpm), rpm, Work.Practice), "rpm");

    private bool Touch(Step step, Cutter cutter, CutterShape shape, Point2? pilot)
    {
        if (!bench.ZeroZ)
        {
            bench.ZeroZ = true;
            bench.Say(FindingCatalogue.ZeroMissing(new FindingPlace(step.Id, step.Where), "z", "no 'zero z' stands before it in this holding, so on what and with what paper its cutters are touched off is not told"));
        }

        var machine = bench.Machine;
        if ((Named(step, cutter, shape) ?? TouchPlaces.OnTop(machine.Metal, cutter, shape, 0, pilot)) is not { } found)
        {
            bench.Cannot(step, $"There is no place on the metal where {cutter.Name} can be touched off.", "Touch off another way and write the moves out, or change the order.");
            return false;
        }

        var stepZ = bench.Work.Facts(Axis.Z).Step;
        var surface = Surface(found.At, found.Top);
        var set = bench.Work.Reading(
            Axis.Z,
            new($"Z set with {cutter.Name} on the {surface}", "height of the surface + paper", $"{bench.Figures.L(found.Top)} + {bench.Figures.L(bench.Paper)}", found.Top + bench.Paper, Work.Practice),
            Toward.Nearest,
            bench.Work.Rule("paper", bench.Paper, "the paper between cutter and metal"));
        var face = cutter.Kind == CutterKind.Saw ? "lower" : string.Empty;
        var at = new Place3(Round(found.At.X, Axis.X), Round(found.At.Y, Axis.Y), found.Top);
        bench.Free(Axis.X, bench.Reading(Axis.X, $"X over the {surface}", "a flat place at the top", bench.Figures.L(at.X), at.X, Toward.Nearest));
        bench.Free(Axis.Y, bench.Reading(Axis.Y, $"Y over the {surface}", "a flat place at the top", bench.Figures.L(at.Y), at.Y, Toward.Nearest));
        var pinned = pilot is null ? string.Empty : ", its pilot in the hole";
        // The quill alone gives the depth from here on, or the knee alone.
        var knee = bench.KneeLocked ? string.Empty
            : bench.Shop.Mill is { DepthByQuill: false } ? ", the quill locked: the depth is the knee's from here on"
            : ", the knee (where there is one) locked where the quill reaches all";
        bench.KneeLocked = true;
        machine.Touch(new()
        {
            TouchOff = new() { Axis = Axis.Z, On = "metal", Surface = surface, At = at, With = cutter.Name, Paper = bench.Paper, Face = face, Way = bench.Way(Axis.Z, -1), SetTo = set.Result },
            Says = $"Spindle stopped{(machine.HasCut ? ", burrs off" : string.Empty)}{knee}. Touch {(face.Length > 0 ? "the lower face of " : string.Empty)}{cutter.Name} off on paper on the {surface}{pinned}, at X {bench.Figures.R(at.X, bench.Work.Facts(Axis.X).Step)}, Y {bench.Figures.R(at.Y, bench.Work.Facts(Axis.Y).Step)}: set Z {bench.Figures.R(set.Result, stepZ)}.",
            Working = bench.Show(set),
        });
        bench.Up();
        return true;
    }

    // On the face a zero names, where it is cut and free; a caution, and null, where it is not.
    private (Point2 At, double Top)? Named(Step step, Cutter cutter, CutterShape shape)
    {
        if (step is not ZeroStep { On: ZeroOn.FeatureTop, Feature: { } name } || bench.Plan.Find(name) is not { } f)
        {
            return null;
        }

        var height = f.Feature.IsCut ? f.Low : f.High;
        var found = TouchPlaces.OnFace(bench.Machine.Metal, cutter, shape, 0, (p, top) => Math.Abs(top - height) < Cut && f.Outlines.Any(o => o.Contains(p)));
        if (found is null)
        {
            bench.Say(FindingCatalogue.ZeroElsewhere(new FindingPlace(step.Id, step.Where), name, cutter.Name));
        }

        return found;
    }

    private double Round(double value, Axis axis) => Rounding.ToStep(value, bench.Work.Facts(axis).Step, Toward.Nearest);

    // The surface in words: a feature's top where its own sides stand already, else the bar's, faced or raw.
    private string Surface(Point2 p, double top)
    {
        var drawn = bench.Drawing.Features.Where(f => !f.IsCut).Select(bench.Plan.Of).OfType<PlanFeature>().Where(f => Math.Abs(f.High - top) < 1e-6).ToList();
        foreach (var f in drawn.Where(f => f.Outlines.Any(o => o.Distance(p) < bench.Radius) && Stands(f, top)))
        {
            return f.Feature.Name == "top" || f.Feature.Name.EndsWith(" top", StringComparison.Ordinal) ? "upper face of " + f.Feature.Name : f.Feature.Name + " top";
        }

        return drawn.Count > 0 ? "bar's faced top" : Math.Abs(bench.Metal.Box(0).Max.Z - top) < 1e-6 ? "bar top" : "top";
    }

    // Whether the metal ends, just below the top, where the feature does: most of the places a little outside it are bare.
    private bool Stands(PlanFeature f, double top)
    {
        var bare = 0;
        var all = 0;
        foreach (var (outline, edge) in f.Outlines.SelectMany(o => o.Edges.Select(e => (o, e))))
        {
            for (var i = 0; i < 6; i++)
            {
                var share = (i + 0.5) / 6;
                var on = edge.IsArc
                    ? Plane.Polar(edge.Centre, edge.Radius, Plane.Angle(edge.Centre, edge.From) + (edge.Sweep * share))
                    : new Point2(edge.From.X + ((edge.To.X - edge.From.X) * share), edge.From.Y + ((edge.To.Y - edge.From.Y) * share));
                var off = edge.IsArc
                    ? Plane.Polar(edge.Centre, edge.Radius + (edge.Counterclockwise ? 0.5 : -0.5), Plane.Angle(edge.Centre, on))
                    : new Point2(on.X + (0.5 * edge.Normal.X), on.Y + (0.5 * edge.Normal.Y));
                if (outline.Distance(off) < 0.25)
                {
                    continue;
                }

                all++;
                bare += bench.Metal.TopAt(off, 0) is { } met && met > top - 0.01 ? 0 : 1;
            }
        }

        return all > 0 && bare > 0.6 * all;
    }
}
