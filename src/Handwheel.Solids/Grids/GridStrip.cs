using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// Sixteen neighbouring lines of the lattice and all rays that belong to them.
internal sealed class GridStrip
{
    private readonly RayGrid grid;
    private readonly Laterals laterals;
    private readonly int block;
    private readonly bool alongY;
    private readonly int first;
    private readonly int count;

    // Strips of Y (alongY false) own rays along X and Z; strips of X own rays along Y.
    internal GridStrip(RayGrid grid, Laterals laterals, int block, bool alongY)
    {
        this.grid = grid;
        this.laterals = laterals;
        this.block = block;
        this.alongY = alongY;
        first = block * RaySet.BlockSize;
        count = Math.Min(Across.Length - first, RaySet.BlockSize);
    }

    private double[] Across => alongY ? grid.Xs : grid.Ys;

    private RaySet Level => alongY ? grid.AlongY : grid.AlongX;

    private int LevelIndex => alongY ? 1 : 0;

    internal void Fill(Solid bare)
    {
        using var rented = SpanPool.Rent(out var list);
        for (var row = 0; row < Level.Rows; row++)
        {
            for (var c = first; c < first + count; c++)
            {
                FillRay(bare, Level, row, c, LevelLine(row, c), list);
            }

            Level.Summarise(row, block);
        }

        if (alongY)
        {
            return;
        }

        for (var row = 0; row < grid.Xs.Length; row++)
        {
            for (var c = first; c < first + count; c++)
            {
                FillRay(bare, grid.AlongZ, row, c, Line3.AlongZ(grid.Xs[row], grid.Ys[c]), list);
            }

            grid.AlongZ.Summarise(row, block);
        }
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

    private static void FillRay(Solid bare, RaySet set, int row, int column, in Line3 line, SpanList list)
    {
        list.Clear();
        bare.Sound(line, closed: true, list);
        list.Normalise();
        set.Set((row * set.Columns) + column, list.Items);
    }

    private static (int First, int Last) Rows(double[] places, double lo, double hi)
    {
        var step = RayGrid.Step(places);
        var a = Math.Clamp((int)Math.Floor((lo - places[0]) / step) - 1, 0, places.Length);
        var b = Math.Clamp((int)Math.Ceiling((hi - places[0]) / step) + 1, -1, places.Length - 1);
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

    private void Cylinder(GridCut cut, Slab slab, List<RayChange>? log)
    {
        laterals.Work(slab, slab.R0, cut.Path!, alongY, Across.AsSpan(first, count));
        if (laterals.IsEmpty)
        {
            return;
        }

        double z0 = cut.Path!.From.Z + slab.Z0, z1 = cut.Path.From.Z + slab.Z1;
        var (a, b) = Rows(grid.Zs, z0, z1);
        for (var row = a; row <= b; row++)
        {
            TakeLevel(row, log);
        }

        if (!alongY)
        {
            (a, b) = Rows(grid.Xs, laterals.Least, laterals.Most);
            for (var row = a; row <= b; row++)
            {
                TakeUpright(row, z0, z1, log);
            }
        }
    }

    // The plan section of the laterals off one row of level rays.
    private void TakeLevel(int row, List<RayChange>? log)
    {
        var set = Level;
        var summary = (row * set.Blocks) + block;
        if (!(laterals.Least < set.BlockHi[summary] && laterals.Most > set.BlockLo[summary]))
        {
            return;
        }

        var start = (row * set.Columns) + first;
        var changed = false;
        double[] from = laterals.From, to = laterals.To;
        var los = set.Lo.AsSpan(start, count);
        var his = set.Hi.AsSpan(start, count);
        for (var i = 0; i < los.Length; i++)
        {
            double a = from[i], b = to[i];
            if (a < his[i] && b > los[i])
            {
                changed |= set.Take(start + i, a, b, log, LevelIndex);
            }
        }

        foreach (var (line, a, b) in laterals.More)
        {
            if (a < set.Hi[start + line] && b > set.Lo[start + line])
            {
                changed |= set.Take(start + line, a, b, log, LevelIndex);
            }
        }

        if (changed)
        {
            set.Summarise(row, block);
        }
    }

    // Heights z0..z1 off the upright rays of one x that lie in the plan section.
    private void TakeUpright(int row, double z0, double z1, List<RayChange>? log)
    {
        var set = grid.AlongZ;
        var summary = (row * set.Blocks) + block;
        if (!(z0 < set.BlockHi[summary] && z1 > set.BlockLo[summary]))
        {
            return;
        }

        var x = grid.Xs[row];
        var start = (row * set.Columns) + first;
        var changed = false;
        for (var i = 0; i < count; i++)
        {
            if (laterals.From[i] < x && x < laterals.To[i] && z0 < set.Hi[start + i] && z1 > set.Lo[start + i])
            {
                changed |= set.Take(start + i, z0, z1, log, 2);
            }
        }

        foreach (var (line, a, b) in laterals.More)
        {
            if (a < x && x < b && z0 < set.Hi[start + line] && z1 > set.Lo[start + line])
            {
                changed |= set.Take(start + line, z0, z1, log, 2);
            }
        }

        if (changed)
        {
            set.Summarise(row, block);
        }
    }

    // A radius that changes with height: level rays row by row, upright rays by their distance to the path.
    private void Tapered(GridCut cut, Slab slab, List<RayChange>? log)
    {
        var path = cut.Path!;
        double z0 = path.From.Z + slab.Z0, z1 = path.From.Z + slab.Z1;
        var (a, b) = Rows(grid.Zs, z0, z1);
        for (var row = a; row <= b; row++)
        {
            var summary = (row * Level.Blocks) + block;
            if (Level.BlockLo[summary] < Level.BlockHi[summary])
            {
                laterals.Work(slab, slab.RadiusAt(grid.Zs[row] - path.From.Z), path, alongY, Across.AsSpan(first, count));
                TakeLevel(row, log);
            }
        }

        if (!alongY)
        {
            Upright(cut, slab, z0, z1, log);
        }
    }

    private void Upright(GridCut cut, Slab slab, double z0, double z1, List<RayChange>? log)
    {
        using var rented = SpanPool.Rent(out var list);
        var path = cut.Path!;
        var set = grid.AlongZ;
        var (a, b) = Rows(grid.Xs, path.Bounds.Min.X - slab.GreatestRadius, path.Bounds.Max.X + slab.GreatestRadius);
        for (var row = a; row <= b; row++)
        {
            var summary = (row * set.Blocks) + block;
            if (!(z0 < set.BlockHi[summary] && z1 > set.BlockLo[summary]))
            {
                continue;
            }

            var changed = false;
            for (var i = first; i < first + count; i++)
            {
                var distance = path.LeastDistance(new Point2(grid.Xs[row], grid.Ys[i]));
                if (distance >= slab.GreatestRadius)
                {
                    continue;
                }

                list.Clear();
                Cuts.LevelSweep.Upright(slab, distance, UprightRay, closed: false, list);
                changed |= Take(set, 2, (row * set.Columns) + i, list, path.From.Z, log);
            }

            if (changed)
            {
                set.Summarise(row, block);
            }
        }
    }

    private static Cuts.Ray UprightRay =>
        new(default, Vector3.UnitZ, double.NegativeInfinity, double.PositiveInfinity);

    private static bool Take(RaySet set, int index, int ray, SpanList list, double shift, List<RayChange>? log)
    {
        var changed = false;
        foreach (ref readonly var span in list.Items)
        {
            double a = span.From + shift, b = span.To + shift;
            if (a < set.Hi[ray] && b > set.Lo[ray])
            {
                changed |= set.Take(ray, a, b, log, index);
            }
        }

        return changed;
    }

    // Ray by ray, for cuts whose axis is not the part's Z, on a slope, hollow, or no cutter's.
    private void Sounded(GridCut cut, List<RayChange>? log)
    {
        using var rented = SpanPool.Rent(out var list);
        var (a, b) = Rows(grid.Zs, cut.Bounds.Min.Z, cut.Bounds.Max.Z);
        double lo = alongY ? cut.Bounds.Min.Y : cut.Bounds.Min.X, hi = alongY ? cut.Bounds.Max.Y : cut.Bounds.Max.X;
        for (var row = a; row <= b; row++)
        {
            SoundedRow(cut, Level, LevelIndex, row, lo, hi, list, log);
        }

        if (alongY)
        {
            return;
        }

        (a, b) = Rows(grid.Xs, cut.Bounds.Min.X, cut.Bounds.Max.X);
        for (var row = a; row <= b; row++)
        {
            SoundedRow(cut, grid.AlongZ, 2, row, cut.Bounds.Min.Z, cut.Bounds.Max.Z, list, log);
        }
    }

    private void SoundedRow(GridCut cut, RaySet set, int index, int row, double lo, double hi, SpanList list, List<RayChange>? log)
    {
        var summary = (row * set.Blocks) + block;
        if (!(lo < set.BlockHi[summary] && hi > set.BlockLo[summary]))
        {
            return;
        }

        var changed = false;
        for (var c = first; c < first + count; c++)
        {
            var ray = (row * set.Columns) + c;
            if (lo < set.Hi[ray] && hi > set.Lo[ray])
            {
                list.Clear();
                cut.Solid.Sound(index == 2 ? Line3.AlongZ(grid.Xs[row], grid.Ys[c]) : LevelLine(row, c), closed: false, list);
                changed |= Take(set, index, ray, list, 0, log);
            }
        }

        if (changed)
        {
            set.Summarise(row, block);
        }
    }
}
