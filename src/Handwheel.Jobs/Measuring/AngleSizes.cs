using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Measuring;

/// <summary>
/// An angle between straight sides of two features, or of one and an axis of the part, in the plan of one view: the sides drawn nearest to the size&#39;s middle
/// (every pair as near), a line fitted to each side at every level.
/// </summary>
internal static class AngleSizes
{
    private const double Same = 1e-9;

    /// <summary>Measures between two features.</summary>
    /// <param name="middle">The size&#39;s middle, radians.</param>
    /// <param name="first">One feature&#39;s probe.</param>
    /// <param name="second">The other&#39;s probe.</param>
    /// <param name="tally">Takes the angles, radians.</param>
    public static void Between(double middle, FeatureProbe first, FeatureProbe second, Tally tally) => Measure(middle, Sides(first), Sides(second), tally);

    /// <summary>Measures to an axis of the part: a side that lies along it stands square to its normal.</summary>
    /// <param name="middle">The size&#39;s middle, radians.</param>
    /// <param name="view">The feature&#39;s view.</param>
    /// <param name="first">The feature&#39;s probe.</param>
    /// <param name="axis"><c>x</c>, <c>y</c> or <c>z</c>.</param>
    /// <param name="tally">Takes the angles, radians.</param>
    public static void ToAxis(double middle, View view, FeatureProbe first, string? axis, Tally tally)
    {
        var along = axis switch { "x" => new Point3(1, 0, 0), "y" => new Point3(0, 1, 0), _ => new Point3(0, 0, 1) };
        var inView = FeatureView.InView(view, along);
        var square = new Point2(-inView.Y, inView.X);
        Measure(middle, Sides(first), [(square, _ => [square])], tally);
    }

    private static void Measure(
        double middle,
        List<(Point2 Normal, Func<Tally, IReadOnlyList<Point2>> Found)> first,
        List<(Point2 Normal, Func<Tally, IReadOnlyList<Point2>> Found)> second,
        Tally tally)
    {
        var pairs = (from a in first
                     from b in second
                     from way in new[] { true, false }
                     select (a, b, Way: way, Off: Math.Abs(Told(a.Normal, b.Normal, way) - middle))).ToList();
        var best = pairs.Select(p => p.Off).DefaultIfEmpty(double.PositiveInfinity).Min();
        foreach (var (a, b, way, _) in pairs.Where(p => p.Off <= best + Same))
        {
            Tally here = new();
            var (foundA, foundB) = (a.Found(here), b.Found(here));
            tally.Rests(here);
            foreach (var m in foundA)
            {
                foreach (var n in foundB)
                {
                    tally.Add(Told(m, n, way));
                }
            }
        }
    }

    private static double Told(Point2 a, Point2 b, bool way)
    {
        var between = Math.Atan2(Math.Abs((a.X * b.Y) - (a.Y * b.X)), a.Dot(b));
        return way ? between : Math.PI - between;
    }

    private static List<(Point2 Normal, Func<Tally, IReadOnlyList<Point2>> Found)> Sides(FeatureProbe probe) =>
        [.. probe.Faces.Planes.Select(p => (p.Normal, (Func<Tally, IReadOnlyList<Point2>>)(t => probe.Leans(p, t))))];
}
