using Handwheel.Plan.Setting;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// The rounded end of a feature about another: the arc of its own outline that is named after the other or has its centre there, else so much of the other's
// round as stands out of the outline. Plan of the holding at theta 0, millimetres.
internal static class RoundedEnd
{
    private const double Same = 1e-6;
    private const int Looks = 1440;

    // Null where no arc of the outline lies about the feature. The cutter's radius, with what it leaves, keeps it off a shoulder of the outline.
    internal static PlanEdge? Of(PlanOutline outline, PlanFeature about, double beside) =>
        Named(outline, about.Feature.Name) ?? Centred(outline, about.Centre)
        ?? (!about.Feature.IsCut && AimedDrawing.RadiusOf(about.Feature) is { } radius ? Standing(outline, about, radius, beside) : null);

    private static PlanEdge? Named(PlanOutline outline, string name) => First(outline.Edges.Where(e => e.IsArc && e.Name == name));

    private static PlanEdge? Centred(PlanOutline outline, Point2 centre) =>
        First(outline.Edges.Where(e => e.IsArc && e.Counterclockwise && Plane.Distance(e.Centre, centre) < Same).OrderByDescending(e => e.Radius).ThenByDescending(e => e.Length));

    private static PlanEdge? First(IEnumerable<PlanEdge> edges)
    {
        foreach (var edge in edges)
        {
            return edge;
        }

        return null;
    }

    // The longest run of the round along which a cutter beside it stays off the outline; its ends found to a billionth of a turn.
    private static PlanEdge? Standing(PlanOutline outline, PlanFeature round, double radius, double beside)
    {
        bool free(double a) => outline.Distance(Plane.Polar(round.Centre, radius + beside, a)) >= beside - Same && !outline.Contains(Plane.Polar(round.Centre, radius, a));
        double at(int i) => 2 * Math.PI * (i + 0.37) / Looks;
        var open = Enumerable.Range(0, Looks).Select(i => free(at(i))).ToArray();
        var (start, count) = Longest(open);
        if (count == 0 || count == Looks)
        {
            return null;
        }

        var from = Border(free, at(start), at(start - 1));
        var to = Border(free, at(start + count - 1), at(start + count));
        return new(Plane.Polar(round.Centre, radius, from), Plane.Polar(round.Centre, radius, to), round.Centre, radius, true, round.Feature.Name);
    }

    // The longest run of true round a circle of looks: its first and how many.
    private static (int Start, int Count) Longest(bool[] open)
    {
        var shut = Array.IndexOf(open, false);
        if (shut < 0)
        {
            return (0, open.Length);
        }

        (int Start, int Count) best = (0, 0), now = (0, 0);
        for (var i = 1; i <= open.Length; i++)
        {
            var k = (shut + i) % open.Length;
            now = !open[k] ? (0, 0) : now.Count == 0 ? (k, 1) : (now.Start, now.Count + 1);
            best = now.Count > best.Count ? now : best;
        }

        return best;
    }

    private static double Border(Func<double, bool> free, double inside, double outside)
    {
        for (var i = 0; i < 60; i++)
        {
            var middle = (inside + outside) / 2;
            (inside, outside) = free(middle) ? (middle, outside) : (inside, middle);
        }

        return inside;
    }
}
