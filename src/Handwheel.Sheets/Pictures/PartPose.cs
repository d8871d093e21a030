using Handwheel.Jobs.Moves;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>How the part lies in a holding: from part frame to holding frame at theta 0, and back.</summary>
internal sealed class PartPose
{
    private readonly double[] _r;
    private readonly Place3 _origin;

    /// <summary>Initializes a new instance of the <see cref="PartPose"/> class.</summary>
    /// <param name="setup">The set-up facts.</param>
    public PartPose(SetupFacts setup)
    {
        var side = setup.Up switch
        {
            "underside" => AboutX(180),
            "front" => AboutX(-90),
            "back" => AboutX(90),
            "right" => AboutY(-90),
            "left" => AboutY(90),
            _ => AboutX(0),
        };
        _r = Times(AboutY(setup.TiltY), Times(AboutX(setup.TiltX), Times(AboutZ(setup.Turn), side)));
        _origin = setup.PartOrigin;
    }

    /// <summary>+1 where the part's top looks up, -1 where its underside does, 0 where it lies or leans.</summary>
    public int Upright => Math.Abs(Math.Abs(_r[8]) - 1) < 1e-9 ? Math.Sign(_r[8]) : 0;

    /// <summary>A point of the part in the holding.</summary>
    /// <param name="p">Part frame.</param>
    /// <returns>Holding frame, theta 0.</returns>
    public Point3 ToHolding(Point3 p) => new(
        (_r[0] * p.X) + (_r[1] * p.Y) + (_r[2] * p.Z) + _origin.X,
        (_r[3] * p.X) + (_r[4] * p.Y) + (_r[5] * p.Z) + _origin.Y,
        (_r[6] * p.X) + (_r[7] * p.Y) + (_r[8] * p.Z) + _origin.Z);

    /// <summary>A place of the holding in the part.</summary>
    /// <param name="h">Holding frame, theta 0.</param>
    /// <returns>Part frame.</returns>
    public Point3 ToPart(Point3 h)
    {
        var (x, y, z) = (h.X - _origin.X, h.Y - _origin.Y, h.Z - _origin.Z);
        return new((_r[0] * x) + (_r[3] * y) + (_r[6] * z), (_r[1] * x) + (_r[4] * y) + (_r[7] * z), (_r[2] * x) + (_r[5] * y) + (_r[8] * z));
    }

    /// <summary>A place turned with the rotary.</summary>
    /// <param name="rotary">The rotary; null leaves it.</param>
    /// <param name="p">Holding plan at theta 0.</param>
    /// <param name="theta">Degrees.</param>
    /// <returns>Holding plan at theta.</returns>
    public static Point2 Turned(RotaryFacts? rotary, Point2 p, double theta)
    {
        if (rotary is null || rotary.Lies || theta == 0)
        {
            return p;
        }

        var (sin, cos) = SinCos(theta);
        var (x, y) = (p.X - rotary.X, p.Y - rotary.Y);
        return new(rotary.X + (x * cos) - (y * sin), rotary.Y + (x * sin) + (y * cos));
    }

    private static (double Sin, double Cos) SinCos(double degrees) => (degrees % 360) switch
    {
        0 => (0, 1),
        90 or -270 => (1, 0),
        180 or -180 => (0, -1),
        270 or -90 => (-1, 0),
        _ => Math.SinCos(degrees * Math.PI / 180),
    };

    private static double[] AboutX(double degrees)
    {
        var (s, c) = SinCos(degrees);
        return [1, 0, 0, 0, c, -s, 0, s, c];
    }

    private static double[] AboutY(double degrees)
    {
        var (s, c) = SinCos(degrees);
        return [c, 0, s, 0, 1, 0, -s, 0, c];
    }

    private static double[] AboutZ(double degrees)
    {
        var (s, c) = SinCos(degrees);
        return [c, -s, 0, s, c, 0, 0, 0, 1];
    }

    private static double[] Times(double[] a, double[] b)
    {
        var product = new double[9];
        for (var i = 0; i < 9; i++)
        {
            for (var k = 0; k < 3; k++)
            {
                product[i] += a[(i / 3 * 3) + k] * b[(k * 3) + (i % 3)];
            }
        }

        return product;
    }
}
