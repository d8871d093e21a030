using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Soundings;

/// <summary>Base of the engine's solids: one allocation-free sounding underneath, the public questions on top.</summary>
public abstract class Solid : ISolid
{
    /// <inheritdoc/>
    public abstract Box3 Bounds { get; }

    /// <inheritdoc/>
    public abstract int SurfaceCount { get; }

    /// <inheritdoc/>
    public Spans Sound(in Line3 line)
    {
        using var rented = SpanPool.Rent(out var list);
        Sound(line, closed: true, list);
        list.Normalise();
        return list.ToSpans();
    }

    /// <inheritdoc/>
    public virtual bool Contains(Point3 point)
    {
        if (!Bounds.Contains(point))
        {
            return false;
        }

        using var rented = SpanPool.Rent(out var list);
        Sound(new Line3(point, Vector3.UnitZ), closed: true, list);
        foreach (ref readonly var span in list.Items)
        {
            if (span.From <= 0 && 0 <= span.To)
            {
                return true;
            }
        }

        return false;
    }

    /// <inheritdoc/>
    public abstract Vector3 NormalAt(SurfaceId surface, Point3 point);

    // Appends the intervals in any order, overlaps allowed. Closed: a line in a face counts as inside; open: it does not.
    // The direction need not be of unit length; distances are in its units.
    internal abstract void Sound(in Line3 line, bool closed, SpanList into);

    internal static Solid From(ISolid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        return solid as Solid ?? new Shapes.ForeignSolid(solid);
    }
}
