using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Conversions of what is no length: forces, torques, stresses, speeds, temperatures.</summary>
internal static class Conversions
{
    private static readonly Basis Exact = new("1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 kgf = 9.80665 N, exactly", Evidence.StandardFormula);

    /// <summary>Answers where the number carries another unit than a length.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <returns>True where it did.</returns>
    /// <exception cref="UnansweredException">The unit is not known, or cannot be converted.</exception>
    internal static bool Add(Question q, ReplyBuilder r)
    {
        var at = q.Tokens.ToList().FindIndex(t => t.IsNumber);
        if (at < 0)
        {
            return false;
        }

        var number = q.Tokens[at];
        var word = Beside(q, at);
        if (number.Unit.Length == 0 && word is "c" or "f" or "celsius" or "fahrenheit" or "centigrade")
        {
            number.Used = true;
            q.Has("c", "f", "celsius", "fahrenheit", "centigrade", "deg");
            Temperature(r, number.Value, word[0] is 'f');
            return true;
        }

        var unit = number.Unit.Length > 0 ? number.Unit : Units.Of(word) ?? string.Empty;
        if (unit == "deg")
        {
            number.Used = true;
            q.Has("c", "f", "celsius", "fahrenheit", "centigrade");
            if (word.Length > 0 && word[0] is 'c' or 'f')
            {
                Temperature(r, number.Value, word[0] is 'f');
                return true;
            }

            r.Add("angle", number.Value, "deg", Exact).Add("in radians", number.Value * Math.PI / 180, "rad", Exact, $"{N(number.Value)} x pi / 180");
            return true;
        }

        if (unit.Length == 0 && word is "hrc" or "hb" or "hv" or "hrb" or "brinell" or "rockwell" or "vickers" or "bhn")
        {
            throw new UnansweredException("hardness scales are not carried here: they convert by tables of each steel (ISO 18265), not by a rule");
        }

        if (unit.Length == 0 || Units.IsLength(unit))
        {
            return false;
        }

        number.Used = true;
        q.Has(word);
        Other(r, number.Value, unit);
        return true;
    }

    private static string Beside(Question q, int at)
    {
        var after = at + 1 < q.Tokens.Count ? q.Tokens[at + 1].Low : string.Empty;
        var before = at > 0 ? q.Tokens[at - 1].Low : string.Empty;
        return after is "hrc" or "hb" or "hv" or "hrb" or "brinell" or "rockwell" or "vickers" or "bhn" or "c" or "f" or "celsius" or "fahrenheit" or "centigrade" || before.Length == 0 || before == "convert" ? after : before;
    }

    private static void Temperature(ReplyBuilder r, double value, bool fahrenheit)
    {
        var celsius = fahrenheit ? (value - 32) / 1.8 : value;
        r.Add("temperature", celsius, "deg C", Exact, fahrenheit ? $"({N(value)} - 32) / 1.8" : "as given").Add("temperature in Fahrenheit", (celsius * 1.8) + 32, "deg F", Exact, $"{N(celsius)} x 1.8 + 32");
    }

    private static void Other(ReplyBuilder r, double value, string unit)
    {
        var metric = Units.ToMetric(value, unit);
        var (name, into) = unit switch
        {
            "N" or "kN" or "lbf" or "kgf" => ("force", "N"),
            "N m" or "ft lbf" or "lbf in" => ("torque", "N m"),
            "MPa" or "GPa" or "psi" or "ksi" => ("stress", "MPa"),
            "ft/min" or "m/min" => ("speed", "m/min"),
            "kW" or "hp" => ("power", "kW"),
            _ => throw new UnansweredException($"'{unit}' has no twin to convert to"),
        };
        var both = Units.Both(metric, into)!.Value;
        r.Say(name, $"{N(both.Metric.Value)} {both.Metric.Unit} = {N(both.Inch.Value)} {both.Inch.Unit}", Exact, $"{N(value)} {unit}").Add(name + " in " + into, metric, into, Exact);
        if (unit is "lbf" or "kgf" or "N")
        {
            r.Add("weight of that force", metric / 9.80665, "kg", Exact, "N / 9.80665");
        }

        if (name == "torque")
        {
            r.Add("torque in foot pounds", metric / 1.3558179483314, "ft lbf", Exact);
        }
    }
}
