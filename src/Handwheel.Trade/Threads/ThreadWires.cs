namespace Handwheel.Trade.Threads;

/// <summary>Measuring a screw over three wires.</summary>
/// <remarks>
/// ASME B1.2 / NBS Handbook H28. M = E + W (1 + 1/sin a) - (P/2) cot a, a the half angle, E the pitch diameter. The lead correction W tan^2(l) cos(a) cot(a)/2
/// (H28) is added on request; under 0.0001 in for single-start Unified threads over wires near the best size. All lengths in one unit.
/// </remarks>
public static class ThreadWires
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("ASME B1.2 / NBS Handbook H28, three-wire formula", Evidence.StandardFormula);

    /// <summary>Wire that touches at the pitch line: P / (2 cos a).</summary>
    /// <param name="pitch">Pitch.</param>
    /// <param name="includedDeg">Included angle of the thread, degrees (60; 29 Acme; 30 trapezoidal; 55 Whitworth).</param>
    /// <returns>Wire diameter.</returns>
    public static double Best(double pitch, double includedDeg = 60) => pitch / (2 * Math.Cos(Half(includedDeg)));

    /// <summary>Greatest wire that still touches the flanks (60 degrees: 1.010363 P).</summary>
    /// <param name="pitch">Pitch.</param>
    /// <returns>Wire diameter.</returns>
    public static double Greatest(double pitch) => 1.010363 * pitch;

    /// <summary>Least wire that stands out of the thread (60 degrees: 0.505182 P).</summary>
    /// <param name="pitch">Pitch.</param>
    /// <returns>Wire diameter.</returns>
    public static double Least(double pitch) => 0.505182 * pitch;

    /// <summary>Measurement over wires.</summary>
    /// <param name="pitchDiameter">Pitch diameter.</param>
    /// <param name="pitch">Pitch.</param>
    /// <param name="wire">Wire diameter.</param>
    /// <param name="includedDeg">Included angle, degrees.</param>
    /// <returns>Over wires, no lead correction.</returns>
    public static double Over(double pitchDiameter, double pitch, double wire, double includedDeg = 60)
    {
        var a = Half(includedDeg);
        return pitchDiameter + (wire * (1 + (1 / Math.Sin(a)))) - (pitch / 2 / Math.Tan(a));
    }

    /// <summary>What the helix adds to the measurement.</summary>
    /// <param name="pitchDiameter">Pitch diameter.</param>
    /// <param name="lead">Lead: pitch times starts.</param>
    /// <param name="wire">Wire diameter.</param>
    /// <param name="includedDeg">Included angle, degrees.</param>
    /// <returns>Addition.</returns>
    public static double LeadCorrection(double pitchDiameter, double lead, double wire, double includedDeg = 60)
    {
        var a = Half(includedDeg);
        var slope = lead / (Math.PI * pitchDiameter);
        return wire * slope * slope * Math.Cos(a) / Math.Tan(a) / 2;
    }

    /// <summary>Measurement from the major diameter, 60 degree thread: D - 1.515544 P + 3 W.</summary>
    /// <param name="major">Major diameter.</param>
    /// <param name="pitch">Pitch.</param>
    /// <param name="wire">Wire diameter.</param>
    /// <returns>Over wires for a thread of basic form.</returns>
    public static double OverFromMajor(double major, double pitch, double wire) => major - (1.515544 * pitch) + (3 * wire);

    /// <summary>Pitch diameter from a measurement over wires.</summary>
    /// <param name="over">Over wires.</param>
    /// <param name="pitch">Pitch.</param>
    /// <param name="wire">Wire diameter.</param>
    /// <param name="includedDeg">Included angle, degrees.</param>
    /// <returns>Pitch diameter, no lead correction.</returns>
    public static double PitchDiameter(double over, double pitch, double wire, double includedDeg = 60)
    {
        var a = Half(includedDeg);
        return over - (wire * (1 + (1 / Math.Sin(a)))) + (pitch / 2 / Math.Tan(a));
    }

    private static double Half(double includedDeg) => includedDeg * Math.PI / 360;
}
