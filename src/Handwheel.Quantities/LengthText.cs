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
