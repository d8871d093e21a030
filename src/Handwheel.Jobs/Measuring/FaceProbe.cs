using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Measuring;

/// <summary>
/// Probes faces by soundings: a line through a place of a face as aimed, along its normal. Only where the aimed part really has that face there is it a
/// place to measure; the part as cut is then asked for its nearest face of the same sense.
/// </summary>
/// <param name="aimed">The aimed part.</param>
/// <param name="cut">The part as cut.</param>
internal sealed class FaceProbe(ISolid aimed, ISolid cut)
{
    // Metal and gaps thinner than this are what rounding leaves between two faces drawn at one place, millimetres.
    private const double Film = 1e-6;

    /// <summary>How near the aimed part&#39;s face must lie to the place, millimetres.</summary>
    public const double Same = 1e-6;

    /// <summary>How far a face of the part as cut is looked for, millimetres.</summary>
    public const double Window = 2.5;

    /// <summary>Probes one place.</summary>
    /// <param name="at">The place of the face as aimed, part frame.</param>
    /// <param name="normal">Unit normal out of the feature&#39;s outline, part frame.</param>
    /// <param name="metalInside">Whether metal lies against the normal (an added feature) or beyond it (a cut).</param>
    /// <returns>What was found; null where the drawing has no such face there.</returns>
    public Probed? At(Point3 at, Vector3 normal, bool metalInside)
    {
        var line = new Line3(at, normal);
        if (!Nearest(aimed.Sound(line).Cleaned(Film), metalInside, Same, out _, out _))
        {
            return null;
        }

        return Nearest(cut.Sound(line).Cleaned(Film), metalInside, Window, out var offset, out var surface) ? new Probed(offset, surface) : new Probed(null, default);
    }

    /// <summary>Whether the aimed face goes on all round a place, so that a wall or rim which its limits allow to stand elsewhere does not take the place away.</summary>
    /// <param name="at">The place of the face as aimed, part frame.</param>
    /// <param name="normal">Unit normal out of the feature&#39;s outline, part frame.</param>
    /// <param name="metalInside">Whether metal lies against the normal.</param>
    /// <param name="round">How far round it, millimetres.</param>
    /// <returns>Whether it does.</returns>
    public bool IsAmid(Point3 at, Vector3 normal, bool metalInside, double round)
    {
        var u = normal.Cross(Math.Abs(normal.Z) < 0.9 ? Vector3.UnitZ : Vector3.UnitX).ToUnit();
        var v = normal.Cross(u);
        for (var i = 0; i < 8; i++)
        {
            var (s, c) = Math.SinCos(i * Math.PI / 4);
            if (!Nearest(aimed.Sound(new Line3(at + (u * (round * c)) + (v * (round * s)), normal)).Cleaned(Film), metalInside, Same, out _, out _))
            {
                return false;
            }
        }

        return true;
    }

    private static bool Nearest(Spans spans, bool leaving, double within, out double place, out SurfaceId surface)
    {
        place = double.NaN;
        surface = default;
        var best = within;
        var found = false;
        for (var i = 0; i < spans.Count; i++)
        {
            var span = spans[i];
            var edge = leaving ? span.To : span.From;
            if (IsSeam(spans, i, leaving))
            {
                continue;
            }

            if (Math.Abs(edge) <= best && (!found || Math.Abs(edge) < Math.Abs(place)))
            {
                best = Math.Abs(edge);
                place = edge;
                surface = leaving ? span.ToSurface : span.FromSurface;
                found = true;
            }
        }

        return found;
    }

    // Two features drawn to one face meet but for rounding: a gap that thin is none.
    private static bool IsSeam(Spans spans, int i, bool leaving) => leaving
        ? i + 1 < spans.Count && spans[i + 1].From - spans[i].To < Same
        : i > 0 && spans[i].From - spans[i - 1].To < Same;
}
