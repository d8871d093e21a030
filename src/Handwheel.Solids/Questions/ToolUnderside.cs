using Handwheel.Solids.Cutters;

namespace Handwheel.Solids.Questions;

// The lowest height at which a cutter reaches a distance from its axis.
internal static class ToolUnderside
{
    internal static double At(CutterShape cutter, double radius, bool cuttingOnly)
    {
        var least = double.PositiveInfinity;
        foreach (var slab in cuttingOnly ? cutter.Cutting : cutter.Whole)
        {
            least = Math.Min(least, Of(slab, radius));
        }

        return least;
    }

    // Outer and inner radius only grow or only shrink over a layer: each holds the radius on one stretch of heights.
    private static double Of(Slab s, double radius)
    {
        var (low, high) = Beyond(s, radius);
        if (s.IsHollow)
        {
            var (from, to) = OutOfHole(s, radius);
            (low, high) = (Math.Max(low, from), Math.Min(high, to));
        }

        return low <= high ? low : double.PositiveInfinity;
    }

    // Heights at which the outer radius is at least a radius.
    private static (double Low, double High) Beyond(Slab s, double radius)
    {
        if (radius > s.GreatestRadius)
        {
            return (1, 0);
        }

        if (radius <= Math.Min(s.R0, s.R1))
        {
            return (s.Z0, s.Z1);
        }

        double z;
        if (!s.IsTorus && s.C != -1)
        {
            z = s.Z0 + ((s.Z1 - s.Z0) * ((radius - s.R0) / (s.R1 - s.R0)));
        }
        else
        {
            z = OnArc(s, s.CentreZ, s.ArcRadius, radius - s.CentreRadius);
        }

        return s.R1 > s.R0 ? (z, s.Z1) : (s.Z0, z);
    }

    // Heights at which the inner radius is at most a radius.
    private static (double Low, double High) OutOfHole(Slab s, double radius)
    {
        if (radius < Math.Min(s.Inner0, s.Inner1))
        {
            return (1, 0);
        }

        if (radius >= Math.Max(s.Inner0, s.Inner1))
        {
            return (s.Z0, s.Z1);
        }

        var z = s.InnerIsArc
            ? OnArc(s, s.InnerCentreZ, s.InnerArcRadius, radius - s.InnerCentreRadius)
            : s.Z0 + ((s.Z1 - s.Z0) * ((radius - s.Inner0) / (s.Inner1 - s.Inner0)));
        return s.Inner1 > s.Inner0 ? (s.Z0, z) : (z, s.Z1);
    }

    // The height, on the layer's side of the centre, at which an arc is a distance aside of it.
    private static double OnArc(Slab s, double centre, double radius, double aside)
    {
        var h = Math.Sqrt(Math.Max(0, (radius - aside) * (radius + aside)));
        return (s.Z0 + s.Z1) / 2 < centre ? centre - h : centre + h;
    }
}
