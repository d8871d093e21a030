using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>An outline of lines and arcs with its fillets and chamfers, as points.</summary>
internal static class OutlineLoop
{
    /// <summary>The outline as a closed run of points.</summary>
    /// <param name="outline">The outline.</param>
    /// <returns>Points in order.</returns>
    public static IReadOnlyList<Point2> Of(OutlineShape outline)
    {
        var corners = outline.Corners;
        var points = new List<Point2>();
        for (var i = 0; i < corners.Count; i++)
        {
            var before = corners[(i + corners.Count - 1) % corners.Count];
            var here = corners[i];
            var after = corners[(i + 1) % corners.Count];
            if (before.ArcCentre is null && here.ArcCentre is null && (here.Fillet > 0 || here.Chamfer > 0))
            {
                points.AddRange(Eased(before.At, here, after.At));
            }
            else
            {
                points.Add(here.At);
            }

            if (here.ArcCentre is { } centre)
            {
                points.AddRange(ArcBetween(centre, here.At, after.At, here.ArcCounterclockwise));
            }
        }

        return points;
    }

    private static IEnumerable<Point2> ArcBetween(Point2 centre, Point2 from, Point2 to, bool counterclockwise)
    {
        var start = Math.Atan2(from.Y - centre.Y, from.X - centre.X);
        var sweep = Math.Atan2(to.Y - centre.Y, to.X - centre.X) - start;
        if (counterclockwise && sweep <= 0)
        {
            sweep += 2 * Math.PI;
        }
        else if (!counterclockwise && sweep >= 0)
        {
            sweep -= 2 * Math.PI;
        }

        var radius = Math.Sqrt(Square(from.X - centre.X) + Square(from.Y - centre.Y));
        return FeatureLoops.Arc(centre, radius, start, sweep).Skip(1).SkipLast(1);
    }

    private static IEnumerable<Point2> Eased(Point2 before, OutlineCorner here, Point2 after)
    {
        var (ux, uy) = Unit(here.At, before);
        var (vx, vy) = Unit(here.At, after);
        var half = Math.Acos(Math.Clamp((ux * vx) + (uy * vy), -1, 1)) / 2;
        if (half is < 1e-6 or > (Math.PI / 2) - 1e-6)
        {
            return [here.At];
        }

        if (here.Chamfer > 0)
        {
            return [new(here.At.X + (ux * here.Chamfer), here.At.Y + (uy * here.Chamfer)), new(here.At.X + (vx * here.Chamfer), here.At.Y + (vy * here.Chamfer))];
        }

        var leg = here.Fillet / Math.Tan(half);
        var from = new Point2(here.At.X + (ux * leg), here.At.Y + (uy * leg));
        var to = new Point2(here.At.X + (vx * leg), here.At.Y + (vy * leg));
        var (bx, by) = Unit(default, new(ux + vx, uy + vy));
        var reach = here.Fillet / Math.Sin(half);
        var centre = new Point2(here.At.X + (bx * reach), here.At.Y + (by * reach));
        var left = (-ux * vy) + (uy * vx) > 0;
        return [from, .. ArcBetween(centre, from, to, left), to];
    }

    private static (double X, double Y) Unit(Point2 from, Point2 to)
    {
        var length = Math.Sqrt(Square(to.X - from.X) + Square(to.Y - from.Y));
        return length < 1e-12 ? (0, 0) : ((to.X - from.X) / length, (to.Y - from.Y) / length);
    }

    private static double Square(double value) => value * value;
}
