using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Questions;

/// <summary>
/// The connected pieces of a grid's metal. Intervals along X are the nodes; two neighbours are joined where a ray along Y or Z that crosses both
/// is metal from one to the other, so what is joined is joined for certain.
/// </summary>
public sealed class Pieces
{
    private readonly RayGrid grid;
    private readonly PieceGraph graph;
    private readonly Lazy<PieceGraph> bridged;
    private readonly int[] pieceOfRoot;

    private Pieces(RayGrid grid)
    {
        this.grid = grid;
        graph = new PieceGraph(grid, 0);
        bridged = new(() => new PieceGraph(grid, 4 * grid.Spacing));
        (All, pieceOfRoot) = Gather();
    }

    /// <summary>The pieces, largest first.</summary>
    public IReadOnlyList<Piece> All { get; }

    /// <summary>How many there are.</summary>
    public int Count => All.Count;

    /// <summary>The pieces of a grid as it is now.</summary>
    /// <param name="grid">The grid; it may be cut further afterwards, but then the pieces are not asked again.</param>
    /// <exception cref="ArgumentNullException"><paramref name="grid"/> is null.</exception>
    public static Pieces Of(RayGrid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        return new(grid);
    }

    /// <summary>Whether two places are one piece, refined until it is certain or the finest spacing is reached.</summary>
    /// <param name="workpiece">The workpiece.</param>
    /// <param name="a">A place in metal.</param>
    /// <param name="b">Another place in metal.</param>
    /// <param name="spacing">Spacing to start with, mm.</param>
    /// <param name="finest">Finest spacing, mm.</param>
    /// <exception cref="ArgumentNullException"><paramref name="workpiece"/> is null.</exception>
    public static Joined Decide(Workpiece workpiece, Point3 a, Point3 b, double spacing, double finest)
    {
        ArgumentNullException.ThrowIfNull(workpiece);
        for (var s = spacing; ; s /= 2)
        {
            var rays = new RayGrid(workpiece.Bare, s);
            rays.CutAll(workpiece.Cuts);
            var answer = Of(rays).SamePiece(a, b);
            if (answer != Joined.Undecided || s / 2 < finest)
            {
                return answer;
            }
        }
    }

    /// <summary>Index of the cut that parts two places: the first after which they are no longer joined; -1 when they still are, or never were.</summary>
    /// <param name="workpiece">The workpiece after all its cuts.</param>
    /// <param name="a">A place in metal to the last.</param>
    /// <param name="b">Another one.</param>
    /// <param name="spacing">Spacing of the rays, mm.</param>
    /// <param name="finest">Finest spacing, mm.</param>
    /// <exception cref="ArgumentNullException"><paramref name="workpiece"/> is null.</exception>
    public static (int Cut, Joined Certainty) PartingCut(Workpiece workpiece, Point3 a, Point3 b, double spacing, double finest)
    {
        ArgumentNullException.ThrowIfNull(workpiece);
        var end = Decide(workpiece, a, b, spacing, finest);
        if (end != Joined.Apart)
        {
            return (-1, end);
        }

        int lo = 0, hi = workpiece.Cuts.Count;
        var certainty = Joined.Apart;
        while (hi - lo > 1)
        {
            var middle = (lo + hi) / 2;
            var joined = Decide(workpiece.Before(middle), a, b, spacing, finest);
            if (joined == Joined.One)
            {
                lo = middle;
            }
            else
            {
                hi = middle;
                certainty = joined;
            }
        }

        return (hi - 1, certainty);
    }

    /// <summary>Index into <see cref="All"/> of the piece nearest a place within a spacing; -1 when the place is in no metal.</summary>
    /// <param name="place">The place.</param>
    public int PieceAt(Point3 place)
    {
        var label = graph.LabelAt(place);
        return label < 0 ? -1 : pieceOfRoot[graph.Root(label)];
    }

    /// <summary>Whether two places are one piece, as certain as this spacing can be.</summary>
    /// <param name="a">A place in metal.</param>
    /// <param name="b">Another place in metal.</param>
    public Joined SamePiece(Point3 a, Point3 b)
    {
        int i = graph.LabelAt(a), j = graph.LabelAt(b);
        if (i < 0 || j < 0)
        {
            return Joined.Undecided;
        }

        if (graph.Root(i) == graph.Root(j))
        {
            return Joined.One;
        }

        var wide = bridged.Value;
        return wide.Root(wide.LabelAt(a)) == wide.Root(wide.LabelAt(b)) ? Joined.Undecided : Joined.Apart;
    }

    private (IReadOnlyList<Piece> All, int[] OfRoot) Gather()
    {
        var cell = RayGrid.Step(grid.Ys) * RayGrid.Step(grid.Zs);
        var longest = new double[graph.Labels];
        var volume = new double[graph.Labels];
        var inside = new Point3[graph.Labels];
        var box = new Box3[graph.Labels];
        Array.Fill(longest, -1);
        Array.Fill(box, Box3.Empty);
        graph.Measure(volume, box, longest, inside);

        // Labels into their roots, which have the smallest numbers.
        for (var label = graph.Labels - 1; label >= 0; label--)
        {
            var root = graph.Root(label);
            if (root == label)
            {
                continue;
            }

            volume[root] += volume[label];
            box[root] = box[root].Union(box[label]);
            if (longest[label] > longest[root])
            {
                (longest[root], inside[root]) = (longest[label], inside[label]);
            }
        }

        var order = Enumerable.Range(0, graph.Labels).Where(l => graph.Root(l) == l).OrderByDescending(l => volume[l]).ThenBy(l => l).ToArray();
        var ofRoot = new int[graph.Labels];
        for (var i = 0; i < order.Length; i++)
        {
            ofRoot[order[i]] = i;
        }

        return ([.. order.Select(l => new Piece(inside[l], box[l], volume[l] * cell))], ofRoot);
    }
}
