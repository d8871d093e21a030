using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Following;

/// <summary>
/// What filing or rubbing takes off. Filing: metal outside most metal, within a stated distance of the face named. Rubbing on a plate: the same slab, flat
/// down to where most metal of what is rubbed ends. Part frame, millimetres.
/// </summary>
/// <param name="face">A place of the face.</param>
/// <param name="outward">Unit normal out of the part.</param>
/// <param name="depth">How far off the face metal is taken.</param>
/// <param name="most">Most metal of the drawing, which is kept; null when rubbed flat down to the face itself.</param>
internal sealed class FilingCut(Point3 face, Vector3 outward, double depth, ISolid? most) : ISolid
{
    // Filing may begin a little inside the aimed face: most metal still stands in its way.
    private const double Inside = 0.5;

    /// <inheritdoc/>
    public Box3 Bounds { get; } = BoundsOf(face, outward, depth, most is null ? 0 : Inside);

    /// <inheritdoc/>
    public int SurfaceCount => 2 + (most?.SurfaceCount ?? 0);

    /// <inheritdoc/>
    public Spans Sound(in Line3 line)
    {
        var along = line.Direction.Dot(outward);
        var height = (line.Origin - face).Dot(outward);
        var begins = most is null ? 0 : -Inside;
        double from = double.NegativeInfinity, to = double.PositiveInfinity;
        if (Math.Abs(along) > 1e-12)
        {
            var a = (begins - height) / along;
            var b = (depth - height) / along;
            (from, to) = (Math.Min(a, b), Math.Max(a, b));
        }
        else if (height <= begins || height >= depth)
        {
            return Spans.None;
        }

        const double Far = 1e6;
        var slab = Spans.Of([new Span(Math.Max(from, -Far), Math.Min(to, Far), new SurfaceId(0, 0), new SurfaceId(0, 1))]);
        return most is null ? slab : slab.Difference(most.Sound(line));
    }

    /// <inheritdoc/>
    public bool Contains(Point3 point)
    {
        var height = (point - face).Dot(outward);
        return height >= (most is null ? 0 : -Inside) && height <= depth && most?.Contains(point) != true;
    }

    /// <inheritdoc/>
    public Vector3 NormalAt(SurfaceId surface, Point3 point) => surface.Face == 0 ? -outward : outward;

    // A face square to an axis takes a slab; any other is not culled.
    private static Box3 BoundsOf(Point3 face, Vector3 outward, double depth, double inside)
    {
        var box = Box3.Everything;
        (double Low, double High) Span(double at, double way) => way > 0 ? (at - inside, at + depth) : (at - depth, at + inside);
        if (Math.Abs(outward.X) > 1 - 1e-12)
        {
            var (low, high) = Span(face.X, outward.X);
            box = new Box3(box.Min with { X = low }, box.Max with { X = high });
        }
        else if (Math.Abs(outward.Y) > 1 - 1e-12)
        {
            var (low, high) = Span(face.Y, outward.Y);
            box = new Box3(box.Min with { Y = low }, box.Max with { Y = high });
        }
        else if (Math.Abs(outward.Z) > 1 - 1e-12)
        {
            var (low, high) = Span(face.Z, outward.Z);
            box = new Box3(box.Min with { Z = low }, box.Max with { Z = high });
        }

        return box;
    }
}
