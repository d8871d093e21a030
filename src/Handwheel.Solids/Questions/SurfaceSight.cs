using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

// What is seen of a solid's surface from one point and along lines beside it; every place seen is noted.
internal sealed class SurfaceSight(Solid solid)
{
    private Point3 from;
    private bool within;

    internal MetPlaces Met { get; } = new();

    internal Point3 Point => from;

    // Whether the point lies in the metal.
    internal bool Within => within;

    // Another point, nothing seen yet.
    internal void From(Point3 point)
    {
        from = point;
        within = solid.Contains(point);
        Met.Start(point);
    }

    // The surface nearest along a normal, noted.
    internal (Point3 Place, Vector3 Normal)? Across(Point3 at, Vector3 normal)
    {
        var line = new Line3(at, normal);
        using var rented = SpanPool.Rent(out var list);
        solid.Sound(line, closed: true, list);
        list.Normalise();
        var (nearest, face) = (double.PositiveInfinity, default(SurfaceId));
        foreach (ref readonly var span in list.Items)
        {
            (nearest, face) = Math.Abs(span.From) < Math.Abs(nearest) ? (span.From, span.FromSurface) : (nearest, face);
            (nearest, face) = Math.Abs(span.To) < Math.Abs(nearest) ? (span.To, span.ToSurface) : (nearest, face);
        }

        if (Note(line, nearest, face) is null)
        {
            return null;
        }

        var place = line.At(nearest);
        return (place, solid.NormalAt(face, place));
    }

    // The first place of the surface ahead along a line is noted.
    internal void Ahead(in Line3 line)
    {
        using var rented = SpanPool.Rent(out var list);
        solid.Sound(line, closed: true, list);
        list.Normalise();
        foreach (ref readonly var span in list.Items)
        {
            if (span.From > 0)
            {
                Note(line, span.From, span.FromSurface);
                return;
            }

            if (span.To > 0)
            {
                Note(line, span.To, span.ToSurface);
                return;
            }
        }
    }

    // The first place met along a direction is noted; how far it is.
    internal double? Look(Vector3 u)
    {
        using var rented = SpanPool.Rent(out var list);
        var line = new Line3(from, u);
        solid.Sound(line, closed: true, list);
        list.Normalise();
        foreach (ref readonly var span in list.Items)
        {
            if (span.From >= 0)
            {
                return Note(line, span.From, span.FromSurface);
            }

            if (span.To >= 0)
            {
                return within || span.To > 0 ? Note(line, span.To, span.ToSurface) : 0;
            }
        }

        return null;
    }

    // A place of the surface and its plane; how far along the line it is.
    private double? Note(in Line3 line, double t, SurfaceId surface)
    {
        if (!double.IsFinite(t))
        {
            return null;
        }

        var place = line.At(t);
        if (Met.Takes(place))
        {
            Met.Add(place, solid.NormalAt(surface, place), surface);
        }

        return t;
    }
}
