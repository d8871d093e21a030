using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Trade.Geometry;

namespace Handwheel.Plan.Steps;

// Spot, drill, ream, counterbore, countersink and tap at each place of each feature.
internal static class HolePlanner
{
    internal static void Plan(Desk desk, HoleStep step, Cutter cutter)
    {
        desk.Take(cutter);
        foreach (var name in step.Features)
        {
            if (desk.Plan.Find(name) is not { } hole)
            {
                continue;
            }

            foreach (var place in hole.Centres)
            {
                At(desk, step, cutter, hole, place);
            }
        }

        if (step.Work == HoleWork.Drill && desk.Speeds.Metal.Name.Contains("brass", StringComparison.OrdinalIgnoreCase))
        {
            desk.Cautions.Add("Brass pulls a drill in. Stone a small flat on both lips first, and hold the quill back as it breaks through.");
        }
    }

    // Depth past full diameter at which a drill's or reamer's end stands.
    internal static double PointLength(Cutter cutter) => cutter.Kind switch
    {
        CutterKind.Drill => Point.Depth(cutter.TrueAcross, cutter.PointAngle),
        CutterKind.Reamer or CutterKind.Tap => cutter.Lead,
        _ => 0,
    };

    // Height of the solid's underside at a place of the plan.
    internal static double Under(Desk desk, Point2 place) => desk.Drawing.Features.Where(f => !f.IsCut)
        .Select(desk.Plan.Of).OfType<PlanFeature>().Where(f => f.Outlines.Any(o => o.Contains(place))).Select(f => f.Low).DefaultIfEmpty(desk.Plan.Least.Z).Min();

    private static void At(Desk desk, HoleStep step, Cutter cutter, PlanFeature hole, Point2 place)
    {
        var name = hole.Feature.Name;
        var x = Place(desk, Axis.X, place.X, name, hole);
        var y = Place(desk, Axis.Y, place.Y, name, hole);
        var z = step.Work is HoleWork.Spot or HoleWork.Countersink ? SpotDepth(desk, step, cutter, hole, place) : Tip(desk, step, cutter, hole, place);
        desk.Show(x);
        desk.Show(y);
        desk.Show(z);
        desk.Up();
        desk.Recorder.Go(Axis.X, x);
        desk.Recorder.Go(Axis.Y, y);
        var top = desk.Metal.TopAt(desk.Plan, new(place.X + (0.45 * cutter.TrueAcross), place.Y));
        var peck = step.Peck?.Value ?? (step.Work == HoleWork.Drill ? 3 * cutter.TrueAcross : double.PositiveInfinity);
        var deep = (double.IsFinite(top) ? top : desk.Top) - z.Result;
        var pecks = Math.Max(1, (int)Math.Ceiling((deep / peck) - 1e-6));
        if (pecks == 1)
        {
            desk.Recorder.Go(Axis.Z, z, true, 0, string.Empty, Axis.X, Axis.Y, Axis.T);
            desk.Up();
            return;
        }

        var depths = Enumerable.Range(1, pecks).Select(i => i == pecks ? z : desk.Work.Reading(
            Axis.Z,
            new($"Z of peck {Figures.Bare(i)}", "equal pecks of at most three diameters", $"{desk.Work.Figures.L(top)} - {Figures.Bare(i)} x {desk.Work.Figures.L(deep / pecks)}", top - (i * deep / pecks), Work.Practice),
            Toward.Plus,
            desk.Work.From("last depth", z))).ToList();
        desk.Recorder.Passes(depths, true, "each peck cuts, then clear the chips", desk.Up);
    }

    private static Working Place(Desk desk, Axis axis, double value, string name, PlanFeature hole) => desk.Work.Reading(
        axis,
        new($"{axis} of the {name}", "the drawing's place, from the zero", desk.Work.Figures.L(value), value, Work.Geometry),
        Toward.Nearest,
        new WorkingInput(name, value, desk.Work.Figures.L(value), InputKind.Aimed, $"where the {name} stands, every distance at the middle of its limits", hole.Feature.Where, null));

    private static Working SpotDepth(Desk desk, HoleStep step, Cutter cutter, PlanFeature hole, Point2 place)
    {
        var f = desk.Work.Figures;
        var next = Follows(desk, step, place);
        var across = step.ToAcross?.Value ?? (0.8 * (next?.TrueAcross ?? 2 * (AimedDrawing.RadiusOf(hole.Feature) ?? 1)));
        var top = desk.Metal.TopAt(desk.Plan, place);
        var deep = Point.Depth(across, cutter.PointAngle, cutter.Tip);
        return desk.Work.Reading(
            Axis.Z,
            new($"Z of the spot for the {hole.Feature.Name}", "top - (0.8 x smallest hole that follows)/2 / tan(point/2)", $"{f.L(top)} - {f.L(across)}/2 / tan({Figures.Deg(cutter.PointAngle * Plane.ToDegrees)}/2)", top - deep, Work.Geometry),
            Toward.Plus,
            next is null ? Sizes.Across(desk, hole) : desk.Work.Shop(next.Name, next.TrueAcross, $"shop: {next.Name}, the smallest that follows", next.Where),
            desk.Work.Shop(cutter.Name, cutter.TrueAcross, $"shop: {cutter.Name}'s point", cutter.Where));
    }

    private static Cutter? Follows(Desk desk, HoleStep step, Point2 place) => desk.Holding.Steps.OfType<HoleStep>()
        .SkipWhile(s => s.Id != step.Id).Skip(1)
        .Where(s => s.Work == HoleWork.Drill && s.Features.Any(n => desk.Plan.Find(n) is { } h && h.Centres.Any(c => Plane.Distance(c, place) < 1e-6)))
        .Select(s => s.Cutter is null ? null : desk.Shop.Cutters.GetValueOrDefault(s.Cutter)).OfType<Cutter>().MinBy(c => c.TrueAcross);

    private static Working Tip(Desk desk, HoleStep step, Cutter cutter, PlanFeature hole, Point2 place)
    {
        var f = desk.Work.Figures;
        var point = PointLength(cutter);
        var what = cutter.Kind == CutterKind.Drill ? "point" : "lead";
        var under = Under(desk, place);
        var full = step.To is { } to ? desk.Plan.Height(to.Value) : hole.Feature.Through || step.Through ? under - Desk.Past : hole.Low;
        WorkingInput input = step.To is { } typed
            ? desk.Work.Typed("depth to full diameter", typed)
            : desk.Work.Rule("full diameter", full, "0.5 past the solid at that place");
        var text = step.To is { } t ? t.Text : $"{f.L(under)} - {f.L(under - full)}";
        var point_ = desk.Work.Shop(cutter.Name, point, $"shop: {cutter.Name}'s {what}", cutter.Where);
        return desk.Work.Reading(
            Axis.Z,
            new($"Z of {cutter.Name}'s end in the {hole.Feature.Name}", $"depth to full diameter - {what}", $"{text} - {f.L(point)}", full - point, Work.Geometry),
            Toward.Plus,
            input,
            point_);
    }
}
