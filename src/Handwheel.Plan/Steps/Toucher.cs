using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// Puts a cutter in and finds its Z: after every change, on what then is the top.
internal sealed class Toucher(Bench bench)
{
    // False where it cannot be; a finding is made.
    internal bool Use(Step step, double across = 0, Point2? pilot = null)
    {
        if (step.Cutter is not { } name || !bench.Shop.Cutters.TryGetValue(name, out var cutter))
        {
            bench.Cannot(step, "This step has no cutter of the shop.", "Name one after 'with'.");
            return false;
        }

        return Use(step, cutter, across, pilot);
    }

    internal bool Use(Step step, Cutter cutter, double across, Point2? pilot)
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
        var rpm = step.Speed is { } asked ? Asked(asked.Value) : bench.Speeds.Rpm(set);
        var feed = bench.Speeds.Feed(set, rpm);
        _ = bench.Show(rpm);
        _ = bench.Show(feed);
        bench.Machine.Put(cutter, across, rpm.Result, feed.Result, bench.Safe().Result + (25 * bench.Clear));
        return Touch(step, cutter, pilot);
    }

    private static Working Asked(double rpm) =>
        Work.Value(new("speed", "as typed", Figures.Bare(rpm), rpm, Work.Practice), "rpm");

    private bool Touch(Step step, Cutter cutter, Point2? pilot)
    {
        var machine = bench.Machine;
        if (TouchPlaces.OnTop(machine.Metal, cutter, machine.Shape!, 0, pilot) is not { } found)
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
        machine.Touch(new()
        {
            TouchOff = new() { Axis = Axis.Z, On = "metal", Surface = surface, At = at, With = cutter.Name, Paper = bench.Paper, Face = face, SetTo = set.Result },
            Says = $"Spindle stopped. Touch {(face.Length > 0 ? "the lower face of " : string.Empty)}{cutter.Name} off on paper on the {surface}{pinned}, at X {bench.Figures.R(at.X, bench.Work.Facts(Axis.X).Step)}, Y {bench.Figures.R(at.Y, bench.Work.Facts(Axis.Y).Step)}: set Z {bench.Figures.R(set.Result, stepZ)}.",
            Working = bench.Show(set),
        });
        bench.Up();
        return true;
    }

    private double Round(double value, Axis axis) => Rounding.ToStep(value, bench.Work.Facts(axis).Step, Toward.Nearest);

    // The surface in words: of the feature whose upper end it is, else of the bar.
    private string Surface(Point2 p, double top)
    {
        foreach (var f in bench.Drawing.Features.Where(f => !f.IsCut).Select(bench.Plan.Of))
        {
            if (f is not null && Math.Abs(f.High - top) < 1e-6 && f.Outlines.Any(o => o.Distance(p) < bench.Radius))
            {
                return f.Feature.Name + " top";
            }
        }

        return Math.Abs(bench.Metal.Box(0).Max.Z - top) < 1e-6 ? "bar top" : "top";
    }
}
