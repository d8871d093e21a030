using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Tests.Oracle;

/// <summary>
/// How deep a place lies inside a cutter carried about a line parallel to X, straight from the definition: over all angles of the turn, the greatest depth
/// in the standing cutter. Found on a fine row of angles first, then by thirds in 28-digit decimals. A feed along the axis goes with the angle.
/// </summary>
internal sealed class TurnOracle(CutterShape cutter, Point3 at, Point3 axis, double turn, double feed)
{
    private const int Row = 1440;

    public decimal Depth(Point3 q)
    {
        var best = decimal.MinValue;
        foreach (var piece in cutter.Pieces)
        {
            if (piece.Cuts)
            {
                best = Math.Max(best, Depth(piece, q));
            }
        }

        return best;
    }

    private decimal Depth(ProfilePiece piece, Point3 q)
    {
        var row = new double[Row + 1];
        for (var i = 0; i <= Row; i++)
        {
            row[i] = Rough(piece, q, turn * i / Row);
        }

        var best = decimal.MinValue;
        var top = row.Max();
        var rate = Math.Abs(turn) / Row * (Hypot(q.Y - axis.Y, q.Z - axis.Z) + Math.Abs(feed / Math.Max(Math.Abs(turn), 1e-9)));
        for (var i = 0; i <= Row; i++)
        {
            // A local top that could still be the greatest.
            if (row[i] >= top - (2 * rate) && row[i] >= row[Math.Max(0, i - 1)] && row[i] >= row[Math.Min(Row, i + 1)])
            {
                best = Math.Max(best, Fine(piece, q, Math.Max(0, i - 1), Math.Min(Row, i + 1)));
            }
        }

        return best;
    }

    private decimal Fine(ProfilePiece piece, Point3 q, int from, int to)
    {
        var middle = turn * (from + to) / 2 / Row;
        var (sin, cos) = Exact.SinCos(middle);
        decimal a = (decimal)(turn * from / Row) - (decimal)middle, b = (decimal)(turn * to / Row) - (decimal)middle;
        var best = Math.Max(Depth(0), Math.Max(Depth(a), Depth(b)));
        for (var n = 0; n < 70; n++)
        {
            decimal l = a + ((b - a) / 3), r = b - ((b - a) / 3);
            if (Depth(l) < Depth(r))
            {
                a = l;
            }
            else
            {
                b = r;
            }
        }

        return Math.Max(best, Depth((a + b) / 2));

        decimal Depth(decimal more)
        {
            // The small turn's own sine and cosine by their series.
            decimal s = 0, c = 0, term = 1;
            for (var n = 0; n < 14; n++)
            {
                s += (n % 4) switch { 1 => term, 3 => -term, _ => 0 };
                c += (n % 4) switch { 0 => term, 2 => -term, _ => 0 };
                term *= more / (n + 1);
            }

            decimal sn = (sin * c) + (cos * s), cs = (cos * c) - (sin * s);
            decimal y = (decimal)q.Y - (decimal)axis.Y, z = (decimal)q.Z - (decimal)axis.Z;
            decimal gone = turn == 0 ? 0 : (decimal)feed * (((decimal)middle + more) / (decimal)turn);
            decimal x = (decimal)q.X - (decimal)at.X - gone;
            decimal by = (cs * y) + (sn * z) + (decimal)axis.Y - (decimal)at.Y, bz = (cs * z) - (sn * y) + (decimal)axis.Z - (decimal)at.Z;
            return SweepOracle.Inside(piece, Exact.Sqrt((x * x) + (by * by)), bz, alongNormal: true);
        }
    }

    private double Rough(ProfilePiece p, Point3 q, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        double y = q.Y - axis.Y, z = q.Z - axis.Z, x = q.X - at.X - (turn == 0 ? 0 : feed * angle / turn);
        double by = (cos * y) + (sin * z) + axis.Y - at.Y, bz = (cos * z) - (sin * y) + axis.Z - at.Z;
        return RoughDepth.Inside(p, Hypot(x, by), bz, alongNormal: true);
    }

    private static double Hypot(double x, double y) => Math.Sqrt((x * x) + (y * y));
}
