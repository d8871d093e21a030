namespace Handwheel.Trade.Joints;

/// <summary>Preload, torque and joints of screws.</summary>
/// <remarks>
/// Consistent units throughout (N, mm, MPa, N mm; or lbf, in, psi, lbf in). Torque to preload scatters by 25 to 35 % with a wrench (VDI 2230; Shigley 8-8):
/// the friction under the head and in the thread takes nine tenths of it.
/// </remarks>
public static class Bolts
{
    /// <summary>Basis of the short torque formula.</summary>
    public static Basis TorqueBasis { get; } = new("T = K F d, Shigley 9th ed. Eq. 8-27 and Table 8-15", Evidence.StandardFormula);

    /// <summary>Basis of the long torque formula.</summary>
    public static Basis VdiBasis { get; } = new("VDI 2230: M = F (0.16 P + 0.58 d2 mu + Dkm/2 mu)", Evidence.StandardFormula);

    /// <summary>Torque factors, Shigley Table 8-15 and shop practice.</summary>
    public static IReadOnlyList<(string Condition, double K)> TorqueFactors { get; } =
        [("black, not plated", 0.30), ("zinc plated", 0.20), ("lubricated", 0.18), ("cadmium plated", 0.16), ("anti-seize", 0.12)];

    /// <summary>Torque for a preload.</summary>
    /// <param name="k">Torque factor K.</param>
    /// <param name="preload">Preload.</param>
    /// <param name="diameter">Nominal diameter.</param>
    /// <returns>K F d.</returns>
    public static double Torque(double k, double preload, double diameter) => k * preload * diameter;

    /// <summary>Preload from a torque.</summary>
    /// <param name="k">Torque factor K.</param>
    /// <param name="torque">Torque.</param>
    /// <param name="diameter">Nominal diameter.</param>
    /// <returns>T / (K d).</returns>
    public static double Preload(double k, double torque, double diameter) => torque / (k * diameter);

    /// <summary>Torque by the friction of thread and head.</summary>
    /// <param name="preload">Preload.</param>
    /// <param name="pitch">Pitch.</param>
    /// <param name="pitchDiameter">Pitch diameter.</param>
    /// <param name="headMeanDiameter">Mean diameter of the bearing face under head or nut.</param>
    /// <param name="threadFriction">Coefficient in the thread.</param>
    /// <param name="headFriction">Coefficient under the head.</param>
    /// <returns>F (0.16 P + 0.58 d2 muG + Dkm/2 muK).</returns>
    public static double TorqueByFriction(
        double preload, double pitch, double pitchDiameter, double headMeanDiameter, double threadFriction, double headFriction) =>
        preload * ((0.16 * pitch) + (0.58 * pitchDiameter * threadFriction) + (headMeanDiameter / 2 * headFriction));

    /// <summary>Torque by the power screw formula with collar (Shigley Eq. 8-26), flank angle 30 degrees.</summary>
    /// <param name="preload">Preload.</param>
    /// <param name="meanDiameter">Mean thread diameter (d + dr)/2.</param>
    /// <param name="pitch">Pitch (lead).</param>
    /// <param name="collarDiameter">Mean collar diameter, 1.25 d for a nut.</param>
    /// <param name="threadFriction">Coefficient in the thread.</param>
    /// <param name="collarFriction">Coefficient at the collar.</param>
    /// <returns>Torque.</returns>
    public static double TorqueByHelix(
        double preload, double meanDiameter, double pitch, double collarDiameter, double threadFriction, double collarFriction)
    {
        var tanLead = pitch / (Math.PI * meanDiameter);
        var secant = 1 / Math.Cos(Math.PI / 6);
        var thread = meanDiameter / 2 * (tanLead + (threadFriction * secant)) / (1 - (threadFriction * tanLead * secant));
        return preload * (thread + (collarDiameter / 2 * collarFriction));
    }

    /// <summary>Share of an outside load that the bolt feels.</summary>
    /// <param name="boltStiffness">Stiffness of the bolt.</param>
    /// <param name="memberStiffness">Stiffness of what it clamps, same unit.</param>
    /// <returns>C = kb / (kb + km).</returns>
    public static double StiffnessShare(double boltStiffness, double memberStiffness) => boltStiffness / (boltStiffness + memberStiffness);

    /// <summary>Stress in a preloaded bolt under an outside load.</summary>
    /// <param name="preload">Preload.</param>
    /// <param name="load">Outside load on this bolt.</param>
    /// <param name="share">Stiffness share C.</param>
    /// <param name="stressArea">Tensile stress area.</param>
    /// <returns>(C P + Fi) / At.</returns>
    public static double ServiceStress(double preload, double load, double share, double stressArea) => ((share * load) + preload) / stressArea;
}
