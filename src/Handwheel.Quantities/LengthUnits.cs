namespace Handwheel.Quantities;

/// <summary>Conversions between the units of length and millimetres.</summary>
public static class LengthUnits
{
    /// <summary>Millimetres in one inch, exact (international inch, 1959).</summary>
    public const double MillimetresPerInch = 25.4;

    /// <summary>Millimetres in one unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>1 or 25.4.</returns>
    public static double MillimetresPerUnit(this LengthUnit unit) => unit == LengthUnit.Inch ? MillimetresPerInch : 1;

    /// <summary>A length held in millimetres, told in the unit.</summary>
    /// <param name="unit">The unit to tell it in.</param>
    /// <param name="millimetres">The length, millimetres.</param>
    /// <returns>The length in the unit.</returns>
    public static double FromMillimetres(this LengthUnit unit, double millimetres) => millimetres / unit.MillimetresPerUnit();

    /// <summary>A length in the unit, in millimetres.</summary>
    /// <param name="unit">The unit the value is in.</param>
    /// <param name="value">The value.</param>
    /// <returns>Millimetres.</returns>
    public static double ToMillimetres(this LengthUnit unit, double value) => value * unit.MillimetresPerUnit();

    /// <summary>The unit's symbol (ISO 80000-3).</summary>
    /// <param name="unit">The unit.</param>
    /// <returns><c>mm</c> or <c>in</c>.</returns>
    public static string Symbol(this LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";
}
