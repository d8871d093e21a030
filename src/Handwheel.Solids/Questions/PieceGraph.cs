using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;

namespace Handwheel.Solids.Questions;

// Pieces over the intervals along X, as runs: neighbouring intervals of one row that a ray along Y joins carry one label at once, and a small
// union-find joins labels. With a bridge above 0, gaps up to it along any ray count as metal.
internal sealed class PieceGraph
{
    private readonly RayGrid grid;
    private readonly RaySet x;
    private readonly double bridge;
    private readonly int[] first;
    private readonly int[] label;
    private int[] parent = new int[1024];
    private int labels;

    internal PieceGraph(RayGrid grid, double bridge)
    {
        this.grid = grid;
        this.bridge = bridge;
        x = grid.AlongX;
        first = new int[x.Lo.Length + 1];
        for (var ray = 0; ray < x.Lo.Length; ray++)
        {
            first[ray + 1] = first[ray] + (x.Lo[ray] < x.Hi[ray] ? x.More[ray] is { } more ? more.Length / 2 : 1 : 0);
        }

        label = new int[first[^1]];
        for (var row = 0; row < x.Rows; row++)
        {
            LabelRow(row);
            for (var back = 1; back <= Reach && back <= row; back++)
            {
                JoinRows(row - back, row);
            }
        }
    }

    internal int Count => label.Length;

    internal int Labels => labels;

    // With bridging, a neighbour may lie behind some empty lines.
    private int Reach => bridge > 0 ? 5 : 1;

    internal int LabelOf(int node) => label[node];

    internal int Root(int of)
    {
        while (parent[of] != of)
        {
            parent[of] = parent[parent[of]];
            of = parent[of];
        }

        return of;
    }

    // Per label, which lies in one row: volume in lengths, bounds, and the middle of its longest interval.
    internal void Measure(double[] length, Box3[] box, double[] longest, Point3[] inside)
    {
        for (var ray = 0; ray < x.Lo.Length; ray++)
        {
            double y = grid.Ys[ray % x.Columns], z = grid.Zs[ray / x.Columns];
            for (var node = first[ray]; node < first[ray + 1]; node++)
            {
                var (lo, hi) = x.IntervalOf(ray, node - first[ray]);
                var of = label[node];
                length[of] += hi - lo;
                ref var bounds = ref box[of];
                bounds = new(
                    new(Math.Min(bounds.Min.X, lo), Math.Min(bounds.Min.Y, y), z),
                    new(Math.Max(bounds.Max.X, hi), Math.Max(bounds.Max.Y, y), z));
                if (hi - lo > longest[of])
                {
                    longest[of] = hi - lo;
                    inside[of] = new((lo + hi) / 2, y, z);
                }
            }
        }
    }

    // The label of the nearest lattice line, or a neighbour of it, that holds the place's X; -1 for none.
    internal int LabelAt(Point3 p)
    {
        int j = RayGrid.Nearest(grid.Ys, p.Y), k = RayGrid.Nearest(grid.Zs, p.Z);
        var best = -1;
        var least = double.PositiveInfinity;
        for (var dk = -1; dk <= 1; dk++)
        {
            for (var dj = -1; dj <= 1; dj++)
            {
                if (j + dj < 0 || j + dj >= x.Columns || k + dk < 0 || k + dk >= x.Rows)
                {
                    continue;
                }

                var ray = ((k + dk) * x.Columns) + j + dj;
                var i = x.IndexAt(ray, p.X);
                var away = Math.Abs(grid.Ys[j + dj] - p.Y) + Math.Abs(grid.Zs[k + dk] - p.Z);
                if (i >= 0 && away < least)
                {
                    (best, least) = (label[first[ray] + i], away);
                }
            }
        }

        return best;
    }

    // Labels of one row: each interval takes its left neighbour's where a ray along Y joins the two.
    private void LabelRow(int k)
    {
        for (var j = 0; j < x.Columns; j++)
        {
            var ray = (k * x.Columns) + j;
            if (j > 0 && bridge == 0 && AreSingle(ray - 1, ray))
            {
                LabelSingle(ray, j, k);
                continue;
            }

            for (var node = first[ray]; node < first[ray + 1]; node++)
            {
                label[node] = -1;
            }

            for (var back = 1; back <= Reach && back <= j; back++)
            {
                Neighbours(ray - back, ray, j - back, j, k, k, inRow: true);
            }

            for (var node = first[ray]; node < first[ray + 1]; node++)
            {
                if (label[node] < 0)
                {
                    label[node] = NewLabel();
                }

                if (bridge > 0 && node > first[ray] && x.IntervalOf(ray, node - first[ray]).Lo - x.IntervalOf(ray, node - first[ray] - 1).Hi <= bridge)
                {
                    Union(label[node], label[node - 1]);
                }
            }
        }
    }

    private bool AreSingle(int rayA, int rayB) => first[rayA] + 1 == first[rayA + 1] && first[rayB] + 1 == first[rayB + 1];

    // One interval each, the usual case.
    private void LabelSingle(int ray, int j, int k)
    {
        double lo = Math.Max(x.Lo[ray], x.Lo[ray - 1]), hi = Math.Min(x.Hi[ray], x.Hi[ray - 1]);
        int left = first[ray - 1], node = first[ray];
        label[node] = -1;
        label[node] = lo <= hi && Joined(left, node, lo, hi, j - 1, j, k, k) ? label[left] : NewLabel();
    }

    private void JoinRows(int from, int to)
    {
        int lastA = -1, lastB = -1;
        for (var j = 0; j < x.Columns; j++)
        {
            int rayA = (from * x.Columns) + j, rayB = (to * x.Columns) + j;
            int a = first[rayA], b = first[rayB];
            if (!AreSingle(rayA, rayB))
            {
                Neighbours(rayA, rayB, j, j, from, to, inRow: false);
            }
            else if (label[a] != lastA || label[b] != lastB)
            {
                // One interval each, the usual case; what two runs have once agreed on is not asked again.
                double lo = Math.Max(x.Lo[rayA], x.Lo[rayB]), hi = Math.Min(x.Hi[rayA], x.Hi[rayB]);
                if (lo <= hi + bridge && Joined(a, b, lo, hi, j, j, from, to))
                {
                    Union(label[a], label[b]);
                    (lastA, lastB) = (label[a], label[b]);
                }
            }
        }
    }

    private void Neighbours(int rayA, int rayB, int ja, int jb, int ka, int kb, bool inRow)
    {
        int a = first[rayA], b = first[rayB], endA = first[rayA + 1], endB = first[rayB + 1];
        while (a < endA && b < endB)
        {
            var (alo, ahi) = x.IntervalOf(rayA, a - first[rayA]);
            var (blo, bhi) = x.IntervalOf(rayB, b - first[rayB]);
            double lo = Math.Max(alo, blo), hi = Math.Min(ahi, bhi);
            if (lo <= hi + bridge && !(label[b] >= 0 && label[a] == label[b]) && Joined(a, b, lo, hi, ja, jb, ka, kb))
            {
                if (inRow && label[b] < 0)
                {
                    label[b] = label[a];
                }
                else
                {
                    Union(label[a], label[b]);
                }
            }

            if (ahi < bhi)
            {
                a++;
            }
            else
            {
                b++;
            }
        }
    }

    // Two intervals side by side from lo to hi: joined when a crossing ray is metal between them, tried from the middle outwards.
    private bool Joined(int a, int b, double lo, double hi, int ja, int jb, int ka, int kb)
    {
        if (bridge > 0)
        {
            return true;
        }

        if (label[b] >= 0 && Root(label[a]) == Root(label[b]))
        {
            return false;
        }

        var xs = grid.Xs;
        var step = RayGrid.Step(xs);
        int i0 = Math.Max(0, (int)Math.Ceiling((lo - xs[0]) / step)), i1 = Math.Min(xs.Length - 1, (int)Math.Floor((hi - xs[0]) / step));
        var middle = (i0 + i1) / 2;
        for (var n = 0; n <= i1 - i0; n++)
        {
            var i = middle + ((n & 1) == 0 ? -(n / 2) : (n + 1) / 2);
            if (i >= i0 && i <= i1 && Crosses(i, ja, jb, ka, kb))
            {
                return true;
            }
        }

        return false;
    }

    private bool Crosses(int i, int ja, int jb, int ka, int kb)
    {
        if (ja != jb)
        {
            return Holds(grid.AlongY, (ka * grid.AlongY.Columns) + i, grid.Ys[ja], grid.Ys[jb]);
        }

        return Holds(grid.AlongZ, (i * grid.AlongZ.Columns) + ja, grid.Zs[ka], grid.Zs[kb]);
    }

    private static bool Holds(RaySet set, int ray, double from, double to)
    {
        if (set.More[ray] is null)
        {
            return set.Lo[ray] <= from && set.Hi[ray] >= to;
        }

        var i = set.IndexAt(ray, from);
        return i >= 0 && set.IntervalOf(ray, i).Hi >= to;
    }

    private int NewLabel()
    {
        if (labels == parent.Length)
        {
            Array.Resize(ref parent, labels * 2);
        }

        parent[labels] = labels;
        return labels++;
    }

    // The smaller number stays the root, so that the outcome does not depend on the order of joining.
    private void Union(int a, int b)
    {
        int p = Root(a), q = Root(b);
        if (p < q)
        {
            parent[q] = p;
        }
        else if (q < p)
        {
            parent[p] = q;
        }
    }
}
