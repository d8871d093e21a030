using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// zero x, y on rotary centre; zero z on a top; zero x or y on a side.
internal static class ZeroPlanner
{
    internal static void Plan(Desk desk, ZeroStep step, Cutter? next)
    {
        if (step.Axes.Contains('z', StringComparison.Ordinal))
        {
            if (next is not null)
            {
                desk.Put(next);
                TouchOffPlanner.Touch(desk, step.On == ZeroOn.FeatureTop ? desk.Plan.Find(step.Feature) : null, step);
            }

            return;
        }

        foreach (var axis in step.Axes.Select(c => c == 'x' ? Axis.X : Axis.Y))
        {
            Sideways(desk, step, axis);
        }

        if (desk.Turns)
        {
            var zero = desk.Rule(Axis.T, 0, "T set", "fixed jaw swept parallel to X");
            desk.Recorder.Touch(new() { Axis = Axis.T, On = "fixture", Surface = "fixed jaw", At = default, With = "indicator", SetTo = 0 }, "indicator along the fixed jaw till it stands still: set the rotary's dial to 0", zero);
        }
    }

    private static void Sideways(Desk desk, ZeroStep step, Axis axis)
    {
        var set = step.SetTo is { } typed ? desk.Work.Typed("set", typed) : desk.Work.Rule("set", 0, "the place named is the zero");
        var onRotary = step.OnRotaryCentre || step.On == ZeroOn.RotaryCentre;
        var minus = step.On is ZeroOn.LeftEnd or ZeroOn.NearSide;
        var side = IsSide(step.On);
        var half = side ? (step.Size?.Value ?? 10) / 2 : 0;
        var value = set.Value + (side ? (minus ? -half : half) : 0);
        var working = desk.Work.Reading(
            axis,
            new($"{axis} set", side ? "zero -+ half the finder" : "the place named is the zero", desk.Work.Figures.L(value), value, Work.Practice),
            Toward.Nearest,
            set);
        var words = Words(step, onRotary);
        desk.Recorder.Touch(
            new()
            {
                Axis = axis,
                On = onRotary ? "rotary centre" : side ? "metal" : "axis",
                Surface = words,
                At = side ? new((desk.Plan.Least.X + desk.Plan.Most.X) / 2, (desk.Plan.Least.Y + desk.Plan.Most.Y) / 2, desk.Plan.Most.Z - 3) : default,
                Towards = minus ? 1 : -1,
                With = side ? "finder" : step.By,
                Half = half,
                SetTo = working.Result,
            },
            onRotary ? "indicator in the spindle, swept by the rotary's own turn till it stands still" : $"{step.By} on the {words}",
            working);
    }

    private static bool IsSide(ZeroOn on) => on is ZeroOn.LeftEnd or ZeroOn.RightEnd or ZeroOn.NearSide or ZeroOn.FarSide;

    private static string Words(ZeroStep step, bool onRotary) => (onRotary, step.Feature) switch
    {
        (true, null) => "rotary centre",
        (true, { } on) => $"{on} on the rotary centre",
        (_, { } name) => name,
        _ => step.On.ToString().ToLowerInvariant(),
    };
}
