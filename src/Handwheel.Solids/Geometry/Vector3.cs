namespace Handwheel.Solids.Geometry;

/// <summary>A direction or a displacement in a right-handed frame, millimetres.</summary>
/// <param name="X">Component along X, mm.</param>
/// <param name="Y">Component along Y, mm.</param>
/// <param name="Z">Component along Z, mm.</param>
public readonly record struct Vector3(double X, double Y, double Z)
{
    /// <summary>Unit vector along X.</summary>
    public static Vector3 UnitX => new(1, 0, 0);

    /// <summary>Unit vector along Y.</summary>
    public static Vector3 UnitY => new(0, 1, 0);

    /// <summary>Unit vector along Z.</summary>
    public static Vector3 UnitZ => new(0, 0, 1);

    /// <summary>Length, mm.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>Sum.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Taken away.</param>
    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The other way.</summary>
    /// <param name="a">Vector.</param>
    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Scaled.</summary>
    /// <param name="a">Vector.</param>
    /// <param name="k">Factor.</param>
    public static Vector3 operator *(Vector3 a, double k) => new(a.X * k, a.Y * k, a.Z * k);

    /// <summary>Scaled.</summary>
    /// <param name="k">Factor.</param>
    /// <param name="a">Vector.</param>
    public static Vector3 operator *(double k, Vector3 a) => a * k;

    /// <summary>Scalar product.</summary>
    /// <param name="other">The other vector.</param>
    public double Dot(Vector3 other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Vector product, right-handed.</summary>
    /// <param name="other">The other vector.</param>
    public Vector3 Cross(Vector3 other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    /// <summary>The same direction with length one; a zero vector stays zero.</summary>
    public Vector3 ToUnit()
    {
        var n = Length;
        return n > 0 ? new Vector3(X / n, Y / n, Z / n) : this;
    }
}
