using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>A solid of revolution about a line parallel to Z, from pieces of profile. Faces as of a <see cref="SweptCut"/> standing still.</summary>
public class RevolvedSolid : Solid
{
    private readonly SweptCut solid;

    /// <summary>A profile turned about its axis.</summary>
    /// <param name="profile">Pieces from bottom to top, each starting at the height where the one before ended.</param>
    /// <param name="origin">Where radius 0 and height 0 of the profile lie.</param>
    /// <exception cref="ArgumentNullException"><paramref name="profile"/> is null.</exception>
    /// <exception cref="ArgumentException">No piece, or a gap or overlap between two of them.</exception>
    public RevolvedSolid(IReadOnlyList<ProfilePiece> profile, Point3 origin = default) =>
        solid = new SweptCut(CutterShape.Of(profile), CutterPath.At(origin), whole: true);

    /// <inheritdoc/>
    public override Box3 Bounds => solid.Bounds;

    /// <inheritdoc/>
    public override int SurfaceCount => solid.SurfaceCount;

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point) => solid.NormalAt(surface, point);

    internal override double Distance(Point3 point) => solid.Distance(point);

    internal override double LeastIn(in Box3 cell) => solid.LeastIn(cell);

    internal override void Sound(in Line3 line, bool closed, SpanList into) => solid.Sound(line, closed, into);
}
