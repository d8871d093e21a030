using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>A feature's outline at its aimed sizes as closed runs of points in its own view's plan, fine enough to draw.</summary>
internal static class FeatureLoops
{
    private const int Round = 144;

    /// <summary>Every loop of every place of a feature.</summary>
    /// <param name="drawing">The drawing it stands in.</param>
    /// <param name="feature">The feature.</param>
    /// <returns>Closed loops, millimetres; empty where its shape rests on a feature that is not there.</returns>
    public static IReadOnlyList<IReadOnlyList<Point2>> Of(Drawing drawing, Feature feature)
    {
        if (feature.Shape is TangentShape tangent)
        {
            return Tangent(drawing, tangent);
        }

        var loops = new List<IReadOnlyList<Point2>>();
        foreach (var place in feature.Places)
        {
            foreach (var loop in About(feature.Shape))
            {
                loops.Add([.. loop.Select(p => Placed(p, place))]);
            }
        }

        return loops;
    }

    /// <summary>A circle as points.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radius">Its radius.</param>
    /// <returns>Counterclockwise points.</returns>
    public static IReadOnlyList<Point2> Circle(Point2 centre, double radius) => [.. Arc(centre, radius, 0, 2 * Math.PI).SkipLast(1)];

    /// <summary>An arc as points, both ends included.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radius">Its radius.</param>
    /// <param name="from">Where it begins, radians.</param>
    /// <param name="sweep">How far it goes, radians, counterclockwise positive.</param>
    /// <returns>Points in order.</returns>
    public static IEnumerable<Point2> Arc(Point2 centre, double radius, double from, double sweep)
    {
        var count = Math.Max(2, (int)Math.Ceiling(Math.Abs(sweep) / (2 * Math.PI) * Round));
        for (var i = 0; i <= count; i++)
        {
            var (sin, cos) = Math.SinCos(from + (sweep * i / count));
            yield return new(centre.X + (radius * cos), centre.Y + (radius * sin));
        }
    }

    private static Point2 Placed(Point2 p, Place place)
    {
        var (sin, cos) = Math.SinCos(place.Turn);
        var x = place.Mirrored ? -p.X : p.X;
        return new(place.Centre.X + (x * cos) - (p.Y * sin), place.Centre.Y + (x * sin) + (p.Y * cos));
    }

    private static IReadOnlyList<IReadOnlyList<Point2>> About(FeatureShape shape) => shape switch
    {
        RoundShape round => [Circle(default, round.Across.Middle / 2)],
        RingShape ring => [Circle(default, ring.Across.Middle / 2), Circle(default, ring.Bore.Middle / 2)],
        ConeShape cone => [Circle(default, Math.Max(cone.AcrossLow.Middle, cone.AcrossHigh.Middle) / 2)],
        BlockShape block => [Turned([new(-block.Wide.Middle / 2, -block.Deep.Middle / 2), new(block.Wide.Middle / 2, -block.Deep.Middle / 2), new(block.Wide.Middle / 2, block.Deep.Middle / 2), new(-block.Wide.Middle / 2, block.Deep.Middle / 2)], block.Turn)],
        SlotShape slot => [Turned(Slot(slot.Wide.Middle / 2, Math.Max(0, (slot.Long.Middle - slot.Wide.Middle) / 2)), slot.Turn)],
        PolygonShape polygon => [Polygon(polygon)],
        OutlineShape outline => [OutlineLoop.Of(outline)],
        _ => [],
    };

    private static IReadOnlyList<Point2> Slot(double radius, double half) =>
        [.. Arc(new(half, 0), radius, -Math.PI / 2, Math.PI), .. Arc(new(-half, 0), radius, Math.PI / 2, Math.PI)];

    private static IReadOnlyList<Point2> Polygon(PolygonShape polygon)
    {
        var corner = polygon.AcrossFlats.Middle / 2 / Math.Cos(Math.PI / polygon.Sides);
        return [.. Enumerable.Range(0, polygon.Sides).Select(i =>
        {
            var (sin, cos) = Math.SinCos(polygon.Turn + (Math.PI / polygon.Sides) + (2 * Math.PI * i / polygon.Sides));
            return new Point2(corner * cos, corner * sin);
        })];
    }

    private static IReadOnlyList<Point2> Turned(IReadOnlyList<Point2> points, double turn)
    {
        var (sin, cos) = Math.SinCos(turn);
        return [.. points.Select(p => new Point2((p.X * cos) - (p.Y * sin), (p.X * sin) + (p.Y * cos)))];
    }

    private static IReadOnlyList<IReadOnlyList<Point2>> Tangent(Drawing drawing, TangentShape tangent)
    {
        var first = RoundNamed(drawing, tangent.First);
        var second = RoundNamed(drawing, tangent.Second);
        if (first is not { } a || second is not { } b)
        {
            return [];
        }

        var (dx, dy) = (b.Centre.X - a.Centre.X, b.Centre.Y - a.Centre.Y);
        var apart = Math.Sqrt((dx * dx) + (dy * dy));
        if (apart <= Math.Abs(a.Radius - b.Radius))
        {
            return [Circle(a.Radius > b.Radius ? a.Centre : b.Centre, Math.Max(a.Radius, b.Radius))];
        }

        var along = Math.Atan2(dy, dx);
        var open = Math.Acos((a.Radius - b.Radius) / apart);
        return [[.. Arc(b.Centre, b.Radius, along - open, 2 * open), .. Arc(a.Centre, a.Radius, along + open, (2 * Math.PI) - (2 * open))]];
    }

    private static (Point2 Centre, double Radius)? RoundNamed(Drawing drawing, string name)
    {
        var feature = drawing.Features.FirstOrDefault(f => string.Equals(f.Name, name, StringComparison.Ordinal));
        return feature?.Shape switch
        {
            RoundShape round => (feature.Centre, round.Across.Middle / 2),
            RingShape ring => (feature.Centre, ring.Across.Middle / 2),
            ConeShape cone => (feature.Centre, Math.Max(cone.AcrossLow.Middle, cone.AcrossHigh.Middle) / 2),
            _ => null,
        };
    }
}
