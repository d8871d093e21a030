using System.Text.RegularExpressions;
using Handwheel.Trade.Tapers;

namespace Handwheel.Trade.Asking;

/// <summary>Finds a named taper in a question.</summary>
internal static partial class TaperFinder
{
    // Words of a family; MT2, JT33, NT40 are read by their shape.
    private static readonly (string Family, string[] Words)[] Families =
    [
        ("Morse", ["morse", "mt", "mk", "cm"]), ("Jacobs", ["jacobs", "jt", "jacob"]), ("Jarno", ["jarno"]), ("Brown & Sharpe", ["sharpe", "b&s", "bs", "brown"]),
        ("7/24", ["7/24", "nt", "nmtb", "nmt", "iso", "int", "bt", "cat", "sk", "steep", "quick"]),
    ];

    /// <summary>Takes a taper.</summary>
    /// <param name="q">Question.</param>
    /// <returns>The taper, or null.</returns>
    /// <exception cref="UnansweredException">The family has no such number.</exception>
    internal static Taper? Take(Question q)
    {
        if (q.Has("r8", "r-8"))
        {
            return TaperTable.Find("R8", string.Empty);
        }

        return Pin(q) ?? Glued(q) ?? Spoken(q) ?? MetricOne(q) ?? Steep(q);
    }

    private static Taper? Pin(Question q)
    {
        if (!q.Tokens.Any(t => t.Low is "pin" or "pins"))
        {
            return null;
        }

        q.Has("pin", "pins", "no", "number");
        var metric = q.Has("metric") || q.Tokens.Any(t => t.Unit == "mm");
        var token = q.Tokens.FirstOrDefault(t => !t.Used && (t.IsNumber || t.Raw.StartsWith('#') || ZeroShape().IsMatch(t.Raw)));
        var name = token?.Raw.TrimStart('#').Replace("mm", string.Empty, StringComparison.OrdinalIgnoreCase).Trim() ?? string.Empty;
        var pin = token is null ? null : TaperTable.Find(metric ? "metric taper pin" : "taper pin", name);
        if (pin is null)
        {
            throw new UnansweredException("taper pins go by number, 7/0 to 14 (inch), or by small end, 0.6 to 50 mm (metric)") { Nearest = ["taper pin 4", "taper pin 5 mm"] };
        }

        token!.Used = true;
        return pin;
    }

    private static Taper? Glued(Question q)
    {
        foreach (var token in q.Tokens.Where(t => !t.Used && !t.IsNumber))
        {
            var match = GluedShape().Match(token.Raw);
            if (!match.Success)
            {
                continue;
            }

            token.Used = true;
            var family = match.Groups["family"].Value.ToLowerInvariant().Replace(".", string.Empty, StringComparison.Ordinal) switch
            {
                "mt" or "mk" or "cm" or "morse" => "Morse",
                "jt" or "j" or "jacobs" => "Jacobs",
                "b" => "B",
                "b&s" or "bs" => "Brown & Sharpe",
                "jarno" => "Jarno",
                _ => "7/24",
            };
            q.Has("morse", "jacobs", "jarno", "brown", "sharpe", "&", "short");
            return Of(family, match.Groups["number"].Value + (match.Groups["short"].Success ? " short" : string.Empty));
        }

        return null;
    }

    private static Taper? Spoken(Question q)
    {
        foreach (var (family, words) in Families)
        {
            if (!q.Tokens.Any(t => words.Contains(t.Low, StringComparer.Ordinal)))
            {
                continue;
            }

            q.Has([.. words, "no", "no.", "number", "&", "and", "tapers"]);
            foreach (var ratio in q.Tokens.Where(t => t.Raw == "7/24"))
            {
                ratio.Used = true;
            }

            var token = q.Tokens.FirstOrDefault(t => !t.Used && ((t.IsNumber && t.Unit.Length == 0 && (family != "7/24" || t.Value >= 1)) || t.Raw.StartsWith('#') || ShortShape().IsMatch(t.Raw)));
            if (token is null && family == "7/24")
            {
                return TaperTable.Find("7/24", "40")! with { Number = "any size", LargeIn = double.NaN, Details = [] };
            }

            _ = token ?? throw new UnansweredException($"the number of the {family} taper is missing");
            token!.Used = true;
            var number = token.Raw.TrimStart('#');
            return Of(family, ShortShape().IsMatch(number) ? number[..^1] + " short" : number + (q.Has("short") ? " short" : string.Empty));
        }

        return null;
    }

    // "a 40 taper": on a mill that is 7/24.
    private static Taper? Steep(Question q)
    {
        var word = q.Tokens.ToList().FindIndex(t => t.Low is "taper" or "spindle");
        if (word < 1 || q.Tokens[word - 1] is not { IsNumber: true, Used: false, Unit: "", Value: 30 or 35 or 40 or 45 or 50 or 60 } number || q.Tokens.Count(t => t.IsNumber && t.Unit.Length == 0) > 1)
        {
            return null;
        }

        number.Used = true;
        return Of("7/24", Question.Plainly(number.Value));
    }

    // "metric taper 80": the 1 in 20 tapers below and above Morse.
    private static Taper? MetricOne(Question q)
    {
        var numbers = q.Tokens.Where(t => t.IsNumber && !t.Used).ToArray();
        if (numbers.Length != 1 || !q.HasIn("metric"))
        {
            return null;
        }

        q.Has("metric", "no", "number");
        numbers[0].Used = true;
        return Of("metric", Question.Plainly(numbers[0].Value));
    }

    private static Taper Of(string family, string number) => TaperTable.Find(family, number)
        ?? throw new UnansweredException($"there is no {family} {number}; known are {string.Join(", ", TaperTable.All.Where(t => t.Family == family).Select(t => t.Number))}");

    [GeneratedRegex("^(?<family>mt|m[.]t[.]|mk|cm|morse|jt|j|jacobs|b&s|bs|jarno|nt|nmtb|nmt|iso|int|bt|cat|sk|b)[-#]?(?<number>[0-9]+)(?<short>s)?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex GluedShape();

    [GeneratedRegex("^[0-9]s$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex ShortShape();

    [GeneratedRegex("^[0-9]/0$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex ZeroShape();
}
