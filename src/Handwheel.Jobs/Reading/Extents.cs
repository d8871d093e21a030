using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

/// <summary>The box round a drawing's added solids, part frame, nominal.</summary>
internal static class Extents
{
    // Null where nothing is added.
    public static Box3? Of(IEnumerable<Feature> features)
    {
        var known = features.ToDictionary(f => f.Name, StringComparer.Ordinal);
        Box3? box = null;
        foreach (var feature in known.Values.Where(f => !f.IsCut))
        {
            if (Plan(feature, known) is var (low, high))
            {
                var one = FeatureView.Over(feature.View, low, high, (feature.From.Nominal, feature.To.Nominal));
                box = box?.Union(one) ?? one;
            }
        }

        return box;
    }

    // The rectangle round a feature in its own plan, all places.
    public static (Point2 Low, Point2 High)? Plan(Feature feature, IReadOnlyDictionary<string, Feature> known)
    {
        if (feature.Shape is TangentShape tangent)
        {
            return known.TryGetValue(tangent.First, out var a) && known.TryGetValue(tangent.Second, out var b)
                && Plan(a, known) is { } first && Plan(b, known) is { } second ? Joined(first, second) : null;
        }

        (Point2 Low, Point2 High)? box = null;
        var points = Points(feature.Shape);
        var round = Round(feature.Shape);
        foreach (var place in feature.Places)
        {
            foreach (var point in points)
            {
                var p = Placed(point, place);
                var one = (new Point2(p.X - round, p.Y - round), new Point2(p.X + round, p.Y + round));
                box = box is null ? one : Joined(box.Value, one);
            }
        }

        return box;
    }

    // Points whose hull, grown by the round, covers the shape.
    private static IReadOnlyList<Point2> Points(FeatureShape shape) => shape switch
    {
        BlockShape b => [.. Corners(b.Wide.Nominal / 2, b.Deep.Nominal / 2).Select(p => Turned(p, b.Turn))],
        SlotShape s => [.. Ends((s.Long.Nominal - s.Wide.Nominal) / 2).Select(p => Turned(p, s.Turn))],
        PolygonShape p => [.. Enumerable.Range(0, p.Sides).Select(i => Turned(
            new Point2(p.AcrossFlats.Nominal / 2 / Math.Cos(Math.PI / p.Sides), 0), p.Turn + (Math.PI * ((2 * i) + 1) / p.Sides)))],
        OutlineShape o => [.. o.Corners.Select(c => c.At), .. Bulges(o.Corners)],
        _ => [new Point2(0, 0)],
    };

    // Where an arc crosses the directions of its plan's axes from its centre: the farthest it bulges.
    private static IEnumerable<Point2> Bulges(IReadOnlyList<OutlineCorner> corners)
    {
        for (var i = 0; i < corners.Count; i++)
        {
            if (corners[i].ArcCentre is not { } c)
            {
                continue;
            }

            var (from, to) = corners[i].ArcCounterclockwise ? (corners[i].At, corners[(i + 1) % corners.Count].At) : (corners[(i + 1) % corners.Count].At, corners[i].At);
            var start = Math.Atan2(from.Y - c.Y, from.X - c.X);
            var sweep = Wrapped(Math.Atan2(to.Y - c.Y, to.X - c.X) - start);
            var radius = Math.Sqrt(((from.X - c.X) * (from.X - c.X)) + ((from.Y - c.Y) * (from.Y - c.Y)));
            foreach (var (x, y) in new[] { (1, 0), (0, 1), (-1, 0), (0, -1) })
            {
                if (Wrapped(Math.Atan2(y, x) - start) < sweep)
                {
                    yield return new Point2(c.X + (radius * x), c.Y + (radius * y));
                }
            }
        }
    }

    private static double Wrapped(double angle) => angle - (2 * Math.PI * Math.Floor(angle / (2 * Math.PI)));

    // How far the part stands from an axis through a point of its plan: the greatest distance of any added feature drawn in that view.
    public static double Radius(IEnumerable<Feature> features, View view, Point2 axis)
    {
        var most = 0d;
        foreach (var feature in features.Where(f => !f.IsCut && f.View == view && f.Shape is not TangentShape))
        {
            foreach (var place in feature.Places)
            {
                most = Points(feature.Shape).Select(p => Placed(p, place)).Select(p => Math.Sqrt(((p.X - axis.X) * (p.X - axis.X)) + ((p.Y - axis.Y) * (p.Y - axis.Y))) + Round(feature.Shape)).Prepend(most).Max();
            }
        }

        return most;
    }

    private static double Round(FeatureShape shape) => shape switch
    {
        RoundShape r => r.Across.Nominal / 2,
        RingShape r => r.Across.Nominal / 2,
        SlotShape s => s.Wide.Nominal / 2,
        ConeShape c => Math.Max(c.AcrossLow.Nominal, c.AcrossHigh.Nominal) / 2,
        _ => 0,
    };

    private static IEnumerable<Point2> Corners(double x, double y) => [new(-x, -y), new(x, -y), new(x, y), new(-x, y)];

    private static IEnumerable<Point2> Ends(double half) => [new(-half, 0), new(half, 0)];

    private static Point2 Turned(Point2 p, double angle) =>
        new((p.X * Math.Cos(angle)) - (p.Y * Math.Sin(angle)), (p.X * Math.Sin(angle)) + (p.Y * Math.Cos(angle)));

    private static Point2 Placed(Point2 p, Place place)
    {
        var turned = Turned(place.Mirrored ? new Point2(-p.X, p.Y) : p, place.Turn);
        return new Point2(place.Centre.X + turned.X, place.Centre.Y + turned.Y);
    }

    private static (Point2 Low, Point2 High) Joined((Point2 Low, Point2 High) a, (Point2 Low, Point2 High) b) => (
        new Point2(Math.Min(a.Low.X, b.Low.X), Math.Min(a.Low.Y, b.Low.Y)), new Point2(Math.Max(a.High.X, b.High.X), Math.Max(a.High.Y, b.High.Y)));
}
