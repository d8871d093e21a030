using System.Runtime.InteropServices;

namespace Handwheel.Solids.Grids;

// All cells of a grid, kept from edit to edit: only those that a change may have touched are worked out anew.
internal sealed class PieceCells
{
    // Fewer rows than this are not worth a second thread.
    private const int FewRows = 24;
    private readonly RayGrid grid;
    private readonly PieceCell[] cells;
    private readonly bool[] isStale;
    private readonly bool[] isStaleRow;

    internal PieceCells(RayGrid grid)
    {
        this.grid = grid;
        (Rows, Blocks) = (grid.AlongX.Rows, grid.AlongX.Blocks);
        cells = new PieceCell[Rows * Blocks];
        isStale = new bool[Rows * Blocks];
        isStaleRow = new bool[Rows];
        MarkAll();
    }

    private PieceCells(RayGrid grid, PieceCells other)
    {
        this.grid = grid;
        (Rows, Blocks) = (other.Rows, other.Blocks);
        cells = [.. other.cells];
        isStale = [.. other.isStale];
        isStaleRow = [.. other.isStaleRow];
    }

    internal int Rows { get; }

    internal int Blocks { get; }

    internal ReadOnlySpan<PieceCell> Cells => cells;

    // The same for a grid with the same rays.
    internal PieceCells Copy(RayGrid copy) => new(copy, this);

    internal void MarkAll()
    {
        Array.Fill(isStale, true);
        Array.Fill(isStaleRow, true);
    }

    // Marks what the changes of a cut, made or taken back, may have touched.
    internal void Mark(List<RayChange>[] changes)
    {
        foreach (var strip in changes)
        {
            var all = CollectionsMarshal.AsSpan(strip);
            for (var i = 0; i < all.Length;)
            {
                // A run of one set and one row, or, upright, of the whole strip.
                int set = all[i].Set, row = Row(all[i]), block = all[i].Ray % grid.AlongX.Columns / RaySet.BlockSize;
                double from = all[i].From, to = all[i].To;
                for (i++; i < all.Length && all[i].Set == set && (set == 2 || Row(all[i]) == row); i++)
                {
                    from = Math.Min(from, all[i].From);
                    to = Math.Max(to, all[i].To);
                }

                switch (set)
                {
                    case 0:
                        Mark(row, block);
                        break;
                    case 1:
                        MarkAcross(row, from, to);
                        break;
                    default:
                        MarkUpright(block, from, to);
                        break;
                }
            }
        }
    }

    // Works out all that is marked.
    internal void Update(int threads)
    {
        var rows = isStaleRow.Count(r => r);
        if (rows == 0)
        {
            return;
        }

        var options = new ParallelOptions { MaxDegreeOfParallelism = rows < FewRows ? 1 : threads };
        Parallel.For(0, Rows, options, () => new CellWorker(grid), Label, static _ => { });
        Parallel.For(0, Rows, options, () => new CellWorker(grid), Join, static _ => { });
        Array.Clear(isStale);
        Array.Clear(isStaleRow);
    }

    private CellWorker Label(int row, ParallelLoopState state, CellWorker worker)
    {
        for (var block = 0; isStaleRow[row] && block < Blocks; block++)
        {
            var at = (row * Blocks) + block;
            if (isStale[at])
            {
                worker.Label(row, block, ref cells[at]);
            }
        }

        return worker;
    }

    private CellWorker Join(int row, ParallelLoopState state, CellWorker worker)
    {
        if (!isStaleRow[row] && !(row + 1 < Rows && isStaleRow[row + 1]))
        {
            return worker;
        }

        for (var block = 0; block < Blocks; block++)
        {
            var at = (row * Blocks) + block;
            ref var cell = ref cells[at];
            if (block + 1 == Blocks)
            {
                cell.Right = PieceCell.NoPairs;
            }
            else if (isStale[at] || isStale[at + 1])
            {
                cell.Right = worker.Right(row, block, in cell, in cells[at + 1]);
            }

            if (row + 1 == Rows)
            {
                cell.Up = PieceCell.NoPairs;
            }
            else if (isStale[at] || isStale[at + Blocks])
            {
                cell.Up = worker.Up(row, block, in cell, in cells[at + Blocks]);
            }
        }

        return worker;
    }

    private void Mark(int row, int block)
    {
        isStale[(row * Blocks) + block] = true;
        isStaleRow[row] = true;
    }

    private void MarkAcross(int row, double near, double far)
    {
        int first = Math.Max(0, RayGrid.Nearest(grid.Ys, near) - 1) / RaySet.BlockSize, last = Math.Min(grid.Ys.Length - 1, RayGrid.Nearest(grid.Ys, far) + 1) / RaySet.BlockSize;
        for (var block = first; block <= last; block++)
        {
            Mark(row, block);
        }
    }

    private void MarkUpright(int block, double low, double high)
    {
        int first = Math.Max(0, RayGrid.Nearest(grid.Zs, low) - 1), last = Math.Min(Rows - 1, RayGrid.Nearest(grid.Zs, high) + 1);
        for (var row = first; row <= last; row++)
        {
            Mark(row, block);
        }
    }

    private int Row(in RayChange change) => change.Ray / (change.Set == 1 ? grid.AlongY.Columns : grid.AlongX.Columns);
}
