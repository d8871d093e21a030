using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>What lies in every one of several solids.</summary>
public sealed class Intersection : Compound
{
    /// <summary>The intersection of solids.</summary>
    /// <param name="parts">The solids, one at least.</param>
    /// <exception cref="ArgumentNullException"><paramref name="parts"/> is null.</exception>
    /// <exception cref="ArgumentException">No solid is given.</exception>
    public Intersection(params IEnumerable<ISolid> parts)
        : base(parts)
    {
        if (Solids.Length == 0)
        {
            throw new ArgumentException("An intersection has a part at least.", nameof(parts));
        }

        Bounds = Parts.Aggregate(Box3.Everything, (b, p) => b.Intersection(p.Bounds));
    }

    /// <inheritdoc/>
    public override Box3 Bounds { get; }

    /// <inheritdoc/>
    public override bool Contains(Point3 point)
    {
        foreach (var part in Solids)
        {
            if (!part.Contains(point))
            {
                return false;
            }
        }

        return true;
    }

    internal override double Distance(Point3 point)
    {
        var most = double.NegativeInfinity;
        foreach (var part in Solids)
        {
            most = Math.Max(most, part.Distance(point));
        }

        return most;
    }

    internal override double LeastIn(in Box3 cell)
    {
        var most = double.NegativeInfinity;
        foreach (var part in Solids)
        {
            most = Math.Max(most, part.LeastIn(cell));
        }

        return most;
    }

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        var start = into.Count;
        SoundPart(0, line, closed, into);
        using var rented = SpanPool.Rent(out var other);
        for (var i = 1; i < Solids.Length && into.Count > start; i++)
        {
            other.Clear();
            SoundPart(i, line, closed, other);
            into.Intersect(other, start, 0);
        }
    }
}
