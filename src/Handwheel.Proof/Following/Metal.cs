using System.Collections.Immutable;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Proof.Following;

/// <summary>
/// The metal at one moment: the bare stock without the first so many cuts, and which stroke made each. Part frame. Immutable; later moments share their cuts
/// with earlier ones. Surfaces: owner 0 is the stock, owner n the n-th cut.
/// </summary>
internal sealed class Metal : ISolid
{
    private readonly Workpiece piece;
    private readonly ImmutableList<int> strokes;

    private Metal(Workpiece piece, ImmutableList<int> strokes)
    {
        this.piece = piece;
        this.strokes = strokes;
    }

    /// <summary>The bare stock.</summary>
    public ISolid Bare => piece.Bare;

    /// <summary>The engine&#39;s own workpiece.</summary>
    public Workpiece Piece => piece;

    /// <summary>How many cuts are taken away.</summary>
    public int Count => strokes.Count;

    /// <inheritdoc/>
    public Box3 Bounds => piece.Bounds;

    /// <inheritdoc/>
    public int SurfaceCount => piece.SurfaceCount;

    /// <summary>The bare stock as metal.</summary>
    /// <param name="bare">The stock.</param>
    /// <returns>Uncut metal.</returns>
    public static Metal Of(ISolid bare) => new(new Workpiece(bare), []);

    /// <summary>The metal with more taken away.</summary>
    /// <param name="cut">What is taken.</param>
    /// <returns>The metal after it.</returns>
    public Metal Without(CutMade cut) => new(piece.After(cut.Solid), strokes.Add(cut.Stroke));

    /// <summary>One of its cuts.</summary>
    /// <param name="index">From 0.</param>
    /// <returns>The volume and its stroke.</returns>
    public CutMade Cut(int index) => new(piece.Cuts[index], strokes[index]);

    /// <summary>The stroke that made a surface; null for the bare stock.</summary>
    /// <param name="surface">The surface.</param>
    /// <returns>The stroke&#39;s index.</returns>
    public int? StrokeOf(SurfaceId surface) => surface.IsStock ? null : strokes[surface.Cut];

    /// <summary>The first cut that takes a place away; null where none does.</summary>
    /// <param name="point">The place.</param>
    /// <returns>Its index.</returns>
    public int? TakenBy(Point3 point)
    {
        var cuts = piece.Cuts;
        for (var i = 0; i < cuts.Count; i++)
        {
            if (cuts[i].Contains(point))
            {
                return i;
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public Spans Sound(in Line3 line) => piece.Sound(line);

    /// <inheritdoc/>
    public bool Contains(Point3 point) => piece.Contains(point);

    /// <inheritdoc/>
    public Vector3 NormalAt(SurfaceId surface, Point3 point) => piece.NormalAt(surface, point);
}
