using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Nets;

/// <summary>
/// The connected pieces of a grid&#39;s metal at one moment, and the questions of the proof asked of them: which is the part, which are held, how far apart they
/// are. The grid is its own copy. Pieces are numbered from 0 by falling volume; a connection is certain, metal all the way.
/// </summary>
internal sealed class PieceMap
{
    private readonly Pieces pieces;

    private PieceMap(RayGrid grid)
    {
        Grid = grid;
        pieces = Pieces.Of(grid);
    }

    /// <summary>The grid they are the pieces of; it is not cut any more.</summary>
    public RayGrid Grid { get; }

    /// <summary>Number of pieces.</summary>
    public int Count => pieces.Count;

    /// <summary>Volume of a piece, cubic millimetres.</summary>
    /// <param name="piece">The piece.</param>
    /// <returns>Its volume.</returns>
    public double VolumeOf(int piece) => pieces.All[piece].Volume;

    /// <summary>A place well inside a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <returns>The middle of its longest interval along X.</returns>
    public Point3 Inside(int piece) => pieces.All[piece].Inside;

    /// <summary>Finds the pieces.</summary>
    /// <param name="grid">The grid; it may be cut further.</param>
    /// <returns>The pieces as they are now.</returns>
    public static PieceMap Of(RayGrid grid) => new(grid.Copy());

    /// <summary>The piece an interval belongs to; -1 for a sliver that crosses no other ray.</summary>
    /// <param name="axis">The axis of its ray.</param>
    /// <param name="ray">The ray.</param>
    /// <param name="from">Where the interval starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <returns>The piece.</returns>
    public int Of(int axis, int ray, double from, double to)
    {
        var line = Grid.RayLine(axis, ray);
        if (axis == 0)
        {
            return pieces.PieceAt(line.At((from + to) / 2));
        }

        // The interval is metal all the way: any ray along X that it crosses tells its piece.
        var (first, past) = Range(Grid.Lattice(axis), from, to);
        for (var i = first; i < past; i++)
        {
            var at = line.At(Grid.Lattice(axis)[i]);
            var crossed = Grid.RayNear(0, at);
            for (var k = 0; k < Grid.IntervalCount(0, crossed); k++)
            {
                var (lo, hi) = Grid.Interval(0, crossed, k);
                if (lo <= at.X && at.X <= hi && pieces.PieceAt(at) is >= 0 and var piece)
                {
                    return piece;
                }
            }
        }

        return -1;
    }

    /// <summary>The piece a place on a ray belongs to; -1 for none.</summary>
    /// <param name="axis">The axis of the ray.</param>
    /// <param name="ray">The ray.</param>
    /// <param name="at">The place along it.</param>
    /// <returns>The piece.</returns>
    public int At(int axis, int ray, double at)
    {
        for (var k = 0; k < Grid.IntervalCount(axis, ray); k++)
        {
            var (lo, hi) = Grid.Interval(axis, ray, k);
            if (lo <= at && at <= hi)
            {
                return Of(axis, ray, lo, hi);
            }
        }

        return -1;
    }

    /// <summary>The piece that has most of a solid&#39;s metal; -1 when there is no piece.</summary>
    /// <param name="wanted">The solid on the same rays.</param>
    /// <returns>The piece.</returns>
    public int Most(RayGrid wanted)
    {
        if (Count <= 1)
        {
            return Count - 1;
        }

        var shared = new double[Count];
        for (var ray = 0; ray < Grid.RaysAlong(0); ray++)
        {
            for (var s = 0; s < Grid.IntervalCount(0, ray) && wanted.IntervalCount(0, ray) > 0; s++)
            {
                var (from, to) = Grid.Interval(0, ray, s);
                var both = Shared(wanted, ray, from, to);
                if (both > 0 && Of(0, ray, from, to) is >= 0 and var piece)
                {
                    shared[piece] += both;
                }
            }
        }

        return Array.IndexOf(shared, shared.Max());
    }

    /// <summary>The pieces that one of the solids reaches into.</summary>
    /// <param name="holders">The solids.</param>
    /// <returns>Their numbers.</returns>
    public HashSet<int> Touching(IReadOnlyList<ISolid> holders)
    {
        var found = new HashSet<int>();
        foreach (var holder in holders)
        {
            for (var axis = 0; axis < 3 && found.Count < Count; axis++)
            {
                Touch(holder, axis, found);
            }
        }

        return found;
    }

    /// <summary>The least gap along a ray between a piece and any other.</summary>
    /// <param name="piece">The piece.</param>
    /// <returns>The gap, millimetres; infinite where none faces it.</returns>
    public double Gap(int piece)
    {
        var least = double.PositiveInfinity;
        for (var axis = 0; axis < 3; axis++)
        {
            for (var ray = 0; ray < Grid.RaysAlong(axis); ray++)
            {
                for (var s = 1; s < Grid.IntervalCount(axis, ray); s++)
                {
                    var (a, b) = (Grid.Interval(axis, ray, s - 1), Grid.Interval(axis, ray, s));
                    if (b.From - a.To >= least)
                    {
                        continue;
                    }

                    int before = Of(axis, ray, a.From, a.To), after = Of(axis, ray, b.From, b.To);
                    if (before >= 0 && after >= 0 && before != after && (before == piece || after == piece))
                    {
                        least = b.From - a.To;
                    }
                }
            }
        }

        return least;
    }

    private static double Shared(RayGrid wanted, int ray, double from, double to)
    {
        var both = 0.0;
        for (var k = 0; k < wanted.IntervalCount(0, ray); k++)
        {
            var (lo, hi) = wanted.Interval(0, ray, k);
            both += Math.Max(0, Math.Min(hi, to) - Math.Max(lo, from));
        }

        return both;
    }

    private void Touch(ISolid holder, int axis, HashSet<int> found)
    {
        var box = holder.Bounds;
        for (var ray = 0; ray < Grid.RaysAlong(axis); ray++)
        {
            var line = Grid.RayLine(axis, ray);
            if (Grid.IntervalCount(axis, ray) == 0 || !box.Contains(Within(box, line, axis)))
            {
                continue;
            }

            var grip = holder.Sound(line);
            for (var s = 0; s < Grid.IntervalCount(axis, ray) && grip.Count > 0; s++)
            {
                var (from, to) = Grid.Interval(axis, ray, s);
                if (grip.Any(g => g.From <= to && g.To >= from) && Of(axis, ray, from, to) is >= 0 and var piece)
                {
                    found.Add(piece);
                }
            }
        }
    }

    // The place of a ray at the height of a box's corner.
    private static Point3 Within(Box3 box, in Line3 line, int axis) => axis switch
    {
        0 => line.Origin with { X = box.Min.X },
        1 => line.Origin with { Y = box.Min.Y },
        _ => line.Origin with { Z = box.Min.Z },
    };

    // The index of the first place not below a value, and the index past the last not above another.
    private static (int First, int Past) Range(IReadOnlyList<double> places, double low, double high)
    {
        var step = places[1] - places[0];
        var first = (int)Math.Clamp(Math.Ceiling((low - places[0]) / step) - 1, 0, places.Count);
        while (first < places.Count && places[first] < low)
        {
            first++;
        }

        var past = first;
        while (past < places.Count && places[past] <= high)
        {
            past++;
        }

        return (first, past);
    }
}
