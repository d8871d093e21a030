using Handwheel.Trade.Fits;

namespace Handwheel.Trade.Asking;

/// <summary>Finds tolerance classes in a question.</summary>
internal static class FitFinder
{
    /// <summary>Takes the classes: a pair H7/g6, or one or two single ones, or an inch class.</summary>
    /// <param name="q">Question.</param>
    /// <returns>Hole and shaft zones, or an inch class; empty where not said.</returns>
    internal static (string Hole, string Shaft, string Inch) Take(Question q)
    {
        var (hole, shaft, inch) = (string.Empty, string.Empty, string.Empty);
        for (var i = 0; i < q.Tokens.Count; i++)
        {
            var token = q.Tokens[i];
            if (token.IsNumber)
            {
                continue;
            }

            var parts = token.Raw.Split('/', '-');
            if (parts.Length == 2 && parts.All(Iso286.IsZone))
            {
                token.Used = true;
                return Pair(parts[0], parts[1]);
            }

            if (Iso286.IsZone(token.Raw) && !token.Used)
            {
                token.Used = true;
                (hole, shaft) = char.IsUpper(token.Raw[0]) ? (token.Raw, shaft) : BesideHole(q, i) ? (Cased(token.Raw, true), shaft) : (hole, token.Raw);
            }

            inch = InchClass(q, i) ?? inch;
        }

        return (hole, shaft, inch);
    }

    // "h7/g6" all in one case: the first is the hole.
    private static (string Hole, string Shaft, string Inch) Pair(string first, string second)
    {
        if (char.IsUpper(first[0]) == char.IsUpper(second[0]))
        {
            return (Cased(first, true), Cased(second, false), string.Empty);
        }

        return char.IsUpper(first[0]) ? (first, second, string.Empty) : (second, first, string.Empty);
    }

    // "25 mm h7 hole": typed small, but a hole is spoken of and no shaft.
    private static bool BesideHole(Question q, int at) =>
        (at + 1 < q.Tokens.Count && q.Tokens[at + 1].Low is "hole" or "bore" or "reamer" or "ream") || (at > 0 && q.Tokens[at - 1].Low is "hole" or "bore" or "ream")
        || (q.HasIn("hole", "bore", "reamer", "reamed") && !q.HasIn("shaft", "pin", "dowel", "peg"));

    private static string Cased(string zone, bool upper) => upper ? zone.ToUpperInvariant() : zone.ToLowerInvariant();

    private static string? InchClass(Question q, int at)
    {
        var token = q.Tokens[at];
        var letters = token.Raw.ToUpperInvariant();
        var name = letters.Replace("-", string.Empty, StringComparison.Ordinal);
        if ((letters is "RC" or "LC" or "LT" or "LN" or "FN") && at + 1 < q.Tokens.Count && q.Tokens[at + 1] is { IsNumber: true, Unit: "", Decimals: 0 } number)
        {
            name = letters + number.Raw;
            if (InchFits.Classes.Contains(name, StringComparer.Ordinal))
            {
                number.Used = true;
            }
        }

        if (!InchFits.Classes.Contains(name, StringComparer.Ordinal))
        {
            return null;
        }

        token.Used = true;
        return name;
    }
}
