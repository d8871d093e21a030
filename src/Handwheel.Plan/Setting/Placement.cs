using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// Where the part lies in a holding: its side up, a turn about Z, tilts about holding X then Y, and a shift. Right-handed, millimetres.
internal sealed class Placement
{
    private readonly double[,] turn;
    private readonly Point3 shift;

    private Placement(double[,] turn, Point3 shift)
    {
        this.turn = turn;
        this.shift = shift;
    }

    internal Point3 Shift => shift;

    internal static Placement Of(Holding holding)
    {
        var m = SideUp(holding.Up);
        m = Times(AboutZ(holding.Turn), m);
        m = Times(AboutX(holding.TiltX), m);
        return new(Times(AboutY(holding.TiltY), m), new(0, 0, 0));
    }

    internal Placement Moved(Point3 to) => new(turn, to);

    // Turned about an axis along X through Y, Z: the indexer's turn.
    internal Placement AboutAxis(double angle, double y, double z)
    {
        var (s, c) = SinCos(angle);
        double dy = shift.Y - y, dz = shift.Z - z;
        return new(Times(AboutX(angle), turn), new(shift.X, y + (c * dy) - (s * dz), z + (s * dy) + (c * dz)));
    }

    internal Point3 Apply(Point3 p)
    {
        var d = Direction(p);
        return new(d.X + shift.X, d.Y + shift.Y, d.Z + shift.Z);
    }

    internal Point3 Direction(Point3 p) => new(
        Row(0, p), Row(1, p), Row(2, p));

    internal Point3 Back(Point3 h) => DirectionBack(new(h.X - shift.X, h.Y - shift.Y, h.Z - shift.Z));

    internal Point3 DirectionBack(Point3 d) => new(
        (turn[0, 0] * d.X) + (turn[1, 0] * d.Y) + (turn[2, 0] * d.Z),
        (turn[0, 1] * d.X) + (turn[1, 1] * d.Y) + (turn[2, 1] * d.Z),
        (turn[0, 2] * d.X) + (turn[1, 2] * d.Y) + (turn[2, 2] * d.Z));

    internal static Place3 ToPlace(Point3 p) => new(p.X, p.Y, p.Z);

    private double Row(int i, Point3 p) => (turn[i, 0] * p.X) + (turn[i, 1] * p.Y) + (turn[i, 2] * p.Z);

    private static double[,] SideUp(FaceUp up) => up switch
    {
        FaceUp.Underside => AboutX(Math.PI),
        FaceUp.Front => AboutX(-Math.PI / 2),
        FaceUp.Back => AboutX(Math.PI / 2),
        FaceUp.Right => AboutY(-Math.PI / 2),
        FaceUp.Left => AboutY(Math.PI / 2),
        _ => AboutX(0),
    };

    private static double[,] AboutX(double a)
    {
        var (s, c) = SinCos(a);
        return new[,] { { 1, 0, 0 }, { 0, c, -s }, { 0, s, c } };
    }

    private static double[,] AboutY(double a)
    {
        var (s, c) = SinCos(a);
        return new[,] { { c, 0, s }, { 0, 1, 0 }, { -s, 0, c } };
    }

    private static double[,] AboutZ(double a)
    {
        var (s, c) = SinCos(a);
        return new[,] { { c, -s, 0 }, { s, c, 0 }, { 0, 0, 1 } };
    }

    // Quarter turns are exact.
    private static (double Sin, double Cos) SinCos(double angle)
    {
        var quarters = angle / (Math.PI / 2);
        var whole = Math.Round(quarters);
        return Math.Abs(quarters - whole) < 1e-12
            ? ((((long)whole % 4) + 4) % 4) switch { 0 => (0d, 1d), 1 => (1d, 0d), 2 => (0d, -1d), _ => (-1d, 0d) }
            : Math.SinCos(angle);
    }

    private static double[,] Times(double[,] a, double[,] b)
    {
        var m = new double[3, 3];
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                m[i, j] = (a[i, 0] * b[0, j]) + (a[i, 1] * b[1, j]) + (a[i, 2] * b[2, j]);
            }
        }

        return m;
    }
}
