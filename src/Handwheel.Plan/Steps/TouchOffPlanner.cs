using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// Z by cutter and paper on what then is the top: a place is looked for where the cutter meets the highest metal well away from any edge.
internal static class TouchOffPlanner
{
    internal static void Touch(Desk desk, PlanFeature? on, Jobs.Steps.ZeroStep? step)
    {
        var cutter = desk.Recorder.Cutter!;
        var (place, top) = Spot(desk, on);
        var at = Stand(desk, cutter, place);
        var paper = step?.Size?.Value ?? desk.Shop.Gauges.Values.Where(g => g.Kind == "paper" && g.Size > 0).Select(g => g.Size).DefaultIfEmpty(0.05).First();
        var f = desk.Work.Figures;
        var set = desk.Work.Reading(
            Axis.Z,
            new("Z set", "height of the face touched + paper", $"{f.L(top)} + {f.L(paper)}", top + paper, Work.Practice),
            Toward.Nearest,
            step?.Size is { } typed ? desk.Work.Typed("paper", typed) : desk.Work.Rule("paper", paper, "the shop's paper"),
            desk.Work.Rule("face", top, on is null ? "what then is the top" : $"top of {on.Feature.Name}"));
        var words = on is not null ? on.Feature.Name + " top" : top >= desk.Top - 1e-6 ? "bar top" : "top";
        desk.Recorder.Go(Axis.X, desk.Rule(Axis.X, at.X, "X over the face touched", "well inside it"));
        desk.Recorder.Go(Axis.Y, desk.Rule(Axis.Y, at.Y, "Y over the face touched", "well inside it"));
        desk.Recorder.Touch(
            new()
            {
                Axis = Axis.Z,
                On = "metal",
                Surface = words,
                At = new(at.X, at.Y, top),
                With = cutter.Name,
                Paper = paper,
                Face = cutter.Kind == CutterKind.Saw ? "lower" : string.Empty,
                SetTo = set.Result,
            },
            $"{cutter.Name} in, {f.L(cutter.Out)} out, spindle off; paper {f.L(paper)} on the {words}",
            set);
        desk.Show(set);
        desk.Up();
    }

    // The highest metal's widest place: the candidate furthest from any that is lower.
    private static (Point2 Place, double Top) Spot(Desk desk, PlanFeature? on)
    {
        var points = desk.Metal.Between(desk.Plan, desk.Plan.Least.Z, desk.Plan.Most.Z)
            .Where(p => on is null || on.Outline.Contains(p))
            .Select(p => (P: p, Z: desk.Metal.TopAt(desk.Plan, p))).ToList();
        var top = points.Max(p => p.Z);
        var high = points.Where(p => p.Z > top - 1e-6).Select(p => p.P).ToList();
        var low = points.Where(p => p.Z <= top - 1e-6).Select(p => p.P).ToList();
        var best = high[0];
        var room = -1.0;
        foreach (var p in high.Where((_, i) => high.Count < 800 || i % 4 == 0))
        {
            var edge = Math.Min(Math.Min(p.X - desk.Plan.Least.X, desk.Plan.Most.X - p.X), Math.Min(p.Y - desk.Plan.Least.Y, desk.Plan.Most.Y - p.Y));
            var d = low.Count == 0 ? edge : Math.Min(edge, low.Min(q => Plane.Distance(p, q)));
            d = on is null ? d : Math.Min(d, -on.Outline.Distance(p));
            if (d > room + 1e-9)
            {
                (best, room) = (p, d);
            }
        }

        return (new(Math.Round(best.X, 1), Math.Round(best.Y, 1)), top);
    }

    // A saw reaches over from the near side, so that its screw stays off the work.
    private static Point2 Stand(Desk desk, Cutter cutter, Point2 place)
    {
        if (cutter.Kind != CutterKind.Saw || cutter.ScrewBelow <= 0)
        {
            return place;
        }

        var away = desk.Plan.Least.Y - (Math.Max(cutter.ScrewAcross, cutter.Arbor) / 2) - 2;
        return new(place.X, Math.Floor(Math.Max(away, place.Y - (cutter.TrueAcross / 2) + 3)));
    }
}
