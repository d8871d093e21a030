using Handwheel.Quantities;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pictures;

/// <summary>A dimension's text: a drawn symbol, the value, its limits small beside it, and a name below.</summary>
internal sealed record SizeLabel
{
    private const double Points = 8.6;
    private const double SmallPoints = 7.6;

    /// <summary>The symbol: <c>round</c>, <c>square</c>, or none.</summary>
    public string Symbol { get; init; } = string.Empty;

    /// <summary>The value.</summary>
    public required string Value { get; init; }

    /// <summary>The upper deviation, or the only one where both are alike; empty without limits of its own.</summary>
    public string Upper { get; init; } = string.Empty;

    /// <summary>The lower deviation where it differs.</summary>
    public string Lower { get; init; } = string.Empty;

    /// <summary>What it is, in a second line.</summary>
    public string Name { get; init; } = string.Empty;

    /// <summary>Width of the first line, millimetres.</summary>
    public double ValueWidth => SymbolWidth + TextMeasure.Width(Value, Face.Figure, Points) + (Upper.Length == 0 ? 0 : 0.6 + Math.Max(TextMeasure.Width(Upper, Face.Figure, SmallPoints), TextMeasure.Width(Lower, Face.Figure, SmallPoints)));

    /// <summary>Width, millimetres.</summary>
    public double Width => Math.Max(ValueWidth, TextMeasure.Width(Name, Face.Plain, 7.6));

    private double SymbolWidth => Symbol.Length == 0 ? 0 : 3.2;

    /// <summary>A label of a size with its limits.</summary>
    /// <param name="numbers">How the sheet prints.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="stated">Whether the drawing states them (else general limits hold and are not repeated).</param>
    /// <param name="symbol">The symbol.</param>
    /// <param name="name">The second line.</param>
    /// <returns>The label.</returns>
    public static SizeLabel Of(SheetNumbers numbers, Limits limits, bool stated, string symbol = "", string name = "")
    {
        var value = numbers.Short(limits.Nominal);
        if (!stated || limits.Width <= 0)
        {
            return new() { Symbol = symbol, Value = value, Name = name };
        }

        var upper = Deviation(numbers, limits.UpperDeviation);
        var lower = Deviation(numbers, limits.LowerDeviation);
        return Math.Abs(limits.UpperDeviation + limits.LowerDeviation) < 1e-9
            ? new() { Symbol = symbol, Value = value, Upper = "\u00B1" + numbers.Short(limits.UpperDeviation), Name = name }
            : new() { Symbol = symbol, Value = value, Upper = upper, Lower = lower, Name = name };
    }

    /// <summary>Draws it.</summary>
    /// <param name="svg">The picture.</param>
    /// <param name="x">Its left.</param>
    /// <param name="y">Base line of its first line.</param>
    public void Draw(Svg svg, double x, double y)
    {
        if (Symbol == "round")
        {
            svg.Circle(x + 1.25, y - 1.1, 1.05, "symbol");
            svg.Line(x + 0.2, y + 0.25, x + 2.3, y - 2.45, "symbol");
        }
        else if (Symbol == "square")
        {
            svg.Rect(x + 0.2, y - 2.1, 2.1, 2.1, "symbol");
        }

        svg.Text(x + SymbolWidth, y, Value, Points, "fig");
        var after = x + SymbolWidth + TextMeasure.Width(Value, Face.Figure, Points) + 0.6;
        if (Lower.Length == 0)
        {
            svg.Text(after, y, Upper, SmallPoints, "fig");
        }
        else
        {
            svg.Text(after, y - 2.1, Upper, SmallPoints, "fig");
            svg.Text(after, y + 0.55, Lower, SmallPoints, "fig");
        }
    }

    private static string Deviation(SheetNumbers numbers, double value) =>
        Math.Abs(value) < 1e-9 ? "0" : value > 0 ? "+" + numbers.Short(value) : numbers.Short(value);
}
