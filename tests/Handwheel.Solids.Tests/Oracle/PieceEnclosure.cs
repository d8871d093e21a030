using Handwheel.Solids.Cutters;

namespace Handwheel.Solids.Tests.Oracle;

/// <summary>The depth in one piece of a standing cutter, from the definition, over enclosures of the distance from its axis and of the height.</summary>
internal static class PieceEnclosure
{
    /// <summary>Over all the distances and heights.</summary>
    /// <param name="p">The piece.</param>
    /// <param name="near">Distance from the axis where it is nearest.</param>
    /// <param name="far">Distance where it is farthest; the same for a cutter that stands.</param>
    /// <param name="z">Height above the lowest cutting point.</param>
    public static Enclosure Inside(ProfilePiece p, Enclosure near, Enclosure far, Enclosure z)
    {
        var zc = z.Clamp(p.Z0, p.Z1);
        var depth = Enclosure.Min(Enclosure.Min(z - p.Z0, p.Z1 - z), Within(p, near, zc));
        return p.IsHollow ? Enclosure.Min(depth, Beyond(p, far, zc)) : depth;
    }

    private static Enclosure Within(ProfilePiece p, Enclosure rho, Enclosure z)
    {
        if (!p.IsArc)
        {
            Enclosure r0 = p.Radius0, z0 = p.Z0;
            return r0 + (((Enclosure)p.Radius1 - r0) * (z - z0) / ((Enclosure)p.Z1 - z0)) - rho;
        }

        Enclosure Across()
        {
            var x = ((Enclosure)p.ArcRadius).Square() - (z - p.CentreZ).Square();
            return (p.Bulges ? p.CentreRadius + x.Sqrt() : p.CentreRadius - x.Sqrt()) - rho;
        }

        Enclosure Along()
        {
            var off = Enclosure.Hypot(rho - p.CentreRadius, z - p.CentreZ);
            return p.Bulges ? p.ArcRadius - off : off - p.ArcRadius;
        }

        return Sides(p.Bulges, rho, p.CentreRadius, Across, Along);
    }

    private static Enclosure Beyond(ProfilePiece p, Enclosure rho, Enclosure z)
    {
        if (p.InnerArcRadius == 0)
        {
            Enclosure r0 = p.Inner0, z0 = p.Z0;
            return rho - (r0 + (((Enclosure)p.Inner1 - r0) * (z - z0) / ((Enclosure)p.Z1 - z0)));
        }

        Enclosure e = rho - p.InnerCentreRadius, h = z - p.InnerCentreZ, r = p.InnerArcRadius;
        Enclosure Across()
        {
            var x = (r.Square() - h.Square()).Sqrt();
            return e + (p.InnerBulges ? -x : x);
        }

        Enclosure Along() => p.InnerBulges ? Enclosure.Hypot(e, h) - r : r - Enclosure.Hypot(e, h);

        return Sides(p.InnerBulges, rho, p.InnerCentreRadius, Across, Along);
    }

    // One formula on the one side of the arc's centre, another on the other; both where the distance may be on either.
    private static Enclosure Sides(bool bulges, Enclosure rho, double centre, Func<Enclosure> across, Func<Enclosure> along)
    {
        var (allAcross, allAlong) = bulges ? (rho.Hi < centre, rho.Lo >= centre) : (rho.Lo > centre, rho.Hi <= centre);
        return allAcross ? across() : allAlong ? along() : Enclosure.Hull(across(), along());
    }
}
