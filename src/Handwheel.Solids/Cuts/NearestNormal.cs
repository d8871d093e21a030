using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cuts;

// Which of several surfaces that pass near a place is the one that bounds the solid there: the nearest that parts solid from none. Where more than one passes
// as near (a place of one may lie in another's plane by chance), the one that goes on parting them a little way off to the most sides.
internal static class NearestNormal
{
    // What is nearer than this is as near.
    private const double Alike = 1e-7;

    // How far off the surface, and how far along it, it is asked.
    private const double Off = 1e-7;
    private const double Along = 1e-5;

    internal static (Vector3 Normal, double Miss)? Of(List<(double Miss, Vector3 Normal)> found, Func<Point3, bool> holds, Point3 at)
    {
        found.Sort(static (a, b) => a.Miss.CompareTo(b.Miss));
        (Vector3 Normal, double Miss)? best = null;
        var most = -1;
        foreach (var (miss, n) in found)
        {
            if (best is { } known && miss > known.Miss + Alike)
            {
                break;
            }

            var off = n * (Off + (2 * miss));
            bool ahead = holds(at + off), behind = holds(at - off);
            if (!(n.Length > 0.5) || ahead == behind)
            {
                continue;
            }

            var sides = Sides(holds, at, n, off, ahead);
            if (sides > most)
            {
                (best, most) = ((ahead ? -n : n, miss), sides);
            }
        }

        return best;
    }

    private static int Sides(Func<Point3, bool> holds, Point3 at, Vector3 n, Vector3 off, bool ahead)
    {
        var u = n.Cross(Math.Abs(n.Z) < 0.9 ? Vector3.UnitZ : Vector3.UnitX).ToUnit() * Along;
        var v = n.Cross(u);
        var count = 0;
        foreach (var aside in (ReadOnlySpan<Vector3>)[u, -u, v, -v])
        {
            count += holds(at + aside + off) == ahead && holds(at + aside - off) != ahead ? 1 : 0;
        }

        return count;
    }
}
