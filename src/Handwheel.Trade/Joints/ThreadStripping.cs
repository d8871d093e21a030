namespace Handwheel.Trade.Joints;

/// <summary>Shear areas of threads, and how deep a screw must go.</summary>
/// <remarks>
/// FED-STD-H28/2 and ASME B1.1 appendix: AS(screw) = pi n Le Kn [1/(2n) + 0.57735 (Es - Kn)], AS(nut) = pi n Le Ds [1/(2n) + 0.57735 (Ds - En)].
/// Worst limits on both sides; the load is taken as even along the thread, so the answer may be 20 % optimistic at long engagements. Consistent units.
/// </remarks>
public static class ThreadStripping
{
    private static readonly double Tan30 = Math.Tan(Math.PI / 6);

    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("FED-STD-H28/2 and ASME B1.1 appendix, thread shear areas", Evidence.StandardFormula);

    /// <summary>Shear area of the screw's thread.</summary>
    /// <param name="pitch">Pitch.</param>
    /// <param name="engagement">Length of engagement.</param>
    /// <param name="nutMinorMax">Greatest minor diameter of the nut.</param>
    /// <param name="screwPitchMin">Least pitch diameter of the screw.</param>
    /// <returns>Area.</returns>
    public static double ScrewArea(double pitch, double engagement, double nutMinorMax, double screwPitchMin) =>
        Math.PI / pitch * engagement * nutMinorMax * ((pitch / 2) + (Tan30 * (screwPitchMin - nutMinorMax)));

    /// <summary>Shear area of the nut's thread.</summary>
    /// <param name="pitch">Pitch.</param>
    /// <param name="engagement">Length of engagement.</param>
    /// <param name="screwMajorMin">Least major diameter of the screw.</param>
    /// <param name="nutPitchMax">Greatest pitch diameter of the nut.</param>
    /// <returns>Area.</returns>
    public static double NutArea(double pitch, double engagement, double screwMajorMin, double nutPitchMax) =>
        Math.PI / pitch * engagement * screwMajorMin * ((pitch / 2) + (Tan30 * (screwMajorMin - nutPitchMax)));

    /// <summary>Engagement at which a screw and nut of one strength break the screw before the thread strips: twice the stress area in shear.</summary>
    /// <param name="stressArea">Tensile stress area.</param>
    /// <param name="pitch">Pitch.</param>
    /// <param name="nutMinorMax">Greatest minor diameter of the nut.</param>
    /// <param name="screwPitchMin">Least pitch diameter of the screw.</param>
    /// <returns>Length.</returns>
    public static double EngagementEqual(double stressArea, double pitch, double nutMinorMax, double screwPitchMin) =>
        2 * stressArea / ScrewArea(pitch, 1, nutMinorMax, screwPitchMin);

    /// <summary>Engagement needed in a weaker nut: the screw's engagement times J = (AS screw x tensile screw) / (AS nut x tensile nut), where J is over 1.</summary>
    /// <param name="equal">Engagement for equal strengths.</param>
    /// <param name="screwArea">Shear area of the screw at that engagement.</param>
    /// <param name="nutArea">Shear area of the nut at that engagement.</param>
    /// <param name="screwTensile">Tensile strength of the screw.</param>
    /// <param name="nutTensile">Tensile strength of the nut.</param>
    /// <returns>Length.</returns>
    public static double EngagementInNut(double equal, double screwArea, double nutArea, double screwTensile, double nutTensile) =>
        equal * Math.Max(1, screwArea * screwTensile / (nutArea * nutTensile));
}
