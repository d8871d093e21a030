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
        return p.IsHollow ? Math.Min(depth, rho - Inner(p, zc)) : depth;
    }

    private decimal Level(ProfilePiece p, Point3 q)
    {
        var z = (decimal)q.Z - (decimal)path.From.Z;
        var (near, far) = Distances(q);
        var zc = Math.Clamp(z, (decimal)p.Z0, (decimal)p.Z1);
        var depth = Math.Min(Math.Min(z - (decimal)p.Z0, (decimal)p.Z1 - z), Within(p, near, zc));
        return p.IsHollow ? Math.Min(depth, far - Inner(p, zc)) : depth;
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

    // The least over the path, found by thirds where the depth is concave in the place of the path (solid pieces that do not curve inwards), else by a fine search.
    private decimal Slanted(ProfilePiece p, Point3 q)
    {
        decimal At(decimal s)
        {
            var x = (decimal)q.X - (decimal)path.From.X - (s * ((decimal)path.To.X - (decimal)path.From.X));
            var y = (decimal)q.Y - (decimal)path.From.Y - (s * ((decimal)path.To.Y - (decimal)path.From.Y));
            var z = (decimal)q.Z - (decimal)path.From.Z - (s * ((decimal)path.To.Z - (decimal)path.From.Z));
            return Inside(p, Hypot(x, y), z);
        }

        var parts = p.IsHollow || (p.IsArc && !p.Bulges) ? 200 : 1;
        var best = decimal.MinValue;
        for (var i = 0; i < parts; i++)
        {
            decimal a = (decimal)i / parts, b = (decimal)(i + 1) / parts;
            for (var n = 0; n < (parts > 1 ? 45 : 90); n++)
            {
                decimal l = a + ((b - a) / 3), r = b - ((b - a) / 3);
                if (At(l) < At(r))
                {
                    a = l;
                }
                else
                {
                    b = r;
                }
            }

            best = Math.Max(best, Math.Max(At((a + b) / 2), Math.Max(At((decimal)i / parts), At((decimal)(i + 1) / parts))));
        }

        return best;
    }

    private static decimal Hypot(decimal x, decimal y) => Exact.Sqrt((x * x) + (y * y));
}

internal static class PathFacts
{
    public static bool IsLevelFor(this CutterPath path) => path.From.Z == path.To.Z;
}
