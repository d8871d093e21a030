using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// The plan section {distance to a level path < r} of a sweep on up to 16 neighbouring lines along X (or along Y):
// worked out once and used for every height at which the cutter has that radius.
internal sealed class Laterals
{
    private readonly SpanList scratch = new();

    internal double[] From { get; } = new double[RaySet.BlockSize];

    internal double[] To { get; } = new double[RaySet.BlockSize];

    // A second interval of each line where an arc leaves one.
    internal double[] From2 { get; } = new double[RaySet.BlockSize];

    internal double[] To2 { get; } = new double[RaySet.BlockSize];

    internal bool HasSecond { get; private set; }

    // A third and further ones (line, from, to).
    internal List<(int Line, double From, double To)> More { get; } = [];

    internal double Least { get; private set; }

    internal double Most { get; private set; }

    // Bounds of the first intervals, and of the others.
    private double least1;
    private double most1;
    private double least2;
    private double most2;

    internal bool IsEmpty => !(Least < Most);

    // Whether any interval may meet metal between two places.
    internal bool Meets(double lo, double hi) => (least1 < hi && most1 > lo) || (least2 < hi && most2 > lo);

    // Which of the lines' intervals (first or second) meet the metal of their rays, a bit a line.
    internal static uint Met(double[] from, double[] to, ReadOnlySpan<double> los, ReadOnlySpan<double> his)
    {
        uint met = 0;
        var i = 0;
        for (; i + 4 <= los.Length; i += 4)
        {
            var hit = Vector256.LessThan(Vector256.LoadUnsafe(ref from[0], (nuint)i), Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(his), (nuint)i))
                & Vector256.GreaterThan(Vector256.LoadUnsafe(ref to[0], (nuint)i), Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(los), (nuint)i));
            met |= hit.ExtractMostSignificantBits() << i;
        }

        for (; i < los.Length; i++)
        {
            met |= from[i] < his[i] && to[i] > los[i] ? 1u << i : 0;
        }

        return met;
    }

    // Which of the lines have the place x in an interval and metal between two heights on the ray there.
    internal static uint MetAt(double[] from, double[] to, double x, double z0, double z1, ReadOnlySpan<double> los, ReadOnlySpan<double> his)
    {
        uint met = 0;
        var i = 0;
        Vector256<double> at = Vector256.Create(x), low = Vector256.Create(z0), high = Vector256.Create(z1);
        for (; i + 4 <= los.Length; i += 4)
        {
            var hit = Vector256.LessThan(Vector256.LoadUnsafe(ref from[0], (nuint)i), at)
                & Vector256.GreaterThan(Vector256.LoadUnsafe(ref to[0], (nuint)i), at)
                & Vector256.LessThan(low, Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(his), (nuint)i))
                & Vector256.GreaterThan(high, Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(los), (nuint)i));
            met |= hit.ExtractMostSignificantBits() << i;
        }

        for (; i < los.Length; i++)
        {
            met |= from[i] < x && x < to[i] && z0 < his[i] && z1 > los[i] ? 1u << i : 0;
        }

        return met;
    }

    // Lines across at the given coordinates: along X at y (alongY false), or along Y at x.
    internal void Work(double radius, CutterPath path, bool alongY, ReadOnlySpan<double> lines)
    {
        Least = double.PositiveInfinity;
        Most = double.NegativeInfinity;
        More.Clear();
        From2.AsSpan().Fill(double.PositiveInfinity);
        To2.AsSpan().Fill(double.NegativeInfinity);
        HasSecond = false;
        for (var i = 0; i < lines.Length; i++)
        {
            if (path.Kind == PathKind.Arc)
            {
                OnArc(radius, path, alongY, lines[i], i);
            }
            else
            {
                OnStraight(radius, path, alongY, lines[i], i);
            }

            if (From[i] < To[i])
            {
                Least = Math.Min(Least, From[i]);
                Most = Math.Max(Most, To[i]);
            }
        }

        (least1, most1, least2, most2) = (Least, Most, double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; HasSecond && i < lines.Length; i++)
        {
            least2 = Math.Min(least2, From2[i]);
            most2 = Math.Max(most2, To2[i]);
        }

        foreach (var (_, a, b) in More)
        {
            least2 = Math.Min(least2, a);
            most2 = Math.Max(most2, b);
        }

        Least = Math.Min(Least, least2);
        Most = Math.Max(Most, most2);
    }

    // Two discs and the band between them: a convex section, one interval.
    private void OnStraight(double r, CutterPath path, bool alongY, double line, int i)
    {
        double ax = path.From.X, ay = path.From.Y, bx = path.To.X, by = path.To.Y;
        if (alongY)
        {
            (ax, ay, bx, by) = (ay, ax, by, bx);
        }

        double lo = double.PositiveInfinity, hi = double.NegativeInfinity;
        if (ay == by || ax == bx)
        {
            // Along the line or square to it: one disc, drawn out to both ends.
            Disc(ax, line - Math.Clamp(line, Math.Min(ay, by), Math.Max(ay, by)), r, ref lo, ref hi);
            From[i] = lo + Math.Min(0, bx - ax);
            To[i] = hi + Math.Max(0, bx - ax);
            return;
        }

        Disc(ax, line - ay, r, ref lo, ref hi);
        double dx = bx - ax, dy = by - ay;
        Disc(bx, line - by, r, ref lo, ref hi);
        Band(ax, line - ay, dx, dy, r, ref lo, ref hi);
        From[i] = lo;
        To[i] = hi;
    }

    private static void Disc(double x, double h, double r, ref double lo, ref double hi)
    {
        var c = (r - h) * (r + h);
        if (c > 0 && Math.Abs(h) < r)
        {
            var half = Math.Sqrt(c);
            lo = Math.Min(lo, x - half);
            hi = Math.Max(hi, x + half);
        }
    }

    // Places x on the line with |across| < r and 0 <= along <= length.
    private static void Band(double ax, double h, double dx, double dy, double r, ref double lo, ref double hi)
    {
        var n = Math.Sqrt((dx * dx) + (dy * dy));
        double ex = dx / n, ey = dy / n, a = double.NegativeInfinity, b = double.PositiveInfinity;
        if (!Box3.Slab(h * ey, ex, 0, n, ref a, ref b))
        {
            return;
        }

        // across = ex * h - ey * x
        if (ey == 0)
        {
            if (!(Math.Abs(ex * h) < r))
            {
                return;
            }
        }
        else if (!Box3.Slab(ex * h, -ey, -r, r, ref a, ref b))
        {
            return;
        }

        lo = Math.Min(lo, ax + a);
        hi = Math.Max(hi, ax + b);
    }

    private void OnArc(double r, CutterPath path, bool alongY, double line, int i)
    {
        From[i] = double.PositiveInfinity;
        To[i] = double.NegativeInfinity;
        var near = Math.Abs(line - (alongY ? path.Centre.X : path.Centre.Y));
        if (near >= path.Radius + r)
        {
            return;
        }

        if (path.IsFullTurn && Ring(r, path, alongY, line, i))
        {
            return;
        }

        scratch.Clear();
        ArcSection.Sound(r, path, alongY, line, scratch);
        scratch.Normalise();
        for (var k = 0; k < scratch.Count; k++)
        {
            if (k == 0)
            {
                (From[i], To[i]) = (scratch[0].From, scratch[0].To);
            }
            else if (k == 1)
            {
                (From2[i], To2[i], HasSecond) = (scratch[1].From, scratch[1].To, true);
            }
            else
            {
                More.Add((i, scratch[k].From, scratch[k].To));
            }
        }
    }

    // A whole ring: one chord, or two with the hole between.
    private bool Ring(double r, CutterPath path, bool alongY, double line, int i)
    {
        var (c, along) = alongY ? (path.Centre.X, path.Centre.Y) : (path.Centre.Y, path.Centre.X);
        double h = line - c, big = path.Radius + r, small = path.Radius - r;
        var outer = Math.Sqrt(Math.Max(0, (big - h) * (big + h)));
        if (!(outer > 0))
        {
            return false;
        }

        From[i] = along - outer;
        To[i] = along + outer;
        if (small > Math.Abs(h))
        {
            var inner = Math.Sqrt((small - h) * (small + h));
            To[i] = along - inner;
            (From2[i], To2[i], HasSecond) = (along + inner, along + outer, true);
        }

        return true;
    }
}
