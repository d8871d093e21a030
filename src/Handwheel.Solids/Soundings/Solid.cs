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

    // A signed distance that never claims too much: positive at most the distance to the solid, negative at most the depth inside it, 0 when unsure.
    internal virtual double Distance(Point3 point) => BoxDistance(Bounds, point);

    // A bound over a whole cell: where it is positive, no place of the cell is nearer to the solid than that; not positive, it claims nothing and only ranks.
    internal virtual double LeastIn(in Box3 cell) => Distance(cell.Centre) - (cell.Size.Length / 2);

    // The distance between two boxes; where they overlap, less the least way out.
    internal static double BoxGap(in Box3 a, in Box3 b)
    {
        var x = Math.Max(a.Min.X - b.Max.X, b.Min.X - a.Max.X);
        var y = Math.Max(a.Min.Y - b.Max.Y, b.Min.Y - a.Max.Y);
        var z = Math.Max(a.Min.Z - b.Max.Z, b.Min.Z - a.Max.Z);
        return Corner(Corner(x, y), z);
    }

    internal static double BoxDistance(Box3 box, Point3 p)
    {
        var x = Math.Max(0, Math.Max(box.Min.X - p.X, p.X - box.Max.X));
        var y = Math.Max(0, Math.Max(box.Min.Y - p.Y, p.Y - box.Max.Y));
        var z = Math.Max(0, Math.Max(box.Min.Z - p.Z, p.Z - box.Max.Z));
        return Math.Sqrt((x * x) + (y * y) + (z * z));
    }

    // Distance to what two crossing sides bound: exact at a right angle.
    internal static double Corner(double a, double b) => a > 0 && b > 0 ? Math.Sqrt((a * a) + (b * b)) : Math.Max(a, b);

    internal static Solid From(ISolid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        return solid as Solid ?? new Shapes.ForeignSolid(solid);
    }
}
