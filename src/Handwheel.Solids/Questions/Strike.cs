using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>
/// Whether a solid in motion meets another: the box that holds both is halved again and again, and a cell is put aside when bounds that never claim too
/// much show that the obstacle is not in it or that the mover is farther from all of it than the nearest known. So a clearance is certified, not sampled.
/// </summary>
/// <remarks>
/// A cell is bounded as a whole, not from its middle, where the solid is a block, a prism or a cutter on a level or upright path, so long cells along parallel
/// faces stay whole; each cell is halved across the side that tells most.
/// </remarks>
public static class Strike
{
    // What rounding may add up to, mm: never claimed as clearance.
    private const double Rounding = 1e-9;

    /// <summary>Looks for the obstacle's place nearest to, or deepest in, the mover.</summary>
    /// <param name="mover">The swept cutter, whole, or any solid.</param>
    /// <param name="obstacle">What must not be met.</param>
    /// <param name="enough">Clearances of this much need not be told apart, mm.</param>
    /// <param name="tolerance">How finely to look, mm: a clearance is certified to within this, or a few times this beside curved or tilted faces.</param>
    /// <param name="budget">How many places and cells may be looked at.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not above 0.</exception>
    public static StrikeResult Check(ISolid mover, ISolid obstacle, double enough = 1, double tolerance = 0.01, int budget = 50_000)
    {
        Solid a = Solid.From(mover), b = Solid.From(obstacle);
        Demand.Positive(enough);
        Demand.Positive(tolerance);
        Demand.Positive(budget);
        var box = a.Bounds.Grown(enough).Intersection(b.Bounds);
        if (box.IsEmpty)
        {
            return new(StrikeVerdict.Clear, enough, 0, b.Bounds.IsEmpty ? default : b.Bounds.Centre);
        }

        if (!double.IsFinite(box.Size.Length))
        {
            // Neither bounds the other: the mover's own box alone says where to look.
            box = a.Bounds.Grown(enough);
            if (!double.IsFinite(box.Size.Length))
            {
                return new(StrikeVerdict.Undecided, 0, 0, default);
            }
        }

        return new Search(a, b, tolerance, enough, box).Run(budget);
    }

    // The cells still to be looked at, and what is known so far.
    private sealed class Search
    {
        private readonly Solid mover;
        private readonly Solid obstacle;
        private readonly double tolerance;
        private readonly PriorityQueue<Box3, double> queue = new();

        // Least distance of a place of the obstacle that has been looked at; negative inside the mover.
        private double known;

        // Least bound of the cells too small to halve again.
        private double settled;
        private Point3 place;
        private int looked;

        internal Search(Solid mover, Solid obstacle, double tolerance, double enough, Box3 box)
        {
            this.mover = mover;
            this.obstacle = obstacle;
            this.tolerance = tolerance;
            known = settled = enough;
            place = box.Centre;
            if (!(obstacle.LeastIn(box) > 0))
            {
                queue.Enqueue(box, mover.LeastIn(box));
            }
        }

        internal StrikeResult Run(int budget)
        {
            // Once an overlap is known, this much more is spent on its depth.
            const int more = 5000;
            var found = int.MaxValue;
            while (looked < budget && queue.TryPeek(out var cell, out var bound) && bound < known - tolerance)
            {
                if (known < -tolerance)
                {
                    found = Math.Min(found, looked);
                    if (looked > found + more)
                    {
                        break;
                    }
                }

                queue.Dequeue();
                Look(cell, bound);
            }

            if (known < -Rounding)
            {
                return new(StrikeVerdict.Strikes, 0, -known, place);
            }

            var least = Math.Min(settled, known);
            if (queue.TryPeek(out _, out var next))
            {
                least = Math.Min(next, least);
            }

            least -= Rounding;
            return least > 0 ? new(StrikeVerdict.Clear, least, 0, place) : new(StrikeVerdict.Undecided, 0, 0, place);
        }

        private void Look(in Box3 cell, double bound)
        {
            Sample(cell.Centre);
            if (cell.Size.Length <= tolerance)
            {
                settled = Math.Min(settled, bound);
                return;
            }

            // Both halves across each side: the side is taken whose halves are known best. Looked at too: the cell's side, edge or corner that is nearest by these bounds.
            (Box3 Low, Box3 High, double A, double B) best = default;
            var rank = double.NegativeInfinity;
            Span<double> near = [cell.Centre.X, cell.Centre.Y, cell.Centre.Z];
            for (var axis = 0; axis < 3; axis++)
            {
                var (low, top) = Halves(cell, axis);
                double a = Bound(low), b = Bound(top);
                near[axis] = a < b ? End(cell.Min, axis) : b < a ? End(cell.Max, axis) : near[axis];

                // What is put aside counts as far; long sides go first where nothing else tells.
                var worth = Math.Min(a, known) + Math.Min(b, known) + (1e-3 * Side(cell, axis));
                if (worth > rank && Side(cell, axis) > tolerance / 4)
                {
                    (rank, best) = (worth, (low, top, a, b));
                }
            }

            Sample(new(near[0], near[1], near[2]));
            Keep(best.Low, Math.Max(best.A, bound));
            Keep(best.High, Math.Max(best.B, bound));
        }

        private void Keep(in Box3 cell, double bound)
        {
            if (bound < known)
            {
                queue.Enqueue(cell, bound);
            }
        }

        // How far the mover stays from what the cell may hold of the obstacle: anything when it holds none.
        private double Bound(in Box3 cell)
        {
            looked++;
            return obstacle.LeastIn(cell) > 0 ? double.PositiveInfinity : mover.LeastIn(cell);
        }

        private void Sample(Point3 at)
        {
            looked++;
            if (obstacle.Distance(at) > 0)
            {
                return;
            }

            var near = mover.Distance(at);
            if (near < known && obstacle.Contains(at))
            {
                (known, place) = (near, at);
            }
        }

        private static double Side(in Box3 cell, int axis) => End(cell.Max, axis) - End(cell.Min, axis);

        private static double End(Point3 p, int axis) => axis == 0 ? p.X : axis == 1 ? p.Y : p.Z;

        private static (Box3 Low, Box3 High) Halves(in Box3 cell, int axis)
        {
            var c = cell.Centre;
            return axis switch
            {
                0 => (cell with { Max = cell.Max with { X = c.X } }, cell with { Min = cell.Min with { X = c.X } }),
                1 => (cell with { Max = cell.Max with { Y = c.Y } }, cell with { Min = cell.Min with { Y = c.Y } }),
                _ => (cell with { Max = cell.Max with { Z = c.Z } }, cell with { Min = cell.Min with { Z = c.Z } }),
            };
        }
    }
}
