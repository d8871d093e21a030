using Handwheel.Solids.Cutters;

namespace Handwheel.Solids.Tests.Oracle;

/// <summary>The oracle's depth in a standing piece, in doubles: only to find where along a path or a turn the decimals must look.</summary>
internal static class RoughDepth
{
    public static double Inside(ProfilePiece p, double rho, double z, bool alongNormal = false)
    {
        double zc = Math.Clamp(z, p.Z0, p.Z1), ends = Math.Min(z - p.Z0, p.Z1 - z);
        var depth = Math.Min(ends, Within(p, rho, zc, alongNormal));
        return p.IsHollow ? Math.Min(depth, Beyond(p, rho, zc)) : depth;
    }

    private static double Within(ProfilePiece p, double rho, double z, bool alongNormal)
    {
        if (!p.IsArc)
        {
            var k = (p.Radius1 - p.Radius0) / (p.Z1 - p.Z0);
            return (p.Radius0 + (k * (z - p.Z0)) - rho) / (alongNormal ? Math.Sqrt(1 + (k * k)) : 1);
        }

        var h = z - p.CentreZ;
        if (p.Bulges ? rho < p.CentreRadius : rho > p.CentreRadius)
        {
            var x = Math.Sqrt(Math.Max(0, (p.ArcRadius * p.ArcRadius) - (h * h)));
            return (p.Bulges ? p.CentreRadius + x : p.CentreRadius - x) - rho;
        }

        var off = Hypot(rho - p.CentreRadius, h);
        return p.Bulges ? p.ArcRadius - off : off - p.ArcRadius;
    }

    private static double Beyond(ProfilePiece p, double rho, double z)
    {
        if (p.InnerArcRadius == 0)
        {
            return rho - (p.Inner0 + ((p.Inner1 - p.Inner0) * (z - p.Z0) / (p.Z1 - p.Z0)));
        }

        double e = rho - p.InnerCentreRadius, h = z - p.InnerCentreZ, r = p.InnerArcRadius;
        if (p.InnerBulges ? e < 0 : e > 0)
        {
            var x = Math.Sqrt(Math.Max(0, (r * r) - (h * h)));
            return e + (p.InnerBulges ? -x : x);
        }

        return p.InnerBulges ? Hypot(e, h) - r : r - Hypot(e, h);
    }

    private static double Hypot(double x, double y) => Math.Sqrt((x * x) + (y * y));
}
