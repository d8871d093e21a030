namespace Handwheel.Jobs.Reading;

/// <summary>The units numbers carry.</summary>
internal static class Units
{
    /// <summary>Units that are known and not taken: too coarse for a drawing, or of another trade.</summary>
    public static readonly string[] Other = ["cm", "dm", "m", "km", "ft", "feet", "foot", "yd", "rad", "mil", "mils"];

    // The unit that comes next, by its plain name; null for none. 'in' before a word of a repeat or a holder is that line's word; '0.03 in a pass' is a length.
    public static string? Take(Cursor c)
    {
        if (c.Peek() is not { } token)
        {
            return null;
        }

        if (token.Text.Equals("in", StringComparison.OrdinalIgnoreCase) && c.Peek(1)?.Text.ToLowerInvariant() is "row" or "grid" or "circle")
        {
            c.Fail("a comma after inches, or 'row of' without 'in'", "Write '0.5 in, row of 4' where inches are meant, else '0.5, row of 4'.");
            return null;
        }

        var unit = token.Text.ToLowerInvariant() switch
        {
            "mm" => "mm",
            "in" or "inch" or "inches" when !InIsWord(c) => "in",
            "\"" => "in",
            "thou" => "thou",
            "um" or "\u00B5m" or "\u03BCm" => "um",
            "deg" or "degrees" or "degree" or "\u00B0" => "deg",
            "'" or "min" or "minute" or "minutes" => "min",
            _ => null,
        };
        c.At += unit is null ? 0 : 1;
        return unit;
    }

    public static Quantity One(string unit) => Apply(Exact.Ratio(1, 1), unit);

    public static Quantity Apply(Exact value, string unit) => unit switch
    {
        "mm" => new Quantity(value, Dimension.Length),
        "in" => new Quantity(value * Exact.Inch, Dimension.Length),
        "thou" => new Quantity(value * Exact.Inch / Exact.Ratio(1000, 1), Dimension.Length),
        "um" => new Quantity(value / Exact.Ratio(1000, 1), Dimension.Length),
        "min" => new Quantity(value / Exact.Ratio(60, 1), Dimension.Angle),
        _ => new Quantity(value, Dimension.Angle),
    };

    private static bool InIsWord(Cursor c) =>
        c.Peek(1) is { Kind: TokenKind.Word } next && (next.Text.ToLowerInvariant() is "the" or "passes" or "steps" or "lbf" || (next.Is("a") && c.Peek(2)?.Is("pass") != true));
}
