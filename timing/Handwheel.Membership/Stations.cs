namespace Handwheel.Membership;

/// <summary>One place at which a size is measured: the ends it lies between, each found along a line near where it should be.</summary>
/// <param name="Size">The size.</param>
/// <param name="Ends">Lines: origin, direction, where the surface should be along it, whether metal comes before it; and the weight its distance counts with.</param>
/// <param name="Constant">Added to the weighted sum.</param>
public sealed record Station(SizeFacts Size, IReadOnlyList<(Vec Origin, Vec Way, double Near, bool MetalBefore, double Weight)> Ends, double Constant)
{
    private const double Window = 1.2;
    private const double Step = 0.04;

    /// <summary>Measures it.</summary>
    /// <param name="metal">Where metal is.</param>
    /// <returns>The value; null where a surface is not found.</returns>
    public double? Measure(Func<Vec, bool> metal)
    {
        var sum = Constant;
        foreach (var (origin, way, near, before, weight) in Ends)
        {
            if (Surface(metal, origin, way, near, before) is not { } t)
            {
                return null;
            }

            sum += weight * t;
        }

        return sum;
    }

    private static double? Surface(Func<Vec, bool> metal, Vec origin, Vec way, double near, bool before)
    {
        double? best = null;
        var was = metal(origin + (way * (near - Window)));
        for (var t = near - Window + Step; t <= near + Window; t += Step)
        {
            var now = metal(origin + (way * t));
            if (was == before && now != before)
            {
                var (a, b) = (t - Step, t);
                for (var i = 0; i < 34; i++)
                {
                    var m = (a + b) / 2;
                    (a, b) = metal(origin + (way * m)) == before ? (m, b) : (a, m);
                }

                best = best is null || Math.Abs(b - near) < Math.Abs(best.Value - near) ? b : best;
            }

            was = now;
        }

        return best;
    }
}

/// <summary>Where a drawing&#39;s sizes are measured.</summary>
public static class Stations
{
    private static readonly double[] Levels = [0.12, 0.35, 0.6, 0.88];

    public static IEnumerable<Station> Of(PartFacts part)
    {
        foreach (var size in part.Sizes)
        {
            if (part.Find(size.Feature) is { } f)
            {
                foreach (var station in Of(part, size, f))
                {
                    yield return station;
                }
            }
        }
    }

    private static IEnumerable<Station> Of(PartFacts part, SizeFacts size, FeatureFacts f) => size.Kind switch
    {
        "across" or "acrossflats" or "wide" or "long" => Widths(size, f),
        "high" or "deep" => Heights(size, f),
        "distance" when part.Find(size.Other) is { } other => size.Along == "z" ? Faces(size, f, other) : Axes(size, f, other),
        _ => [],
    };

    private static Vec Back(string view, double u, double v, double w) => view switch
    {
        "front" => new(u, w, v),
        "right" => new(w, u, v),
        _ => new(u, v, w),
    };

    // Directions in which a feature is as wide as the size says, with how far off the middle to measure.
    private static IEnumerable<(double Angle, double Off)> Ways(SizeFacts size, FeatureFacts f)
    {
        var turn = f.Turn;
        switch (f.Shape)
        {
            case "round" or "ring":
                return Enumerable.Range(0, 12).Select(i => ((i + 0.3) * Math.PI / 12, 0.0));
            case "polygon":
                return Enumerable.Range(0, f.Sides / 2).SelectMany(i => new[] { -0.3, 0.0, 0.3 }.Select(o => (turn + (2 * Math.PI * i / f.Sides), o * f.A.Nominal)));
            case "block":
                var isLong = size.Kind == "long";
                var beside = isLong ? f.B.Nominal : f.A.Nominal;
                return new[] { -0.4, -0.1, 0.2, 0.4 }.Select(o => (turn + (isLong ? 0 : Math.PI / 2), o * beside));
            case "slot" when size.Kind == "wide":
                return new[] { -0.3, 0.0, 0.3 }.Select(o => (turn + (Math.PI / 2), o * (f.B.Nominal - f.A.Nominal)));
            default:
                return [];
        }
    }

    private static IEnumerable<Station> Widths(SizeFacts size, FeatureFacts f)
    {
        var half = size.Limits.Nominal / 2;
        foreach (var place in f.Places)
        {
            foreach (var share in Levels)
            {
                var w = f.From.Nominal + ((f.To.Nominal - f.From.Nominal) * share);
                foreach (var (angle, off) in Ways(size, f))
                {
                    var (s, c) = Math.SinCos(angle + place.Turn);
                    var origin = Back(f.View, place.X - (off * s), place.Y + (off * c), w);
                    var way = Back(f.View, c, s, 0);
                    yield return new(size, [(origin, way, half, !f.Cut, 1), (origin, way * -1, half, !f.Cut, 1)], 0);
                }
            }
        }
    }

    private static IEnumerable<(double X, double Y)> Within(FeatureFacts f)
    {
        var reach = f.Shape switch { "round" or "polygon" => f.A.Nominal / 2, "ring" => f.A.Nominal / 2, "block" => Math.Min(f.A.Nominal, f.B.Nominal) / 2, "slot" => f.A.Nominal / 2, _ => 25 };
        foreach (var place in f.Places)
        {
            for (var ring = 0.15; ring < 1; ring += 0.2)
            {
                for (var k = 0; k < 12; k++)
                {
                    var (s, c) = Math.SinCos((k + ring) * Math.PI / 6);
                    yield return (place.X + (ring * reach * c), place.Y + (ring * reach * s));
                }
            }
        }
    }

    private static IEnumerable<Station> Heights(SizeFacts size, FeatureFacts f)
    {
        var along = Back(f.View, 0, 0, 1);
        foreach (var (x, y) in Within(f))
        {
            var origin = Back(f.View, x, y, 0);
            if (!f.Cut)
            {
                yield return new(size, [(origin, along, f.To.Nominal, true, 1), (origin, along, f.From.Nominal, false, -1)], 0);
                continue;
            }

            // A cut's depth: from the face beside it to its floor, whichever end is open.
            foreach (var (beside, far) in new[] { (f.A.Nominal / 2) + 0.7, (f.A.Nominal / 2) + 1.5 }.Select((b, i) => (b, i)))
            {
                var face = Back(f.View, f.Places[0].X + beside, f.Places[0].Y + far, 0);
                yield return new(size, [(face, along, f.To.Nominal, true, 1), (origin, along, f.From.Nominal, true, -1)], 0);
                yield return new(size, [(face, along, f.From.Nominal, false, -1), (origin, along, f.To.Nominal, false, 1)], 0);
            }
        }
    }

    private static IEnumerable<Station> Axes(SizeFacts size, FeatureFacts a, FeatureFacts b)
    {
        if (a.Shape is not ("round" or "ring") || b.Shape is not ("round" or "ring") || a.View != b.View)
        {
            yield break;
        }

        var (dx, dy) = (b.Places[0].X - a.Places[0].X, b.Places[0].Y - a.Places[0].Y);
        var n = Math.Sqrt((dx * dx) + (dy * dy));
        var way = size.Along switch { "x" => Back(a.View, Math.Sign(dx), 0, 0), "y" => Back(a.View, 0, Math.Sign(dy), 0), _ => Back(a.View, dx / n, dy / n, 0) };
        foreach (var one in Levels)
        {
            foreach (var two in Levels)
            {
                var p = Back(a.View, a.Places[0].X, a.Places[0].Y, a.From.Nominal + ((a.To.Nominal - a.From.Nominal) * one));
                var q = Back(b.View, b.Places[0].X, b.Places[0].Y, b.From.Nominal + ((b.To.Nominal - b.From.Nominal) * two));
                yield return new(
                    size,
                    [
                        (p, way, a.A.Nominal / 2, !a.Cut, -0.5), (p, way * -1, a.A.Nominal / 2, !a.Cut, 0.5),
                        (q, way, b.A.Nominal / 2, !b.Cut, 0.5), (q, way * -1, b.A.Nominal / 2, !b.Cut, -0.5),
                    ],
                    (q - p).Dot(way));
            }
        }
    }

    private static IEnumerable<Station> Faces(SizeFacts size, FeatureFacts a, FeatureFacts b)
    {
        var up = new Vec(0, 0, 1);
        foreach (var (za, topA) in new[] { (a.To.Nominal, true), (a.From.Nominal, false) })
        {
            foreach (var (zb, topB) in new[] { (b.To.Nominal, true), (b.From.Nominal, false) })
            {
                if (Math.Abs(Math.Abs(za - zb) - size.Limits.Nominal) > 1e-6)
                {
                    continue;
                }

                var sign = Math.Sign(zb - za);
                foreach (var (pa, pb) in Within(a).Zip(Within(b).Reverse()))
                {
                    yield return new(
                        size,
                        [(new(pa.X, pa.Y, 0), up, za, topA != a.Cut, -sign), (new(pb.X, pb.Y, 0), up, zb, topB != b.Cut, sign)],
                        0);
                }
            }
        }
    }
}
