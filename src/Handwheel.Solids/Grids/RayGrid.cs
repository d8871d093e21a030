using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

/// <summary>
/// Three sets of parallel rays over a box, each ray holding its exact intervals of metal. It samples the truth of a
/// <see cref="Workpieces.Workpiece"/>, for finding things, extents, connection and pictures. Mutable; not for use by two threads at once.
/// </summary>
/// <remarks>Each block of rays is worked by one thread from first cut to last, so a result does not depend on how many threads there are.</remarks>
public sealed partial class RayGrid
{
    private readonly GridCutter cutter;
    private readonly Solid bare;
    private readonly List<ISolid> cuts;
    private List<RayChange>[]? undo;
    private List<RayChange>[]? spare;
    private ISolid? lastCut;
    private PieceCells? cells;

    /// <summary>A grid of given spacing over a solid.</summary>
    /// <param name="bare">The bare stock.</param>
    /// <param name="spacing">Greatest distance between neighbouring rays, mm.</param>
    /// <param name="box">The box looked at; the solid's own bounds when null.</param>
    /// <param name="threads">How many threads may work; 0 for as many as there are.</param>
    /// <exception cref="ArgumentNullException"><paramref name="bare"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not above 0, the box is empty or not finite, or more than 1e8 rays are asked for.</exception>
    public RayGrid(ISolid bare, double spacing, Box3? box = null, int threads = 0)
    {
        ArgumentNullException.ThrowIfNull(bare);
        Demand.Positive(spacing);
        Box = box ?? bare.Bounds;
        Demand.Positive(Box.Size.X, nameof(box));
        Demand.Positive(Box.Size.Y, nameof(box));
        Demand.Positive(Box.Size.Z, nameof(box));
        int nx = Count(Box.Size.X, spacing), ny = Count(Box.Size.Y, spacing), nz = Count(Box.Size.Z, spacing);
        if (((double)nx * ny) + ((double)ny * nz) + ((double)nx * nz) > 1e8)
        {
            throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "More than 1e8 rays.");
        }

        Xs = Places(Box.Min.X, Box.Size.X, nx);
        Ys = Places(Box.Min.Y, Box.Size.Y, ny);
        Zs = Places(Box.Min.Z, Box.Size.Z, nz);
        this.bare = Solid.From(bare);
        cuts = [];
        cutter = new GridCutter(this, threads);
        cutter.Fill(this.bare);
    }

    /// <summary>A grid of given counts over a solid.</summary>
    /// <param name="bare">The bare stock.</param>
    /// <param name="across">How many rays along each side of the box.</param>
    /// <param name="threads">How many threads may work; 0 for as many as there are.</param>
    /// <exception cref="ArgumentNullException"><paramref name="bare"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is outside 2 to 5000.</exception>
    public RayGrid(ISolid bare, int across, int threads = 0)
    {
        ArgumentNullException.ThrowIfNull(bare);
        if (across is < 2 or > 5000)
        {
            throw new ArgumentOutOfRangeException(nameof(across), across, "From 2 to 5000 rays across.");
        }

        Box = bare.Bounds;
        Xs = Places(Box.Min.X, Box.Size.X, across);
        Ys = Places(Box.Min.Y, Box.Size.Y, across);
        Zs = Places(Box.Min.Z, Box.Size.Z, across);
        this.bare = Solid.From(bare);
        cuts = [];
        cutter = new GridCutter(this, threads);
        cutter.Fill(this.bare);
    }

    private RayGrid(RayGrid like, ISolid solid)
    {
        Box = like.Box;
        Xs = like.Xs;
        Ys = like.Ys;
        Zs = like.Zs;
        bare = Solid.From(solid);
        cuts = [];
        cutter = new GridCutter(this, like.cutter.Threads);
        cutter.Fill(bare);
    }

    private RayGrid(RayGrid other)
    {
        Box = other.Box;
        Xs = other.Xs;
        Ys = other.Ys;
        Zs = other.Zs;
        bare = other.bare;
        cuts = [.. other.cuts];
        cutter = new GridCutter(this, other.cutter);
        cells = other.cells?.Copy(this);
    }

    /// <summary>The box looked at.</summary>
    public Box3 Box { get; }

    /// <summary>Greatest distance between neighbouring rays, mm.</summary>
    public double Spacing => Math.Max(Step(Xs), Math.Max(Step(Ys), Step(Zs)));

    /// <summary>What cannot be overlooked: anything whose shadow along one of the axes holds a disc of this diameter, mm, however thin it is.</summary>
    public double Guarantee => Math.Sqrt(2) * Spacing;

    /// <summary>How many rays there are.</summary>
    public int Rays => AlongX.Lo.Length + AlongY.Lo.Length + AlongZ.Lo.Length;

    /// <summary>Whether the last cut can be taken back.</summary>
    public bool CanUndo => undo is not null;

    // Counts the changes.
    internal int Version { get; private set; }

    internal double[] Xs { get; }

    internal double[] Ys { get; }

    internal double[] Zs { get; }

    // Rows z, columns y.
    internal RaySet AlongX => cutter.AlongX;

    // Rows z, columns x.
    internal RaySet AlongY => cutter.AlongY;

    // Rows x, columns y.
    internal RaySet AlongZ => cutter.AlongZ;

    /// <summary>Another solid on the very same rays, so that the two can be compared ray by ray.</summary>
    /// <param name="solid">The other solid.</param>
    /// <exception cref="ArgumentNullException"><paramref name="solid"/> is null.</exception>
    public RayGrid Like(ISolid solid) => new(this, solid);

    /// <summary>The metal as it is now on rays of another spacing over another box: to look closely where something is suspected. Cuts that none of its rays can
    /// meet are passed over; the answers are those of a grid of that spacing over that box, cut by all that cut this one.</summary>
    /// <param name="box">The box to look at; it may reach beyond this grid's.</param>
    /// <param name="spacing">Greatest distance between neighbouring rays there, mm.</param>
    /// <returns>A grid of its own, which can be cut further without changing this one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not above 0, the box is empty or not finite, or more than 1e8 rays are asked for.</exception>
    public RayGrid Refine(Box3 box, double spacing)
    {
        var fine = new RayGrid(bare, spacing, box, cutter.Threads);
        fine.CutAll([.. cuts.Where(c => IsOnRays(c.Bounds, box))]);
        return fine;
    }

    /// <summary>Makes one cut, which can be taken back until the next.</summary>
    /// <param name="cut">What is removed.</param>
    /// <exception cref="ArgumentNullException"><paramref name="cut"/> is null.</exception>
    public void Cut(ISolid cut)
    {
        undo = cutter.Cut(GridCut.Of(Solid.From(cut)), undo ?? spare);
        spare = null;
        cells?.Mark(undo);
        cuts.Add(cut);
        Version++;
        lastCut = cut;
    }

    /// <summary>Makes many cuts at once, each block of rays going through all of them; none can be taken back.</summary>
    /// <param name="cuts">The cuts in order.</param>
    /// <exception cref="ArgumentNullException"><paramref name="cuts"/> is null.</exception>
    public void CutAll(IReadOnlyList<ISolid> cuts)
    {
        ArgumentNullException.ThrowIfNull(cuts);
        cutter.CutAll(cuts);
        cells?.MarkAll();
        this.cuts.AddRange(cuts);
        Version++;
        undo = null;
        lastCut = null;
    }

    /// <summary>Takes the last cut back.</summary>
    /// <exception cref="InvalidOperationException">There is no last cut to take back.</exception>
    public void Undo()
    {
        if (undo is null)
        {
            throw new InvalidOperationException("No cut to take back.");
        }

        cells?.Mark(undo);
        cutter.Restore(undo);
        spare = undo;
        cuts.RemoveAt(cuts.Count - 1);
        Version++;
        undo = null;
    }

    /// <summary>Makes the cut again that was taken back.</summary>
    /// <exception cref="InvalidOperationException">No cut was taken back.</exception>
    public void Redo()
    {
        if (undo is not null || lastCut is null)
        {
            throw new InvalidOperationException("No cut was taken back.");
        }

        Cut(lastCut);
    }

    /// <summary>Height of the metal seen from above at the ray nearest to a place; negative infinity where there is none.</summary>
    /// <param name="x">X, mm.</param>
    /// <param name="y">Y, mm.</param>
    public double TopAt(double x, double y) => AlongZ.Hi[(Nearest(Xs, x) * Ys.Length) + Nearest(Ys, y)];

    /// <summary>Volume of metal, mm3, as the mean of the three sets of rays; good to about 0.1 % of the volume.</summary>
    public double Volume()
    {
        double cx = Step(Ys) * Step(Zs), cy = Step(Xs) * Step(Zs), cz = Step(Xs) * Step(Ys);
        return ((Total(AlongX) * cx) + (Total(AlongY) * cy) + (Total(AlongZ) * cz)) / 3;
    }

    /// <summary>Writes every interval end in ray order, as bits, for comparing two grids exactly.</summary>
    public byte[] ToBytes()
    {
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);
        foreach (var set in (RaySet[])[AlongX, AlongY, AlongZ])
        {
            for (var ray = 0; ray < set.Lo.Length; ray++)
            {
                for (var i = 0; i < set.CountOf(ray); i++)
                {
                    var (lo, hi) = set.IntervalOf(ray, i);
                    writer.Write(ray);
                    writer.Write(lo);
                    writer.Write(hi);
                }
            }
        }

        writer.Flush();
        return stream.ToArray();
    }

    // The cells of pieces as the metal is now.
    internal PieceCells CellsNow()
    {
        cells ??= new(this);
        cells.Update(cutter.Threads);
        return cells;
    }

    internal static int Nearest(double[] places, double at) =>
        Math.Clamp((int)Math.Floor((at - places[0]) / Step(places) + 0.5), 0, places.Length - 1);

    internal static double Step(double[] places) => places[1] - places[0];

    // Rays have no ends: one meets a cut only where it lies within the cut's bounds across both other axes.
    private static bool IsOnRays(Box3 cut, Box3 box)
    {
        var x = cut.Min.X <= box.Max.X && cut.Max.X >= box.Min.X ? 1 : 0;
        var y = cut.Min.Y <= box.Max.Y && cut.Max.Y >= box.Min.Y ? 1 : 0;
        var z = cut.Min.Z <= box.Max.Z && cut.Max.Z >= box.Min.Z ? 1 : 0;
        return x + y + z >= 2;
    }

    private static double Total(RaySet set)
    {
        var sum = 0.0;
        for (var ray = 0; ray < set.Lo.Length; ray++)
        {
            for (var i = 0; i < set.CountOf(ray); i++)
            {
                var (lo, hi) = set.IntervalOf(ray, i);
                sum += hi - lo;
            }
        }

        return sum;
    }

    private static int Count(double size, double spacing) => Math.Max(2, (int)Math.Min(1e8, Math.Ceiling(size / spacing)));

    // Middles of equal cells, off round numbers by a small irrational share of a cell.
    private static double[] Places(double from, double size, int n)
    {
        var step = size / n;
        return [.. Enumerable.Range(0, n).Select(i => from + ((i + 0.5 + 0.0137035999) * step))];
    }
}
