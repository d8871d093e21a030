using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// A feature as it lies in a holding at theta 0: its outline in plan at each of its places and the heights of its ends. Millimetres.
internal sealed record PlanFeature(Feature Feature, IReadOnlyList<PlanOutline> Outlines, IReadOnlyList<Point2> Centres, double Low, double High)
{
    internal PlanOutline Outline => Outlines[0];

    internal Point2 Centre => Centres[0];

    // Each of its places as a feature of its own.
    internal IEnumerable<PlanFeature> Each => Outlines.Select((o, i) => this with { Outlines = [o], Centres = [Centres[i]] });
}
