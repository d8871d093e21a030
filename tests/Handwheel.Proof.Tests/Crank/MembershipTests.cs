using System.Globalization;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Stocks;
using Handwheel.Proof.Following;

namespace Handwheel.Proof.Tests.Crank;

/// <summary>
/// A plain membership test that shares no code with the engine or the proof: is this place of the crank still metal after its course? Distances to straight lines
/// and arcs, and a drill&#39;s cone, by school geometry.
/// </summary>
public sealed class MembershipTests
{
    private const double Skin = 1e-6;

    [Fact]
    public void The_stock_left_agrees_with_plain_geometry_at_random_places()
    {
        var course = CrankCourse.Sound();
        var metal = new Follower(course, CrankCourse.Shop, StockSolid.Of(CrankCourse.Job.Stock), DrawnPart.Of(CrankCourse.Job.Drawing, PartVariant.MostMetal)).Follow().Last;
        var cuts = PlainCuts(course).ToList();
        var random = new Random(20260214);
        int compared = 0, inside = 0;
        var places = int.TryParse(Environment.GetEnvironmentVariable("HANDWHEEL_PLACES"), CultureInfo.InvariantCulture, out var wanted) ? wanted : 1_000_000;
        for (var i = 0; i < places; i++)
        {
            double x = (random.NextDouble() * 48) - 9, y = (random.NextDouble() * 13.96) - 6.98, z = (random.NextDouble() * 30) - 29.5;
            var deepest = cuts.Max(c => c(x, y, z));
            if (Math.Abs(deepest) < Skin)
            {
                continue;
            }

            compared++;
            inside += deepest < 0 ? 1 : 0;
            Assert.True(deepest < 0 == metal.Contains(new(x, y, z)), FormattableString.Invariant($"{x:R}, {y:R}, {z:R}: {deepest}"));
        }

        Assert.InRange(compared, 0.999 * places, places);
        Assert.InRange(inside, 0.4 * places, 0.8 * places);
    }

    // Each cut as how deep a place lies in it; below 0 outside. Only signs and smallness are meant, not distances.
    private static IEnumerable<Func<double, double, double, double>> PlainCuts(Course course)
    {
        Reading at = default;
        Cutter? cutter = null;
        foreach (var stage in course.Stages)
        {
            var origin = stage.Setup?.PartOrigin ?? default;
            foreach (var one in stage.Steps.SelectMany(s => s.Events))
            {
                if (one is CutterIn put)
                {
                    cutter = CrankCourse.Shop.Cutters[put.Cutter];
                }
                else if (one is Move move)
                {
                    var (from, to, tool) = (at, move.To, cutter!);
                    at = move.To;
                    if (move.Cutting)
                    {
                        yield return (x, y, z) => Swept(tool, from, to, x + origin.X, y + origin.Y, z + origin.Z);
                    }
                }
            }
        }

        yield return (x, y, z) => Math.Min(Math.Min(2.015 - Math.Abs(x), 2.015 - Math.Abs(y)), z + 6);
        yield return (x, y, z) => Math.Min(2 - Math.Sqrt((x * x) + (y * y)), z + 14 - (Math.Sqrt((x * x) + (y * y)) / Math.Tan(59 * Math.PI / 180)));
        yield return (_, _, z) => Math.Min(z + 13.1, -12.1 - z);
        yield return (_, _, z) => Math.Min(z + 12.5, -12.05 - z);
    }

    private static double Swept(Cutter tool, Reading from, Reading to, double x, double y, double z)
    {
        var radius = tool.TrueAcross / 2;
        if (from.X == to.X && from.Y == to.Y && from.T == to.T)
        {
            // A plunge: from the tip's last place up, wider by the point's cone.
            var (px, py) = Turned(x, y, to.T);
            var off = Math.Sqrt(Math.Pow(px - to.X, 2) + Math.Pow(py - to.Y, 2));
            var rise = tool.PointAngle > 0 ? off / Math.Tan(tool.PointAngle / 2) : tool.Kind == CutterKind.Reamer ? Math.Max(0, off - (radius - 0.15 * tool.TrueAcross)) / (0.15 * tool.TrueAcross) * tool.Lead : 0;
            return Math.Min(radius - off, z - (to.Z + rise));
        }

        var top = tool.Kind == CutterKind.Saw ? to.Z + tool.Thick - z : 1;
        return Math.Min(Math.Min(z - to.Z, top), radius - Nearest(from, to, x, y));
    }

    private static double Nearest(Reading from, Reading to, double x, double y)
    {
        if (from.T == to.T)
        {
            var (px, py) = Turned(x, y, to.T);
            double dx = to.X - from.X, dy = to.Y - from.Y;
            var along = Math.Clamp((((px - from.X) * dx) + ((py - from.Y) * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
            return Math.Sqrt(Math.Pow(px - from.X - (along * dx), 2) + Math.Pow(py - from.Y - (along * dy), 2));
        }

        double rho = Math.Sqrt((x * x) + (y * y)), reach = Math.Sqrt((to.X * to.X) + (to.Y * to.Y));
        double low = Math.Min(from.T, to.T), high = Math.Max(from.T, to.T);
        var wanted = (Math.Atan2(to.Y, to.X) - Math.Atan2(y, x)) * 180 / Math.PI;
        var first = wanted + (360 * Math.Ceiling((low - wanted) / 360));
        if (first <= high)
        {
            return Math.Abs(rho - reach);
        }

        return Math.Min(End(low), End(high));

        double End(double theta)
        {
            var (px, py) = Turned(x, y, theta);
            return Math.Sqrt(Math.Pow(px - to.X, 2) + Math.Pow(py - to.Y, 2));
        }
    }

    private static (double X, double Y) Turned(double x, double y, double degrees)
    {
        var (s, c) = Math.SinCos(degrees * Math.PI / 180);
        return ((c * x) - (s * y), (s * x) + (c * y));
    }
}
