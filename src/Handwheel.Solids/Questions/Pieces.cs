using System.Runtime.InteropServices;
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
    private readonly int version;
    private readonly PieceCells cells;
    private readonly Lazy<PieceGraph> bridged;

    // Where each cell's local pieces start in the numbering of all, and the piece of each.
    private readonly int[] starts;
    private readonly int[] pieceOf;

    private Pieces(RayGrid grid)
    {
        this.grid = grid;
        version = grid.Version;
        cells = grid.CellsNow();
        bridged = new(() => new PieceGraph(grid, 4 * grid.Spacing));
        starts = new int[cells.Cells.Length + 1];
        for (var i = 0; i < cells.Cells.Length; i++)
        {
            starts[i + 1] = starts[i] + cells.Cells[i].Count;
        }

        pieceOf = Roots();
        All = Gather();
    }

    /// <summary>The pieces, largest first.</summary>
    public IReadOnlyList<Piece> All { get; }

    /// <summary>How many there are.</summary>
    public int Count => All.Count;

    /// <summary>The pieces of a grid as it is now.</summary>
    /// <param name="grid">The grid; it may be cut further afterwards, but then the pieces can say no more where they are. What it found stays with the grid:
    /// after the next cut only what that changed is worked out anew.</param>
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
    /// <exception cref="InvalidOperationException">The grid was cut since.</exception>
    public int PieceAt(Point3 place)
    {
        if (grid.Version != version)
        {
            throw new InvalidOperationException("The grid was cut after its pieces were found.");
        }

        int j = RayGrid.Nearest(grid.Ys, place.Y), k = RayGrid.Nearest(grid.Zs, place.Z);
        var best = -1;
        var least = double.PositiveInfinity;
        for (var row = Math.Max(0, k - 1); row <= Math.Min(k + 1, grid.Zs.Length - 1); row++)
        {
            for (var line = Math.Max(0, j - 1); line <= Math.Min(j + 1, grid.Ys.Length - 1); line++)
            {
                var i = grid.AlongX.IndexAt((row * grid.Ys.Length) + line, place.X);
                var away = Math.Abs(grid.Ys[line] - place.Y) + Math.Abs(grid.Zs[row] - place.Z);
                if (i >= 0 && away < least)
                {
                    (best, least) = (PieceOf(row, line, i), away);
                }
            }
        }

        return best;
    }

    /// <summary>Whether two places are one piece, as certain as this spacing can be.</summary>
    /// <param name="a">A place in metal.</param>
    /// <param name="b">Another place in metal.</param>
    /// <exception cref="InvalidOperationException">The grid was cut since.</exception>
    public Joined SamePiece(Point3 a, Point3 b)
    {
        int i = PieceAt(a), j = PieceAt(b);
        if (i < 0 || j < 0)
        {
            return Joined.Undecided;
        }

        if (i == j)
        {
            return Joined.One;
        }

        var wide = bridged.Value;
        return wide.Root(wide.LabelAt(a)) == wide.Root(wide.LabelAt(b)) ? Joined.Undecided : Joined.Apart;
    }

    // The piece of one interval of a ray along X.
    private int PieceOf(int row, int line, int interval)
    {
        var at = (row * cells.Blocks) + (line / RaySet.BlockSize);
        ref readonly var cell = ref cells.Cells[at];
        if (cell.Labels is not { } labels)
        {
            return pieceOf[starts[at]];
        }

        for (var other = line / RaySet.BlockSize * RaySet.BlockSize; other < line; other++)
        {
            interval += grid.AlongX.CountOf((row * grid.Ys.Length) + other);
        }

        return pieceOf[starts[at] + labels[interval]];
    }

    // The smallest number among the local pieces each is joined to.
    private int[] Roots()
    {
        var parents = new int[starts[^1]];
        for (var i = 0; i < parents.Length; i++)
        {
            parents[i] = i;
        }

        var all = cells.Cells;
        for (var i = 0; i < all.Length; i++)
        {
            Unite(parents, starts[i], starts[Math.Min(i + 1, all.Length - 1)], all[i].Right);
            Unite(parents, starts[i], starts[Math.Min(i + cells.Blocks, all.Length - 1)], all[i].Up);
        }

        // A parent has the smaller number, so it has its root by now.
        for (var i = 0; i < parents.Length; i++)
        {
            parents[i] = parents[parents[i]];
        }

        return parents;
    }

    private static void Unite(int[] parents, int startA, int startB, int[] pairs)
    {
        for (var i = 0; i < pairs.Length; i += 2)
        {
            int p = startA + pairs[i], q = startB + pairs[i + 1];
            while (parents[p] != p)
            {
                p = parents[p] = parents[parents[p]];
            }

            while (parents[q] != q)
            {
                q = parents[q] = parents[parents[q]];
            }

            parents[Math.Max(p, q)] = Math.Min(p, q);
        }
    }

    // Adds the local pieces up, and puts in place of each root its piece's index.
    private IReadOnlyList<Piece> Gather()
    {
        var slots = new int[pieceOf.Length];
        var gathered = new List<GatheredPiece>();
        for (var at = 0; at < cells.Cells.Length; at++)
        {
            ref readonly var cell = ref cells.Cells[at];
            for (var i = 0; i < cell.Count; i++)
            {
                var label = starts[at] + i;
                if (pieceOf[label] == label)
                {
                    slots[label] = gathered.Count;
                    gathered.Add(GatheredPiece.None);
                }

                slots[label] = slots[pieceOf[label]];
                CollectionsMarshal.AsSpan(gathered)[slots[label]].Add(cell.Piece(i), grid, at / cells.Blocks, at % cells.Blocks * RaySet.BlockSize);
            }
        }

        int[] order = [.. Enumerable.Range(0, gathered.Count).OrderByDescending(s => gathered[s].Length).ThenBy(s => s)];
        var rank = new int[order.Length];
        for (var i = 0; i < order.Length; i++)
        {
            rank[order[i]] = i;
        }

        for (var label = 0; label < pieceOf.Length; label++)
        {
            pieceOf[label] = rank[slots[label]];
        }

        var area = RayGrid.Step(grid.Ys) * RayGrid.Step(grid.Zs);
        return [.. order.Select(s => gathered[s].ToPiece(grid, area))];
    }
}
