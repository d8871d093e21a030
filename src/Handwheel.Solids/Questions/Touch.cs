using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>Where a cutter or a finder brought up to the metal first touches it, to 1e-6 mm on smooth surfaces.</summary>
public static class Touch
{
    private readonly record struct Best(double U, double V, double Value);

    /// <summary>The height of the lowest cutting point at which a cutter lowered at a place first touches.</summary>
    /// <param name="cutter">The cutter, all its pieces.</param>
    /// <param name="x">X of its axis, mm.</param>
    /// <param name="y">Y of its axis, mm.</param>
    /// <param name="metal">The metal.</param>
    /// <returns>The height, mm; null when there is no metal under the cutter.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static double? HighestUnder(CutterShape cutter, double x, double y, ISolid metal)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        ArgumentNullException.ThrowIfNull(metal);
        var widest = cutter.WidestRadius;
        return Climb(widest, (u, v) =>
        {
            var radius = Math.Sqrt((u * u) + (v * v));
            var under = ToolUnderside.At(cutter, radius, cuttingOnly: false);
            if (!double.IsFinite(under))
            {
                return double.NegativeInfinity;
            }

            var spans = metal.Sound(Line3.AlongZ(x + u, y + v));
            return spans.Count == 0 ? double.NegativeInfinity : spans[^1].To - under;
        });
    }

    /// <summary>How far a cutter or finder may travel level in a direction before it touches.</summary>
    /// <param name="cutter">The cutter or finder, all its pieces.</param>
    /// <param name="from">Where its lowest cutting point starts, clear of metal.</param>
    /// <param name="direction">Level direction of travel, of unit length: +-X or +-Y or any.</param>
    /// <param name="metal">The metal.</param>
    /// <returns>The distance, mm; null when it meets nothing.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static double? Sideways(CutterShape cutter, Point3 from, Vector3 direction, ISolid metal)
    {
        ArgumentNullException.ThrowIfNull(cutter);
        ArgumentNullException.ThrowIfNull(metal);
        var d = (direction with { Z = 0 }).ToUnit();
        var aside = new Vector3(-d.Y, d.X, 0);
        double r = cutter.WidestRadius, low = cutter.LowestPoint, high = cutter.HighestPoint;
        var near = Climb(r, (u, v) =>
        {
            // v, in -r..r, stands for a height between the cutter's ends.
            var z = low + ((high - low) * (Math.Clamp(v / r, -1, 1) + 1) / 2);
            var radius = cutter.RadiusAt(z);
            if (!(Math.Abs(u) < radius))
            {
                return double.NegativeInfinity;
            }

            var front = Math.Sqrt((radius - u) * (radius + u));
            var line = new Line3(from + (aside * u) + new Vector3(0, 0, z), d);
            foreach (var span in metal.Sound(line))
            {
                if (span.To > front)
                {
                    return front - span.From;
                }
            }

            return double.NegativeInfinity;
        });
        return near is { } value ? Math.Max(0, -value) : null;
    }

    // The greatest value over a disc's square: a lattice, then a pattern search from the best few places.
    private static double? Climb(double reach, Func<double, double, double> value)
    {
        const int n = 20;
        var starts = new List<Best>();
        for (var i = -n; i <= n; i++)
        {
            for (var j = -n; j <= n; j++)
            {
                double u = reach * i / n * (1 - 1e-9), v = reach * j / n * (1 - 1e-9);
                var f = value(u, v);
                if (f > double.NegativeInfinity)
                {
                    starts.Add(new(u, v, f));
                }
            }
        }

        double? best = null;
        foreach (var start in starts.OrderByDescending(s => s.Value).Take(6))
        {
            var top = Search(start, reach / n, value);
            best = best is { } known ? Math.Max(known, top) : top;
        }

        return best;
    }

    private static double Search(Best at, double step, Func<double, double, double> value)
    {
        for (var h = step; h > 1e-8; h /= 2)
        {
            for (var tries = 0; tries < 20; tries++)
            {
                var before = at.Value;
                for (var k = 0; k < 8; k++)
                {
                    var (s, c) = Math.SinCos(k * Math.PI / 4);
                    double u = at.U + (h * c), v = at.V + (h * s);
                    var f = value(u, v);
                    if (f > at.Value)
                    {
                        at = new(u, v, f);
                    }
                }

                if (at.Value <= before)
                {
                    break;
                }
            }
        }

        return at.Value;
    }
}
