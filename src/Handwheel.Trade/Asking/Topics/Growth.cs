using System.Globalization;
using System.Text.RegularExpressions;
using Handwheel.Trade.Metals;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>How much a length grows when it warms.</summary>
internal static partial class Growth
{
    /// <summary>Adds the growth where the question gives a length and a rise of temperature.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <param name="metal">Of what.</param>
    internal static void Add(Question q, ReplyBuilder r, Metal metal)
    {
        if (!q.HasIn("expansion", "expand", "expands", "grow", "grows", "growth") || Rise(q) is not { } rise || q.Length() is not { } length)
        {
            return;
        }

        var (kelvin, told) = rise;
        r.Add("growth", length * metal.Expansion * 1e-6 * kelvin, "mm", MetalTable.PropertiesBasis, "5 %", [$"L x expansion x rise = {r.L(length)} x {N(metal.Expansion)}e-6 x {told}"])
            .Note($"Taken as a rise of {told}; it shrinks as much when it cools as far.");
    }

    // "20 deg", "50 F", "30C", "by 15 K"; degrees alone are Celsius.
    private static (double Kelvin, string Told)? Rise(Question q)
    {
        for (var i = 0; i < q.Tokens.Count; i++)
        {
            var token = q.Tokens[i];
            var next = i + 1 < q.Tokens.Count ? q.Tokens[i + 1].Low : string.Empty;
            var glued = Glued().Match(token.Raw);
            if (glued.Success)
            {
                token.Used = true;
                return Of(double.Parse(glued.Groups["n"].Value, CultureInfo.InvariantCulture), glued.Groups["s"].Value.ToLowerInvariant());
            }

            if (token is { IsNumber: true, Used: false } && (token.Unit == "deg" || (token.Unit.Length == 0 && next is "f" or "c" or "k" or "fahrenheit" or "celsius" or "kelvin")))
            {
                token.Used = true;
                q.Has("f", "c", "k", "fahrenheit", "celsius", "kelvin");
                return Of(token.Value, next);
            }
        }

        return null;
    }

    private static (double Kelvin, string Told) Of(double value, string scale) =>
        scale.StartsWith('f') ? (value / 1.8, $"{N(value)} deg F ({N(value / 1.8)} K)") : (value, $"{N(value)} K");

    [GeneratedRegex("^(?<n>[0-9]+\\.?[0-9]*)(?<s>f|c|k)$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Glued();
}
