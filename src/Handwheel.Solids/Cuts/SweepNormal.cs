using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cuts;

// Outward unit normals of a cutter swept at constant height, in the cut's frame; on a slope see SlantedNormal.
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
        return kind is 1 or 2 ? new(0, 0, kind == 1 ? -1 : 1) : Level(best, path, kind == 3, at);
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

    internal static Vector3 Flank(Point2 away, double slope)
    {
        var n = away.Length;
        if (double.IsInfinity(slope) || n == 0)
        {
            return new(0, 0, slope > 0 ? -1 : 1);
        }

        return new Vector3(away.X / n, away.Y / n, -slope).ToUnit();
    }
}
