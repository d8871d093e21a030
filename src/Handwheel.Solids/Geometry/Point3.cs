namespace Handwheel.Solids.Geometry;

/// <summary>A place in a right-handed frame, millimetres.</summary>
/// <param name="X">X, mm.</param>
/// <param name="Y">Y, mm.</param>
/// <param name="Z">Z, mm.</param>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>The frame's origin.</summary>
    public static Point3 Origin => default;

    /// <summary>The place seen from above.</summary>
    public Point2 Plan => new(X, Y);

    /// <summary>Moved by a displacement.</summary>
    /// <param name="p">Place.</param>
    /// <param name="v">Displacement, mm.</param>
    public static Point3 operator +(Point3 p, Vector3 v) => new(p.X + v.X, p.Y + v.Y, p.Z + v.Z);

    /// <summary>Moved back by a displacement.</summary>
    /// <param name="p">Place.</param>
    /// <param name="v">Displacement, mm.</param>
    public static Point3 operator -(Point3 p, Vector3 v) => new(p.X - v.X, p.Y - v.Y, p.Z - v.Z);

    /// <summary>Displacement from <paramref name="b"/> to <paramref name="a"/>.</summary>
    /// <param name="a">Where to.</param>
    /// <param name="b">Where from.</param>
    public static Vector3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Distance to another place, mm.</summary>
    /// <param name="other">The other place.</param>
    public double DistanceTo(Point3 other) => (this - other).Length;

    /// <summary>The displacement from the origin.</summary>
    public Vector3 ToVector() => new(X, Y, Z);
}
