using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>What lies in any of several solids.</summary>
public sealed class Union : Compound
{
    /// <summary>The union of solids.</summary>
    /// <param name="parts">The solids; none makes an empty solid.</param>
    /// <exception cref="ArgumentNullException"><paramref name="parts"/> is null.</exception>
    public Union(params IEnumerable<ISolid> parts)
        : base(parts) => Bounds = Parts.Aggregate(Box3.Empty, (b, p) => b.Union(p.Bounds));

    /// <inheritdoc/>
    public override Box3 Bounds { get; }

    /// <inheritdoc/>
    public override bool Contains(Point3 point)
    {
        foreach (var part in Solids)
        {
            if (part.Contains(point))
            {
                return true;
            }
        }

        return false;
    }

    internal override double Distance(Point3 point)
    {
        var least = double.PositiveInfinity;
        foreach (var part in Solids)
        {
            least = Math.Min(least, part.Distance(point));
        }

        return least;
    }

    internal override double LeastIn(in Box3 cell)
    {
        var least = double.PositiveInfinity;
        foreach (var part in Solids)
        {
            least = Math.Min(least, part.LeastIn(cell));
        }

        return least;
    }

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        var start = into.Count;
        for (var i = 0; i < Solids.Length; i++)
        {
            SoundPart(i, line, closed, into);
        }

        into.Normalise(start);
    }
}
