using System.Runtime.InteropServices;

namespace Handwheel.Solids.Grids;

// Works cells out. Two neighbouring intervals along X are joined where a ray along Y or Z that crosses both is metal from one to the other.
internal sealed class CellWorker
{
    private const int Size = RaySet.BlockSize;
    private readonly RayGrid grid;
    private readonly RaySet x;
    private readonly List<int> parents = [];
    private readonly List<int> pairs = [];
    private readonly List<LocalPiece> found = [];
    private readonly double origin;
    private readonly double perStep;
    private int cellStart;

    internal CellWorker(RayGrid grid)
    {
        this.grid = grid;
        x = grid.AlongX;
        (origin, perStep) = (grid.Xs[0], 1 / RayGrid.Step(grid.Xs));
    }

    // The local pieces of a cell.
    internal void Label(int row, int block, ref PieceCell cell)
    {
        var first = block * Size;
        cellStart = (row * x.Columns) + first;
        var count = Math.Min(Size, x.Columns - first);
        (cell.Labels, cell.Others, cell.CoreLo, cell.CoreHi) = (null, null, double.PositiveInfinity, double.NegativeInfinity);
        if (!Whole(row, first, count, ref cell))
        {
            InParts(row, first, count, ref cell);
        }
    }

    // Which pieces of a cell are joined to which of the next along Y.
    internal int[] Right(int row, int block, ref readonly PieceCell a, ref readonly PieceCell b)
    {
        if (a.Count == 0 || b.Count == 0)
        {
            return PieceCell.NoPairs;
        }

        var line = ((block + 1) * Size) - 1;
        if (a.First.LastLine == Size - 1 && b.First.FirstLine == 0 && IsCrossedMidway(Math.Max(a.CoreLo, b.CoreLo), Math.Min(a.CoreHi, b.CoreHi), new(line, line + 1, row, row)))
        {
            return PieceCell.FirstPair;
        }

        var ray = (row * x.Columns) + line;
        pairs.Clear();
        Join(new(ray, (a.Labels?.Length ?? 0) - x.CountOf(ray), a.Labels), new(ray + 1, 0, b.Labels), new(line, line + 1, row, row));
        return Kept();
    }

    // Which pieces of a cell are joined to which of the cell above it.
    internal int[] Up(int row, int block, ref readonly PieceCell a, ref readonly PieceCell b)
    {
        if (a.Count == 0 || b.Count == 0)
        {
            return PieceCell.NoPairs;
        }

        if (IsJoinedAtCore(row, block, in a, in b))
        {
            return PieceCell.FirstPair;
        }

        pairs.Clear();
        int first = block * Size, count = Math.Min(Size, x.Columns - first), atA = 0, atB = 0;
        for (var line = first; line < first + count; line++)
        {
            int rayA = (row * x.Columns) + line, rayB = rayA + x.Columns;
            Join(new(rayA, atA, a.Labels), new(rayB, atB, b.Labels), new(line, line, row, row + 1));
            atA += x.CountOf(rayA);
            atB += x.CountOf(rayB);
            if (pairs.Count > 0 && a.Count == 1 && b.Count == 1)
            {
                break;
            }
        }

        return Kept();
    }

    // The usual case: one interval on each of some neighbouring lines and none on the others, and one ray along Y that crosses them all in metal.
    private bool Whole(int row, int first, int count, ref PieceCell cell)
    {
        double core = double.NegativeInfinity, end = double.PositiveInfinity;
        var piece = LocalPiece.None;
        if (HasLists(count))
        {
            return false;
        }

        if (count == Size && LocalPiece.Sixteen(x.Lo.AsSpan(cellStart, Size), x.Hi.AsSpan(cellStart, Size)) is { } sixteen)
        {
            (piece, core, end) = sixteen;
        }
        else if (!Some(count, ref piece, ref core, ref end))
        {
            return false;
        }

        if (piece.LastLine < 0)
        {
            cell.Count = 0;
            return true;
        }

        if (piece.LastLine > piece.FirstLine)
        {
            var i = Middle(core, end);
            if (i < 0 || !Holds(grid.AlongY, (row * grid.AlongY.Columns) + i, grid.Ys[first + piece.FirstLine], grid.Ys[first + piece.LastLine]))
            {
                return false;
            }
        }

        (cell.Count, cell.First, cell.CoreLo, cell.CoreHi) = (1, piece, core, end);
        return true;
    }

    private bool HasLists(int count)
    {
        foreach (var list in x.More.AsSpan(cellStart, count))
        {
            if (list is not null)
            {
                return true;
            }
        }

        return false;
    }

    // Lines with an interval that lie side by side, the others empty.
    private bool Some(int count, ref LocalPiece piece, ref double core, ref double end)
    {
        for (var i = 0; i < count; i++)
        {
            double lo = x.Lo[cellStart + i], hi = x.Hi[cellStart + i];
            if (!(lo < hi))
            {
                continue;
            }

            if (piece.LastLine >= 0 && piece.LastLine != i - 1)
            {
                return false;
            }

            piece.Add(i, lo, hi);
            core = Math.Max(core, lo);
            end = Math.Min(end, hi);
        }

        return true;
    }

    private void InParts(int row, int first, int count, ref PieceCell cell)
    {
        parents.Clear();
        for (var i = 0; i < count; i++)
        {
            var (node, n) = (parents.Count, x.CountOf(cellStart + i));
            for (var k = 0; k < n; k++)
            {
                parents.Add(node + k);
            }

            if (i > 0)
            {
                JoinLines(node - x.CountOf(cellStart + i - 1), node, i, first + i, row);
            }
        }

        Measure(count, ref cell);
    }

    // The intervals of two neighbouring lines of a cell, the nodes of which start at a and b.
    private void JoinLines(int a, int b, int i, int line, int row)
    {
        int rayA = cellStart + i - 1, rayB = cellStart + i, endA = x.CountOf(rayA), endB = x.CountOf(rayB);
        for (int m = 0, n = 0; m < endA && n < endB;)
        {
            var (alo, ahi) = x.IntervalOf(rayA, m);
            var (blo, bhi) = x.IntervalOf(rayB, n);
            int p = Root(a + m), q = Root(b + n);
            if (p != q && Crossed(Math.Max(alo, blo), Math.Min(ahi, bhi), new(line - 1, line, row, row)))
            {
                parents[Math.Max(p, q)] = Math.Min(p, q);
            }

            if (ahi < bhi)
            {
                m++;
            }
            else
            {
                n++;
            }
        }
    }

    // Roots are the smallest numbers of their pieces, so local pieces are numbered in the order in which they are met.
    private void Measure(int count, ref PieceCell cell)
    {
        var labels = new int[parents.Count];
        found.Clear();
        for (int i = 0, node = 0; i < count; i++)
        {
            var n = x.CountOf(cellStart + i);
            for (var k = 0; k < n; k++, node++)
            {
                var root = Root(node);
                if (root == node)
                {
                    labels[node] = found.Count;
                    found.Add(LocalPiece.None);
                }

                labels[node] = labels[root];
                var (lo, hi) = x.IntervalOf(cellStart + i, k);
                CollectionsMarshal.AsSpan(found)[labels[node]].Add(i, lo, hi);
            }
        }

        (cell.Count, cell.First, cell.Labels) = (found.Count, found[0], labels);
        cell.Others = found.Count > 1 ? found.GetRange(1, found.Count - 1).ToArray() : null;
    }

    private int Root(int of)
    {
        while (parents[of] != of)
        {
            of = parents[of] = parents[parents[of]];
        }

        return of;
    }

    // One look where both cells are of one piece with a core.
    private bool IsJoinedAtCore(int row, int block, ref readonly PieceCell a, ref readonly PieceCell b)
    {
        int from = Math.Max(a.First.FirstLine, b.First.FirstLine), to = Math.Min(a.First.LastLine, b.First.LastLine);
        return from <= to
            && IsCrossedMidway(Math.Max(a.CoreLo, b.CoreLo), Math.Min(a.CoreHi, b.CoreHi), Between.Heights((block * Size) + ((from + to) / 2), row));
    }

    private void Join(RayNodes a, RayNodes b, Between between)
    {
        int endA = x.CountOf(a.Ray), endB = x.CountOf(b.Ray);
        for (int m = 0, n = 0; m < endA && n < endB;)
        {
            var (alo, ahi) = x.IntervalOf(a.Ray, m);
            var (blo, bhi) = x.IntervalOf(b.Ray, n);
            int p = a.Label(m), q = b.Label(n);
            double lo = Math.Max(alo, blo), hi = Math.Min(ahi, bhi);
            if (lo <= hi && !IsPaired(p, q) && Crossed(lo, hi, between))
            {
                pairs.Add(p);
                pairs.Add(q);
            }

            if (ahi < bhi)
            {
                m++;
            }
            else
            {
                n++;
            }
        }
    }

    private bool IsPaired(int p, int q)
    {
        for (var i = 0; i < pairs.Count; i += 2)
        {
            if (pairs[i] == p && pairs[i + 1] == q)
            {
                return true;
            }
        }

        return false;
    }

    private int[] Kept() =>
        pairs.Count == 0 ? PieceCell.NoPairs : pairs.Count == 2 && pairs[0] == 0 && pairs[1] == 0 ? PieceCell.FirstPair : [.. pairs];

    // Whether a ray that crosses two neighbouring lines somewhere from lo to hi is metal between them; tried from the middle outwards.
    private bool Crossed(double lo, double hi, Between between)
    {
        if (!(lo <= hi))
        {
            return false;
        }

        if (IsCrossedMidway(lo, hi, between))
        {
            return true;
        }

        var (i0, i1) = Lattice(grid.Xs, lo, hi);
        var middle = (i0 + i1) / 2;
        for (var n = 0; n <= i1 - i0; n++)
        {
            var i = middle + ((n & 1) == 0 ? -(n / 2) : (n + 1) / 2);
            if (Crosses(i, between))
            {
                return true;
            }
        }

        return false;
    }

    // One look, at the place of the lattice nearest to the middle.
    private bool IsCrossedMidway(double lo, double hi, Between between)
    {
        var i = Middle(lo, hi);
        return i >= 0 && Crosses(i, between);
    }

    // The place of the lattice nearest to the middle of a stretch along X; -1 when it is not within.
    private int Middle(double lo, double hi)
    {
        if (!(lo <= hi))
        {
            return -1;
        }

        var i = (int)Math.Clamp(((((lo + hi) / 2) - origin) * perStep) + 0.5, 0, grid.Xs.Length - 1);
        return grid.Xs[i] >= lo && grid.Xs[i] <= hi ? i : -1;
    }

    private bool Crosses(int i, Between between) => between.LineA != between.LineB
        ? Holds(grid.AlongY, (between.RowA * grid.AlongY.Columns) + i, grid.Ys[between.LineA], grid.Ys[between.LineB])
        : Holds(grid.AlongZ, (i * grid.AlongZ.Columns) + between.LineA, grid.Zs[between.RowA], grid.Zs[between.RowB]);

    private static bool Holds(RaySet set, int ray, double from, double to)
    {
        if (!(set.Lo[ray] <= from && set.Hi[ray] >= to))
        {
            return false;
        }

        if (set.More[ray] is null)
        {
            return true;
        }

        var i = set.IndexAt(ray, from);
        return i >= 0 && set.IntervalOf(ray, i).Hi >= to;
    }

    // The first and the last of equally spaced places that lie from lo to hi.
    private static (int First, int Last) Lattice(double[] places, double lo, double hi)
    {
        if (!(lo <= hi))
        {
            return (0, -1);
        }

        var step = RayGrid.Step(places);
        var first = (int)Math.Clamp(Math.Floor((lo - places[0]) / step), 0, places.Length);
        while (first < places.Length && places[first] < lo)
        {
            first++;
        }

        var last = (int)Math.Clamp(Math.Ceiling((hi - places[0]) / step), -1, places.Length - 1);
        while (last >= 0 && places[last] > hi)
        {
            last--;
        }

        return (first, last);
    }

    // Two neighbouring lines along X: in one row, or above one another.
    private readonly record struct Between(int LineA, int LineB, int RowA, int RowB)
    {
        internal static Between Heights(int line, int row) => new(line, line, row, row + 1);
    }

    // A ray of a cell, where its intervals' labels start, and the cell's labels.
    private readonly record struct RayNodes(int Ray, int Start, int[]? Labels)
    {
        internal int Label(int interval) => Labels is null ? 0 : Labels[Start + interval];
    }
}
