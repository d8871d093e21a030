using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Tests.Oracle;

/// <summary>The depth inside a cutter that is carried, over a stretch of a line and a stretch of the way it is carried: along a slanted line, or about an axis along X.</summary>
internal sealed class CarriedEnclosure
{
    private readonly CutterShape cutter;
    private readonly Func<Enclosure, Enclosure, (Enclosure Rho, Enclosure Z)> place;

    private CarriedEnclosure(CutterShape cutter, Func<Enclosure, Enclosure, (Enclosure Rho, Enclosure Z)> place) => (this.cutter, this.place) = (cutter, place);

    public static CarriedEnclosure Along(CutterShape cutter, Point3 from, Point3 to, Line3 line) => new(cutter, (t, s) =>
    {
        Enclosure Off(double o, double d, double a, double b) => (Enclosure)o - a + (d * t) - (s * ((Enclosure)b - a));
        return (
            Enclosure.Hypot(Off(line.Origin.X, line.Direction.X, from.X, to.X), Off(line.Origin.Y, line.Direction.Y, from.Y, to.Y)),
            Off(line.Origin.Z, line.Direction.Z, from.Z, to.Z));
    });

    public static CarriedEnclosure About(CutterShape cutter, Point3 at, Point3 axis, double turn, Line3 line) => new(cutter, (t, s) =>
    {
        var (sin, cos) = (turn * s).SinCos();
        Enclosure y = (Enclosure)line.Origin.Y - axis.Y + (line.Direction.Y * t), z = (Enclosure)line.Origin.Z - axis.Z + (line.Direction.Z * t);
        var x = (Enclosure)line.Origin.X - at.X + (line.Direction.X * t);
        return (Enclosure.Hypot(x, (cos * y) + (sin * z) + axis.Y - at.Y), (cos * z) - (sin * y) + axis.Z - at.Z);
    });

    /// <summary>The depth while it is carried over a stretch of its way.</summary>
    /// <param name="t">The stretch of the line.</param>
    /// <param name="s">The stretch of the way, 0 at its start, 1 at its end.</param>
    public Enclosure Depth(Enclosure t, Enclosure s)
    {
        var (rho, z) = place(t, s);
        var best = new Enclosure(double.NegativeInfinity, double.NegativeInfinity);
        foreach (var piece in cutter.Pieces.Where(p => p.Cuts))
        {
            best = Enclosure.Max(best, PieceEnclosure.Inside(piece, rho, rho, z));
        }

        return best;
    }
}
