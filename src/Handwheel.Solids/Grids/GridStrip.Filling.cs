using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// Bare stock laid on the rays of a strip.
internal sealed partial class GridStrip
{
    internal void Fill(Solid bare)
    {
        if (bare is Shapes.Block)
        {
            FillBlock(bare.Bounds);
            return;
        }

        using var rented = SpanPool.Rent(out var list);
        for (var row = 0; row < Level.Rows; row++)
        {
            for (var c = first; c < first + count; c++)
            {
                FillRay(bare, Level, row, c, LevelLine(row, c), list);
            }

            Level.Summarise(row, block);
        }

        Tiles(Level);
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

        Tiles(grid.AlongZ);
    }

    // What sounding a block along an axis answers, without asking ray by ray.
    private void FillBlock(Box3 box)
    {
        var (lo, hi) = alongY ? (box.Min.Y, box.Max.Y) : (box.Min.X, box.Max.X);
        var (near, far) = alongY ? (box.Min.X, box.Max.X) : (box.Min.Y, box.Max.Y);
        FillRows(Level, grid.Zs, (box.Min.Z, box.Max.Z), (near, far), lo, hi);
        if (!alongY)
        {
            FillRows(grid.AlongZ, grid.Xs, (lo, hi), (near, far), box.Min.Z, box.Max.Z);
        }
    }

    private void FillRows(RaySet set, double[] rows, (double Least, double Most) down, (double Least, double Most) across, double lo, double hi)
    {
        for (var row = 0; row < rows.Length; row++)
        {
            var isIn = rows[row] >= down.Least && rows[row] <= down.Most;
            var isAny = false;
            for (var i = 0; i < count; i++)
            {
                var ray = (row * set.Columns) + first + i;
                var isMet = isIn && Lines[i] >= across.Least && Lines[i] <= across.Most;
                isAny |= isMet;
                set.Lo[ray] = isMet ? lo : double.PositiveInfinity;
                set.Hi[ray] = isMet ? hi : double.NegativeInfinity;
            }

            set.SetSummary(row, block, isAny ? lo : double.PositiveInfinity, isAny ? hi : double.NegativeInfinity);
        }

        Tiles(set);
    }

    private static void FillRay(Solid bare, RaySet set, int row, int column, in Line3 line, SpanList list)
    {
        list.Clear();
        bare.Sound(line, closed: true, list);
        list.Normalise();
        set.Set((row * set.Columns) + column, list.Items);
    }
}
