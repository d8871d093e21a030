namespace Handwheel.Trade.Cutting;

/// <summary>Torque, thrust and power of drilling.</summary>
/// <param name="ChipMm">Chip thickness at each lip, mm.</param>
/// <param name="SpecificForce">kc, N/mm^2.</param>
/// <param name="TorqueNm">Torque, N m.</param>
/// <param name="ThrustN">Thrust, N (estimate: half of the cutting force at each lip, times the sine of the half point angle, and as much again for the chisel edge).</param>
/// <param name="PowerKw">Power at the drill, kW.</param>
public readonly record struct DrillingForce(double ChipMm, double SpecificForce, double TorqueNm, double ThrustN, double PowerKw);
