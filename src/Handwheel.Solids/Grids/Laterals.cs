using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Grids;

// The plan section {distance to a level path < r} of a sweep on 16 neighbouring lines along X (or along Y): worked out once, four lines at a time, and used for
// every height at which the cutter has that radius. It is a union of parts, each an open interval a line at most; they may overlap.
internal sealed class Laterals
{
    private const int Size = RaySet.BlockSize;
    private const int MostParts = 6;
    private readonly double[] from = new double[MostParts * Size];
    private readonly double[] to = new double[MostParts * Size];
    private readonly double[] least = new double[MostParts];
    private readonly double[] most = new double[MostParts];
    private readonly int[] kept = new int[MostParts];
    private int used;

    internal int Parts { get; private set; }

    internal double Least { get; private set; }

    internal double Most { get; private set; }

    internal bool IsEmpty => Parts == 0;

    // A part's intervals, a line each; from plus infinity to minus infinity where it has none.
    internal ReadOnlySpan<double> From(int part) => from.AsSpan(kept[part] * Size, Size);

    internal ReadOnlySpan<double> To(int part) => to.AsSpan(kept[part] * Size, Size);

    // Whether any interval of a part may meet metal between two places.
    internal bool Meets(int part, double lo, double hi) => least[part] < hi && most[part] > lo;

    internal bool Meets(double lo, double hi)
    {
        for (var part = 0; part < Parts; part++)
        {
            if (Meets(part, lo, hi))
            {
                return true;
            }
        }

        return false;
    }

    // Which of the lines' intervals meet the metal of their rays, a bit a line.
    internal static uint Met(ReadOnlySpan<double> from, ReadOnlySpan<double> to, ReadOnlySpan<double> los, ReadOnlySpan<double> his)
    {
        uint met = 0;
        var i = 0;
        for (; i + 4 <= los.Length; i += 4)
        {
            var hit = Vector256.LessThan(At(from, i), At(his, i)) & Vector256.GreaterThan(At(to, i), At(los, i));
            met |= hit.ExtractMostSignificantBits() << i;
        }

        for (; i < los.Length; i++)
        {
            met |= from[i] < his[i] && to[i] > los[i] ? 1u << i : 0;
        }

        return met;
    }

    // Which of the lines have the place x in an interval of any part and metal between two heights on the ray there.
    internal uint MetAt(double x, double z0, double z1, ReadOnlySpan<double> los, ReadOnlySpan<double> his)
    {
        uint met = 0;
        for (var part = 0; part < Parts; part++)
        {
            if (Meets(part, x, x))
            {
                met |= MetAt(From(part), To(part), x, z0, z1, los, his);
            }
        }

        return met;
    }

    // 16 lines across at the given coordinates: along X at y (alongY false), or along Y at x.
    internal void Work(double radius, CutterPath path, bool alongY, double[] lines)
    {
        (Parts, used) = (0, 0);
        (Least, Most) = (double.PositiveInfinity, double.NegativeInfinity);
        if (path.Kind != PathKind.Arc)
        {
            Straight(radius, path, alongY, lines);
        }
        else if (path.IsFullTurn)
        {
            Ring(radius, path, alongY, lines);
        }
        else
        {
            Arc(radius, path, alongY, lines);
        }
    }

    private static uint MetAt(ReadOnlySpan<double> from, ReadOnlySpan<double> to, double x, double z0, double z1, ReadOnlySpan<double> los, ReadOnlySpan<double> his)
    {
        uint met = 0;
        var i = 0;
        Vector256<double> at = Vector256.Create(x), low = Vector256.Create(z0), high = Vector256.Create(z1);
        for (; i + 4 <= los.Length; i += 4)
        {
            var hit = Vector256.LessThan(At(from, i), at) & Vector256.GreaterThan(At(to, i), at)
                & Vector256.LessThan(low, At(his, i)) & Vector256.GreaterThan(high, At(los, i));
            met |= hit.ExtractMostSignificantBits() << i;
        }

        for (; i < los.Length; i++)
        {
            met |= from[i] < x && x < to[i] && z0 < his[i] && z1 > los[i] ? 1u << i : 0;
        }

        return met;
    }

    private static Vector256<double> At(ReadOnlySpan<double> values, int i) => Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(values), (nuint)i);

    // Two discs and the band between them: a convex section, one part.
    private void Straight(double r, CutterPath path, bool alongY, double[] lines)
    {
        double ax = path.From.X, ay = path.From.Y, bx = path.To.X, by = path.To.Y;
        if (alongY)
        {
            (ax, ay, bx, by) = (ay, ax, by, bx);
        }

        var isSquare = ay == by || ax == bx;
        double dx = bx - ax, dy = by - ay, n = Math.Sqrt((dx * dx) + (dy * dy)), ex = dx / n, ey = dy / n;
        for (var i = 0; i < Size; i += 4)
        {
            var line = At(lines, i);
            Stretch all;
            if (isSquare)
            {
                // Along the lines or square to them: one disc, drawn out to both ends.
                var h = line - Vector256.Min(Vector256.Max(line, Vector256.Create(Math.Min(ay, by))), Vector256.Create(Math.Max(ay, by)));
                all = Stretch.Chord(ax, h, r).Moved(Math.Min(0, dx), Math.Max(0, dx));
            }
            else
            {
                // Along the path lies h ey + t ex, across it h ex - t ey.
                var h = line - Vector256.Create(ay);
                var band = Stretch.Between(h * ey, ex, 0, n).And(Stretch.Between(h * ex, -ey, -r, r)).Proper().Moved(ax, ax);
                all = Stretch.Chord(ax, h, r).Hull(Stretch.Chord(bx, line - Vector256.Create(by), r)).Hull(band);
            }

            Put(0, i, all);
        }

        Keep(1);
    }

    // A whole ring: one chord, or two with the hole between.
    private void Ring(double r, CutterPath path, bool alongY, double[] lines)
    {
        var (c, along) = alongY ? (path.Centre.X, path.Centre.Y) : (path.Centre.Y, path.Centre.X);
        for (var i = 0; i < Size; i += 4)
        {
            var (low, high) = RingParts(At(lines, i) - Vector256.Create(c), path.Radius, r);
            Put(0, i, low.Moved(along, along));
            Put(1, i, high.Moved(along, along));
        }

        Keep(2);
    }

    // A ring on lines at distances from its centre: below the centre and above it; where it has no hole, all in the first.
    private static (Stretch Low, Stretch High) RingParts(Vector256<double> h, double radius, double r)
    {
        Vector256<double> outer = Stretch.HalfChord(h, radius + r), inner = Stretch.HalfChord(h, radius - r);
        var isMet = Vector256.GreaterThan(outer, Vector256<double>.Zero);
        var isHollow = Vector256.GreaterThan(inner, Vector256<double>.Zero);
        var low = new Stretch(-outer, Vector256.ConditionalSelect(isHollow, -inner, outer)).Where(isMet);
        return (low, new Stretch(inner, outer).Where(isMet & isHollow));
    }

    // Discs at both ends, and the ring within the arc's angles: both half planes for up to half a turn, either for more.
    private void Arc(double r, CutterPath path, bool alongY, double[] lines)
    {
        var (c, along) = alongY ? (path.Centre.X, path.Centre.Y) : (path.Centre.Y, path.Centre.X);
        Disc(path.From.Plan, r, alongY, lines);
        Disc(path.To.Plan, r, alongY, lines);
        var (first, last) = path.Sweep > 0 ? (path.StartSpoke, path.EndSpoke) : (path.EndSpoke, path.StartSpoke);
        var isWide = Math.Abs(path.Sweep) > Math.PI;
        for (var i = 0; i < Size; i += 4)
        {
            var h = At(lines, i) - Vector256.Create(c);
            var (low, high) = RingParts(h, path.Radius, r);

            // A place is (t, h), or (h, t) along Y; first x place >= 0 and place x last >= 0, each linear in t.
            var after = alongY
                ? Stretch.Between(h * -first.Y, first.X, 0, double.PositiveInfinity)
                : Stretch.Between(h * first.X, -first.Y, 0, double.PositiveInfinity);
            var before = alongY
                ? Stretch.Between(h * last.Y, -last.X, 0, double.PositiveInfinity)
                : Stretch.Between(h * -last.X, last.Y, 0, double.PositiveInfinity);
            var both = after.And(before);
            Put(0, i, low.And(isWide ? after : both).Proper().Moved(along, along));
            Put(1, i, high.And(isWide ? after : both).Proper().Moved(along, along));
            if (isWide)
            {
                Put(2, i, low.And(before).Proper().Moved(along, along));
                Put(3, i, high.And(before).Proper().Moved(along, along));
            }
        }

        Keep(isWide ? 4 : 2);
    }

    private void Disc(Point2 at, double r, bool alongY, double[] lines)
    {
        var (x, y) = alongY ? (at.Y, at.X) : (at.X, at.Y);
        for (var i = 0; i < Size; i += 4)
        {
            Put(0, i, Stretch.Chord(x, At(lines, i) - Vector256.Create(y), r));
        }

        Keep(1);
    }

    private void Put(int slot, int line, Stretch stretch)
    {
        var proper = stretch.Proper();
        var at = ((used + slot) * Size) + line;
        proper.From.StoreUnsafe(ref from[at]);
        proper.To.StoreUnsafe(ref to[at]);
    }

    // Keeps the next slots as parts, those that hold nothing left out.
    private void Keep(int slots)
    {
        for (; slots > 0; slots--, used++)
        {
            Vector256<double> lo = At(from, used * Size), hi = At(to, used * Size);
            for (var i = 4; i < Size; i += 4)
            {
                lo = Vector256.MinNative(lo, At(from, (used * Size) + i));
                hi = Vector256.MaxNative(hi, At(to, (used * Size) + i));
            }

            var (a, b) = (Math.Min(Math.Min(lo[0], lo[1]), Math.Min(lo[2], lo[3])), Math.Max(Math.Max(hi[0], hi[1]), Math.Max(hi[2], hi[3])));
            if (a < b)
            {
                (kept[Parts], least[Parts], most[Parts]) = (used, a, b);
                (Least, Most) = (Math.Min(Least, a), Math.Max(Most, b));
                Parts++;
            }
        }
    }
}
