namespace Handwheel.Trade.Cutting;

/// <summary>Whether what holds the work holds it.</summary>
/// <remarks>Friction of clamped faces: both jaws (or table and clamp) rub. Steel on steel, dry or oily chips: 0.1 to 0.2; take 0.15 and a factor of 2.5 for
/// a smooth cut, more where it hammers (common practice; Marks' gives 0.11 to 0.23 greasy). Within a factor of two.</remarks>
public static class Clamping
{
    /// <summary>The basis of the formula.</summary>
    public static Basis Basis { get; } = new("Coulomb friction; coefficients Marks' Standard Handbook sect. 3.2", Evidence.StandardFormula);

    /// <summary>Squeeze needed.</summary>
    /// <param name="cuttingN">Force that tries to slide the work, N.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="faces">Faces that rub: 2 for a vise, 2 for a strap clamp (under it and on the table).</param>
    /// <param name="factor">How many times over it must hold.</param>
    /// <returns>N.</returns>
    public static double SqueezeN(double cuttingN, double friction, int faces, double factor) => cuttingN * factor / (friction * faces);

    /// <summary>Squeeze of a vise or clamp from its screw.</summary>
    /// <param name="torqueNm">Torque on the handle, N m.</param>
    /// <param name="screwMm">Screw diameter, mm.</param>
    /// <param name="k">Torque factor K, 0.2 when oiled.</param>
    /// <returns>N.</returns>
    public static double FromScrewN(double torqueNm, double screwMm, double k) => torqueNm * 1000 / (k * screwMm);
}
