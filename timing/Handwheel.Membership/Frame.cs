namespace Handwheel.Membership;

/// <summary>A place or direction, millimetres.</summary>
/// <param name="X">X.</param>
/// <param name="Y">Y.</param>
/// <param name="Z">Z.</param>
public readonly record struct Vec(double X, double Y, double Z)
{
    public static Vec operator +(Vec a, Vec b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vec operator -(Vec a, Vec b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vec operator *(Vec a, double k) => new(a.X * k, a.Y * k, a.Z * k);

    public double Dot(Vec b) => (X * b.X) + (Y * b.Y) + (Z * b.Z);

    public double Length => Math.Sqrt(Dot(this));
}

/// <summary>A rigid placement as nine cosines and a shift, done from first definitions.</summary>
public sealed class Frame
{
    private readonly double[] m;
    private readonly Vec shift;

    private Frame(double[] m, Vec shift)
    {
        this.m = m;
        this.shift = shift;
    }

    public static Frame Still { get; } = new([1, 0, 0, 0, 1, 0, 0, 0, 1], default);

    public static Frame Shift(Vec by) => new([1, 0, 0, 0, 1, 0, 0, 0, 1], by);

    /// <summary>A right-handed turn about an axis of the frame through a place.</summary>
    /// <param name="axis">X, Y or Z.</param>
    /// <param name="degrees">The angle.</param>
    /// <param name="through">A place on the axis.</param>
    /// <returns>The placement.</returns>
    public static Frame Turn(char axis, double degrees, Vec through = default)
    {
        var (c, s) = Quarters(degrees);
        double[] cosines = axis switch
        {
            'X' => [1, 0, 0, 0, c, -s, 0, s, c],
            'Y' => [c, 0, s, 0, 1, 0, -s, 0, c],
            _ => [c, -s, 0, s, c, 0, 0, 0, 1],
        };
        var turned = new Frame(cosines, default);
        return new Frame(cosines, through - turned.Of(through));
    }

    public Vec Of(Vec p) => new(
        (m[0] * p.X) + (m[1] * p.Y) + (m[2] * p.Z) + shift.X,
        (m[3] * p.X) + (m[4] * p.Y) + (m[5] * p.Z) + shift.Y,
        (m[6] * p.X) + (m[7] * p.Y) + (m[8] * p.Z) + shift.Z);

    public Frame Then(Frame next)
    {
        var r = new double[9];
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                for (var k = 0; k < 3; k++)
                {
                    r[(3 * i) + j] += next.m[(3 * i) + k] * m[(3 * k) + j];
                }
            }
        }

        return new Frame(r, next.Of(shift));
    }

    public Frame Back()
    {
        double[] r = [m[0], m[3], m[6], m[1], m[4], m[7], m[2], m[5], m[8]];
        var turned = new Frame(r, default);
        return new Frame(r, turned.Of(shift) * -1);
    }

    private static (double Cos, double Sin) Quarters(double degrees)
    {
        var whole = degrees / 90;
        if (whole == Math.Floor(whole) && Math.Abs(whole) < 1e6)
        {
            return ((((int)whole % 4) + 4) % 4) switch
            {
                0 => (1, 0),
                1 => (0, 1),
                2 => (-1, 0),
                _ => (0, -1),
            };
        }

        return (Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180));
    }
}
