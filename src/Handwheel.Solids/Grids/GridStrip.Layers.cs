using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// Layers that taper, and cuts that are sounded ray by ray.
internal sealed partial class GridStrip
{
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
                laterals.Work(slab.RadiusAt(grid.Zs[row] - path.From.Z), path, alongY, Lines);
                if (TakeLevel(row, log))
                {
                    Level.SummariseTile(row / RaySet.BlockSize, block);
                }
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
                set.SummariseTile(row / RaySet.BlockSize, block);
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
            set.SummariseTile(row / RaySet.BlockSize, block);
        }
    }
}
