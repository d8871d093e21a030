using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cutters;

/// <summary>
/// A cutter as a solid of revolution about +Z, its lowest cutting point at Z 0: pieces of profile from bottom to top, cutting and not cutting.
/// Right-handed, millimetres, immutable.
/// </summary>
public sealed partial class CutterShape
{
    private readonly ProfilePiece[] pieces;

    private CutterShape(ProfilePiece[] pieces, bool cutsToCentre)
    {
        this.pieces = pieces;
        CutsToCentre = cutsToCentre;
        Cutting = Slab.Of(pieces, cuttingOnly: true);
        Whole = Slab.Of(pieces, cuttingOnly: false);
        GreatestRadius = pieces.Where(p => p.Cuts).Select(GreatestOf).DefaultIfEmpty(0).Max();
        WidestRadius = pieces.Max(GreatestOf);
        LowestPoint = pieces[0].Z0;
        HighestPoint = pieces[^1].Z1;
    }

    /// <summary>The pieces from bottom to top.</summary>
    public IReadOnlyList<ProfilePiece> Pieces => pieces;

    /// <summary>Whether an edge reaches the axis, so that the cutter may be plunged into solid metal.</summary>
    public bool CutsToCentre { get; }

    /// <summary>Greatest radius of the cutting pieces, mm.</summary>
    public double GreatestRadius { get; }

    /// <summary>Greatest radius of all pieces, mm.</summary>
    public double WidestRadius { get; }

    /// <summary>Height of the lowest point of all pieces, mm: below 0 where a screw stands below a saw.</summary>
    public double LowestPoint { get; }

    /// <summary>Height of the top of the last piece, mm.</summary>
    public double HighestPoint { get; }

    internal Slab[] Cutting { get; }

    internal Slab[] Whole { get; }

    /// <summary>A cutter of any profile.</summary>
    /// <param name="pieces">The pieces from bottom to top, each starting at the height where the one before ended; radii may jump.</param>
    /// <param name="cutsToCentre">Whether an edge reaches the axis.</param>
    /// <exception cref="ArgumentNullException"><paramref name="pieces"/> is null.</exception>
    /// <exception cref="ArgumentException">No piece, or a gap or overlap between two of them.</exception>
    public static CutterShape Of(IReadOnlyList<ProfilePiece> pieces, bool cutsToCentre = true)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        if (pieces.Count == 0)
        {
            throw new ArgumentException("A cutter has a piece of profile at least.", nameof(pieces));
        }

        for (var i = 1; i < pieces.Count; i++)
        {
            if (pieces[i].Z0 != pieces[i - 1].Z1)
            {
                throw new ArgumentException("A piece does not start at the height where the one before ends.", nameof(pieces));
            }
        }

        return new([.. pieces], cutsToCentre);
    }

    /// <summary>The same cutter with more put above it, such as a chuck or the spindle's nose.</summary>
    /// <param name="above">Pieces whose heights count from the top of this cutter.</param>
    /// <exception cref="ArgumentNullException"><paramref name="above"/> is null.</exception>
    /// <exception cref="ArgumentException">The pieces leave a gap.</exception>
    public CutterShape With(params IReadOnlyList<ProfilePiece> above)
    {
        ArgumentNullException.ThrowIfNull(above);
        var run = pieces.ToList();
        foreach (var piece in above)
        {
            run.Add(piece.Raised(HighestPoint));
        }

        return Of(Joined(run), CutsToCentre);
    }

    /// <summary>The same cutter held in a plain round holder.</summary>
    /// <param name="diameter">Diameter of the holder, mm.</param>
    /// <param name="length">Its length, mm.</param>
    /// <param name="part">Chuck or nose.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not above 0.</exception>
    public CutterShape WithHolder(double diameter, double length, CutterPart part = CutterPart.Chuck)
    {
        Demand.Positive(diameter);
        Demand.Positive(length);
        return With(ProfilePiece.Straight(0, diameter / 2, length, diameter / 2, part, cuts: false));
    }

    /// <summary>The same cutter ground or worn larger or smaller: every cutting radius changed alike.</summary>
    /// <param name="by">Added to the radius of straight cutting pieces, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A radius would fall below 0.</exception>
    public CutterShape Grown(double by)
    {
        Demand.Finite(by);
        return Of(
            [.. pieces.Select(p => p.Cuts ? p.Grown(by) : p)],
            CutsToCentre);
    }

    /// <summary>Greatest outer radius at a height, mm; 0 above and below the cutter.</summary>
    /// <param name="z">Height, mm.</param>
    public double RadiusAt(double z)
    {
        var radius = 0.0;
        foreach (var piece in pieces)
        {
            if (z >= piece.Z0 && z <= piece.Z1)
            {
                radius = Math.Max(radius, piece.RadiusAt(z));
            }
        }

        return radius;
    }

    /// <summary>The piece at a height, the lower one where two meet; null above and below the cutter.</summary>
    /// <param name="z">Height, mm.</param>
    public ProfilePiece? PieceAt(double z) => Array.Find(pieces, p => z >= p.Z0 && z <= p.Z1);

    // Heights that should be equal made equal to the last bit.
    private static List<ProfilePiece> Joined(List<ProfilePiece> run)
    {
        for (var i = 1; i < run.Count; i++)
        {
            var slip = run[i - 1].Z1 - run[i].Z0;
            if (slip != 0 && Math.Abs(slip) < 1e-9)
            {
                run[i] = run[i].StartingAt(run[i - 1].Z1);
            }
        }

        return run;
    }

    private static double GreatestOf(ProfilePiece p) =>
        p.IsArc && p.Bulges && p.Z0 <= p.CentreZ && p.CentreZ <= p.Z1 ? p.CentreRadius + p.ArcRadius : Math.Max(p.Radius0, p.Radius1);
}
