namespace Handwheel.Trade.Joints;

/// <summary>Strength grade of a screw.</summary>
/// <param name="Name">8.8, 10.9, A2-70, grade 5.</param>
/// <param name="ProofMPa">Proof stress, MPa.</param>
/// <param name="TensileMPa">Least tensile strength, MPa.</param>
/// <param name="FromMm">Thread diameters over this, mm.</param>
/// <param name="ToMm">Up to this, mm.</param>
/// <param name="Basis">Where from.</param>
public sealed record BoltGrade(string Name, double ProofMPa, double TensileMPa, double FromMm, double ToMm, Basis Basis);
