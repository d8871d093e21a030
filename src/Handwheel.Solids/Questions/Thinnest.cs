using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>The thinnest metal in a region, such as a web that still holds the part, or a wall beside a cut.</summary>
public static class Thinnest
{
    private readonly record struct Chord(Point3 Middle, Vector3 Direction, Span Span);

    /// <summary>The thinnest section between surfaces that passes through a region.</summary>
    /// <param name="metal">The metal.</param>
    /// <param name="region">Where to look: the section's middle stays in it.</param>
    /// <param name="across">How many lines each way to start from.</param>
    /// <param name="accept">Which pairs of surfaces count; all when null.</param>
    /// <returns>The section, its ends on the surfaces within 1e-9 mm, its thickness least within about 1e-6 mm; null when no metal is there.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="metal"/> is null.</exception>
    public static Section? In(ISolid metal, Box3 region, int across = 24, Func<SurfaceId, SurfaceId, bool>? accept = null)
    {
        ArgumentNullException.ThrowIfNull(metal);
        var found = new List<Chord>();
        foreach (var direction in Directions())
        {
            Scan(metal, region, direction, across, accept, found);
        }

        Chord? best = null;
        foreach (var start in found.OrderBy(c => c.Span.Length).Take(12))
        {
            var thin = Shrink(metal, region, start, region.Size.Length / across, accept);
            best = best is { } b && b.Span.Length <= thin.Span.Length ? b : thin;
        }

        return best is not { } c2 ? null : Named(c2);
    }

    private static Section Named(Chord c)
    {
        var line = new Line3(c.Middle, c.Direction);
        return new(line.At(c.Span.From), line.At(c.Span.To), c.Span.FromSurface, c.Span.ToSurface);
    }

    // The axes and the diagonals between each two.
    private static IEnumerable<Vector3> Directions()
    {
        Vector3 x = Vector3.UnitX, y = Vector3.UnitY, z = Vector3.UnitZ;
        return [x, y, z, (x + y).ToUnit(), (x - y).ToUnit(), (x + z).ToUnit(), (x - z).ToUnit(), (y + z).ToUnit(), (y - z).ToUnit()];
    }

    private static void Scan(ISolid metal, Box3 region, Vector3 d, int n, Func<SurfaceId, SurfaceId, bool>? accept, List<Chord> found)
    {
        var size = region.Size;
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                double a = (i + 0.5) / n, b = (j + 0.5) / n;
                var place = Math.Abs(d.X) >= Math.Abs(d.Y) && Math.Abs(d.X) >= Math.Abs(d.Z) - 1e-9
                    ? new Vector3(0.5 * size.X, a * size.Y, b * size.Z)
                    : Math.Abs(d.Y) >= Math.Abs(d.Z) - 1e-9
                        ? new Vector3(a * size.X, 0.5 * size.Y, b * size.Z)
                        : new Vector3(a * size.X, b * size.Y, 0.5 * size.Z);
                var line = new Line3(region.Min + place, d);
                foreach (var span in metal.Sound(line))
                {
                    var middle = line.At(span.Middle);
                    if (double.IsFinite(span.Length) && region.Contains(middle) && (accept is null || accept(span.FromSurface, span.ToSurface)))
                    {
                        found.Add(new(middle, d, span with { From = -span.Length / 2, To = span.Length / 2 }));
                    }
                }
            }
        }
    }

    // Moves the middle aside and tilts the direction, keeping what is thinner; steps halved to nothing.
    private static Chord Shrink(ISolid metal, Box3 region, Chord best, double step, Func<SurfaceId, SurfaceId, bool>? accept)
    {
        var tilt = 0.5;
        for (var h = step; h > 1e-8; h /= 2, tilt /= 2)
        {
            for (var tries = 0; tries < 20; tries++)
            {
                var before = best.Span.Length;
                var u = best.Direction.Cross(Math.Abs(best.Direction.Z) < 0.9 ? Vector3.UnitZ : Vector3.UnitX).ToUnit();
                var v = best.Direction.Cross(u);
                foreach (var w in (Vector3[])[u, -u, v, -v])
                {
                    best = Thinner(metal, region, best, best.Middle + (w * h), best.Direction, accept);
                    best = Thinner(metal, region, best, best.Middle, (best.Direction + (w * tilt)).ToUnit(), accept);
                    best = Thinner(metal, region, best, best.Middle + (w * (best.Span.Length * tilt / 2)), (best.Direction + (w * tilt)).ToUnit(), accept);
                    best = Thinner(metal, region, best, best.Middle - (w * (best.Span.Length * tilt / 2)), (best.Direction + (w * tilt)).ToUnit(), accept);
                }

                if (best.Span.Length >= before)
                {
                    break;
                }
            }
        }

        return best;
    }

    private static Chord Thinner(ISolid metal, Box3 region, Chord best, Point3 middle, Vector3 direction, Func<SurfaceId, SurfaceId, bool>? accept)
    {
        var line = new Line3(middle, direction);
        var spans = metal.Sound(line);
        var i = spans.IndexAt(0);
        if (i < 0)
        {
            return best;
        }

        var span = spans[i];
        var centre = line.At(span.Middle);
        if (!(span.Length < best.Span.Length) || !region.Contains(centre) || (accept is not null && !accept(span.FromSurface, span.ToSurface)))
        {
            return best;
        }

        return new(centre, direction, span with { From = -span.Length / 2, To = span.Length / 2 });
    }
}
