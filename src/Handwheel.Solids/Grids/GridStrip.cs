using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Grids;

// Sixteen neighbouring lines of the lattice and all rays that belong to them.
internal sealed partial class GridStrip
{
    private readonly RayGrid grid;
    private readonly FloorSweep sweep;
    private readonly Laterals laterals;
    private readonly int block;
    private readonly bool alongY;
    private readonly int first;
    private readonly int count;

    // Strips of Y (alongY false) own rays along X and Z; strips of X own rays along Y.
    internal GridStrip(RayGrid grid, FloorSweep sweep, int block, bool alongY)
    {
        this.grid = grid;
        this.sweep = sweep;
        laterals = sweep.Laterals;
        this.block = block;
        this.alongY = alongY;
        first = block * RaySet.BlockSize;
        count = Math.Min(Across.Length - first, RaySet.BlockSize);
        for (var i = 0; i < RaySet.BlockSize; i++)
        {
            Lines[i] = Across[first + Math.Min(i, count - 1)];
        }
    }

    internal int Block => block;

    internal bool AlongY => alongY;

    internal int First => first;

    internal int Count => count;

    // Places of all lines of this direction; this strip has Count of them from First on.
    internal double[] Across => alongY ? grid.Xs : grid.Ys;

    // The strip's own lines; where it has fewer than sixteen, the last again.
    internal double[] Lines { get; } = new double[RaySet.BlockSize];

    internal double[] Xs => grid.Xs;

    internal double[] Heights => grid.Zs;

    internal RaySet Level => alongY ? grid.AlongY : grid.AlongX;

    internal RaySet Uprights => grid.AlongZ;

    private int LevelIndex => alongY ? 1 : 0;

    internal void Sweep(Column[] columns) => sweep.Run(this, columns);

    // From where to where along its lines this strip has metal, or upright rays.
    internal (double From, double To) Extent()
    {
        var (from, to) = alongY ? (double.PositiveInfinity, double.NegativeInfinity) : (grid.Xs[0], grid.Xs[^1]);
        for (var tile = 0; tile < Level.Tiles; tile++)
        {
            from = Math.Min(from, Level.TileLo[(tile * Level.Blocks) + block]);
            to = Math.Max(to, Level.TileHi[(tile * Level.Blocks) + block]);
        }

        return (from, to);
    }

    // An index of Xs at or before the first place that is not below one.
    internal int IndexBefore(double place) =>
        (int)Math.Clamp(Math.Floor((place - grid.Xs[0]) / RayGrid.Step(grid.Xs)) - 1, 0, grid.Xs.Length);

    // Makes the summaries right after rows of rays were written by a sweep.
    internal void SummariseSwept(int leastX, int mostX)
    {
        Tiles(Level);
        if (alongY || mostX < leastX)
        {
            return;
        }

        for (var row = leastX; row <= mostX; row++)
        {
            grid.AlongZ.Summarise(row, block);
        }

        Tiles(grid.AlongZ);
    }

    internal void Cut(GridCut cut, List<RayChange>? log)
    {
        double lo = alongY ? cut.Bounds.Min.X : cut.Bounds.Min.Y, hi = alongY ? cut.Bounds.Max.X : cut.Bounds.Max.Y;
        if (hi < Across[first] || lo > Across[first + count - 1])
        {
            return;
        }

        if (cut.Path is null)
        {
            Sounded(cut, log);
            return;
        }

        foreach (var slab in cut.Slabs)
        {
            if (slab.R0 == slab.R1)
            {
                Cylinder(cut, slab, log);
            }
            else
            {
                Tapered(cut, slab, log);
            }
        }
    }

    private void Tiles(RaySet set)
    {
        for (var tile = 0; tile < set.Tiles; tile++)
        {
            set.SummariseTile(tile, block);
        }
    }

    private static (int First, int Last) Rows(double[] places, double lo, double hi)
    {
        var step = RayGrid.Step(places);
        var a = (int)Math.Clamp(Math.Floor((lo - places[0]) / step) - 1, 0, places.Length);
        var b = (int)Math.Clamp(Math.Ceiling((hi - places[0]) / step) + 1, -1, places.Length - 1);
        while (a < places.Length && places[a] <= lo)
        {
            a++;
        }

        while (b >= 0 && places[b] >= hi)
        {
            b--;
        }

        return (a, b);
    }

    private Line3 LevelLine(int row, int column) =>
        alongY ? Line3.AlongY(grid.Xs[column], grid.Zs[row]) : Line3.AlongX(grid.Ys[column], grid.Zs[row]);

    // Whether any metal is left where the cut might take some: by the tiles' bounds, less what stands inside an arc's ring.
    private bool MayMeet(GridCut cut, double z0, double z1)
    {
        var (lo, hi) = alongY ? (cut.Bounds.Min.Y, cut.Bounds.Max.Y) : (cut.Bounds.Min.X, cut.Bounds.Max.X);
        var (from, to) = Hole(cut.Path!, cut.Widest);
        var (a, b) = Rows(grid.Zs, z0, z1);
        for (var tile = a / RaySet.BlockSize; tile <= b / RaySet.BlockSize && a <= b; tile++)
        {
            double metalLo = Level.TileLo[(tile * Level.Blocks) + block], metalHi = Level.TileHi[(tile * Level.Blocks) + block];
            if (lo < metalHi && hi > metalLo && !(metalLo > from && metalHi < to))
            {
                return true;
            }
        }

        if (alongY)
        {
            return false;
        }

        (a, b) = Rows(grid.Xs, lo, hi);
        for (var tile = a / RaySet.BlockSize; tile <= b / RaySet.BlockSize && a <= b; tile++)
        {
            var summary = (tile * grid.AlongZ.Blocks) + block;
            if (z0 < grid.AlongZ.TileHi[summary] && z1 > grid.AlongZ.TileLo[summary])
            {
                var step = RayGrid.Step(grid.Xs) * RaySet.BlockSize;
                var x = grid.Xs[tile * RaySet.BlockSize];
                if (!(x > from && x + step < to))
                {
                    return true;
                }
            }
        }

        return false;
    }

    // The stretch of all this strip's lines that lies inside an arc's ring, where its cutter never comes.
    internal (double From, double To) Hole(Cuts.CutterPath path, double widest)
    {
        var radius = path.Radius - widest;
        if (radius <= 0)
        {
            return (0, 0);
        }

        var (c, along) = alongY ? (path.Centre.X, path.Centre.Y) : (path.Centre.Y, path.Centre.X);
        var far = Math.Max(Math.Abs(Across[first] - c), Math.Abs(Across[first + count - 1] - c));
        if (far >= radius)
        {
            return (0, 0);
        }

        var half = Math.Sqrt((radius - far) * (radius + far)) * (1 - 1e-9);
        return (along - half, along + half);
    }

    private void Cylinder(GridCut cut, Slab slab, List<RayChange>? log)
    {
        if (!MayMeet(cut, cut.Path!.From.Z + slab.Z0, cut.Path.From.Z + slab.Z1))
        {
            return;
        }

        laterals.Work(slab.R0, cut.Path!, alongY, Lines);
        if (laterals.IsEmpty)
        {
            return;
        }

        double z0 = cut.Path!.From.Z + slab.Z0, z1 = cut.Path.From.Z + slab.Z1;
        var (a, b) = Rows(grid.Zs, z0, z1);
        var level = Level;
        for (var tile = a / RaySet.BlockSize; tile <= b / RaySet.BlockSize && a <= b; tile++)
        {
            var summary = (tile * level.Blocks) + block;
            if (!laterals.Meets(level.TileLo[summary], level.TileHi[summary]))
            {
                continue;
            }

            var changed = false;
            var end = Math.Min(b, (tile * RaySet.BlockSize) + RaySet.BlockSize - 1);
            for (var row = Math.Max(a, tile * RaySet.BlockSize); row <= end; row++)
            {
                changed |= TakeLevel(row, log);
            }

            if (changed)
            {
                level.SummariseTile(tile, block);
            }
        }

        if (!alongY)
        {
            TakeUpright(Hole(cut.Path, cut.Widest), z0, z1, log);
        }
    }

    private void TakeUpright((double From, double To) hole, double z0, double z1, List<RayChange>? log)
    {
        var set = grid.AlongZ;
        var (a, b) = Rows(grid.Xs, laterals.Least, laterals.Most);
        for (var tile = a / RaySet.BlockSize; tile <= b / RaySet.BlockSize && a <= b; tile++)
        {
            var summary = (tile * set.Blocks) + block;
            if (!(z0 < set.TileHi[summary] && z1 > set.TileLo[summary]))
            {
                continue;
            }

            var changed = false;
            var end = Math.Min(b, (tile * RaySet.BlockSize) + RaySet.BlockSize - 1);
            for (var row = Math.Max(a, tile * RaySet.BlockSize); row <= end; row++)
            {
                if (!(grid.Xs[row] > hole.From && grid.Xs[row] < hole.To))
                {
                    changed |= TakeUpright(row, z0, z1, log);
                }
            }

            if (changed)
            {
                set.SummariseTile(tile, block);
            }
        }
    }

    // The plan section of the laterals off one row of level rays.
    private bool TakeLevel(int row, List<RayChange>? log)
    {
        var set = Level;
        var summary = (row * set.Blocks) + block;
        if (!laterals.Meets(set.BlockLo[summary], set.BlockHi[summary]))
        {
            return false;
        }

        var start = (row * set.Columns) + first;
        ReadOnlySpan<double> los = set.Lo.AsSpan(start, count), his = set.Hi.AsSpan(start, count);
        var changed = false;
        for (var part = 0; part < laterals.Parts; part++)
        {
            if (laterals.Meets(part, set.BlockLo[summary], set.BlockHi[summary]))
            {
                ReadOnlySpan<double> from = laterals.From(part), to = laterals.To(part);
                changed |= TakeEach(set, start, Laterals.Met(from, to, los, his), from, to, log);
            }
        }

        if (changed)
        {
            set.Summarise(row, block);
        }

        return changed;
    }

    private bool TakeEach(RaySet set, int start, uint met, ReadOnlySpan<double> from, ReadOnlySpan<double> to, List<RayChange>? log)
    {
        var changed = false;
        for (; met != 0; met &= met - 1)
        {
            var i = System.Numerics.BitOperations.TrailingZeroCount(met);
            changed |= set.Take(start + i, from[i], to[i], log, LevelIndex);
        }

        return changed;
    }

    // Heights z0..z1 off the upright rays of one x that lie in the plan section.
    private bool TakeUpright(int row, double z0, double z1, List<RayChange>? log)
    {
        var set = grid.AlongZ;
        var summary = (row * set.Blocks) + block;
        if (!(z0 < set.BlockHi[summary] && z1 > set.BlockLo[summary]))
        {
            return false;
        }

        var x = grid.Xs[row];
        var start = (row * set.Columns) + first;
        ReadOnlySpan<double> los = set.Lo.AsSpan(start, count), his = set.Hi.AsSpan(start, count);
        var met = laterals.MetAt(x, z0, z1, los, his);
        var changed = false;
        for (; met != 0; met &= met - 1)
        {
            changed |= set.Take(start + System.Numerics.BitOperations.TrailingZeroCount(met), z0, z1, log, 2);
        }

        if (changed)
        {
            set.Summarise(row, block);
        }

        return changed;
    }
}
