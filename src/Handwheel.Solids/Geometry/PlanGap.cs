namespace Handwheel.Solids.Geometry;

// How far rectangles along the axes stay from curves, at least.
internal static class PlanGap
{
    // Exact.
    internal static double ToSegment(Point2 low, Point2 high, Point2 a, Point2 b)
    {
        double from = 0, to = 1;
        var d = b - a;
        if (Box3.Slab(a.X, d.X, low.X, high.X, ref from, ref to) && Box3.Slab(a.Y, d.Y, low.Y, high.Y, ref from, ref to))
        {
            return 0;
        }

        var least = Math.Min(ToPlace(low, high, a), ToPlace(low, high, b));
        var dd = d.Dot(d);
        foreach (var corner in (ReadOnlySpan<Point2>)[low, high, new(low.X, high.Y), new(high.X, low.Y)])
        {
            var share = dd > 0 ? Math.Clamp((corner - a).Dot(d) / dd, 0, 1) : 0;
            least = Math.Min(least, corner.DistanceTo(a + (d * share)));
        }

        return least;
    }

    // The greater of two bounds: to the whole ring, and from the arc's place nearest to the rectangle's middle.
    internal static double ToArc(Point2 low, Point2 high, Point2 centre, double radius, Point2 nearest)
    {
        var middle = (low + high) * 0.5;
        var least = ToPlace(low, high, centre);
        double x = Math.Max(Math.Abs(low.X - centre.X), Math.Abs(high.X - centre.X)), y = Math.Max(Math.Abs(low.Y - centre.Y), Math.Abs(high.Y - centre.Y));
        var ring = Math.Max(least - radius, radius - Math.Sqrt((x * x) + (y * y)));
        return Math.Max(0, Math.Max(ring, middle.DistanceTo(nearest) - ((high - low).Length / 2)));
    }

    internal static double ToPlace(Point2 low, Point2 high, Point2 p)
    {
        var x = Math.Max(0, Math.Max(low.X - p.X, p.X - high.X));
        var y = Math.Max(0, Math.Max(low.Y - p.Y, p.Y - high.Y));
        return Math.Sqrt((x * x) + (y * y));
    }
}
