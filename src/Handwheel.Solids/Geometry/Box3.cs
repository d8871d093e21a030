namespace Handwheel.Solids.Geometry;

/// <summary>A box with its sides along the axes; empty when a side of <paramref name="Max"/> is below <paramref name="Min"/>.</summary>
/// <param name="Min">Corner with the least coordinates, mm.</param>
/// <param name="Max">Corner with the greatest coordinates, mm.</param>
public readonly record struct Box3(Point3 Min, Point3 Max)
{
    private const double Inf = double.PositiveInfinity;

    /// <summary>The box that holds nothing.</summary>
    public static Box3 Empty => new(new(Inf, Inf, Inf), new(-Inf, -Inf, -Inf));

    /// <summary>The box that holds everything.</summary>
    public static Box3 Everything => new(new(-Inf, -Inf, -Inf), new(Inf, Inf, Inf));

    /// <summary>Whether the box holds no place.</summary>
    public bool IsEmpty => !(Min.X <= Max.X && Min.Y <= Max.Y && Min.Z <= Max.Z);

    /// <summary>Extent along each axis, mm.</summary>
    public Vector3 Size => Max - Min;

    /// <summary>Middle of the box.</summary>
    public Point3 Centre => new((Min.X + Max.X) / 2, (Min.Y + Max.Y) / 2, (Min.Z + Max.Z) / 2);

    /// <summary>The smallest box that holds both.</summary>
    /// <param name="other">The other box.</param>
    public Box3 Union(Box3 other) => new(
        new(Math.Min(Min.X, other.Min.X), Math.Min(Min.Y, other.Min.Y), Math.Min(Min.Z, other.Min.Z)),
        new(Math.Max(Max.X, other.Max.X), Math.Max(Max.Y, other.Max.Y), Math.Max(Max.Z, other.Max.Z)));

    /// <summary>What both hold.</summary>
    /// <param name="other">The other box.</param>
    public Box3 Intersection(Box3 other) => new(
        new(Math.Max(Min.X, other.Min.X), Math.Max(Min.Y, other.Min.Y), Math.Max(Min.Z, other.Min.Z)),
        new(Math.Min(Max.X, other.Max.X), Math.Min(Max.Y, other.Max.Y), Math.Min(Max.Z, other.Max.Z)));

    /// <summary>Grown on every side.</summary>
    /// <param name="by">Distance, mm; negative shrinks.</param>
    public Box3 Grown(double by) => IsEmpty ? this : new(Min - new Vector3(by, by, by), Max + new Vector3(by, by, by));

    /// <summary>Whether a place lies in the box or on its sides.</summary>
    /// <param name="p">The place.</param>
    public bool Contains(Point3 p) =>
        p.X >= Min.X && p.X <= Max.X && p.Y >= Min.Y && p.Y <= Max.Y && p.Z >= Min.Z && p.Z <= Max.Z;

    /// <summary>Whether two boxes share a place, sides counted.</summary>
    /// <param name="other">The other box.</param>
    public bool Overlaps(Box3 other) =>
        Min.X <= other.Max.X && other.Min.X <= Max.X && Min.Y <= other.Max.Y && other.Min.Y <= Max.Y
        && Min.Z <= other.Max.Z && other.Min.Z <= Max.Z;

    /// <summary>The smallest box that holds a box put elsewhere.</summary>
    /// <param name="pose">Where it is put.</param>
    /// <exception cref="ArgumentNullException"><paramref name="pose"/> is null.</exception>
    public Box3 Placed(Pose pose)
    {
        ArgumentNullException.ThrowIfNull(pose);
        if (IsEmpty)
        {
            return this;
        }

        if (!double.IsFinite(Size.Length))
        {
            return Everything;
        }

        var box = Empty;
        for (var i = 0; i < 8; i++)
        {
            var corner = pose.Apply(new Point3((i & 1) == 0 ? Min.X : Max.X, (i & 2) == 0 ? Min.Y : Max.Y, (i & 4) == 0 ? Min.Z : Max.Z));
            box = box.Union(new Box3(corner, corner));
        }

        return box;
    }

    // The part of a line inside the box, as line parameters; closed. False when it misses.
    internal bool Clip(in Line3 line, ref double lo, ref double hi) =>
        Slab(line.Origin.X, line.Direction.X, Min.X, Max.X, ref lo, ref hi)
        && Slab(line.Origin.Y, line.Direction.Y, Min.Y, Max.Y, ref lo, ref hi)
        && Slab(line.Origin.Z, line.Direction.Z, Min.Z, Max.Z, ref lo, ref hi);

    internal static bool Slab(double o, double u, double min, double max, ref double lo, ref double hi)
    {
        if (u == 0)
        {
            return o >= min && o <= max;
        }

        var a = (min - o) / u;
        var b = (max - o) / u;
        lo = Math.Max(lo, Math.Min(a, b));
        hi = Math.Min(hi, Math.Max(a, b));
        return lo <= hi;
    }
}
