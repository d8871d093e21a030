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
        // Each stretch on a ray gives its ends and its middle; their feet on the reference start the climb, the deepest few only.
        var spots = new List<Spot>();
        foreach (var (from, to) in scan.Longest)
        {
            foreach (var share in (double[])[1e-9, 0.5, 1 - 1e-9])
            {
                var (foot, normal, distance) = Foot(from + ((to - from) * share), (to - from).ToUnit());
                if (double.IsFinite(distance) && Measure(foot, outward ? normal : -normal) is { } spot)
                {
                    spots.Add(spot);
                }
            }
        }

        Spot? best = null;
        var climbed = 0;
        foreach (var spot in spots.OrderByDescending(s => s.Depth))
        {
            if (climbed == 4)
            {
                break;
            }

            if (best is not { } b || spot.Place.DistanceTo(b.Place) > scan.Spacing)
            {
                var top = Climb(spot, scan.Spacing);
                best = best is { } known && known.Depth >= top.Depth ? known : top;
                climbed++;
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

    // The excess from a place of the reference along its normal; where its far end has a nearer foot on the reference, from there.
    private Spot? Measure(Point3 place, Vector3 direction)
    {
        Spot? kept = null;
        for (var i = 0; i < 4; i++)
        {
            if (Straight(place, direction) is not { } spot)
            {
                return kept;
            }

            kept = spot;
            var far = place + (direction * (spot.Depth * (1 - 1e-12)));
            var (foot, normal, distance) = Foot(far, direction);
            if (!(distance < spot.Depth - 1e-9))
            {
                return kept;
            }

            kept = spot with { Place = foot, Direction = outward ? normal : -normal, Depth = distance };
            (place, direction) = (foot, kept.Value.Direction);
        }

        return kept;
    }

    private Spot? Straight(Point3 place, Vector3 direction)
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

    // The nearest place of the reference's surface: along some lines first, then along the normal met, until it stays.
    private (Point3 Place, Vector3 Normal, double Distance) Foot(Point3 p, Vector3 along)
    {
        var best = (Place: p, Normal: along, Distance: double.PositiveInfinity);
        foreach (var d in (Vector3[])[along, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1), Vector3.UnitX + new Vector3(0, 1, 0.01), new(1, -1, 0.01), new(0.01, 1, 1), new(0.01, 1, -1), new(1, 0.01, 1), new(1, 0.01, -1)])
        {
            best = Nearer(p, d.ToUnit(), best);
        }

        for (var i = 0; i < 30; i++)
        {
            var next = Nearer(p, best.Normal, best);
            if (!(next.Distance < best.Distance - 1e-12))
            {
                break;
            }

            best = next;
        }

        return best;
    }

    private (Point3 Place, Vector3 Normal, double Distance) Nearer(Point3 p, Vector3 direction, (Point3 Place, Vector3 Normal, double Distance) best)
    {
        var line = new Line3(p, direction);
        using var rented = SpanPool.Rent(out var list);
        reference.Sound(line, closed: true, list);
        list.Normalise();
        foreach (ref readonly var span in list.Items)
        {
            if (Math.Abs(span.From) < best.Distance)
            {
                best = (line.At(span.From), reference.NormalAt(span.FromSurface, line.At(span.From)), Math.Abs(span.From));
            }

            if (Math.Abs(span.To) < best.Distance)
            {
                best = (line.At(span.To), reference.NormalAt(span.ToSurface, line.At(span.To)), Math.Abs(span.To));
            }
        }

        return best;
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
