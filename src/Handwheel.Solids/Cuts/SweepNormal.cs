using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cuts;

// Outward unit normals of a swept cutter, in the cut's frame.
internal static class SweepNormal
{
    internal static Vector3 At(ReadOnlySpan<Slab> slabs, CutterPath path, int face, Point3 at)
    {
        var best = slabs[0];
        var bestMiss = double.PositiveInfinity;
        foreach (var slab in slabs)
        {
            if (slab.Face != face - (face % 4))
            {
                continue;
            }

            // Of the layers of one piece, the one whose swept heights hold the place.
            double lo = Math.Min(path.From.Z, path.To.Z) + slab.Z0, hi = Math.Max(path.From.Z, path.To.Z) + slab.Z1;
            var miss = Math.Max(0, Math.Max(lo - at.Z, at.Z - hi));
            if (miss < bestMiss)
            {
                (best, bestMiss) = (slab, miss);
            }
        }

        var kind = face % 4;
        if (path.IsLevel)
        {
            return kind is 1 or 2 ? new(0, 0, kind == 1 ? -1 : 1) : Level(best, path, kind == 3, at);
        }

        var place = Contact(best, path, kind, at);
        return Slanted(best, path.To - path.From, kind, at - place);
    }

    private static Vector3 Level(Slab s, CutterPath path, bool inner, Point3 at)
    {
        var z = Math.Clamp(at.Z - path.From.Z, s.Z0, s.Z1);
        if (!inner)
        {
            return Flank(at.Plan - path.NearestInPlan(at.Plan), s.SlopeAt(z));
        }

        // The farthest place of the path, seen from the point; the normal points towards it.
        Point2 a = path.From.Plan, b = path.To.Plan, p = at.Plan;
        var far = p.DistanceTo(a) >= p.DistanceTo(b) ? a : b;
        var v = p - path.Centre;
        if (path.Kind == PathKind.Arc && path.Reaches(v * -1) && v.Length > 0)
        {
            far = path.Centre - (v * (path.Radius / v.Length));
        }

        return -Flank(p - far, s.InnerSlopeAt(z));
    }

    private static Vector3 Flank(Point2 away, double slope)
    {
        var n = away.Length;
        if (double.IsInfinity(slope) || n == 0)
        {
            return new(0, 0, slope > 0 ? -1 : 1);
        }

        return new Vector3(away.X / n, away.Y / n, -slope).ToUnit();
    }

    private static Vector3 Slanted(Slab s, Vector3 d, int kind, Vector3 g)
    {
        if (kind is 1 or 2 && Math.Abs((g.X * g.X) + (g.Y * g.Y) - (Rim(s, kind) * Rim(s, kind))) <= 1e-6 * (1 + Rim(s, kind)))
        {
            var tangent = new Vector3(-g.Y, g.X, 0);
            var n = tangent.Cross(d).ToUnit();
            return n.Dot(new Vector3(g.X, g.Y, 0)) >= 0 ? n : -n;
        }

        if (kind is 1 or 2)
        {
            return new(0, 0, kind == 1 ? -1 : 1);
        }

        var z = Math.Clamp(g.Z, s.Z0, s.Z1);
        return kind == 3
            ? -Flank(new Point2(g.X, g.Y), s.InnerSlopeAt(z))
            : Flank(new Point2(g.X, g.Y), s.SlopeAt(z));
    }

    private static double Rim(Slab s, int kind) => kind == 1 ? s.R0 : s.R1;

    // The place of a slanted path from which the cutter touches the point: where its signed miss is least.
    private static Point3 Contact(Slab s, CutterPath path, int kind, Point3 at)
    {
        var d = path.To - path.From;
        var q = at - path.From;
        double lo = 0, hi = 1;
        if (!Box3.Slab(q.Z, -d.Z, s.Z0, s.Z1, ref lo, ref hi))
        {
            lo = hi = Math.Clamp((q.Z - ((s.Z0 + s.Z1) / 2)) / d.Z, 0, 1);
        }

        if (kind is 1 or 2)
        {
            var rim = Math.Clamp((q.Z - (kind == 1 ? s.Z0 : s.Z1)) / d.Z, 0, 1);
            return path.At(rim);
        }

        const int steps = 64;
        var best = lo;
        var least = double.PositiveInfinity;
        double a = lo, b = hi;
        for (var round = 0; round < 4; round++)
        {
            for (var i = 0; i <= steps; i++)
            {
                var share = a + ((b - a) * i / steps);
                var g = q - (d * share);
                var rho = Math.Sqrt((g.X * g.X) + (g.Y * g.Y));
                var z = Math.Clamp(g.Z, s.Z0, s.Z1);
                var miss = kind == 3 ? Math.Abs(rho - s.InnerAt(z)) : rho - s.RadiusAt(z);
                if (miss < least)
                {
                    (best, least) = (share, miss);
                }
            }

            var step = (b - a) / steps;
            (a, b) = (Math.Max(lo, best - step), Math.Min(hi, best + step));
        }

        return path.At(best);
    }
}
