using System.Globalization;
using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// An outline of corners into pieces: straights and arcs, corners between straights filleted or chamfered.
internal static class OutlineBuilder
{
    internal static PlanOutline Build(OutlineShape shape)
    {
        var corners = shape.Corners;
        var n = corners.Count;
        var ends = new (Point2 In, Point2 Out, PlanEdge? Blend)[n];
        for (var i = 0; i < n; i++)
        {
            var before = corners[(i + n - 1) % n];
            ends[i] = before.ArcCentre is null && corners[i].ArcCentre is null
                ? Blend(before.At, corners[i], corners[(i + 1) % n].At)
                : (corners[i].At, corners[i].At, null);
        }

        var edges = new List<PlanEdge>();
        for (var i = 0; i < n; i++)
        {
            var next = (i + 1) % n;
            var name = string.Create(CultureInfo.InvariantCulture, $"{i + 1}-{next + 1}");
            edges.Add(corners[i].ArcCentre is { } c
                ? new(ends[i].Out, ends[next].In, c, Plane.Distance(c, corners[i].At), corners[i].ArcCounterclockwise, name)
                : new(ends[i].Out, ends[next].In, default, 0, false, name));
            if (ends[next].Blend is { } blend)
            {
                edges.Add(blend);
            }
        }

        return new(edges);
    }

    private static (Point2 In, Point2 Out, PlanEdge? Blend) Blend(Point2 before, OutlineCorner corner, Point2 after)
    {
        if (corner.Fillet <= 0 && corner.Chamfer <= 0)
        {
            return (corner.At, corner.At, null);
        }

        double a = Plane.Angle(corner.At, before), b = Plane.Angle(corner.At, after);
        var turn = Plane.Near(b - a);
        var half = Math.Abs(turn) / 2;
        var leg = corner.Chamfer > 0 ? corner.Chamfer : corner.Fillet / Math.Tan(half);
        Point2 start = Plane.Polar(corner.At, leg, a), end = Plane.Polar(corner.At, leg, b);
        if (corner.Chamfer > 0)
        {
            return (start, end, new PlanEdge(start, end, default, 0, false, "chamfer"));
        }

        var centre = Plane.Polar(corner.At, corner.Fillet / Math.Sin(half), a + (turn / 2));
        var convex = turn < 0;
        return (start, end, new PlanEdge(start, end, centre, corner.Fillet, convex, "fillet"));
    }
}
