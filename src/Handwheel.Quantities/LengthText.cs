using System.Globalization;

namespace Handwheel.Quantities;

/// <summary>How lengths are told in messages: in the job&#39;s unit, three decimals of a millimetre or four of an inch.</summary>
public static class LengthText
{
    /// <summary>The length with its decimals and no unit: <c>9.975</c>, <c>0.3750</c>.</summary>
    /// <param name="unit">The unit it is told in.</param>
    /// <param name="millimetres">The length, millimetres.</param>
    /// <returns>The text.</returns>
    public static string Bare(this LengthUnit unit, double millimetres)
    {
        var text = unit.FromMillimetres(millimetres).ToString(unit == LengthUnit.Inch ? "F4" : "F3", CultureInfo.InvariantCulture);
        return text.All(c => c is '-' or '0' or '.') ? text.TrimStart('-') : text;
    }

    /// <summary>The length with its unit: <c>9.975 mm</c>.</summary>
    /// <param name="unit">The unit it is told in.</param>
    /// <param name="millimetres">The length, millimetres.</param>
    /// <returns>The text.</returns>
    public static string Told(this LengthUnit unit, double millimetres) => unit.Bare(millimetres) + " " + unit.Symbol();

    /// <summary>The length as a person says it, with its unit: <c>12.5 mm</c>, <c>0.0625 in</c> as <c>1/16 in</c>; nothing trailing.</summary>
    /// <param name="unit">The unit it is told in.</param>
    /// <param name="millimetres">The length, millimetres.</param>
    /// <returns>The text: a fraction where it is a whole number of sixty-fourths of an inch, else at most four decimals of a millimetre or five of an inch.</returns>
    public static string Said(this LengthUnit unit, double millimetres)
    {
        var value = unit.FromMillimetres(millimetres);
        var parts = Math.Round(value * 64);
        if (unit == LengthUnit.Inch && Math.Abs(value) is < 100 and > 0 && Math.Abs((value * 64) - parts) < 1e-9 && parts % 64 != 0)
        {
            return Fraction((long)parts) + " in";
        }

        var text = Math.Round(value, unit == LengthUnit.Inch ? 5 : 4, MidpointRounding.AwayFromZero).ToString("0.#####", CultureInfo.InvariantCulture);
        return (text == "-0" ? "0" : text) + " " + unit.Symbol();
    }

    // Sixty-fourths of an inch, brought down: 1 3/8.
    private static string Fraction(long parts)
    {
        long over = 64, rest = Math.Abs(parts) % 64;
        while (rest % 2 == 0)
        {
            (rest, over) = (rest / 2, over / 2);
        }

        var whole = Math.Abs(parts) / 64;
        return string.Create(CultureInfo.InvariantCulture, $"{(parts < 0 ? "-" : string.Empty)}{(whole > 0 ? $"{whole} " : string.Empty)}{rest}/{over}");
    }

    /// <summary>The length as a reading, its sign always shown: <c>+9.990</c>.</summary>
    /// <param name="unit">The unit it is told in.</param>
    /// <param name="millimetres">The reading, millimetres.</param>
    /// <returns>The text.</returns>
    public static string Signed(this LengthUnit unit, double millimetres)
    {
        var text = unit.Bare(millimetres);
        return text[0] == '-' || text.All(c => c is '0' or '.') ? text : "+" + text;
    }
}
