using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Nets;

/// <summary>
/// The connected pieces of the metal of a net: intervals that cross at a lattice place are one piece. A connection found is certain, metal all the way. Pieces are
/// numbered from 0 by falling volume.
/// </summary>
internal sealed class PieceMap
{
    private readonly int[][] firsts;
    private readonly int[] pieces;

    private PieceMap(RayNet net, int[][] starts, int[] piece, double[] volumes)
    {
        Net = net;
        firsts = starts;
        pieces = piece;
        Volumes = volumes;
    }

    /// <summary>The net they are the pieces of.</summary>
    public RayNet Net { get; }

    /// <summary>Volume of each piece, cubic millimetres, by its Z rays.</summary>
    public IReadOnlyList<double> Volumes { get; }

    /// <summary>Number of pieces.</summary>
    public int Count => Volumes.Count;

    /// <summary>The piece an interval belongs to; -1 for a sliver that crosses no lattice place.</summary>
    /// <param name="axis">The axis of its ray.</param>
    /// <param name="ray">The ray.</param>
    /// <param name="span">The interval&#39;s index.</param>
    /// <returns>The piece.</returns>
    public int Of(int axis, int ray, int span) => pieces[firsts[axis][ray] + span];

    /// <summary>Finds the pieces.</summary>
    /// <param name="net">The net.</param>
    /// <returns>The pieces.</returns>
    public static PieceMap Of(RayNet net)
    {
        var starts = new int[3][];
        var total = 0;
        for (var axis = 0; axis < 3; axis++)
        {
            starts[axis] = new int[net.Count(axis)];
            for (var i = 0; i < starts[axis].Length; i++)
            {
                starts[axis][i] = total;
                total += net.Ray(axis, i).Count;
            }
        }

        var parent = new int[total];
        for (var i = 0; i < total; i++)
        {
            parent[i] = i;
        }

        var crossed = new bool[total];
        Join(net, starts, parent, crossed, 0);
        Join(net, starts, parent, crossed, 1);
        return Numbered(net, starts, parent, crossed);
    }

    // Joins each interval along X (or Y) with the intervals along Z that it crosses.
    private static void Join(RayNet net, int[][] starts, int[] parent, bool[] crossed, int axis)
    {
        var along = net.Places(axis);
        var next = net.Places((axis + 1) % 3).Count;
        var nx = net.Places(0).Count;
        for (var ray = 0; ray < net.Count(axis); ray++)
        {
            var spans = net.Ray(axis, ray);
            for (var s = 0; s < spans.Count; s++)
            {
                var (first, past) = RayNet.Range(along, spans[s].From, spans[s].To);
                for (var i = first; i < past; i++)
                {
                    var (x, y, z) = axis == 0 ? (i, ray % next, ray / next) : (ray / next, i, ray % next);
                    var column = x + (y * nx);
                    var other = Holding(net.Ray(2, column), net.Places(2)[z]);
                    if (other >= 0)
                    {
                        int a = starts[axis][ray] + s, b = starts[2][column] + other;
                        crossed[a] = crossed[b] = true;
                        Union(parent, a, b);
                    }
                }
            }
        }
    }

    private static PieceMap Numbered(RayNet net, int[][] starts, int[] parent, bool[] crossed)
    {
        var volume = new SortedDictionary<int, double>();
        var cell = net.Spacing * net.Spacing;
        for (var ray = 0; ray < net.Count(2); ray++)
        {
            var spans = net.Ray(2, ray);
            for (var s = 0; s < spans.Count; s++)
            {
                var id = starts[2][ray] + s;
                if (crossed[id])
                {
                    var root = Root(parent, id);
                    volume[root] = volume.GetValueOrDefault(root) + (spans[s].Length * cell);
                }
            }
        }

        var order = volume.OrderByDescending(p => p.Value).ThenBy(p => p.Key).ToList();
        var number = new Dictionary<int, int>();
        for (var i = 0; i < order.Count; i++)
        {
            number[order[i].Key] = i;
        }

        var piece = new int[parent.Length];
        for (var i = 0; i < parent.Length; i++)
        {
            piece[i] = crossed[i] ? number.GetValueOrDefault(Root(parent, i), -1) : -1;
        }

        return new PieceMap(net, starts, piece, [.. order.Select(p => p.Value)]);
    }

    private static int Holding(Spans spans, double at)
    {
        for (var i = 0; i < spans.Count; i++)
        {
            if (at < spans[i].From)
            {
                return -1;
            }

            if (at <= spans[i].To)
            {
                return i;
            }
        }

        return -1;
    }

    private static int Root(int[] parent, int i)
    {
        while (parent[i] != i)
        {
            parent[i] = parent[parent[i]];
            i = parent[i];
        }

        return i;
    }

    // The lower number wins, so that nothing depends on the order of joining.
    private static void Union(int[] parent, int a, int b)
    {
        int ra = Root(parent, a), rb = Root(parent, b);
        if (ra < rb)
        {
            parent[rb] = ra;
        }
        else if (rb < ra)
        {
            parent[ra] = rb;
        }
    }
}
