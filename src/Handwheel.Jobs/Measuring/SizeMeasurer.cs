using Handwheel.Jobs.Drawings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Measuring;

/// <summary>
/// Measures every size of a drawing on the part as cut, two-point along stated lines (ISO 14405-1): five levels of a side, twelve directions across a
/// round, a net of plan places for heights; circles and middles where no two places lie opposite. Lines are those on which the aimed part has the faces.
/// </summary>
/// <param name="aimed">The part as aimed.</param>
/// <param name="cut">The part as cut.</param>
internal sealed class SizeMeasurer(DrawnPart aimed, ISolid cut)
{
    private readonly FaceProbe probe = new(aimed.Solid, cut);

    /// <summary>Measures one size.</summary>
    /// <param name="size">The size.</param>
    /// <returns>What was found; nothing where the drawing gives no line to measure along.</returns>
    public Tally Measure(Size size)
    {
        var tally = new Tally();
        if (aimed.Find(size.Feature) is not { } drawn)
        {
            return tally;
        }

        switch (size.Kind)
        {
            case SizeKind.Distance:
                Distance(size, drawn, tally);
                break;
            case SizeKind.Angle:
                Angle(size, drawn, tally);
                break;
            default:
                foreach (var one in Probes(drawn))
                {
                    Own(size, drawn.Feature, one, tally);
                }

                break;
        }

        return tally;
    }

    private static void Own(Size size, Feature feature, FeatureProbe one, Tally tally)
    {
        switch (size.Kind)
        {
            case SizeKind.Across:
                Across(size, one, tally);
                break;
            case SizeKind.AcrossFlats when feature.Shape is PolygonShape { Sides: var sides } && sides % 2 == 1:
                PolygonSizes.OddFlats(one, tally);
                break;
            case SizeKind.AcrossFlats:
                Flats(one, size.Limits, tally);
                break;
            case SizeKind.Bore when one.Faces.Rounds.Count > 1:
                one.Across(one.Faces.Rounds[^1], 2 * one.Faces.Rounds[^1].Radius, tally);
                break;
            case SizeKind.Long:
                Opposite(feature, one, 0, tally);
                break;
            case SizeKind.Wide:
                Opposite(feature, one, Math.PI / 2, tally);
                break;
            case SizeKind.High:
                one.High(tally);
                break;
            case SizeKind.Deep:
                one.Deep(tally);
                break;
            case SizeKind.Radius:
                Radius(size, one, tally);
                break;
            case SizeKind.Position:
                Position(one, tally);
                break;
            case SizeKind.AcrossCorners:
                PolygonSizes.Corners(one, tally);
                break;
            default:
                break;
        }
    }

    private static void Across(Size size, FeatureProbe one, Tally tally)
    {
        if (one.Faces.Rounds.Count > 0 && one.Faces.Planes.Count == 0)
        {
            var round = one.Faces.Rounds.MinBy(r => Math.Abs((2 * r.Radius) - size.Limits.Middle));
            one.Across(round, one.Cone(size.Face) ?? (2 * round.Radius), tally);
        }
        else
        {
            Flats(one, size.Limits, tally);
        }
    }

    private static void Flats(FeatureProbe one, Limits limits, Tally tally)
    {
        var planes = one.Faces.Planes;
        for (var i = 0; i < planes.Count; i++)
        {
            for (var j = i + 1; j < planes.Count; j++)
            {
                var facing = (planes[i].Normal.X * planes[j].Normal.X) + (planes[i].Normal.Y * planes[j].Normal.Y);
                var apart = ((planes[i].Middle.X - planes[j].Middle.X) * planes[i].Normal.X) + ((planes[i].Middle.Y - planes[j].Middle.Y) * planes[i].Normal.Y);
                if (facing < -1 + 1e-9 && Math.Abs(apart - limits.Middle) <= Math.Max(1e-6, limits.Width))
                {
                    one.Between(planes[i], planes[j], tally);
                }
            }
        }
    }

    private static void Opposite(Feature feature, FeatureProbe one, double quarter, Tally tally)
    {
        var turn = feature.Shape switch
        {
            BlockShape s => s.Turn,
            SlotShape s => s.Turn,
            _ => 0,
        };
        var angle = one.Turn + (one.Mirrored ? Math.PI - turn - quarter : turn + quarter);
        var way = new Point2(Math.Cos(angle), Math.Sin(angle));
        var planes = one.Faces.Planes.Where(p => Math.Abs(p.Normal.Dot(way)) > 1 - 1e-9).ToList();
        for (var i = 1; i < planes.Count; i++)
        {
            if (planes[0].Normal.Dot(planes[i].Normal) < 0)
            {
                one.Between(planes[0], planes[i], tally);
                return;
            }
        }

        if (one.Faces.Rounds.Count == 2)
        {
            SlotLong(one, tally);
        }
    }

    private static void SlotLong(FeatureProbe one, Tally tally)
    {
        var a = one.Circles(one.Faces.Rounds[0], tally);
        var b = one.Circles(one.Faces.Rounds[1], tally);
        for (var i = 0; i < Math.Min(a.Count, b.Count); i++)
        {
            tally.Add(Apart(a[i].Centre, b[i].Centre) + a[i].Radius + b[i].Radius);
        }
    }

    private static void Radius(Size size, FeatureProbe one, Tally tally)
    {
        foreach (var round in one.Faces.Rounds.Where(r => Math.Abs(r.Radius - size.Limits.Middle) <= Math.Max(1e-6, size.Limits.Width)))
        {
            foreach (var circle in one.Circles(round, tally))
            {
                tally.Add(circle.Radius);
            }
        }
    }

    private static void Position(FeatureProbe one, Tally tally)
    {
        var x = Stands.Axis(one, new Point2(1, 0));
        var y = Stands.Axis(one, new Point2(0, 1));
        if (x is null || y is null)
        {
            return;
        }

        tally.Rests(x.Tally);
        tally.Rests(y.Tally);
        if (x.Tally.Any && y.Tally.Any)
        {
            double off(Stand s) => Math.Max(Math.Abs(s.Tally.Greatest - s.Aimed), Math.Abs(s.Tally.Least - s.Aimed));
            tally.Add(2 * Math.Sqrt((off(x) * off(x)) + (off(y) * off(y))));
        }
    }

    private static double Apart(Point2 a, Point2 b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    private void Distance(Size size, DrawnFeature drawn, Tally tally)
    {
        if (size.Other is null || aimed.Find(size.Other) is not { } other)
        {
            return;
        }

        var first = Probes(drawn).First();
        var second = Probes(other).First();
        Vector3? along = size.Along switch
        {
            "x" => new Vector3(1, 0, 0),
            "y" => new Vector3(0, 1, 0),
            "z" => new Vector3(0, 0, 1),
            _ => null,
        };
        if (along is { } direction)
        {
            Along(size, Named(Stands.Of(drawn.Feature, first, direction), size.Face), Named(Stands.Of(other.Feature, second, direction), size.OtherFace), tally);
        }
        else
        {
            BetweenAxes(first, second, tally);
        }
    }

    // The face a size names; its axis where it names none and there is one; else whatever there is.
    private static IReadOnlyList<Stand> Named(IReadOnlyList<Stand> all, string? face)
    {
        if (face is not null)
        {
            var facing = face is "right" or "far" or "top" ? 1 : -1;
            return [.. all.Where(s => s.Facing == facing)];
        }

        return all.Any(s => s.IsAxis) ? [.. all.Where(s => s.IsAxis)] : all;
    }

    private static void Along(Size size, IReadOnlyList<Stand> from, IReadOnlyList<Stand> to, Tally tally)
    {
        var best = double.PositiveInfinity;
        (Stand From, Stand To)? pair = null;
        foreach (var a in from)
        {
            foreach (var b in to)
            {
                var off = Math.Min(Math.Abs(Math.Abs(b.Aimed - a.Aimed) - size.Limits.Middle), Math.Abs(Math.Abs(b.Aimed - a.Aimed) - size.Limits.Nominal));
                if (off < best - 1e-9)
                {
                    (best, pair) = (off, (a, b));
                }
            }
        }

        if (pair is not { } p || best > Math.Max(1e-6, size.Limits.Width))
        {
            return;
        }

        tally.Rests(p.From.Tally);
        tally.Rests(p.To.Tally);
        if (p.From.Tally.Any && p.To.Tally.Any)
        {
            var sign = p.To.Aimed >= p.From.Aimed ? 1 : -1;
            tally.Add(sign * (p.To.Tally.Least - p.From.Tally.Greatest));
            tally.Add(sign * (p.To.Tally.Greatest - p.From.Tally.Least));
        }
    }

    private static void BetweenAxes(FeatureProbe first, FeatureProbe second, Tally tally)
    {
        var ax = Stands.Axis(first, new Point2(1, 0));
        var ay = Stands.Axis(first, new Point2(0, 1));
        var bx = Stands.Axis(second, new Point2(1, 0));
        var by = Stands.Axis(second, new Point2(0, 1));
        if (ax is null || ay is null || bx is null || by is null)
        {
            return;
        }

        foreach (var stand in new[] { ax, ay, bx, by })
        {
            tally.Rests(stand.Tally);
            if (!stand.Tally.Any)
            {
                return;
            }
        }

        var (leastX, mostX) = Gap(ax.Tally, bx.Tally);
        var (leastY, mostY) = Gap(ay.Tally, by.Tally);
        tally.Add(Math.Sqrt((leastX * leastX) + (leastY * leastY)));
        tally.Add(Math.Sqrt((mostX * mostX) + (mostY * mostY)));
    }

    private static (double Least, double Most) Gap(Tally a, Tally b)
    {
        double low = b.Least - a.Greatest, high = b.Greatest - a.Least;
        return low <= 0 && high >= 0
            ? (0, Math.Max(-low, high))
            : (Math.Min(Math.Abs(low), Math.Abs(high)), Math.Max(Math.Abs(low), Math.Abs(high)));
    }

    private void Angle(Size size, DrawnFeature drawn, Tally tally)
    {
        var first = Probes(drawn).First();
        if (size.Other is null)
        {
            AngleSizes.ToAxis(size.Limits.Middle, drawn.Feature.View, first, size.Along, tally);
        }
        else if (aimed.Find(size.Other) is { } other)
        {
            AngleSizes.Between(size.Limits.Middle, first, Probes(other).First(), tally);
        }
    }

    private IEnumerable<FeatureProbe> Probes(DrawnFeature drawn) =>
        Enumerable.Range(0, drawn.Outlines.Count).Select(i => new FeatureProbe(drawn, i, probe, aimed.Solid.Bounds));
}
