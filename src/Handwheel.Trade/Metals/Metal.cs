namespace Handwheel.Trade.Metals;

/// <summary>A metal (or plastic) the shop cuts, with typical figures.</summary>
/// <remarks>
/// Strengths are typical of the condition named, not guaranteed: a certificate or a test comes first. Cutting force after Kienzle:
/// kc = kc1.1 h^-mc, N/mm^2, h in mm; published tables differ by 10 to 30 %.
/// </remarks>
public sealed record Metal
{
    /// <summary>Our name for it.</summary>
    public required string Name { get; init; }

    /// <summary>Other names, lower case.</summary>
    public required IReadOnlyList<string> AlsoCalled { get; init; }

    /// <summary>Machining group: decides cutting speed.</summary>
    public required string Group { get; init; }

    /// <summary>Density, kg/m^3.</summary>
    public required double Density { get; init; }

    /// <summary>Modulus of elasticity, GPa.</summary>
    public required double ModulusGPa { get; init; }

    /// <summary>Tensile strength, MPa.</summary>
    public required double TensileMPa { get; init; }

    /// <summary>Yield or 0.2 % proof strength, MPa; NaN for grey iron, which has none.</summary>
    public required double YieldMPa { get; init; }

    /// <summary>Specific cutting force at a chip of 1 x 1 mm, N/mm^2.</summary>
    public required double Kc11 { get; init; }

    /// <summary>Exponent of the chip thickness.</summary>
    public required double Mc { get; init; }

    /// <summary>Poisson's ratio.</summary>
    public double Poisson { get; init; } = 0.3;

    /// <summary>Expansion, 1e-6 / K.</summary>
    public double Expansion { get; init; } = 11.7;

    /// <summary>What it does to people and cutters.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Shear strength, MPa: taken as this share of tensile.</summary>
    public double ShearShare { get; init; } = 0.6;

    /// <summary>Shear strength, MPa (estimate: tensile times a share of 0.6 for ductile metals, 0.75 for steels to be sheared, 1.1 for grey iron).</summary>
    public double ShearMPa => ShearShare * TensileMPa;

    /// <summary>Specific cutting force at a chip thickness.</summary>
    /// <param name="chipMm">Undeformed chip thickness, mm, over 0; trusted from 0.05 to 2.</param>
    /// <returns>N/mm^2.</returns>
    public double SpecificForce(double chipMm) => Kc11 * Math.Pow(chipMm, -Mc);
}
