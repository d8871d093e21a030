using System.Numerics;
using System.Runtime.InteropServices;

namespace Handwheel.Solids.Grids;

// Columns taken off a strip in one passage from the lowest floor up. At a height, what is gone is the union of the plan sections of all columns whose
// floor is lower: so each column is worked out once, against what is left of sixteen lines, and each row of level rays is written once, from what is left
// at its height. An upright ray ends at the floor of the first column that takes its place.
internal sealed class FloorSweep
{
    private const int Size = RaySet.BlockSize;
    private readonly LinesLeft left = new();
    private readonly double[] bareLo = new double[Size];
    private readonly double[] bareHi = new double[Size];
    private readonly double[] lo = new double[Size];
    private readonly double[] hi = new double[Size];
    private readonly double[]?[] more = new double[]?[Size];
    private readonly List<double> scratch = [];
    private GridStrip strip = null!;
    private bool isSame;
    private bool hasMore;
    private int row;
    private int leastX;
    private int mostX;

    // Worked by one cut after the other; lent to the strip that runs this.
    internal Laterals Laterals { get; } = new();

    internal void Run(GridStrip on, Column[] columns)
    {
        strip = on;
        var (from, to) = on.Extent();
        left.Start(on.Count, from, to);
        (isSame, row, leastX, mostX) = (false, 0, int.MaxValue, -1);
        double near = on.Across[on.First], far = on.Across[on.First + on.Count - 1];
        foreach (ref readonly var column in columns.AsSpan())
        {
            var (acrossLo, acrossHi, alongLo, alongHi) = on.AlongY
                ? (column.Bounds.Min.X, column.Bounds.Max.X, column.Bounds.Min.Y, column.Bounds.Max.Y)
                : (column.Bounds.Min.Y, column.Bounds.Max.Y, column.Bounds.Min.X, column.Bounds.Max.X);
            if (acrossHi >= near && acrossLo <= far && alongLo < left.Most && alongHi > left.Least)
            {
                Take(column);
            }
        }

        if (left.Touched != 0)
        {
            WriteRows(double.PositiveInfinity);
            on.SummariseSwept(leastX, mostX);
        }
    }

    private void Take(in Column column)
    {
        if (column.Path.Radius > column.Radius)
        {
            var hole = strip.Hole(column.Path, column.Radius);
            if (left.Least > hole.From && left.Most < hole.To)
            {
                return;
            }
        }

        Laterals.Work(column.Radius, column.Path, strip.AlongY, strip.Lines);
        for (var part = 0; part < Laterals.Parts; part++)
        {
            if (Laterals.Meets(part, left.Least, left.Most))
            {
                TakeEach(Laterals.From(part), Laterals.To(part), column.Floor);
            }
        }
    }

    private void TakeEach(ReadOnlySpan<double> from, ReadOnlySpan<double> to, double floor)
    {
        for (var met = left.Met(from, to); met != 0; met &= met - 1)
        {
            var i = BitOperations.TrailingZeroCount(met);
            Take(i, from[i], to[i], floor);
        }
    }

    private void Take(int line, double a, double b, double floor)
    {
        WriteRows(floor);
        if (!strip.AlongY)
        {
            var pieces = left.Of(line);
            for (var i = 0; i < pieces.Length; i += 2)
            {
                if (a < pieces[i + 1] && b > pieces[i])
                {
                    LowerUprights(line, a, b, pieces[i], pieces[i + 1], floor);
                }
            }
        }

        isSame &= !left.Take(line, a, b);
    }

    // The upright rays within the open a..b and the closed first..last end at the floor.
    private void LowerUprights(int line, double a, double b, double first, double last, double floor)
    {
        var set = strip.Uprights;
        var i = strip.IndexBefore(Math.Max(a, first));
        var xs = strip.Xs;
        while (i < xs.Length && (xs[i] <= a || xs[i] < first))
        {
            i++;
        }

        leastX = Math.Min(leastX, i);
        for (; i < xs.Length && xs[i] < b && xs[i] <= last; i++)
        {
            var ray = (i * set.Columns) + strip.First + line;
            if (set.More[ray] is not null)
            {
                _ = floor < set.Hi[ray] && set.Take(ray, floor, double.PositiveInfinity, null, 2);
            }
            else if (floor <= set.Lo[ray])
            {
                set.SetEmpty(ray);
            }
            else if (floor < set.Hi[ray])
            {
                set.Hi[ray] = floor;
            }
        }

        mostX = Math.Max(mostX, i - 1);
    }

    // Writes the rows up to a height, as far as they are not written yet.
    private void WriteRows(double height)
    {
        for (var heights = strip.Heights; row < heights.Length && heights[row] <= height; row++)
        {
            if (left.Touched != 0)
            {
                WriteRow();
            }
        }
    }

    private void WriteRow()
    {
        var set = strip.Level;
        var start = (row * set.Columns) + strip.First;
        Span<double> los = set.Lo.AsSpan(start, strip.Count), his = set.Hi.AsSpan(start, strip.Count);
        if (isSame && IsAsBefore(los, his, set.More.AsSpan(start, strip.Count)))
        {
            lo.AsSpan(0, strip.Count).CopyTo(los);
            hi.AsSpan(0, strip.Count).CopyTo(his);
            if (hasMore)
            {
                more.AsSpan(0, strip.Count).CopyTo(set.More.AsSpan(start));
            }

            set.CopySummary(row, strip.Block);
            return;
        }

        los.CopyTo(bareLo);
        his.CopyTo(bareHi);
        (isSame, hasMore) = (true, false);
        for (var i = 0; i < strip.Count; i++)
        {
            isSame &= set.More[start + i] is null;
            if ((left.Touched & (1u << i)) != 0 && los[i] < his[i])
            {
                Meet(set, start + i, left.Of(i));
            }

            (lo[i], hi[i], more[i]) = (set.Lo[start + i], set.Hi[start + i], set.More[start + i]);
            hasMore |= more[i] is not null;
        }

        set.Summarise(row, strip.Block);
    }

    // Whether the row is, before it is cut, as the one below it was.
    private bool IsAsBefore(ReadOnlySpan<double> los, ReadOnlySpan<double> his, ReadOnlySpan<double[]?> lists) =>
        MemoryMarshal.Cast<double, long>(los).SequenceEqual(MemoryMarshal.Cast<double, long>(bareLo.AsSpan(0, los.Length)))
        && MemoryMarshal.Cast<double, long>(his).SequenceEqual(MemoryMarshal.Cast<double, long>(bareHi.AsSpan(0, los.Length)))
        && AreNone(lists);

    private static bool AreNone(ReadOnlySpan<double[]?> lists)
    {
        foreach (var list in lists)
        {
            if (list is not null)
            {
                return false;
            }
        }

        return true;
    }

    // What a ray and the intervals of its line share.
    private void Meet(RaySet set, int ray, ReadOnlySpan<double> kept)
    {
        scratch.Clear();
        for (int i = 0, j = 0, n = set.CountOf(ray); i < n && j < kept.Length;)
        {
            var (from, to) = set.IntervalOf(ray, i);
            double a = Math.Max(from, kept[j]), b = Math.Min(to, kept[j + 1]);
            if (a < b)
            {
                scratch.Add(a);
                scratch.Add(b);
            }

            if (to < kept[j + 1])
            {
                i++;
            }
            else
            {
                j += 2;
            }
        }

        set.SetPairs(ray, CollectionsMarshal.AsSpan(scratch));
    }
}
