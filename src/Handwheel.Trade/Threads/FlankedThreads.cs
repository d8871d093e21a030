namespace Handwheel.Trade.Threads;

/// <summary>Basic sizes of Acme and metric trapezoidal threads; no limits.</summary>
/// <remarks>
/// ASME B1.5: pitch diameter D - P/2, minor diameter of the nut D - P, depth P/2; the screw's root lies 0.020 in deeper in diameter to 10 threads an inch, 0.010 in
/// finer. ISO 2904: the same with clearance ac of 0.15 mm (P = 1.5), 0.25 (to 5), 0.5 (to 12), 1 mm over; d3 = d - P - 2 ac, D4 = d + 2 ac. Exact. The formulas
/// were read (published profile tables); Acme's 0.020 and 0.010 in are remembered.
/// </remarks>
public static class FlankedThreads
{
    /// <summary>The basis of Acme sizes.</summary>
    public static Basis AcmeBasis { get; } = new("ASME B1.5 general purpose Acme: D - P/2, D - P", Evidence.StandardFormula);

    /// <summary>The basis of trapezoidal sizes.</summary>
    public static Basis TrapezoidalBasis { get; } = new("ISO 2904: d - P/2, d - P, d - P - 2 ac", Evidence.StandardFormula);

    /// <summary>Twice the clearance at the root, in the thread's own unit.</summary>
    /// <param name="metric">Trapezoidal in mm, else Acme in inches.</param>
    /// <param name="pitch">Pitch, over 0.</param>
    /// <returns>What the screw's minor diameter lies under the nut's.</returns>
    public static double RootClearance(bool metric, double pitch) =>
        metric ? 2 * (pitch switch { < 2 => 0.15, <= 5 => 0.25, <= 12 => 0.5, _ => 1 }) : pitch >= 0.1 - 1e-9 ? 0.02 : 0.01;
}
