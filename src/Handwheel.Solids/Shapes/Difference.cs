using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>A solid with others cut out of it. What is cut out counts as open, so the result keeps its surface; a touch removes nothing.</summary>
public sealed class Difference : Compound
{
    /// <summary>A solid less others.</summary>
    /// <param name="solid">The solid.</param>
    /// <param name="cut">What is cut out of it.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public Difference(ISolid solid, params IEnumerable<ISolid> cut)
        : base([solid, .. cut])
    {
    }

    /// <inheritdoc/>
    public override Box3 Bounds => Solids[0].Bounds;

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point)
    {
        var n = base.NormalAt(surface, point);
        return PartOf(surface) == 0 ? n : -n;
    }

    internal override double Distance(Point3 point)
    {
        var most = Solids[0].Distance(point);
        for (var i = 1; i < Solids.Length; i++)
        {
            most = Math.Max(most, -Solids[i].Distance(point));
        }

        return most;
    }

    internal override double LeastIn(in Box3 cell)
    {
        var most = Solids[0].LeastIn(cell);
        for (var i = 1; i < Solids.Length; i++)
        {
            // Deep inside what is cut out there is no metal.
            most = Math.Max(most, -Solids[i].Distance(cell.Centre) - (cell.Size.Length / 2));
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
            SoundPart(i, line, !closed, other);
            into.Subtract(other, start, 0);
        }
    }
}
