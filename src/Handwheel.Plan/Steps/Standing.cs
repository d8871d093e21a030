using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// Whether a drawn feature stands on the metal yet, so that it can be swept, pinned or felt for.
internal static class Standing
{
    // How far to each side of its edge it is looked for, and how much higher the metal must stand on one side to be felt, millimetres.
    private const double Beside = 1;
    private const double Felt = 0.05;

    internal static bool Stands(HeldMetal metal, PlanFeature f)
    {
        var by = Math.Min(Beside, Radius(f.Outline) / 2);
        List<bool> steps = [];
        foreach (var (at, outward) in Places(f.Outline))
        {
            Point2 inside = new(at.X - (by * outward.X), at.Y - (by * outward.Y)), outside = new(at.X + (by * outward.X), at.Y + (by * outward.Y));
            var (high, low) = f.Feature.IsCut ? (outside, inside) : (inside, outside);
            steps.Add(metal.TopAt(high, 0) is { } top && !(metal.TopAt(low, 0) > top - Felt));
        }

        // A boss may run into its neighbour on one side, a hole may break out of the work.
        return steps.Count(s => s) * 3 >= steps.Count;
    }

    private static double Radius(PlanOutline outline)
    {
        var (least, most) = outline.Extent();
        return Math.Min(most.X - least.X, most.Y - least.Y) / 2;
    }

    private static IEnumerable<(Point2 At, Point2 Outward)> Places(PlanOutline outline)
    {
        foreach (var e in outline.Edges)
        {
            for (var i = 1; i <= 9; i += 2)
            {
                if (e.IsArc)
                {
                    var a = Plane.Angle(e.Centre, e.From) + (e.Sweep * i / 10);
                    var way = Plane.Polar(new(0, 0), e.Counterclockwise ? 1 : -1, a);
                    yield return (Plane.Polar(e.Centre, e.Radius, a), way);
                }
                else
                {
                    yield return (new(e.From.X + ((e.To.X - e.From.X) * i / 10), e.From.Y + ((e.To.Y - e.From.Y) * i / 10)), e.Normal);
                }
            }
        }
    }
}
