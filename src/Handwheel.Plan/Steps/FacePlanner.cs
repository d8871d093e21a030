using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// Rows along X over the stock's width; fed so that each row cuts conventional; stopped short of what is to be kept clear of.
internal static class FacePlanner
{
    internal static void Plan(Desk desk, FaceStep step, Cutter cutter)
    {
        desk.Take(cutter);
        var r = cutter.TrueAcross / 2;
        var towardsMinus = FromRight(desk, step);
        var rows = Rows(desk, cutter, towardsMinus);
        var top = TopOf(desk);
        var to = desk.Plan.Height(step.To.Value) + (step.Allow?.Value ?? 0);
        var start = Start(desk, cutter, towardsMinus);
        var depths = desk.Depths(top, to, new(step.To, step.PerPass));
        desk.Show(start);
        foreach (var row in rows)
        {
            var stop = Stop(desk, step, cutter, row.Result, r, towardsMinus);
            desk.Show(row);
            desk.Show(stop);
            desk.Up();
            desk.Recorder.Go(Axis.X, start);
            desk.Recorder.Go(Axis.Y, row);
            desk.Recorder.Passes(depths, false, "each pass", () =>
            {
                desk.Recorder.Go(Axis.X, stop, true, 0, string.Empty, Axis.Y, Axis.Z, Axis.T);
                desk.Recorder.Go(Axis.X, start, false, 0, "back through its own slot");
            });
            desk.Up();
        }
    }

    private static double TopOf(Desk desk) => desk.Metal.Between(desk.Plan, desk.Plan.Least.Z, desk.Plan.Most.Z).Where((_, i) => i % 7 == 0)
        .Select(p => desk.Metal.TopAt(desk.Plan, p)).DefaultIfEmpty(desk.Top).Max();

    // The open end: the bar's end on the side the feature runs to, seen from what is kept clear of.
    private static bool FromRight(Desk desk, FaceStep step)
    {
        if (step.From is "left" or "right")
        {
            return step.From == "right";
        }

        if (desk.Plan.Find(step.Feature) is not { } feature || step.Clear.Count == 0 || desk.Plan.Find(step.Clear[0].Feature) is not { } clear)
        {
            return true;
        }

        var (least, most) = feature.Outline.Extent();
        return (least.X + most.X) / 2 >= clear.Centre.X;
    }

    private static List<Working> Rows(Desk desk, Cutter cutter, bool towardsMinus)
    {
        double r = cutter.TrueAcross / 2, low = desk.Plan.Least.Y, high = desk.Plan.Most.Y, wide = high - low;
        var count = Math.Max(1, (int)Math.Ceiling((wide + 2) / (1.6 * r)));
        var outer = count == 1 ? 0 : Math.Ceiling(2 * ((wide / 2) + 1 - r)) / 2;
        var middle = (low + high) / 2;
        var rows = new List<Working>();
        for (var i = 0; i < count; i++)
        {
            var y = middle + (count == 1 ? 0 : outer - (2 * outer * i / (count - 1)));
            rows.Add(desk.Work.Reading(
                Axis.Y,
                new($"Y of row {Figures.Bare(i + 1)}", "rows as wide as the cutter that reach a little past both sides; in this order each cuts conventional", $"{Figures.Bare(count)} rows, {desk.Work.Figures.L(2 * r)} wide, over {desk.Work.Figures.L(wide)}: {desk.Work.Figures.L(y)}", y, Work.Practice),
                Toward.Nearest,
                desk.Work.Shop(cutter.Name, cutter.TrueAcross, $"shop: {cutter.Name}'s true size", cutter.Where),
                desk.Work.Rule("width", wide, "the stock's width as measured")));
        }

        if (!towardsMinus)
        {
            rows.Reverse();
        }

        return rows;
    }

    private static Working Start(Desk desk, Cutter cutter, bool towardsMinus)
    {
        var end = towardsMinus ? desk.Plan.Most.X : desk.Plan.Least.X;
        var f = desk.Work.Figures;
        var sign = towardsMinus ? "+" : "-";
        var x = end + ((towardsMinus ? 1 : -1) * ((cutter.TrueAcross / 2) + 2));
        return desk.Work.Reading(
            Axis.X,
            new("X clear of the bar's end", $"end {sign} {cutter.Name}/2 {sign} 2", $"{f.L(end)} {sign} {f.L(cutter.TrueAcross)}/2 {sign} 2", x, Work.Practice),
            towardsMinus ? Toward.Plus : Toward.Minus,
            desk.Work.Shop(cutter.Name, cutter.TrueAcross, $"shop: {cutter.Name}'s true size", cutter.Where),
            desk.Work.Rule("end", end, "the stock's end as it lies"));
    }

    private static Working Stop(Desk desk, FaceStep step, Cutter cutter, double y, double r, bool towardsMinus)
    {
        var f = desk.Work.Figures;
        foreach (var clear in step.Clear)
        {
            if (desk.Plan.Find(clear.Feature) is not { } keep || AimedDrawing.RadiusOf(keep.Feature) is not { } radius)
            {
                continue;
            }

            double reach = radius + r + clear.By.Value, off = y - keep.Centre.Y;
            if (Math.Abs(off) >= reach)
            {
                continue;
            }

            var x = keep.Centre.X + ((towardsMinus ? 1 : -1) * Math.Sqrt((reach * reach) - (off * off)));
            return desk.Work.Reading(
                Axis.X,
                new(
                    $"X clear of the {clear.Feature} at Y {f.R(y, desk.Setup.Axes.Y.Step)}",
                    $"sqrt(({clear.Feature}/2 + {cutter.Name}/2 + clear)^2 - y^2)",
                    $"sqrt(({f.L(2 * radius)}/2 + {f.L(cutter.TrueAcross)}/2 + {clear.By.Text})^2 - {f.L(Math.Abs(off))}^2)",
                    x,
                    Work.Geometry),
                towardsMinus ? Toward.Plus : Toward.Minus,
                Sizes.Across(desk, keep),
                desk.Work.Shop(cutter.Name, cutter.TrueAcross, $"shop: {cutter.Name}'s true size", cutter.Where),
                desk.Work.Typed("clear", clear.By));
        }

        return Start(desk, cutter, !towardsMinus);
    }
}
