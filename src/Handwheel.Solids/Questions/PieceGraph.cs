using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;

namespace Handwheel.Solids.Questions;

// Pieces of metal with the gaps up to a bridge filled: neighbouring intervals along X, or with up to four empty lines between, are one when no more than the bridge
// parts them. What is apart here is apart for certain.
internal sealed class PieceGraph
{
    // A neighbour may lie behind some empty lines.
    private const int Reach = 5;
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

    internal int Root(int of)
    {
        while (parent[of] != of)
        {
            parent[of] = parent[parent[of]];
            of = parent[of];
        }

        return of;
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

    // Labels of one row: each interval takes that of a neighbour on a line before it.
    private void LabelRow(int k)
    {
        for (var j = 0; j < x.Columns; j++)
        {
            var ray = (k * x.Columns) + j;
            for (var node = first[ray]; node < first[ray + 1]; node++)
            {
                label[node] = -1;
            }

            for (var back = 1; back <= Reach && back <= j; back++)
            {
                Neighbours(ray - back, ray, inRow: true);
            }

            for (var node = first[ray]; node < first[ray + 1]; node++)
            {
                if (label[node] < 0)
                {
                    label[node] = NewLabel();
                }

                if (node > first[ray] && x.IntervalOf(ray, node - first[ray]).Lo - x.IntervalOf(ray, node - first[ray] - 1).Hi <= bridge)
                {
                    Union(label[node], label[node - 1]);
                }
            }
        }
    }

    private bool AreSingle(int rayA, int rayB) => first[rayA] + 1 == first[rayA + 1] && first[rayB] + 1 == first[rayB + 1];

    private void JoinRows(int from, int to)
    {
        int lastA = -1, lastB = -1;
        for (var j = 0; j < x.Columns; j++)
        {
            int rayA = (from * x.Columns) + j, rayB = (to * x.Columns) + j;
            int a = first[rayA], b = first[rayB];
            if (!AreSingle(rayA, rayB))
            {
                Neighbours(rayA, rayB, inRow: false);
            }
            else if (label[a] != lastA || label[b] != lastB)
            {
                // One interval each, the usual case; what two runs have once agreed on is not asked again.
                double lo = Math.Max(x.Lo[rayA], x.Lo[rayB]), hi = Math.Min(x.Hi[rayA], x.Hi[rayB]);
                if (lo <= hi + bridge)
                {
                    Union(label[a], label[b]);
                    (lastA, lastB) = (label[a], label[b]);
                }
            }
        }
    }

    private void Neighbours(int rayA, int rayB, bool inRow)
    {
        int a = first[rayA], b = first[rayB], endA = first[rayA + 1], endB = first[rayB + 1];
        while (a < endA && b < endB)
        {
            var (alo, ahi) = x.IntervalOf(rayA, a - first[rayA]);
            var (blo, bhi) = x.IntervalOf(rayB, b - first[rayB]);
            double lo = Math.Max(alo, blo), hi = Math.Min(ahi, bhi);
            if (lo <= hi + bridge && label[a] != label[b])
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
