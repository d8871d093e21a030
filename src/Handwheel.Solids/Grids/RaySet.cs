using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// Parallel rays in a lattice of rows by columns; metal on each as one interval, or as a list when there are more.
// Structure of arrays: the hull of each ray's metal in Lo and Hi, the list (pairs) in More where there is one; a list is never written over, rays may share it.
// Every 16 columns of a row share a summary that lets a cut pass them by without looking.
internal sealed class RaySet
{
    internal const int BlockSize = 16;

    internal RaySet(int rows, int columns)
    {
        Rows = rows;
        Columns = columns;
        Blocks = (columns + BlockSize - 1) / BlockSize;
        // Every ray is filled before any is read.
        Lo = GC.AllocateUninitializedArray<double>(rows * columns);
        Hi = GC.AllocateUninitializedArray<double>(rows * columns);
        More = new double[]?[rows * columns];
        BlockLo = new double[rows * Blocks];
        BlockHi = new double[rows * Blocks];
        Tiles = (rows + BlockSize - 1) / BlockSize;
        TileLo = new double[Tiles * Blocks];
        TileHi = new double[Tiles * Blocks];
    }

    internal int Rows { get; }

    internal int Columns { get; }

    internal int Blocks { get; }

    internal double[] Lo { get; }

    internal double[] Hi { get; }

    internal double[]?[] More { get; }

    internal double[] BlockLo { get; }

    internal double[] BlockHi { get; }

    // Summaries of 16 rows of one block.
    internal int Tiles { get; }

    internal double[] TileLo { get; }

    internal double[] TileHi { get; }

    internal RaySet Copy()
    {
        var copy = new RaySet(Rows, Columns);
        Lo.CopyTo(copy.Lo, 0);
        Hi.CopyTo(copy.Hi, 0);
        BlockLo.CopyTo(copy.BlockLo, 0);
        BlockHi.CopyTo(copy.BlockHi, 0);
        TileLo.CopyTo(copy.TileLo, 0);
        TileHi.CopyTo(copy.TileHi, 0);
        More.CopyTo(copy.More, 0);
        return copy;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal bool IsEmpty(int ray) => !(Lo[ray] < Hi[ray]);

    // Sets a ray from sorted disjoint intervals.
    internal void Set(int ray, ReadOnlySpan<Span> spans)
    {
        if (spans.Length == 0)
        {
            SetEmpty(ray);
            return;
        }

        Lo[ray] = spans[0].From;
        Hi[ray] = spans[^1].To;
        More[ray] = null;
        if (spans.Length > 1)
        {
            var pairs = new double[spans.Length * 2];
            for (var i = 0; i < spans.Length; i++)
            {
                pairs[2 * i] = spans[i].From;
                pairs[(2 * i) + 1] = spans[i].To;
            }

            More[ray] = pairs;
        }
    }

    // Sets a ray from sorted disjoint intervals, pair by pair.
    internal void SetPairs(int ray, ReadOnlySpan<double> pairs)
    {
        if (pairs.Length == 0)
        {
            SetEmpty(ray);
            return;
        }

        (Lo[ray], Hi[ray]) = (pairs[0], pairs[^1]);
        More[ray] = pairs.Length == 2 ? null : pairs.ToArray();
    }

    internal void SetEmpty(int ray)
    {
        Lo[ray] = double.PositiveInfinity;
        Hi[ray] = double.NegativeInfinity;
        More[ray] = null;
    }

    internal void Summarise(int row, int block)
    {
        var from = (row * Columns) + (block * BlockSize);
        var to = (row * Columns) + Math.Min(Columns, (block + 1) * BlockSize);
        var i = from;
        Vector256<double> los = Vector256.Create(double.PositiveInfinity), his = Vector256.Create(double.NegativeInfinity);
        for (; i + 4 <= to; i += 4)
        {
            los = Vector256.MinNative(los, Vector256.LoadUnsafe(ref Lo[0], (nuint)i));
            his = Vector256.MaxNative(his, Vector256.LoadUnsafe(ref Hi[0], (nuint)i));
        }

        double lo = Math.Min(Math.Min(los[0], los[1]), Math.Min(los[2], los[3])), hi = Math.Max(Math.Max(his[0], his[1]), Math.Max(his[2], his[3]));
        for (; i < to; i++)
        {
            lo = Math.Min(lo, Lo[i]);
            hi = Math.Max(hi, Hi[i]);
        }

        BlockLo[(row * Blocks) + block] = lo;
        BlockHi[(row * Blocks) + block] = hi;
    }

    // The summary of the row before serves this one too.
    internal void CopySummary(int row, int block) =>
        SetSummary(row, block, BlockLo[((row - 1) * Blocks) + block], BlockHi[((row - 1) * Blocks) + block]);

    internal void SetSummary(int row, int block, double lo, double hi) =>
        (BlockLo[(row * Blocks) + block], BlockHi[(row * Blocks) + block]) = (lo, hi);

    internal void SummariseTile(int tile, int block)
    {
        double lo = double.PositiveInfinity, hi = double.NegativeInfinity;
        var end = Math.Min(Rows, (tile + 1) * BlockSize);
        for (var row = tile * BlockSize; row < end; row++)
        {
            lo = Math.Min(lo, BlockLo[(row * Blocks) + block]);
            hi = Math.Max(hi, BlockHi[(row * Blocks) + block]);
        }

        TileLo[(tile * Blocks) + block] = lo;
        TileHi[(tile * Blocks) + block] = hi;
    }

    // Takes the open interval a..b off a ray that it is known to meet. True when the ray changed.
    internal bool Take(int ray, double a, double b, List<RayChange>? log, int set)
    {
        double lo = Lo[ray], hi = Hi[ray];
        var more = More[ray];
        if (more is not null)
        {
            return TakeFromMany(ray, more, a, b, log, set);
        }

        log?.Add(new(set, ray, lo, hi, null, Math.Max(a, lo), Math.Min(b, hi)));
        if (a <= lo)
        {
            if (b >= hi)
            {
                SetEmpty(ray);
            }
            else
            {
                Lo[ray] = b;
            }
        }
        else if (b >= hi)
        {
            Hi[ray] = a;
        }
        else
        {
            More[ray] = [lo, a, b, hi];
        }

        return true;
    }

    // The interval at a place of the ray: its pair index, -1 for none.
    internal int IndexAt(int ray, double t)
    {
        if (!(Lo[ray] <= t && t <= Hi[ray]))
        {
            return -1;
        }

        var more = More[ray];
        if (more is null)
        {
            return 0;
        }

        for (var i = 0; i < more.Length; i += 2)
        {
            if (t >= more[i] && t <= more[i + 1])
            {
                return i / 2;
            }
        }

        return -1;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal int CountOf(int ray) => IsEmpty(ray) ? 0 : (More[ray]?.Length / 2) ?? 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal (double Lo, double Hi) IntervalOf(int ray, int index) =>
        More[ray] is { } more ? (more[2 * index], more[(2 * index) + 1]) : (Lo[ray], Hi[ray]);

    private bool TakeFromMany(int ray, double[] more, double a, double b, List<RayChange>? log, int set)
    {
        // Most that meet the hull meet no metal: find the first interval that is met, or leave.
        var met = 0;
        while (met < more.Length && !(a < more[met + 1] && b > more[met]))
        {
            met += 2;
        }

        if (met == more.Length)
        {
            return false;
        }

        Span<double> kept = more.Length <= 62 ? stackalloc double[64] : new double[more.Length + 2];
        var n = Carve(more, met, a, b, kept);
        log?.Add(new(set, ray, Lo[ray], Hi[ray], more, Math.Max(a, Lo[ray]), Math.Min(b, Hi[ray])));
        SetPairs(ray, kept[..n]);
        return true;
    }

    // The pairs less a..b, the first of them that is met known; how many numbers are left.
    private static int Carve(double[] more, int met, double a, double b, Span<double> kept)
    {
        more.AsSpan(0, met).CopyTo(kept);
        var n = met;
        for (var i = met; i < more.Length; i += 2)
        {
            double lo = more[i], hi = more[i + 1];
            if (b <= lo || a >= hi)
            {
                kept[n++] = lo;
                kept[n++] = hi;
                continue;
            }

            if (lo < a)
            {
                kept[n++] = lo;
                kept[n++] = a;
            }

            if (b < hi)
            {
                kept[n++] = b;
                kept[n++] = hi;
            }
        }

        return n;
    }
}
