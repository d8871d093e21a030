namespace Handwheel.Trade.Cutting;

/// <summary>Force and power of one cut.</summary>
/// <param name="ChipMm">Undeformed chip thickness, mm.</param>
/// <param name="WidthMm">Width of chip, mm.</param>
/// <param name="SpecificForce">kc, N/mm^2.</param>
/// <param name="ForceN">Cutting force, N.</param>
/// <param name="PowerKw">Power at the cutter, kW.</param>
public readonly record struct CuttingForce(double ChipMm, double WidthMm, double SpecificForce, double ForceN, double PowerKw);
