namespace Handwheel.Solids.Geometry;

/// <summary>A place, or a displacement, seen from above; millimetres, X to the right, Y up the page.</summary>
/// <param name="X">X, mm.</param>
/// <param name="Y">Y, mm.</param>
public readonly record struct Point2(double X, double Y)
{
    /// <summary>Distance from the origin, mm.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>Sum.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static Point2 operator +(Point2 a, Point2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Taken away.</param>
    public static Point2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Scaled.</summary>
    /// <param name="a">Place.</param>
    /// <param name="k">Factor.</param>
    public static Point2 operator *(Point2 a, double k) => new(a.X * k, a.Y * k);

    /// <summary>The place on a circle at an angle counterclockwise from +X.</summary>
    /// <param name="centre">Centre of the circle.</param>
    /// <param name="radius">Radius, mm.</param>
    /// <param name="angle">Angle, radians.</param>
    public static Point2 Polar(Point2 centre, double radius, double angle)
    {
        var (sin, cos) = Turn.SinCos(angle);
        return new(centre.X + (radius * cos), centre.Y + (radius * sin));
    }

    /// <summary>Scalar product.</summary>
    /// <param name="other">The other one.</param>
    public double Dot(Point2 other) => (X * other.X) + (Y * other.Y);

    /// <summary>Z of the vector product: positive when <paramref name="other"/> lies counterclockwise of this.</summary>
    /// <param name="other">The other one.</param>
    public double Cross(Point2 other) => (X * other.Y) - (Y * other.X);

    /// <summary>Distance to another place, mm.</summary>
    /// <param name="other">The other place.</param>
    public double DistanceTo(Point2 other) => (this - other).Length;

    /// <summary>The place at a height.</summary>
    /// <param name="z">Z, mm.</param>
    public Point3 At(double z) => new(X, Y, z);
}
