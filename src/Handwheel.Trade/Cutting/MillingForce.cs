namespace Handwheel.Trade.Cutting;

/// <summary>Chip, force and power of milling with an end mill.</summary>
/// <param name="EngagementDeg">Angle through which a tooth cuts, degrees.</param>
/// <param name="MeanChipMm">Mean chip thickness over that angle, mm.</param>
/// <param name="GreatestChipMm">Greatest chip thickness, mm.</param>
/// <param name="SpecificForce">kc at the mean chip, N/mm^2.</param>
/// <param name="ToothForceN">Tangential force of one tooth at its greatest chip, N.</param>
/// <param name="MeanForceN">Tangential force averaged over the turn, N.</param>
/// <param name="SideForceN">Force that bends the cutter, N: the tooth force and a radial share of 0.4 of it, taken together.</param>
/// <param name="RemovalCm3PerMin">Metal removed, cm^3/min.</param>
/// <param name="PowerKw">Power at the cutter, kW.</param>
public readonly record struct MillingForce(
    double EngagementDeg,
    double MeanChipMm,
    double GreatestChipMm,
    double SpecificForce,
    double ToothForceN,
    double MeanForceN,
    double SideForceN,
    double RemovalCm3PerMin,
    double PowerKw);
