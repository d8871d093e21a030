using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;

namespace Handwheel.Solids.Questions;

// Union-find over the intervals along X. With a bridge above 0, gaps up to it along any ray count as metal.
internal sealed class PieceGraph
{
    private readonly RayGrid grid;
    private readonly RaySet x;
    private readonly double bridge;
    private readonly int[] first;
    private readonly int[] parent;

    internal PieceGraph(RayGrid grid, double bridge)
    {
        this.grid = grid;
        this.bridge = bridge;
        x = grid.AlongX;
        first = new int[x.Lo.Length + 1];
        for (var ray = 0; ray < x.Lo.Length; ray++)
        {
            first[ray + 1] = first[ray] + x.CountOf(ray);
        }

        parent = new int[first[^1]];
        for (var i = 0; i < parent.Length; i++)
        {
            parent[i] = i;
        }

        Join();
    }

    internal int Count => parent.Length;

    internal int Root(int node)
    {
        while (parent[node] != node)
        {
            parent[node] = parent[parent[node]];
            node = parent[node];
        }

        return node;
    }

    internal (Point3 From, Point3 To) Ends(int node)
    {
        var ray = RayOf(node);
        var (lo, hi) = x.IntervalOf(ray, node - first[ray]);
        double y = grid.Ys[ray % x.Columns], z = grid.Zs[ray / x.Columns];
        return (new(lo, y, z), new(hi, y, z));
    }

    // The node of the nearest lattice line, or one within two lines of it, that holds the place's X.
    internal int NodeAt(Point3 p)
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
                    (best, least) = (first[ray] + i, away);
                }
            }
        }

        return best;
    }

    private int RayOf(int node)
    {
        var i = Array.BinarySearch(first, node);
        if (i < 0)
        {
            return ~i - 1;
        }

        // Rays with no interval share the start of the next one.
        while (i + 1 < first.Length && first[i + 1] == node)
        {
            i++;
        }

        return i;
    }

    private void Join()
    {
        for (var k = 0; k < x.Rows; k++)
        {
            for (var j = 0; j < x.Columns; j++)
            {
                var ray = (k * x.Columns) + j;
                if (x.IsEmpty(ray))
                {
                    continue;
                }

                if (bridge > 0)
                {
                    Along(ray);
                }

                // With bridging, a neighbour may lie behind some empty lines.
                var reach = bridge > 0 ? 5 : 1;
                for (var n = 1; n <= reach; n++)
                {
                    if (j + n < x.Columns)
                    {
                        Neighbours(ray, ray + n, j, j + n, k, k);
                    }

                    if (k + n < x.Rows)
                    {
                        Neighbours(ray, ray + (n * x.Columns), j, j, k, k + n);
                    }
                }
            }
        }
    }

    private void Along(int ray)
    {
        for (var i = 1; i < x.CountOf(ray); i++)
        {
            if (x.IntervalOf(ray, i).Lo - x.IntervalOf(ray, i - 1).Hi <= bridge)
            {
                Union(first[ray] + i, first[ray] + i - 1);
            }
        }
    }

    private void Neighbours(int rayA, int rayB, int ja, int jb, int ka, int kb)
    {
        if (x.More[rayA] is null && x.More[rayB] is null)
        {
            Pair(first[rayA], first[rayB], Math.Max(x.Lo[rayA], x.Lo[rayB]), Math.Min(x.Hi[rayA], x.Hi[rayB]), ja, jb, ka, kb);
            return;
        }

        int a = 0, b = 0, na = x.CountOf(rayA), nb = x.CountOf(rayB);
        while (a < na && b < nb)
        {
            var (alo, ahi) = x.IntervalOf(rayA, a);
            var (blo, bhi) = x.IntervalOf(rayB, b);
            Pair(first[rayA] + a, first[rayB] + b, Math.Max(alo, blo), Math.Min(ahi, bhi), ja, jb, ka, kb);
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

    // Two intervals that lie side by side from lo to hi: joined when a crossing ray is metal between them, tried from the middle outwards.
    private void Pair(int a, int b, double lo, double hi, int ja, int jb, int ka, int kb)
    {
        if (bridge > 0)
        {
            if (lo <= hi + bridge)
            {
                Union(a, b);
            }

            return;
        }

        if (!(lo <= hi) || Root(a) == Root(b))
        {
            return;
        }

        var xs = grid.Xs;
        int i0 = (int)Math.Ceiling((lo - xs[0]) / RayGrid.Step(xs)), i1 = (int)Math.Floor((hi - xs[0]) / RayGrid.Step(xs));
        i0 = Math.Max(i0, 0);
        i1 = Math.Min(i1, xs.Length - 1);
        var middle = (i0 + i1) / 2;
        for (var n = 0; n <= i1 - i0; n++)
        {
            var i = middle + ((n & 1) == 0 ? -(n / 2) : (n + 1) / 2);
            if (i >= i0 && i <= i1 && Crosses(i, ja, jb, ka, kb))
            {
                Union(a, b);
                return;
            }
        }
    }

    private bool Crosses(int i, int ja, int jb, int ka, int kb)
    {
        if (ja != jb)
        {
            var set = grid.AlongY;
            var ray = (ka * set.Columns) + i;
            return Holds(set, ray, grid.Ys[ja], grid.Ys[jb]);
        }

        var upright = grid.AlongZ;
        return Holds(upright, (i * upright.Columns) + ja, grid.Zs[ka], grid.Zs[kb]);
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
