using Handwheel.Solids.Cutters;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Cuts;

// Signed distances in the plane of a profile that never claim too much.
internal static class SlabDistance
{
    internal static double OfStack(ReadOnlySpan<Slab> slabs, double near, double far, double z)
    {
        var least = double.PositiveInfinity;
        foreach (var slab in slabs)
        {
            least = Math.Min(least, Of(slab, near, far, z));
        }

        return least;
    }

    // The least over a range of heights, no place nearer to the path than near; holes are not counted, so it only claims less.
    internal static double LeastOfStack(ReadOnlySpan<Slab> slabs, double near, double low, double high)
    {
        var least = double.PositiveInfinity;
        foreach (var s in slabs)
        {
            var side = LeastSide(s, near, low, high);
            var ends = Math.Max(s.Z0 - high, low - s.Z1);
            least = Math.Min(least, s.R0 == s.R1 && !s.IsTorus ? Solid.Corner(side, ends) : Math.Max(side, ends));
        }

        return least;
    }

    private static double LeastSide(Slab s, double near, double low, double high)
    {
        if (s.IsTorus || s.C == -1)
        {
            var e = near - s.CentreRadius;
            double aside = Math.Max(0, Math.Max(low - s.CentreZ, s.CentreZ - high)), most = Math.Max(Math.Abs(low - s.CentreZ), Math.Abs(high - s.CentreZ));
            return s.Bulges
                ? Math.Sqrt((Math.Max(0, e) * Math.Max(0, e)) + (aside * aside)) - s.ArcRadius
                : s.ArcRadius - Math.Sqrt((Math.Min(0, e) * Math.Min(0, e)) + (most * most));
        }

        // A cone has no side beyond its ends, however far a plunge takes the range of heights.
        return Math.Min(Side(s, near, Math.Clamp(low, s.Z0, s.Z1)), Side(s, near, Math.Clamp(high, s.Z0, s.Z1)));
    }

    internal static double Of(Slab s, double near, double far, double z)
    {
        var ends = Math.Max(s.Z0 - z, z - s.Z1);
        var side = Side(s, near, z);
        var d = s.R0 == s.R1 && !s.IsTorus ? Solid.Corner(side, ends) : Math.Max(side, ends);
        if (!s.IsHollow)
        {
            return d;
        }

        return Math.Max(d, Hole(s, far, z));
    }

    // How far within the hole, at most.
    private static double Hole(Slab s, double far, double z)
    {
        if (s.InnerIsArc)
        {
            double e = far - s.InnerCentreRadius, h = z - s.InnerCentreZ;
            var aside = s.InnerBulges ? Math.Max(0, e) : Math.Min(0, e);
            var away = Math.Sqrt((aside * aside) + (h * h));
            return s.InnerBulges ? s.InnerArcRadius - away : away - s.InnerArcRadius;
        }

        var k = (s.Inner1 - s.Inner0) / (s.Z1 - s.Z0);
        return (s.Inner0 + (k * (z - s.Z0)) - far) / Math.Sqrt(1 + (k * k));
    }

    private static double Side(Slab s, double rho, double z)
    {
        if (s.IsTorus || s.C == -1)
        {
            var e = rho - s.CentreRadius;
            var h = z - s.CentreZ;
            if (s.Bulges)
            {
                var over = Math.Max(0, e);
                return Math.Sqrt((over * over) + (h * h)) - s.ArcRadius;
            }

            var under = Math.Min(0, e);
            return s.ArcRadius - Math.Sqrt((under * under) + (h * h));
        }

        var k = (s.R1 - s.R0) / (s.Z1 - s.Z0);
        return (rho - (s.R0 + (k * (z - s.Z0)))) / Math.Sqrt(1 + (k * k));
    }
}
