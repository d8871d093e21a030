using Handwheel.Trade.Metals;
using Handwheel.Trade.Strength;

namespace Handwheel.Trade.Cutting;

/// <summary>How an end mill bends and what breaks it.</summary>
/// <remarks>
/// A round bar held at the collet, loaded at the tip; the flutes count as 0.8 of the diameter (Kops and Vo, CIRP Annals 1990). The holder's own give and the
/// spindle's come on top. Strengths are what cutter steels and carbides stand in bending, remembered: expect a factor of 1.5 either way.
/// </remarks>
public static class CutterStrength
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("cantilever of 0.8 d (Kops and Vo, CIRP Annals 1990; Shigley Table A-9)", Evidence.StandardFormula);

    /// <summary>Share of the diameter that counts in bending.</summary>
    public const double FlutedShare = 0.8;

    /// <summary>Modulus of the cutter's material.</summary>
    /// <param name="material">What it is made of.</param>
    /// <returns>MPa.</returns>
    public static double ModulusMPa(CutterMaterial material) => material == CutterMaterial.Carbide ? 600_000 : 207_000;

    /// <summary>Bending stress that breaks it.</summary>
    /// <param name="material">What it is made of.</param>
    /// <returns>MPa: 2500 for high-speed steel and fine-grain carbide, 1800 for carbon steel, halved for the notches of the flutes.</returns>
    public static double BreakingMPa(CutterMaterial material) => material == CutterMaterial.CarbonSteel ? 900 : 1250;

    /// <summary>Deflection at the tip and stress at the collet.</summary>
    /// <param name="material">What it is made of.</param>
    /// <param name="diameterMm">Diameter, mm.</param>
    /// <param name="stickOutMm">Stick-out, mm.</param>
    /// <param name="forceN">Side force, N.</param>
    /// <returns>Deflection, mm; stress, MPa; both with the fluted diameter.</returns>
    public static (double DeflectionMm, double StressMPa) Bend(CutterMaterial material, double diameterMm, double stickOutMm, double forceN)
    {
        var (stress, deflection) = Beams.Round(FlutedShare * diameterMm, stickOutMm, forceN, ModulusMPa(material));
        return (deflection, stress);
    }

    /// <summary>Side force at which it is likely to break.</summary>
    /// <param name="material">What it is made of.</param>
    /// <param name="diameterMm">Diameter, mm.</param>
    /// <param name="stickOutMm">Stick-out, mm.</param>
    /// <returns>N.</returns>
    public static double BreakingForceN(CutterMaterial material, double diameterMm, double stickOutMm) =>
        BreakingMPa(material) * Math.PI * Math.Pow(FlutedShare * diameterMm, 3) / (32 * stickOutMm);
}
