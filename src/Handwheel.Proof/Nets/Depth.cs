using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Nets;

/// <summary>
/// How deep one solid reaches past another&#39;s surface, found on a ray and then refined off the rays: along the surface&#39;s normal, climbing over the surface
/// in ever smaller steps.
/// </summary>
/// <param name="has">The solid that has the metal (least metal for a gouge, the part for a leftover).</param>
/// <param name="lacks">The solid that lacks it; depths are measured from its surface outwards.</param>
internal sealed class Depth(ISolid has, ISolid lacks)
{
    private const double Finest = 1e-7;

    /// <summary>The depth at one end of a missing interval.</summary>
    /// <param name="missing">The interval.</param>
    /// <param name="atEnd">Whether its far end is meant.</param>
    /// <returns>An estimate on the ray, millimetres.</returns>
    public double OnRay(Missing missing, bool atEnd)
    {
        var at = missing.Line.At(atEnd ? missing.Span.To : missing.Span.From);
        var normal = lacks.NormalAt(atEnd ? missing.Span.ToSurface : missing.Span.FromSurface, at);
        return Math.Min(missing.Span.Length * Math.Abs(normal.Dot(missing.Line.Direction)), Along(at, normal));
    }

    /// <summary>Refines from one end of a missing interval.</summary>
    /// <param name="missing">The interval.</param>
    /// <param name="atEnd">Whether its far end is meant.</param>
    /// <param name="step">First step over the surface, millimetres.</param>
    /// <returns>The greatest depth found nearby, the place on the surface and its normal, part frame.</returns>
    public (double Depth, Point3 At, Vector3 Normal) Refined(Missing missing, bool atEnd, double step)
    {
        var at = missing.Line.At(atEnd ? missing.Span.To : missing.Span.From);
        var normal = lacks.NormalAt(atEnd ? missing.Span.ToSurface : missing.Span.FromSurface, at);
        var best = Along(at, normal);
        var trials = 0;
        for (var h = step; h > Finest && trials < 400; h /= 2)
        {
            for (var better = true; better && trials < 400;)
            {
                better = false;
                var (u, v) = Across(normal);
                foreach (var way in new[] { u, -u, v, -v })
                {
                    trials++;
                    if (Foot(at + (way * h), normal, h) is { } foot && Along(foot.At, foot.Normal) is var deeper && deeper > best + 1e-12)
                    {
                        (best, at, normal, better) = (deeper, foot.At, foot.Normal, true);
                        break;
                    }
                }
            }
        }

        return (best, at, normal);
    }

    private static (Vector3 U, Vector3 V) Across(Vector3 normal)
    {
        var other = Math.Abs(normal.Z) < 0.9 ? Vector3.UnitZ : Vector3.UnitX;
        var u = normal.Cross(other).ToUnit();
        return (u, normal.Cross(u).ToUnit());
    }

    // How far the one solid goes on outwards from the other's surface; no more than the metal is thick there along any axis.
    private double Along(Point3 at, Vector3 normal)
    {
        const double Off = 1e-5;
        var deep = Reaches(new Line3(at, normal), Off) is { } whole && whole.From <= 1e-6 ? whole.To : 0;
        foreach (var axis in new[] { Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ })
        {
            // Beside the surface, so that an axis that grazes it sees the metal too.
            if (deep > Off && Math.Abs(normal.Dot(axis)) < 0.999 && Reaches(new Line3(at + (normal * (2 * Off)), axis), 0) is { } across)
            {
                deep = Math.Min(deep, across.To - across.From);
            }
        }

        return deep;
    }

    // The missing interval of a line that holds a distance.
    private (double From, double To)? Reaches(in Line3 line, double at)
    {
        foreach (var span in has.Sound(line).Difference(lacks.Sound(line)))
        {
            if (span.From <= at && span.To >= at)
            {
                return (span.From, span.To);
            }
        }

        return null;
    }

    // The surface near a place, looked for along a normal.
    private (Point3 At, Vector3 Normal)? Foot(Point3 near, Vector3 normal, double within)
    {
        var line = new Line3(near, normal);
        foreach (var span in lacks.Sound(line))
        {
            if (Math.Abs(span.To) <= 4 * within)
            {
                var at = line.At(span.To);
                return (at, lacks.NormalAt(span.ToSurface, at));
            }
        }

        return null;
    }
}
