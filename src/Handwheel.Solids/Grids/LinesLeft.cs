using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Handwheel.Solids.Grids;

// For up to sixteen neighbouring lines the places that no column of a FloorSweep has taken yet, as sorted closed intervals.
// Cuts are open, so two that touch leave a single place, which is kept. Hull and widest gap stand beside them: most columns are passed by at four lines a time.
internal sealed class LinesLeft
{
    private const int Size = RaySet.BlockSize;

    private readonly double[] lo = new double[Size];
    private readonly double[] hi = new double[Size];
    private readonly double[] gapLo = new double[Size];
    private readonly double[] gapHi = new double[Size];
    private readonly double[][] pieces = [.. Enumerable.Range(0, Size).Select(_ => new double[8])];
    private readonly int[] counts = new int[Size];

    // Least and greatest place left on any line.
    internal double Least { get; private set; }

    internal double Most { get; private set; }

    internal bool IsEmpty => !(Least <= Most);

    // Lines that were ever cut, a bit a line.
    internal uint Touched { get; private set; }

    // Lo and hi: between them lies all that any question is asked about.
    internal void Start(int lines, double from, double to)
    {
        Touched = 0;
        (Least, Most) = (from, to);
        for (var i = 0; i < Size; i++)
        {
            counts[i] = i < lines ? 1 : 0;
            (pieces[i][0], pieces[i][1]) = (from, to);
            Summarise(i);
        }
    }

    // The intervals of a line, pair by pair.
    internal ReadOnlySpan<double> Of(int line) => pieces[line].AsSpan(0, 2 * counts[line]);

    // Which lines' intervals from..to may take something; exact for lines with no more than one gap.
    internal uint Met(ReadOnlySpan<double> from, ReadOnlySpan<double> to)
    {
        uint met = 0;
        for (var i = 0; i < Size; i += 4)
        {
            var a = Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(from), (nuint)i);
            var b = Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(to), (nuint)i);
            var hull = Vector256.LessThan(a, Vector256.LoadUnsafe(ref hi[0], (nuint)i)) & Vector256.GreaterThan(b, Vector256.LoadUnsafe(ref lo[0], (nuint)i));
            var gap = Vector256.GreaterThanOrEqual(a, Vector256.LoadUnsafe(ref gapLo[0], (nuint)i))
                & Vector256.LessThanOrEqual(b, Vector256.LoadUnsafe(ref gapHi[0], (nuint)i));
            met |= Vector256.AndNot(hull, gap).ExtractMostSignificantBits() << i;
        }

        return met;
    }

    // Takes the open interval a..b off a line. True when something was taken.
    internal bool Take(int line, double a, double b)
    {
        var p = pieces[line];
        int n = 2 * counts[line], m = 0;
        while (m < n && !(a < p[m + 1] && b > p[m]))
        {
            m += 2;
        }

        if (m == n)
        {
            return false;
        }

        var e = m;
        while (e + 2 < n && b > p[e + 2])
        {
            e += 2;
        }

        Replace(line, m, e, a, b);
        Touched |= 1u << line;
        Summarise(line);
        Bound();
        return true;
    }

    private void Bound()
    {
        Vector256<double> los = Vector256.LoadUnsafe(ref lo[0]), his = Vector256.LoadUnsafe(ref hi[0]);
        for (var i = 4; i < Size; i += 4)
        {
            los = Vector256.MinNative(los, Vector256.LoadUnsafe(ref lo[0], (nuint)i));
            his = Vector256.MaxNative(his, Vector256.LoadUnsafe(ref hi[0], (nuint)i));
        }

        Least = Math.Min(Math.Min(los[0], los[1]), Math.Min(los[2], los[3]));
        Most = Math.Max(Math.Max(his[0], his[1]), Math.Max(his[2], his[3]));
    }

    // The intervals m..e (indices of their pairs) are met: what stands left of a and right of b stays.
    private void Replace(int line, int m, int e, double a, double b)
    {
        var p = pieces[line];
        double first = p[m], last = p[e + 1];
        var n = 2 * counts[line];
        var kept = (first <= a ? 2 : 0) + (b <= last ? 2 : 0);
        var shift = kept - (e - m + 2);
        if (n + shift > p.Length)
        {
            Array.Resize(ref pieces[line], 2 * p.Length);
            p = pieces[line];
        }

        Array.Copy(p, e + 2, p, e + 2 + shift, n - e - 2);
        if (first <= a)
        {
            (p[m], p[m + 1]) = (first, a);
            m += 2;
        }

        if (b <= last)
        {
            (p[m], p[m + 1]) = (b, last);
        }

        counts[line] += shift / 2;
    }

    private void Summarise(int line)
    {
        var p = Of(line);
        (gapLo[line], gapHi[line]) = (double.PositiveInfinity, double.NegativeInfinity);
        if (p.Length == 0)
        {
            (lo[line], hi[line]) = (double.PositiveInfinity, double.NegativeInfinity);
            return;
        }

        (lo[line], hi[line]) = (p[0], p[^1]);
        var widest = -1.0;
        for (var i = 1; i + 1 < p.Length; i += 2)
        {
            if (p[i + 1] - p[i] > widest)
            {
                widest = p[i + 1] - p[i];
                (gapLo[line], gapHi[line]) = (p[i], p[i + 1]);
            }
        }
    }
}
