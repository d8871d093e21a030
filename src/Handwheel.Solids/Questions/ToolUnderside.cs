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

    private static double Of(Slab s, double radius)
    {
        if (radius > s.GreatestRadius || radius < Math.Min(s.Inner0, s.Inner1))
        {
            return double.PositiveInfinity;
        }

        if (radius <= s.R0)
        {
            return s.Z0;
        }

        if (!s.IsTorus && s.C != -1)
        {
            return s.Z0 + ((s.Z1 - s.Z0) * ((radius - s.R0) / (s.R1 - s.R0)));
        }

        var e = radius - s.CentreRadius;
        var h = Math.Sqrt(Math.Max(0, (s.ArcRadius - e) * (s.ArcRadius + e)));
        return s.Bulges ? s.CentreZ - h : s.CentreZ + h;
    }
}
