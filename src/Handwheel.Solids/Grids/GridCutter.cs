using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// Fills and cuts the three ray sets. A unit of work is a strip of 16 neighbouring lines: strips of Y own the rays along X and along Z there,
// strips of X own the rays along Y. A strip goes through all cuts before the next strip is begun, so its rays stay in the cache.
internal sealed class GridCutter
{
    private readonly RayGrid grid;
    private readonly ParallelOptions options;

    internal GridCutter(RayGrid grid, int threads)
    {
        this.grid = grid;
        options = new() { MaxDegreeOfParallelism = threads <= 0 ? -1 : threads };
        AlongX = new(grid.Zs.Length, grid.Ys.Length);
        AlongY = new(grid.Zs.Length, grid.Xs.Length);
        AlongZ = new(grid.Xs.Length, grid.Ys.Length);
    }

    // The same rays with the same metal, apart from the other's.
    internal GridCutter(RayGrid grid, GridCutter other)
    {
        this.grid = grid;
        options = other.options;
        AlongX = other.AlongX.Copy();
        AlongY = other.AlongY.Copy();
        AlongZ = other.AlongZ.Copy();
    }

    internal int Threads => options.MaxDegreeOfParallelism;

    internal RaySet AlongX { get; }

    internal RaySet AlongY { get; }

    internal RaySet AlongZ { get; }

    internal void Fill(Solid bare) => Each((strip, _) => strip.Fill(bare), null);

    // Old: a log nobody needs any more, whose lists are used again.
    internal List<RayChange>[] Cut(GridCut cut, List<RayChange>[]? old) => Each((strip, log) => strip.Cut(cut, log), old ?? NewLogs());

    // Columns first: what they leave is little for the others.
    internal void CutAll(IReadOnlyList<ISolid> cuts)
    {
        var job = GridJob.Of(cuts, Top());
        _ = Each(
            (strip, _) =>
            {
                strip.Sweep(job.Columns);
                foreach (var cut in job.Others)
                {
                    strip.Cut(cut, null);
                }
            },
            null);
    }

    internal void Restore(List<RayChange>[] changes)
    {
        foreach (var strip in changes)
        {
            for (var i = strip.Count - 1; i >= 0; i--)
            {
                var (index, ray, lo, hi, more, _, _) = strip[i];
                var set = index == 0 ? AlongX : index == 1 ? AlongY : AlongZ;
                set.Lo[ray] = lo;
                set.Hi[ray] = hi;
                set.More[ray] = more;
                var (row, block) = (ray / set.Columns, ray % set.Columns / RaySet.BlockSize);
                if (i == 0 || strip[i - 1].Set != index || strip[i - 1].Ray / RaySet.BlockSize != ray / RaySet.BlockSize)
                {
                    set.Summarise(row, block);
                    set.SummariseTile(row / RaySet.BlockSize, block);
                }
            }
        }
    }

    // No metal, and no row of level rays, stands higher.
    private double Top() => Math.Max(grid.Zs[^1], AlongZ.TileHi.Max());

    private List<RayChange>[] NewLogs() => [.. Enumerable.Range(0, AlongX.Blocks + AlongY.Blocks).Select(_ => new List<RayChange>())];

    private List<RayChange>[] Each(Action<GridStrip, List<RayChange>?> work, List<RayChange>[]? logs)
    {
        int across = AlongX.Blocks, along = AlongY.Blocks;
        Parallel.For(
            0,
            across + along,
            options,
            () => new FloorSweep(),
            (i, _, sweep) =>
            {
                logs?[i].Clear();
                var strip = i < across
                    ? new GridStrip(grid, sweep, i, alongY: false)
                    : new GridStrip(grid, sweep, i - across, alongY: true);
                work(strip, logs?[i]);
                return sweep;
            },
            static _ => { });
        return logs ?? [];
    }
}
