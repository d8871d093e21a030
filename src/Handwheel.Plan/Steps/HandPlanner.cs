using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// Work by hand, as far as metal is concerned. Part frame, as drawn from above.
internal static class HandPlanner
{
    internal static (HandLine Line, Handwork Event) Plan(AimedDrawing drawing, Shop shop, HandStep step, Point3? web)
    {
        var cutter = step.Cutter is null ? null : shop.Cutters.GetValueOrDefault(step.Cutter);
        var feature = drawing.Find(step.Feature);
        return step.Work switch
        {
            HandWork.Press when feature is not null && cutter is not null => Press(drawing, step, feature, cutter),
            HandWork.Run when cutter is not null => Run(drawing, step, feature ?? Fits(drawing, cutter), cutter),
            HandWork.BreakWeb => (Line(step, "Bend the part off along the web, then file the stub down to the line.", "No stub stands proud of the flank."), Hand(step, "break web", web)),
            HandWork.Rub => (Line(step, step.Text + ": flat, on a plate, till it measures.", step.Size is null ? string.Empty : $"micrometer: {step.Size}"), Rub(drawing, step)),
            HandWork.File => (Line(step, step.Text, string.Empty), Rub(drawing, step) with { Work = "file" }),
            HandWork.BreakEdges => (Line(step, step.Text, string.Empty), Hand(step, "break edges", null)),
            _ => (Line(step, step.Text, string.Empty), Hand(step, step.Work == HandWork.Tap ? "tap" : "other", null)),
        };
    }

    private static HandLine Line(HandStep step, string says, string check, params Working[] workings) => new() { Says = says, Check = check, Workings = workings, Remark = step.Text };

    private static Handwork Hand(HandStep step, string work, Point3? at) => new() { Work = work, Cutter = step.Cutter, Feature = step.Feature ?? step.Face, At = at is { } p ? Placement.ToPlace(p) : default };

    private static (HandLine Line, Handwork Event) Press(AimedDrawing drawing, HandStep step, Feature feature, Cutter cutter)
    {
        var c = drawing.CentreOf(feature);
        var deep = feature.To.Middle - feature.From.Middle;
        var turn = feature.Shape is PolygonShape p ? p.Turn * Plane.ToDegrees : 0;
        var says = $"{step.Text}: a press, not the quill; square it first, press in one push without turning.";
        return (Line(step, says, string.Empty), Hand(step, "press", new(c.X, c.Y, feature.To.Middle)) with { Direction = new(0, 0, -1), Depth = deep, Turn = turn });
    }

    private static (HandLine Line, Handwork Event) Run(AimedDrawing drawing, HandStep step, Feature? feature, Cutter cutter)
    {
        var c = feature is null ? new Point2(0, 0) : drawing.CentreOf(feature);
        var solids = drawing.Features.Where(f => !f.IsCut && f.Places.Any(p => drawing.Outline(f, p).Contains(c))).ToList();
        var top = solids.Select(f => f.To.Middle).DefaultIfEmpty(0).Max();
        var under = solids.Select(f => f.From.Middle).DefaultIfEmpty(0).Min();
        var deep = top - under + Desk.Past + HolePlanner.PointLength(cutter);
        return (Line(step, step.Text + ", by hand or in the drill press.", string.Empty), Hand(step, "run", new(c.X, c.Y, top)) with { Direction = new(0, 0, -1), Depth = deep });
    }

    private static Feature? Fits(AimedDrawing drawing, Cutter cutter) => drawing.Features.Where(f => f.IsCut && AimedDrawing.RadiusOf(f) is not null)
        .MinBy(f => Math.Abs((2 * (AimedDrawing.RadiusOf(f) ?? 0)) - cutter.TrueAcross));

    // A face rubbed: the underside or top of the feature whose size it is brought to.
    private static Handwork Rub(AimedDrawing drawing, HandStep step)
    {
        var size = step.Size is null ? null : drawing.SizeNamed(step.Size);
        var feature = drawing.Find(step.Feature) ?? drawing.Find(size?.Feature) ?? drawing.Features.FirstOrDefault(f => !f.IsCut);
        var underside = step.Face is null || step.Face.Contains("under", StringComparison.Ordinal);
        var c = feature is null ? new Point2(0, 0) : Middle(drawing.Outline(feature, feature.Places[0]));
        var z = feature is null ? 0 : underside ? feature.From.Middle : feature.To.Middle;
        return Hand(step, "rub", new(c.X, c.Y, z)) with { Direction = new(0, 0, underside ? -1 : 1), Depth = step.Amount?.Value ?? 0.5, Feature = feature?.Name };
    }

    private static Point2 Middle(PlanOutline outline)
    {
        var (least, most) = outline.Extent();
        return new((least.X + most.X) / 2, (least.Y + most.Y) / 2);
    }
}
