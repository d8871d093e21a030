using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Trade.Geometry;

namespace Handwheel.Plan.Steps;

// Holes at all their places: the place by X and Y, the depth by what the cutter is.
internal sealed class HoleMaking(Bench bench, Toucher toucher)
{
    internal void Plan(HoleStep step)
    {
        var holes = Holes(step);
        if (step.Allow is { Value: > 0 })
        {
            bench.Cannot(step, "A hole with metal left for a last pass is bored, not drilled or reamed to it.", $"Write 'bore {string.Join(", ", step.Features)} with' a boring bar, 'allow {bench.Figures.L(step.Allow.Value)}', or take the smaller cutter.");
            return;
        }

        if (step.Work == HoleWork.Drill && holes.Count > 0 && bench.Shop.Cutters.TryGetValue(step.Cutter ?? string.Empty, out var drill))
        {
            bench.Straighten();
            bench.Speeds.Bored = Math.Min(There(step, holes, drill.TrueAcross, Point.Depth(drill.TrueAcross, drill.PointAngle, drill.Tip)) ?? 0, drill.TrueAcross);
        }

        if (holes.Count > 0 && toucher.Use(step, 0, Pilot(step, holes[0])))
        {
            bench.Straighten();
            EachPlace(step, holes);
        }

        bench.Speeds.Bored = 0;
    }

    // The holes of a step that stand upright here; a finding for each that does not.
    internal IReadOnlyList<PlanFeature> Holes(HoleStep step)
    {
        var features = step.Features.Select(n => (Name: n, Plan: bench.Plan.Find(n))).ToList();
        foreach (var missing in features.Where(f => f.Plan is null))
        {
            bench.Cannot(step, $"'{missing.Name}' does not stand upright in this holding.", "Hold the work so that it opens upwards.");
        }

        return [.. features.Select(f => f.Plan).OfType<PlanFeature>()];
    }

    internal void EachPlace(HoleStep step, IReadOnlyList<PlanFeature> holes)
    {
        foreach (var hole in holes)
        {
            for (var i = 0; i < hole.Centres.Count; i++)
            {
                At(step, hole, hole.Centres[i], i);
            }
        }
    }

    // The narrowest of the holes that are there, across, down to a drill's tip so far below the full diameter; null where one is solid.
    internal double? There(HoleStep step, IReadOnlyList<PlanFeature> holes, double across, double below = 0)
    {
        double? least = null;
        foreach (var (hole, centre) in holes.SelectMany(h => h.Centres.Select(c => (h, c))))
        {
            var floor = Full(step, hole, centre);
            var top = Math.Max(Around(centre, (across / 2) + 0.1) ?? hole.High, floor + 0.1);
            if (bench.Metal.HoleRadius(centre, below > 0 ? floor - below : floor + (0.1 * (top - floor)), top) is not { } radius)
            {
                return null;
            }

            least = Math.Min(least ?? (2 * radius), 2 * radius);
        }

        return least is { } found ? Math.Round(found, 6) : null;
    }

    // Height of the highest metal round a place.
    internal double? Around(Point2 centre, double radius) =>
        Enumerable.Range(0, 16).Select(i => bench.Metal.TopAt(Plane.Polar(centre, radius, i * Math.PI / 8), 0)).Max();

    // A pilot must hang in the hole where its cutter is touched off; a countersink's point would go down it.
    private Point2? Pilot(HoleStep step, PlanFeature hole) =>
        step is { Work: HoleWork.Counterbore, Cutter: { } name } && bench.Shop.Cutters.GetValueOrDefault(name) is { Tip: > 0 } ? hole.Centre : null;

    private void At(HoleStep step, PlanFeature hole, Point2 centre, int i)
    {
        var name = hole.Centres.Count > 1 ? $"{hole.Feature.Name} {Bench.Bare(i + 1)}" : hole.Feature.Name;
        var x = bench.Show(bench.Reading(Axis.X, $"X of {name}", "as drawn, at the middle of its limits", bench.Figures.L(centre.X), centre.X, Toward.Nearest));
        var y = bench.Show(bench.Reading(Axis.Y, $"Y of {name}", "as drawn, at the middle of its limits", bench.Figures.L(centre.Y), centre.Y, Toward.Nearest));
        bench.Up();
        bench.Free(Axis.X, x);
        bench.Free(Axis.Y, y);
        var z = bench.Show(Depth(step, hole, centre));
        if (step.Work == HoleWork.Drill && Pecks(step, centre, z) is { Count: > 1 } pecks)
        {
            bench.Machine.Passes(pecks, plunges: true, [new(Axis.Z, bench.Safe(), false) { Remark = "out, to clear the chips" }]);
        }
        else
        {
            bench.Machine.Go(new(Axis.Z, z, true) { Remark = Remark(step) });
        }

        bench.Up();
    }

    // The first peck three diameters deep, each further as deep as one, unless told (common practice, no source).
    private List<Working> Pecks(HoleStep step, Point2 centre, Working last)
    {
        var d = bench.Cutter!.TrueAcross;
        var (first, each) = step.Peck is { } told ? (told.Value, told.Value) : (3 * d, d);
        if (Met(centre, d / 2) is not { } top)
        {
            return [last];
        }

        List<Working> pecks = [];
        for (var z = top - first; z > last.Result + 1e-6 && pecks.Count < 500; z -= each)
        {
            pecks.Add(bench.Reading(Axis.Z, $"Z of peck {Bench.Bare(pecks.Count + 1)}", "where it meets metal - first peck - further pecks", pecks.Count == 0 ? $"{bench.Figures.L(top)} - {bench.Figures.L(first)}" : $"{bench.Figures.L(top)} - {bench.Figures.L(first)} - {Bench.Bare(pecks.Count)} x {bench.Figures.L(each)}", z, Toward.Plus));
        }

        pecks.Add(last);
        return pecks;
    }

    // Where a drill going down first meets metal: the highest under it, in the hole that is there or on a face cut lower; null where there is none.
    private double? Met(Point2 centre, double radius) => ((double[])[0, 0.5, 0.98])
        .SelectMany(share => Enumerable.Range(0, 16).Select(i => bench.Metal.TopAt(Plane.Polar(centre, share * radius, i * Math.PI / 8), 0))).Max();

    private static string Remark(HoleStep step) => step.Work switch
    {
        HoleWork.Ream => "slow and steady, in and out without stopping; cutting oil",
        HoleWork.Tap => "by hand, spindle as guide: half a turn on, a quarter back; cutting oil",
        HoleWork.Bore => "fine feed; at depth stop the spindle, tip turned to where its line does not show, and come out",
        HoleWork.Counterbore or HoleWork.Countersink => "slow, and dwell at depth",
        _ => string.Empty,
    };

    private Working Depth(HoleStep step, PlanFeature hole, Point2 centre) => step.Work switch
    {
        HoleWork.Spot => Spot(step, hole, centre),
        HoleWork.Drill => Tip(step, hole, centre, Point.Depth(bench.Cutter!.TrueAcross, bench.Cutter.PointAngle, bench.Cutter.Tip), "the drill's point, diameter/2 / tan(angle/2)"),
        HoleWork.Ream => Tip(step, hole, centre, bench.Cutter!.Lead, "the reamer's lead"),
        HoleWork.Tap => Tip(step, hole, centre, bench.Cutter!.Lead, "the tap's lead"),
        HoleWork.Countersink => Sunk(step, hole, centre),
        _ => Tip(step, hole, centre, 0, string.Empty),
    };

    // Depth to full diameter, and what the cutter has below it.
    private Working Tip(HoleStep step, PlanFeature hole, Point2 centre, double below, string why)
    {
        var full = Full(step, hole, centre);
        var figures = bench.Figures;
        var name = bench.Cutter!.Name;
        return bench.Reading(
            Axis.Z,
            $"Z of {name} in {hole.Feature.Name}",
            below > 0 ? $"full diameter - {why}" : "the floor",
            below > 0 ? $"{figures.L(full)} - {figures.L(below)}" : figures.L(full),
            full - below,
            Toward.Plus,
            bench.CutterInput);
    }

    internal double Full(HoleStep step, PlanFeature hole, Point2 centre)
    {
        if (step.To is { } typed)
        {
            return bench.Plan.Height(typed.Value, hole.Feature.Name);
        }

        return step.Through || hole.Feature.Through || hole.Feature.Shape is null ? Under(hole, centre) - bench.Past : hole.Low;
    }

    // The underside of the drawing's solid at a place.
    private double Under(PlanFeature hole, Point2 centre) =>
        bench.Drawing.Features.Where(f => !f.IsCut).Select(bench.Plan.Of).OfType<PlanFeature>()
            .Where(f => f.Outlines.Any(o => o.Distance(centre) < 1e-6)).Select(f => (double?)f.Low).Min() ?? hole.Low;

    // A spot goes to 0.8 of the smallest hole that follows.
    private Working Spot(HoleStep step, PlanFeature hole, Point2 centre)
    {
        var later = bench.Holding.Steps.SkipWhile(s => !ReferenceEquals(s, step)).OfType<HoleStep>()
            .Where(s => s.Work is HoleWork.Drill && s.Cutter is not null && s.Features.Any(n => bench.Plan.Find(n)?.Centres.Any(c => Plane.Distance(c, centre) < 1e-6) == true))
            .Select(s => bench.Shop.Cutters.GetValueOrDefault(s.Cutter!)?.TrueAcross).OfType<double>().DefaultIfEmpty(2 * (AimedDrawing.RadiusOf(hole.Feature) ?? 2)).Min();
        var across = step.ToAcross?.Value ?? (0.8 * later);
        return Cone(hole, centre, across, step.ToAcross is null ? "0.8 of the hole that follows" : "as typed", Toward.Plus);
    }

    private Working Sunk(HoleStep step, PlanFeature hole, Point2 centre) =>
        Cone(hole, centre, step.ToAcross?.Value ?? (2 * (AimedDrawing.RadiusOf(hole.Feature) ?? 2)), "the diameter at the face", Toward.Plus);

    private Working Cone(PlanFeature hole, Point2 centre, double across, string why, Toward toward)
    {
        var cutter = bench.Cutter!;
        across = Math.Min(across, cutter.TrueAcross);
        var angle = cutter.PointAngle > 0 ? cutter.PointAngle : Math.PI / 2;
        var top = Enumerable.Range(0, 16).Select(i => bench.Metal.TopAt(Plane.Polar(centre, (across / 2) + 0.05, i * Math.PI / 8), 0)).OfType<double>().DefaultIfEmpty(hole.High).Max();
        var rise = Point.Depth(across, angle, Math.Min(cutter.Tip, across));
        return bench.Reading(
            Axis.Z,
            $"Z of {cutter.Name} at {hole.Feature.Name}",
            "face - (diameter - tip)/2 / tan(angle/2)",
            $"{bench.Figures.L(top)} - ({bench.Figures.L(across)} - {bench.Figures.L(Math.Min(cutter.Tip, across))})/2 / tan({Figures.Deg(angle * Plane.ToDegrees / 2)} deg); {why}",
            top - rise,
            toward,
            bench.CutterInput);
    }
}
