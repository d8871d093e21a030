using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Tests.Oracle;

/// <summary>
/// How deep a place lies inside a swept cutter, straight from the definition: over all places of the path, the greatest of
/// min(r(z) - rho, rho - inner, z - z0, z1 - z) for any one piece. Positive inside, about zero on the surface.
/// </summary>
internal sealed class SweepOracle(CutterShape cutter, CutterPath path)
{
    public decimal Depth(Point3 q)
    {
        var best = decimal.MinValue;
        foreach (var piece in cutter.Pieces)
        {
            if (piece.Cuts)
            {
                best = Math.Max(best, path.IsLevelFor() ? Level(piece, q) : Slanted(piece, q));
            }
        }

        return best;
    }

    private static decimal Radius(ProfilePiece p, decimal z)
    {
        if (p.IsArc)
        {
            var h = z - (decimal)p.CentreZ;
            var r = (decimal)p.ArcRadius;
            var x = Exact.Sqrt((r * r) - (h * h));
            return p.Bulges ? (decimal)p.CentreRadius + x : (decimal)p.CentreRadius - x;
        }

        return (decimal)p.Radius0 + (((decimal)p.Radius1 - (decimal)p.Radius0) * (z - (decimal)p.Z0) / ((decimal)p.Z1 - (decimal)p.Z0));
    }

    // How far a place of the profile's plane lies within the outer line: along the arc's own normal where it is circular.
    private static decimal Within(ProfilePiece p, decimal rho, decimal z)
    {
        decimal c = (decimal)p.CentreRadius;
        if (!p.IsArc || (p.Bulges ? rho < c : rho > c))
        {
            return Radius(p, z) - rho;
        }

        var off = Hypot(rho - c, z - (decimal)p.CentreZ);
        return p.Bulges ? (decimal)p.ArcRadius - off : off - (decimal)p.ArcRadius;
    }

    // How far beyond the hole: along the arc's own normal where it is circular.
    private static decimal Beyond(ProfilePiece p, decimal rho, decimal z)
    {
        if (p.InnerArcRadius == 0)
        {
            return rho - Inner(p, z);
        }

        decimal e = rho - (decimal)p.InnerCentreRadius, h = z - (decimal)p.InnerCentreZ, r = (decimal)p.InnerArcRadius;
        if (p.InnerBulges ? e < 0 : e > 0)
        {
            var x = Exact.Sqrt((r * r) - (h * h));
            return e + (p.InnerBulges ? -x : x);
        }

        return p.InnerBulges ? Hypot(e, h) - r : r - Hypot(e, h);
    }

    private static decimal Inner(ProfilePiece p, decimal z) =>
        (decimal)p.Inner0 + (((decimal)p.Inner1 - (decimal)p.Inner0) * (z - (decimal)p.Z0) / ((decimal)p.Z1 - (decimal)p.Z0));

    // Along the normal: the way across a straight side is measured square to it, not square to the axis.
    internal static decimal Inside(ProfilePiece p, decimal rho, decimal z, bool alongNormal = false)
    {
        var zc = Math.Clamp(z, (decimal)p.Z0, (decimal)p.Z1);
        var within = Within(p, rho, zc);
        if (alongNormal && !p.IsArc)
        {
            var k = ((decimal)p.Radius1 - (decimal)p.Radius0) / ((decimal)p.Z1 - (decimal)p.Z0);
            within /= Exact.Sqrt(1 + (k * k));
        }

        var depth = Math.Min(Math.Min(z - (decimal)p.Z0, (decimal)p.Z1 - z), within);
        return p.IsHollow ? Math.Min(depth, Beyond(p, rho, zc)) : depth;
    }

    private decimal Level(ProfilePiece p, Point3 q)
    {
        var z = (decimal)q.Z - (decimal)path.From.Z;
        var (near, far) = Distances(q);
        var zc = Math.Clamp(z, (decimal)p.Z0, (decimal)p.Z1);
        var depth = Math.Min(Math.Min(z - (decimal)p.Z0, (decimal)p.Z1 - z), Within(p, near, zc));
        return p.IsHollow ? Math.Min(depth, Beyond(p, far, zc)) : depth;
    }

    private (decimal Near, decimal Far) Distances(Point3 q)
    {
        decimal x = (decimal)q.X, y = (decimal)q.Y, ax = (decimal)path.From.X, ay = (decimal)path.From.Y;
        if (path.Kind == PathKind.Arc)
        {
            return ArcDistances(x, y, ax, ay);
        }

        decimal bx = (decimal)path.To.X, by = (decimal)path.To.Y, dx = bx - ax, dy = by - ay, dd = (dx * dx) + (dy * dy);
        var s = dd == 0 ? 0 : Math.Clamp((((x - ax) * dx) + ((y - ay) * dy)) / dd, 0, 1);
        var near = Hypot(x - ax - (s * dx), y - ay - (s * dy));
        return (near, Math.Max(Hypot(x - ax, y - ay), Hypot(x - bx, y - by)));
    }

    private (decimal Near, decimal Far) ArcDistances(decimal x, decimal y, decimal ax, decimal ay)
    {
        decimal cx = (decimal)path.Centre.X, cy = (decimal)path.Centre.Y;
        var (sin, cos) = Exact.SinCos(path.Sweep);
        decimal rx = ax - cx, ry = ay - cy, vx = x - cx, vy = y - cy;
        decimal bx = (cos * rx) - (sin * ry), by = (sin * rx) + (cos * ry);
        decimal radius = Hypot(rx, ry), rho = Hypot(vx, vy);
        var near = Math.Min(Hypot(vx - rx, vy - ry), Hypot(vx - bx, vy - by));
        var far = Math.Max(Hypot(vx - rx, vy - ry), Hypot(vx - bx, vy - by));
        return (
            OnArc(vx, vy, rx, ry) ? Math.Abs(rho - radius) : near,
            OnArc(-vx, -vy, rx, ry) ? rho + radius : far);
    }

    // By angle, as a person would: the turn from the start to the place, the way the path goes.
    private bool OnArc(decimal vx, decimal vy, decimal rx, decimal ry)
    {
        var turned = Math.Atan2((double)((rx * vy) - (ry * vx)), (double)((rx * vx) + (ry * vy)));
        if (path.Sweep < 0)
        {
            turned = -turned;
        }

        if (turned < 0)
        {
            turned += 2 * Math.PI;
        }

        return turned <= Math.Abs(path.Sweep);
    }

    // The greatest over the path: in doubles on a fine row and by thirds within its steps, to know where; then by thirds in decimals about each top that may be it.
    private decimal Slanted(ProfilePiece p, Point3 q)
    {
        const double about = 1e-5;
        var parts = p.IsHollow || (p.IsArc && !p.Bulges) ? 400 : 8;
        var row = Enumerable.Range(0, parts + 1).Select(i => Rough(p, q, (double)i / parts)).ToArray();
        var rate = 5 * path.Length / parts;
        var rowTop = row.Max();
        var tops = new List<(double Share, double Depth)> { (0, row[0]), (1, row[^1]) };
        for (var i = 0; i < parts; i++)
        {
            if (Math.Max(row[i], row[i + 1]) + rate >= rowTop)
            {
                double a = (double)i / parts, b = (double)(i + 1) / parts;
                while (b - a > about / 10)
                {
                    double l = a + ((b - a) / 3), r = b - ((b - a) / 3);
                    (a, b) = Rough(p, q, l) < Rough(p, q, r) ? (l, b) : (a, r);
                }

                tops.Add(((a + b) / 2, Rough(p, q, (a + b) / 2)));
            }
        }

        var top = tops.Max(t => t.Depth);
        return tops.Where(t => t.Depth >= top - (about * 5 * (1 + path.Length))).Max(t => Fine(p, q, (decimal)Math.Max(0, t.Share - about), (decimal)Math.Min(1, t.Share + about)));
    }

    private double Rough(ProfilePiece p, Point3 q, double share)
    {
        var g = q - path.At(share);
        return RoughDepth.Inside(p, Math.Sqrt((g.X * g.X) + (g.Y * g.Y)), g.Z);
    }

    private decimal Fine(ProfilePiece p, Point3 q, decimal a, decimal b)
    {
        decimal At(decimal s)
        {
            var x = (decimal)q.X - (decimal)path.From.X - (s * ((decimal)path.To.X - (decimal)path.From.X));
            var y = (decimal)q.Y - (decimal)path.From.Y - (s * ((decimal)path.To.Y - (decimal)path.From.Y));
            var z = (decimal)q.Z - (decimal)path.From.Z - (s * ((decimal)path.To.Z - (decimal)path.From.Z));
            return Inside(p, Hypot(x, y), z);
        }

        var best = Math.Max(At(a), At(b));
        for (var n = 0; n < 35; n++)
        {
            decimal l = a + ((b - a) / 3), r = b - ((b - a) / 3);
            (a, b) = At(l) < At(r) ? (l, b) : (a, r);
        }

        return Math.Max(best, At((a + b) / 2));
    }

    private static decimal Hypot(decimal x, decimal y) => Exact.Sqrt((x * x) + (y * y));
}

internal static class PathFacts
{
    public static bool IsLevelFor(this CutterPath path) => path.From.Z == path.To.Z;
}
