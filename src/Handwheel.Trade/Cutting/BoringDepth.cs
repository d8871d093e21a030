using Handwheel.Trade.Strength;

namespace Handwheel.Trade.Cutting;

/// <summary>How deep a boring bar may cut a side.</summary>
/// <remarks>The bar is a round one held at its head; half of the cutting force pushes it off the wall (common practice: 0.3 to 0.5 for a sharp tip of small nose).
/// Kienzle's force on the tip; within a third.</remarks>
public static class BoringDepth
{
    /// <summary>The basis of the formula.</summary>
    public static Basis Basis { get; } = new("Kienzle; a round cantilever, Shigley 9th ed. Table A-9; half the cutting force sideways, common practice", Evidence.StandardFormula);

    /// <summary>Share of the cutting force that pushes the tip off the wall.</summary>
    public const double Sideways = 0.5;

    /// <summary>Depth of cut, measured on the radius, that bends a steel bar aside by a given amount.</summary>
    /// <param name="kc11">kc1.1, N/mm^2.</param>
    /// <param name="mc">Exponent.</param>
    /// <param name="feedMm">Feed a turn, mm, over 0.</param>
    /// <param name="barMm">Diameter of the bar, mm, over 0.</param>
    /// <param name="outMm">How far it stands out of the head, mm, over 0.</param>
    /// <param name="bendMm">How far it may bend, mm.</param>
    /// <returns>mm.</returns>
    public static double ThatBendsMm(double kc11, double mc, double feedMm, double barMm, double outMm, double bendMm) =>
        bendMm / (Sideways * feedMm * Kienzle.Specific(kc11, mc, feedMm) * GiveMmPerN(barMm, outMm));

    /// <summary>How far the tip of a steel bar gives.</summary>
    /// <param name="barMm">Diameter, mm, over 0.</param>
    /// <param name="outMm">How far it stands out, mm, over 0.</param>
    /// <returns>mm a newton.</returns>
    public static double GiveMmPerN(double barMm, double outMm) =>
        Beams.Round(barMm, outMm, 1, CutterStrength.ModulusMPa(Metals.CutterMaterial.HighSpeedSteel)).Deflection;
}
