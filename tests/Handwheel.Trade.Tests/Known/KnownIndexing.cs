using System.Globalization;
using Handwheel.Trade.Geometry;
using Handwheel.Trade.Indexing;

namespace Handwheel.Trade.Tests.Known;

internal static class KnownIndexing
{
    public static object? Work(KnownValue k)
    {
        if (k.Says("every N from 2 to 50"))
        {
            var circles = k.Wholes("circles");
            return new Dictionary<string, object>
            {
                ["all_2_to_50"] = Enumerable.Range(2, 49).All(n => Divider.Simple(k.Whole("ratio"), n, circles).Possible),
                ["even_exceptions_to_100"] = Enumerable.Range(1, 50).Select(n => n * 2).Where(n => !Divider.Simple(k.Whole("ratio"), n, circles).Possible).ToArray(),
            };
        }

        if (k.Inputs.ContainsKey("angle_deg"))
        {
            var move = Divider.Angular(k.Whole("ratio"), k.In("angle_deg"), k.Whole("circle"));
            Assert.Equal(0, move.ErrorDeg, 1e-9);
            return new Dictionary<string, object> { ["turns"] = move.Turns, ["holes"] = move.Spaces };
        }

        if (k.Inputs.ContainsKey("divisions"))
        {
            var simple = Divider.Simple(k.Whole("ratio"), k.Whole("divisions"), k.Wholes("circles"));
            return new Dictionary<string, object>
            {
                ["turns"] = simple.Turns,
                ["fraction"] = simple.Numerator == 0 ? "0" : string.Create(CultureInfo.InvariantCulture, $"{simple.Numerator}/{simple.Denominator}"),
                ["options"] = simple.Choices.ToDictionary(c => c.Circle.ToString(CultureInfo.InvariantCulture), c => (object)c.Spaces),
                ["possible"] = simple.Possible,
            };
        }

        return k.Inputs.ContainsKey("ratio") ? Divider.DegreesPerTurn(k.Whole("ratio")) : Circle(k);
    }

    private static object? Circle(KnownValue k)
    {
        if (k.Inputs.ContainsKey("angle"))
        {
            var a = k.Numbers("angle");
            return Shapes.SineBar(k.Inputs.ContainsKey("L_in") ? k.In("L_in") : k.In("L"), a[0] + (a[1] / 60) + (a[2] / 3600));
        }

        if (k.Inputs.ContainsKey("start_deg"))
        {
            return Circles.BoltCircle(k.Whole("n"), k.In("D"), k.In("start_deg"), k.Word("dir") == "cw").Select(p => new[] { p.X, p.Y }).ToArray();
        }

        return Circles.ChordFactor(k.Whole("n")) * (k.Inputs.ContainsKey("pcd_in") ? k.In("pcd_in") : 1);
    }
}
