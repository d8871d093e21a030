using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cutters;

/// <summary>One piece of a cutter's profile: its radius as a straight or circular function of height. Immutable.</summary>
public sealed record ProfilePiece
{
    private ProfilePiece()
    {
    }

    /// <summary>Lower end, mm above the cutter's lowest cutting point.</summary>
    public double Z0 { get; private init; }

    /// <summary>Upper end, mm.</summary>
    public double Z1 { get; private init; }

    /// <summary>Radius at the lower end, mm.</summary>
    public double Radius0 { get; private init; }

    /// <summary>Radius at the upper end, mm.</summary>
    public double Radius1 { get; private init; }

    /// <summary>Radius of a circular piece, mm; 0 for a straight one.</summary>
    public double ArcRadius { get; private init; }

    /// <summary>Distance of a circular piece's centre from the cutter's axis, mm.</summary>
    public double CentreRadius { get; private init; }

    /// <summary>Height of a circular piece's centre, mm.</summary>
    public double CentreZ { get; private init; }

    /// <summary>Whether a circular piece bulges outwards (a ball's) rather than inwards (a corner-rounding cutter's).</summary>
    public bool Bulges { get; private init; }

    /// <summary>Inner radius at the lower end of a hollow piece, mm; 0 when solid.</summary>
    public double Inner0 { get; private init; }

    /// <summary>Inner radius at the upper end of a hollow piece, mm; 0 when solid.</summary>
    public double Inner1 { get; private init; }

    /// <summary>Radius of a circular inner side, mm; 0 for a straight one.</summary>
    public double InnerArcRadius { get; private init; }

    /// <summary>Distance of a circular inner side's centre from the cutter's axis, mm.</summary>
    public double InnerCentreRadius { get; private init; }

    /// <summary>Height of a circular inner side's centre, mm.</summary>
    public double InnerCentreZ { get; private init; }

    /// <summary>Whether a circular inner side lies beyond its centre (a hole rounded out) rather than between axis and centre (a tooth's rounded nose).</summary>
    public bool InnerBulges { get; private init; }

    /// <summary>What the piece is part of.</summary>
    public CutterPart Part { get; private init; }

    /// <summary>Whether the piece removes metal.</summary>
    public bool Cuts { get; private init; }

    /// <summary>Whether the piece is circular.</summary>
    public bool IsArc => ArcRadius > 0;

    /// <summary>Whether the piece is hollow.</summary>
    public bool IsHollow => Inner0 > 0 || Inner1 > 0 || InnerArcRadius > 0;

    /// <summary>A straight piece: cylinder or cone.</summary>
    /// <param name="z0">Lower end, mm.</param>
    /// <param name="radius0">Radius there, mm.</param>
    /// <param name="z1">Upper end, mm.</param>
    /// <param name="radius1">Radius there, mm.</param>
    /// <param name="part">What it is part of.</param>
    /// <param name="cuts">Whether it removes metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">Ends out of order, or a negative radius, or both radii 0.</exception>
    public static ProfilePiece Straight(double z0, double radius0, double z1, double radius1, CutterPart part = CutterPart.Edge, bool cuts = true)
    {
        Demand.Ordered(z0, z1);
        Demand.NotNegative(radius0);
        Demand.NotNegative(radius1);
        Demand.Positive(Math.Max(radius0, radius1), nameof(radius1));
        return new() { Z0 = z0, Z1 = z1, Radius0 = radius0, Radius1 = radius1, Part = part, Cuts = cuts };
    }

    /// <summary>A circular piece, the arc's centre given in the plane of the profile.</summary>
    /// <param name="centreRadius">Distance of the centre from the axis, mm, not below 0.</param>
    /// <param name="centreZ">Height of the centre, mm.</param>
    /// <param name="arcRadius">Radius of the arc, mm.</param>
    /// <param name="z0">Lower end, mm.</param>
    /// <param name="z1">Upper end, mm.</param>
    /// <param name="bulges">True when the profile lies outside the centre, false when it lies between the axis and the centre.</param>
    /// <param name="part">What it is part of.</param>
    /// <param name="cuts">Whether it removes metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ends lie beyond the arc, or the arc reaches past the axis.</exception>
    public static ProfilePiece Round(
        double centreRadius, double centreZ, double arcRadius, double z0, double z1, bool bulges = true, CutterPart part = CutterPart.Edge, bool cuts = true)
    {
        Demand.NotNegative(centreRadius);
        Demand.Finite(centreZ);
        Demand.Positive(arcRadius);
        Demand.Ordered(z0, z1);
        if (z0 < centreZ - arcRadius - 1e-9 || z1 > centreZ + arcRadius + 1e-9)
        {
            throw new ArgumentOutOfRangeException(nameof(z1), z1, "The ends must lie on the arc.");
        }

        if (!bulges && centreRadius < arcRadius)
        {
            throw new ArgumentOutOfRangeException(nameof(arcRadius), arcRadius, "A hollow arc must not reach past the axis.");
        }

        var piece = new ProfilePiece
        {
            Z0 = z0,
            Z1 = z1,
            ArcRadius = arcRadius,
            CentreRadius = centreRadius,
            CentreZ = centreZ,
            Bulges = bulges,
            Part = part,
            Cuts = cuts,
        };
        return piece with { Radius0 = piece.RadiusAt(z0), Radius1 = piece.RadiusAt(z1) };
    }

    /// <summary>The same piece with a hole along the axis.</summary>
    /// <param name="inner0">Inner radius at the lower end, mm.</param>
    /// <param name="inner1">Inner radius at the upper end, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">An inner radius is negative or greater than the outer one.</exception>
    public ProfilePiece Hollow(double inner0, double inner1)
    {
        Demand.NotNegative(inner0);
        Demand.NotNegative(inner1);
        if (inner0 > Radius0 || inner1 > Radius1 || (IsArc && Math.Max(inner0, inner1) > Math.Min(Radius0, Radius1)))
        {
            throw new ArgumentOutOfRangeException(nameof(inner1), inner1, "A hole is not wider than the piece round it.");
        }

        return this with { Inner0 = inner0, Inner1 = inner1, InnerArcRadius = 0 };
    }

    /// <summary>The same piece with a hole along the axis whose side is circular, the arc's centre given in the plane of the profile.</summary>
    /// <param name="centreRadius">Distance of the centre from the axis, mm, not below 0.</param>
    /// <param name="centreZ">Height of the centre, mm.</param>
    /// <param name="arcRadius">Radius of the arc, mm.</param>
    /// <param name="bulges">True when the side lies beyond the centre (a hole rounded out), false when between the axis and the centre (a rounded nose).</param>
    /// <exception cref="ArgumentOutOfRangeException">The ends of the piece lie beyond the arc, the arc reaches past the axis, or the hole is wider than the piece.</exception>
    public ProfilePiece HollowRound(double centreRadius, double centreZ, double arcRadius, bool bulges)
    {
        const int samples = 64;
        var arc = Round(centreRadius, centreZ, arcRadius, Z0, Z1, bulges);
        var piece = this with
        {
            Inner0 = arc.Radius0,
            Inner1 = arc.Radius1,
            InnerArcRadius = arcRadius,
            InnerCentreRadius = centreRadius,
            InnerCentreZ = centreZ,
            InnerBulges = bulges,
        };
        for (var i = 0; i <= samples; i++)
        {
            var z = Z0 + ((Z1 - Z0) * i / samples);
            if (piece.InnerAt(z) > RadiusAt(z) + 1e-9)
            {
                throw new ArgumentOutOfRangeException(nameof(arcRadius), arcRadius, "A hole is not wider than the piece round it.");
            }
        }

        return piece;
    }

    /// <summary>The same piece higher up.</summary>
    /// <param name="by">How much, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a number.</exception>
    public ProfilePiece Raised(double by)
    {
        Demand.Finite(by);
        return this with { Z0 = Z0 + by, Z1 = Z1 + by, CentreZ = CentreZ + by, InnerCentreZ = InnerCentreZ + by };
    }

    // Every outer radius changed alike, the hole kept.
    internal ProfilePiece Grown(double by)
    {
        var outer = IsArc ? Round(CentreRadius + by, CentreZ, ArcRadius, Z0, Z1, Bulges, Part) : Straight(Z0, Radius0 + by, Z1, Radius1 + by, Part);
        return !IsHollow ? outer
            : InnerArcRadius > 0 ? outer.HollowRound(InnerCentreRadius, InnerCentreZ, InnerArcRadius, InnerBulges) : outer.Hollow(Inner0, Inner1);
    }

    internal ProfilePiece StartingAt(double z0) => this with { Z0 = z0 };

    /// <summary>Outer radius at a height within the piece, mm.</summary>
    /// <param name="z">Height, mm.</param>
    public double RadiusAt(double z)
    {
        if (IsArc)
        {
            var h = z - CentreZ;
            var x = Math.Sqrt(Math.Max(0, (ArcRadius - h) * (ArcRadius + h)));
            return Bulges ? CentreRadius + x : CentreRadius - x;
        }

        return Radius0 + ((Radius1 - Radius0) * ((z - Z0) / (Z1 - Z0)));
    }

    /// <summary>Inner radius at a height within the piece, mm; 0 when solid.</summary>
    /// <param name="z">Height, mm.</param>
    public double InnerAt(double z)
    {
        if (InnerArcRadius == 0)
        {
            return Inner0 + ((Inner1 - Inner0) * ((z - Z0) / (Z1 - Z0)));
        }

        var h = z - InnerCentreZ;
        var x = Math.Sqrt(Math.Max(0, (InnerArcRadius - h) * (InnerArcRadius + h)));
        return InnerBulges ? InnerCentreRadius + x : InnerCentreRadius - x;
    }
}
