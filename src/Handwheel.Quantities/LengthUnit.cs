namespace Handwheel.Quantities;

/// <summary>The units a length may be typed or shown in. Lengths are held in millimetres whatever their unit.</summary>
public enum LengthUnit
{
    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Inches of exactly 25.4 mm (international inch, 1959).</summary>
    Inch,
}
