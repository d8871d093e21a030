namespace Handwheel.Trade.Keys;

/// <summary>What a parallel key carries.</summary>
/// <remarks>
/// Shigley's Mechanical Engineering Design, section on keys and pins: the torque over the shaft's radius is one force; it shears width x length and bears on half
/// the height x length. N, mm, MPa. Valid for a key that fits its seats over its whole length; edges share unevenly, so expect 25 %.
/// </remarks>
public static class KeyStrength
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("Shigley, keys and pins: F = 2 T / D; F / (w l); F / (h l / 2)", Evidence.StandardFormula);

    /// <summary>Force on the key.</summary>
    /// <param name="torqueNmm">Torque, N mm.</param>
    /// <param name="shaftMm">Diameter of the shaft, mm.</param>
    /// <returns>N.</returns>
    public static double ForceN(double torqueNmm, double shaftMm) => 2 * torqueNmm / shaftMm;

    /// <summary>Shear stress across the key.</summary>
    /// <param name="forceN">Force, N.</param>
    /// <param name="widthMm">Width, mm.</param>
    /// <param name="lengthMm">Length that bears, mm.</param>
    /// <returns>MPa.</returns>
    public static double ShearMPa(double forceN, double widthMm, double lengthMm) => forceN / (widthMm * lengthMm);

    /// <summary>Pressure on the flank.</summary>
    /// <param name="forceN">Force, N.</param>
    /// <param name="heightMm">Height of the key, mm; half of it bears.</param>
    /// <param name="lengthMm">Length that bears, mm.</param>
    /// <returns>MPa.</returns>
    public static double BearingMPa(double forceN, double heightMm, double lengthMm) => forceN / (heightMm / 2 * lengthMm);
}
