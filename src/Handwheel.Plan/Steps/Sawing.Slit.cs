using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// A slit of the drawing: the saw stands with its rim at the slit's bottom and is fed along it from end to end, once, or once along each face of a wider one.
internal sealed partial class Sawing
{
    // A saw so much thicker than its slit is no saw for it, millimetres; less is the limits' to judge.
    private const double Thicker = 0.1;

    private void Slit(SawStep step, string name, Cutter saw)
    {
        if (bench.Plan.Find(name) is not { Feature.IsCut: true } slit || !LiesLevel(slit))
        {
            bench.Cannot(step, $"'{name}' is no slit that lies level in this holding.", "Name a block cut away, and hold the work so that its narrow way is upright: a slit across X with 'right end up' or 'left end up', one across Y with 'front up' or 'back up'.");
            return;
        }

        var wide = slit.High - slit.Low;
        if (saw.Thick > wide + Thicker)
        {
            bench.Cannot(step, $"{saw.Name} is {bench.Figures.LU(saw.Thick)} thick, and '{name}' {bench.Figures.LU(wide)} wide.", "Take a saw no thicker than the slit.");
            return;
        }

        slits = true;
        var far = step.From is "near" or "left";
        var theta = Lay(step, slit);
        var turn = theta?.Result ?? 0;
        List<Point2> kerf = [.. Kerf(slit, turn, slit.Low, slit.High)];
        var over = bench.Show(Bottom(name, kerf, saw.TrueAcross / 2, far));
        bench.Up();
        if (theta is not null)
        {
            bench.Free(Jobs.Moves.Axis.T, theta);
        }

        var heights = Heights(name, slit, saw);
        for (var i = 0; i < heights.Count; i++)
        {
            Run(step, kerf, bench.Show(heights[i]), over, turn, far);
        }
    }

    // Its narrow way upright.
    private static bool LiesLevel(PlanFeature slit)
    {
        var (least, most) = slit.Outline.Extent();
        return slit.High - slit.Low < Math.Min(most.X - least.X, most.Y - least.Y);
    }

    // bottom of the slit - saw/2
    private Working Bottom(string name, List<Point2> kerf, double radius, bool far)
    {
        var edge = far ? kerf.Max(Over) : kerf.Min(Over);
        var sign = far ? "-" : "+";
        return bench.Reading(
            Side,
            $"{Side} of the saw",
            $"bottom of {name} {sign} saw/2",
            $"{bench.Figures.L(edge)} {sign} {bench.Figures.L(2 * radius)}/2",
            far ? edge - radius : edge + radius,
            far ? Toward.Minus : Toward.Plus,
            bench.CutterInput);
    }

    // The saw's lower face: in the slit's middle where it is as thick; else along the upper face first, then no more than 0.8 of its thickness lower each, to the lower.
    private List<Working> Heights(string name, PlanFeature slit, Cutter saw)
    {
        var (figures, wide) = (bench.Figures, slit.High - slit.Low);
        var input = bench.Work.Shop("saw", saw.Thick, $"shop: {saw.Name} is so thick", saw.Where);
        if (wide - saw.Thick < bench.Work.Facts(Jobs.Moves.Axis.Z).Step)
        {
            var middle = (slit.High + slit.Low) / 2;
            return [bench.Reading(Jobs.Moves.Axis.Z, "Z of the saw's lower face", $"middle of {name} - saw/2", $"{figures.L(middle)} - {figures.L(saw.Thick)}/2", middle - (saw.Thick / 2), Toward.Nearest, input)];
        }

        var rows = 1 + (int)Math.Ceiling(((wide - saw.Thick) / (0.8 * saw.Thick)) - 1e-9);
        return [.. Enumerable.Range(0, rows).Select(i =>
        {
            var z = slit.High - saw.Thick - ((wide - saw.Thick) * i / (rows - 1));
            return i == rows - 1
                ? bench.Reading(Jobs.Moves.Axis.Z, "Z of the saw's lower face, last", $"lower face of {name}", figures.L(slit.Low), slit.Low, Toward.Plus)
                : bench.Reading(Jobs.Moves.Axis.Z, i == 0 ? "Z of the saw's lower face" : $"Z of the saw's lower face, row {Bench.Bare(i + 1)}", i == 0 ? $"upper face of {name} - the saw" : "upper face - the saw - rows", i == 0 ? $"{figures.L(slit.High)} - {figures.L(saw.Thick)}" : figures.L(z), z, Toward.Minus, input);
        })];
    }
}
