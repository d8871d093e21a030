using System.Globalization;

namespace Handwheel.Quantities;

/// <summary>Numbers of an estimate as a person writes them: three figures that count.</summary>
public static class ThreeFigures
{
    /// <summary>A number in words of three figures, no trailing zeros; below 0.1 four decimals.</summary>
    /// <param name="value">The number.</param>
    /// <returns>The text.</returns>
    public static string Of(double value)
    {
        var size = Math.Abs(value);
        if (size >= 1000)
        {
            var step = Math.Pow(10, Math.Floor(Math.Log10(size)) - 2);
            return (Math.Round(value / step) * step).ToString("0", CultureInfo.InvariantCulture);
        }

        var decimals = size >= 100 || size == 0 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.1 ? 3 : 4;
        return Math.Round(value, decimals).ToString("0.####", CultureInfo.InvariantCulture);
    }
}
