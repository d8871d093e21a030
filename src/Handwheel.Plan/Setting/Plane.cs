using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// Small plane geometry: millimetres, radians counterclockwise from +X.
internal static class Plane
{
    internal const double ToDegrees = 180 / Math.PI;

    internal static double Distance(Point2 a, Point2 b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    internal static double Angle(Point2 from, Point2 to) => Math.Atan2(to.Y - from.Y, to.X - from.X);

    internal static double Angle(Point2 direction) => Math.Atan2(direction.Y, direction.X);

    internal static Point2 Polar(Point2 centre, double radius, double angle) =>
        new(centre.X + (radius * Math.Cos(angle)), centre.Y + (radius * Math.Sin(angle)));

    internal static Point2 Turned(Point2 p, Point2 about, double angle)
    {
        if (angle == 0)
        {
            return p;
        }

        var (s, c) = Math.SinCos(angle);
        double x = p.X - about.X, y = p.Y - about.Y;
        return new(about.X + (c * x) - (s * y), about.Y + (s * x) + (c * y));
    }

    // Into [0, 2 pi).
    internal static double Positive(double angle)
    {
        var a = angle % (2 * Math.PI);
        return a < 0 ? a + (2 * Math.PI) : a;
    }

    // Into (-pi, pi].
    internal static double Near(double angle)
    {
        var a = Positive(angle);
        return a > Math.PI ? a - (2 * Math.PI) : a;
    }
}
