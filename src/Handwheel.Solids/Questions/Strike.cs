using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>
/// Whether a solid in motion meets another: the box that holds both is halved again and again, and a part is put aside when signed distances that never
/// claim too much show that the obstacle is not in it or that the mover is farther than the nearest known. So a clearance is certified, not sampled.
/// </summary>
public static class Strike
{
    /// <summary>Looks for the obstacle's place nearest to, or deepest in, the mover.</summary>
    /// <param name="mover">The swept cutter, whole, or any solid.</param>
    /// <param name="obstacle">What must not be met.</param>
    /// <param name="enough">Clearances of this much need not be told apart, mm.</param>
    /// <param name="tolerance">How finely to look, mm: a clearance is certified to within a few times this.</param>
    /// <param name="budget">How many places may be looked at.</param>
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

        return Search(a, b, box, enough, tolerance, budget);
    }

    private static StrikeResult Search(Solid mover, Solid obstacle, Box3 box, double enough, double tolerance, int budget)
    {
        var search = new State(mover, obstacle, tolerance) { Known = enough, Settled = enough, Place = box.Centre };
        var left = budget;
        search.Queue.Enqueue(box, double.NegativeInfinity);
        while (left > 0 && search.Queue.TryDequeue(out var cell, out var bound))
        {
            left--;
            if (bound >= search.Known - tolerance || (search.Known < -tolerance && left < budget - 5000))
            {
                search.Settled = Math.Min(search.Settled, bound);
                break;
            }

            search.Look(cell);
        }

        if (search.Known < -1e-9)
        {
            return new(StrikeVerdict.Strikes, 0, -search.Known, search.Place);
        }

        var least = Math.Min(search.Settled, search.Known);
        if (left == 0 && search.Queue.TryPeek(out _, out var next))
        {
            least = Math.Min(next, least);
        }

        return least > 0 ? new(StrikeVerdict.Clear, least, 0, search.Place) : new(StrikeVerdict.Undecided, 0, 0, search.Place);
    }

    // The boxes still to be looked at, and what is known so far.
    private sealed class State(Solid mover, Solid obstacle, double tolerance)
    {
        internal PriorityQueue<Box3, double> Queue { get; } = new();

        internal double Known { get; set; }

        internal double Settled { get; set; }

        internal Point3 Place { get; set; }

        internal void Look(Box3 cell)
        {
            var centre = cell.Centre;
            var half = cell.Size.Length / 2;
            var there = obstacle.Distance(centre);
            if (there > half)
            {
                return;
            }

            var near = mover.Distance(centre);
            if (there <= 0 && near < Known && obstacle.Contains(centre))
            {
                (Known, Place) = (near, centre);
            }

            if (near - half >= Known)
            {
                return;
            }

            if (half <= tolerance / 2)
            {
                Settled = Math.Min(Settled, near - half);
                return;
            }

            foreach (var part in Halves(cell))
            {
                Queue.Enqueue(part, near - half);
            }
        }
    }

    // Cut across the longest side.
    private static Box3[] Halves(Box3 cell)
    {
        Vector3 size = cell.Size;
        var c = cell.Centre;
        if (size.X >= size.Y && size.X >= size.Z)
        {
            return [cell with { Max = cell.Max with { X = c.X } }, cell with { Min = cell.Min with { X = c.X } }];
        }

        return size.Y >= size.Z
            ? [cell with { Max = cell.Max with { Y = c.Y } }, cell with { Min = cell.Min with { Y = c.Y } }]
            : [cell with { Max = cell.Max with { Z = c.Z } }, cell with { Min = cell.Min with { Z = c.Z } }];
    }
}
