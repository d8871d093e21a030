using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Questions;

// Climbs along the reference's surface to the place where the excess is deepest along the normal, by soundings alone.
internal sealed class ExcessRefiner(Workpiece workpiece, Solid reference, bool outward)
{
    private readonly record struct Spot(Point3 Place, Vector3 Direction, double Depth, SurfaceId Surface);

    internal Excess Refine(ExcessScan scan)
    {
        Spot? best = null;
        foreach (var (from, to) in scan.Longest)
        {
            foreach (var end in (Point3[])[from, to])
            {
                // Each end of a stretch on a ray; those on the reference's surface start a climb.
                var line = from == end ? Line3.Through(from, to) : Line3.Through(to, from);
                if (On(line, 1e-6) is { } spot && !(best is { } b && spot.Place.DistanceTo(b.Place) < scan.Spacing / 4 && spot.Depth <= b.Depth))
                {
                    var top = Climb(spot, scan.Spacing);
                    best = best is { } known && known.Depth >= top.Depth ? known : top;
                }
            }
        }

        var (place, towards) = scan.Longest[0];
        var found = best ?? new Spot(place, (towards - place).ToUnit(), place.DistanceTo(towards), SurfaceAt(Line3.Through(place, towards), place.DistanceTo(towards)));
        return new(found.Place, found.Depth, found.Direction, scan.Volume, found.Surface, scan.Box, scan.Guarantee);
    }

    // Pattern search over the tangent plane, the step halved to nothing.
    private Spot Climb(Spot start, double step)
    {
        var best = start;
        for (var h = step; h > 1e-8; h /= 2)
        {
            for (var tries = 0; tries < 40; tries++)
            {
                var before = best.Depth;
                var across = Math.Abs(best.Direction.Z) < 0.9 ? Vector3.UnitZ : Vector3.UnitX;
                var u = best.Direction.Cross(across).ToUnit();
                var v = best.Direction.Cross(u);
                for (var k = 0; k < 8; k++)
                {
                    var (s, c) = Math.SinCos(k * Math.PI / 4);
                    var aside = best.Place + (u * (h * c)) + (v * (h * s));
                    if (On(new Line3(aside, best.Direction), 2 * h) is { } spot && spot.Depth > best.Depth)
                    {
                        best = spot;
                    }
                }

                if (best.Depth <= before)
                {
                    break;
                }
            }
        }

        return best;
    }

    // The reference's surface nearest along a line to its origin, and the excess measured from there along the normal.
    private Spot? On(in Line3 line, double within)
    {
        using var rented = SpanPool.Rent(out var list);
        reference.Sound(line, closed: true, list);
        list.Normalise();
        var nearest = double.PositiveInfinity;
        SurfaceId face = default;
        foreach (ref readonly var span in list.Items)
        {
            if (Math.Abs(span.From) < Math.Abs(nearest))
            {
                (nearest, face) = (span.From, span.FromSurface);
            }

            if (Math.Abs(span.To) < Math.Abs(nearest))
            {
                (nearest, face) = (span.To, span.ToSurface);
            }
        }

        if (!(Math.Abs(nearest) <= within))
        {
            return null;
        }

        var place = line.At(nearest);
        var n = reference.NormalAt(face, place);
        var direction = outward ? n : -n;
        if (!(direction.Length > 0.5))
        {
            return null;
        }

        return Measure(place, direction);
    }

    private Spot? Measure(Point3 place, Vector3 direction)
    {
        var line = new Line3(place, direction);
        Spans metal = workpiece.Sound(line), wanted = reference.Sound(line);
        var excess = outward ? metal.Difference(wanted) : wanted.Difference(metal);
        foreach (var span in excess)
        {
            if (span.From <= 1e-7 && span.To > 1e-7)
            {
                return new(place, direction, span.To, SurfaceAt(line, span.To));
            }
        }

        return null;
    }

    // The workpiece's surface nearest to a distance along a line.
    private SurfaceId SurfaceAt(in Line3 line, double t)
    {
        var nearest = double.PositiveInfinity;
        SurfaceId face = default;
        foreach (var span in workpiece.Sound(line))
        {
            if (Math.Abs(span.From - t) < nearest)
            {
                (nearest, face) = (Math.Abs(span.From - t), span.FromSurface);
            }

            if (Math.Abs(span.To - t) < nearest)
            {
                (nearest, face) = (Math.Abs(span.To - t), span.ToSurface);
            }
        }

        return face;
    }
}
