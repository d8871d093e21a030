using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>A block with its sides along the axes. Faces: X low, X high, Y low, Y high, Z low, Z high.</summary>
public sealed class Block : Solid
{
    private static readonly Vector3[] Normals = [new(-1, 0, 0), new(1, 0, 0), new(0, -1, 0), new(0, 1, 0), new(0, 0, -1), new(0, 0, 1)];

    /// <summary>A block between two corners.</summary>
    /// <param name="min">Corner with the least coordinates.</param>
    /// <param name="max">Corner with the greatest coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is not above 0.</exception>
    public Block(Point3 min, Point3 max)
    {
        Demand.Ordered(min.X, max.X, nameof(max));
        Demand.Ordered(min.Y, max.Y, nameof(max));
        Demand.Ordered(min.Z, max.Z, nameof(max));
        Bounds = new(min, max);
    }

    /// <inheritdoc/>
    public override Box3 Bounds { get; }

    /// <inheritdoc/>
    public override int SurfaceCount => 6;

    /// <inheritdoc/>
    public override bool Contains(Point3 point) => Bounds.Contains(point);

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point) => Normals[surface.Face];

    internal override double Distance(Point3 point)
    {
        Point3 a = Bounds.Min, b = Bounds.Max;
        var inside = Math.Max(Math.Max(Math.Max(a.X - point.X, point.X - b.X), Math.Max(a.Y - point.Y, point.Y - b.Y)), Math.Max(a.Z - point.Z, point.Z - b.Z));
        return inside <= 0 ? inside : BoxDistance(Bounds, point);
    }

    internal override double LeastIn(in Box3 cell) => BoxGap(Bounds, cell);

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        double lo = double.NegativeInfinity, hi = double.PositiveInfinity;
        int loFace = 0, hiFace = 0;
        Point3 o = line.Origin, a = Bounds.Min, b = Bounds.Max;
        var u = line.Direction;
        if (Side(o.X, u.X, a.X, b.X, 0, closed, ref lo, ref hi, ref loFace, ref hiFace)
            && Side(o.Y, u.Y, a.Y, b.Y, 2, closed, ref lo, ref hi, ref loFace, ref hiFace)
            && Side(o.Z, u.Z, a.Z, b.Z, 4, closed, ref lo, ref hi, ref loFace, ref hiFace))
        {
            into.Add(lo, hi, loFace, hiFace);
        }
    }

    private static bool Side(
        double o, double u, double min, double max, int face, bool closed, ref double lo, ref double hi, ref int loFace, ref int hiFace)
    {
        if (u == 0)
        {
            return closed ? o >= min && o <= max : o > min && o < max;
        }

        double a = (min - o) / u, b = (max - o) / u;
        int first = face, last = face + 1;
        if (u < 0)
        {
            (a, b, first, last) = (b, a, last, first);
        }

        if (a > lo)
        {
            (lo, loFace) = (a, first);
        }

        if (b < hi)
        {
            (hi, hiFace) = (b, last);
        }

        return lo <= hi;
    }
}
