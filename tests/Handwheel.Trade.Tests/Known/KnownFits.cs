using System.Text.RegularExpressions;
using Handwheel.Trade.Fits;

namespace Handwheel.Trade.Tests.Known;

internal static class KnownFits
{
    public static object? Work(KnownValue k)
    {
        if (k.Says("ANSI B4.1"))
        {
            Assert.True(InchFits.TryOf(k.In("size_in"), k.Word("class"), out var fit, out _));
            return new Dictionary<string, object>
            {
                ["hole"] = Thousandths(fit.Hole), ["shaft"] = Thousandths(fit.Shaft),
                ["clearance"] = new[] { fit.LeastClearanceMm / 0.0254, fit.GreatestClearanceMm / 0.0254 },
            };
        }

        if (k.Says("ISO 2768-1 linear"))
        {
            return k.Expected.AsObject().ToDictionary(p => p.Key, p => (object)GeneralTolerances.LinearMm(k.In("size_mm"), p.Key[0]));
        }

        if (k.Says("angular tolerance"))
        {
            return new Dictionary<string, object>
            {
                ["<=10"] = GeneralTolerances.AngleMinutes(10, 'm'), ["10-50"] = GeneralTolerances.AngleMinutes(50, 'f'),
                ["50-120"] = GeneralTolerances.AngleMinutes(51, 'm'), ["120-400"] = GeneralTolerances.AngleMinutes(400, 'm'),
            };
        }

        var size = k.In("size_mm");
        if (k.Inputs.ContainsKey("fit"))
        {
            var fit = Iso286.Of(size, k.Word("fit"));
            return new Dictionary<string, object>
            {
                ["Dmax"] = size + fit.Hole.UpperMm, ["Dmin"] = size + fit.Hole.LowerMm, ["dmax"] = size + fit.Shaft.UpperMm, ["dmin"] = size + fit.Shaft.LowerMm,
            };
        }

        return k.Says("clearance") ? Clearance(k, size) : k.Expected.AsObject().ToDictionary(p => p.Key, p => (object)Micrometres(Iso286.Limits(size, p.Key)));
    }

    private static Dictionary<string, object> Clearance(KnownValue k, double size)
    {
        var worked = new Dictionary<string, object>();
        foreach (var (name, _) in k.Expected.AsObject())
        {
            var m = Regex.Match(name, "^(?<hole>H\\d+)(?<shaft>[a-z]+\\d+)(?<tight>_interference)?$", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
            var fit = Iso286.Of(size, $"{m.Groups["hole"].Value}/{m.Groups["shaft"].Value}");
            worked[name] = m.Groups["tight"].Success
                ? new[] { -fit.LeastClearanceMm * 1000, -fit.GreatestClearanceMm * 1000 }
                : [fit.LeastClearanceMm * 1000, fit.GreatestClearanceMm * 1000];
        }

        return worked;
    }

    private static double[] Micrometres(Deviations d) => [d.UpperMm * 1000, d.LowerMm * 1000];

    private static double[] Thousandths(Deviations d) => [d.UpperMm / 0.0254, d.LowerMm / 0.0254];
}
