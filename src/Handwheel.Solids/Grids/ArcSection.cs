using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// Where a plan line along X (or Y) lies closer than r to an arc: the discs at its ends, and the ring between |P - r| and P + r within the arc's wedge.
internal static class ArcSection
{
    internal static void Sound(double r, CutterPath path, bool alongY, double line, SpanList into)
    {
        Point2 c = path.Centre, a = path.From.Plan, b = path.To.Plan;
        Disc(a, r, alongY, line, into);
        Disc(b, r, alongY, line, into);
        var h = alongY ? line - c.X : line - c.Y;
        var (along, big, small) = (alongY ? c.Y : c.X, path.Radius + r, path.Radius - r);
        if (!Chord(big, h, out var outer))
        {
            return;
        }

        if (small > 0 && Chord(small, h, out var inner))
        {
            Wedge(path, alongY, h, along, -outer, -inner, into);
            Wedge(path, alongY, h, along, inner, outer, into);
        }
        else
        {
            Wedge(path, alongY, h, along, -outer, outer, into);
        }
    }

    private static bool Chord(double radius, double h, out double half)
    {
        var c = (radius - h) * (radius + h);
        half = c > 0 ? Math.Sqrt(c) : 0;
        return half > 0 && Math.Abs(h) < radius;
    }

    private static void Disc(Point2 at, double r, bool alongY, double line, SpanList into)
    {
        var (x, y) = alongY ? (at.Y, at.X) : (at.X, at.Y);
        if (Chord(r, line - y, out var half))
        {
            into.Add(x - half, x + half, 0, 0);
        }
    }

    // The stretch lo..hi (from the centre) within the arc's angles: both half planes for up to half a turn, either for more.
    private static void Wedge(CutterPath path, bool alongY, double h, double centre, double lo, double hi, SpanList into)
    {
        var turn = Math.Abs(path.Sweep);
        if (turn >= Turn.Full)
        {
            into.Add(centre + lo, centre + hi, 0, 0);
            return;
        }

        var (first, last) = path.Sweep > 0 ? (path.StartSpoke, path.EndSpoke) : (path.EndSpoke, path.StartSpoke);

        // A place is (t, h), or (h, t) along Y; first x place >= 0 and place x last >= 0, each linear in t.
        var (c0, c1) = alongY ? (-first.Y * h, first.X) : (first.X * h, -first.Y);
        var (d0, d1) = alongY ? (last.Y * h, -last.X) : (-last.X * h, last.Y);
        double a = lo, b = hi, p = lo, q = hi;
        var one = Box3.Slab(c0, c1, 0, double.PositiveInfinity, ref a, ref b);
        if (turn <= Math.PI)
        {
            if (one && Box3.Slab(d0, d1, 0, double.PositiveInfinity, ref a, ref b))
            {
                into.Add(centre + a, centre + b, 0, 0);
            }

            return;
        }

        if (one)
        {
            into.Add(centre + a, centre + b, 0, 0);
        }

        if (Box3.Slab(d0, d1, 0, double.PositiveInfinity, ref p, ref q))
        {
            into.Add(centre + p, centre + q, 0, 0);
        }
    }
}
