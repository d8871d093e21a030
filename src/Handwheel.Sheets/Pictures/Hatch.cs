using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>Hatching: slanted lines cut off at loops, worked out here so that every printer draws the same.</summary>
internal static class Hatch
{
    /// <summary>Lines at 45 degrees inside loops (even and odd).</summary>
    /// <param name="loops">Paper loops.</param>
    /// <param name="apart">Distance between lines.</param>
    /// <param name="falling">Whether they fall to the right (else rise).</param>
    /// <returns>Path data.</returns>
    public static string Data(IEnumerable<IReadOnlyList<Point2>> loops, double apart, bool falling = false)
    {
        // In turned axes u = (x + y), v = (y - x) lines of equal u rise to the right (y downwards).
        var turned = loops.Select(l => l.Select(p => falling ? new Point2(p.Y - p.X, p.X + p.Y) : new Point2(p.X + p.Y, p.Y - p.X)).ToArray()).ToList();
        var data = new System.Text.StringBuilder();
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var p in turned.SelectMany(l => l))
        {
            low = Math.Min(low, p.X);
            high = Math.Max(high, p.X);
        }

        var step = apart * Math.Sqrt(2);
        for (var n = Math.Ceiling(low / step); n * step < high; n++)
        {
            var u = (n * step) + 1e-7;
            var at = Crossings(turned, u);
            for (var i = 0; i + 1 < at.Count; i += 2)
            {
                var (x1, y1) = Back(u, at[i], falling);
                var (x2, y2) = Back(u, at[i + 1], falling);
                data.Append(Svg.Data([new(x1, y1), new(x2, y2)], close: false));
            }
        }

        return data.ToString();
    }

    private static (double X, double Y) Back(double u, double v, bool falling) => falling ? ((v - u) / 2, (u + v) / 2) : ((u - v) / 2, (u + v) / 2);

    private static List<double> Crossings(List<Point2[]> loops, double u)
    {
        var at = new List<double>();
        foreach (var loop in loops)
        {
            for (int i = 0, j = loop.Length - 1; i < loop.Length; j = i++)
            {
                if (loop[i].X > u != loop[j].X > u)
                {
                    at.Add(loop[i].Y + ((loop[j].Y - loop[i].Y) * (u - loop[i].X) / (loop[j].X - loop[i].X)));
                }
            }
        }

        at.Sort();
        return at;
    }
}
