namespace Handwheel.Quantities;

/// <summary>
/// A size's limits: nominal, least and greatest value allowed, millimetres (or radians for an angle). Limits are closed, to 1e-9.
/// The default value allows exactly 0.
/// </summary>
/// <param name="Nominal">The value the limits are written around.</param>
/// <param name="Lower">The least value allowed.</param>
/// <param name="Upper">The greatest value allowed.</param>
public readonly record struct Limits(double Nominal, double Lower, double Upper)
{
    /// <summary>The slack with which limits are closed.</summary>
    public const double Closed = 1e-9;

    /// <summary>Limits from deviations about a nominal.</summary>
    /// <param name="nominal">The nominal value.</param>
    /// <param name="lowerDeviation">Added to the nominal for the least value (mostly negative).</param>
    /// <param name="upperDeviation">Added to the nominal for the greatest value.</param>
    /// <returns>The limits.</returns>
    public static Limits FromDeviations(double nominal, double lowerDeviation, double upperDeviation) =>
        new(nominal, nominal + lowerDeviation, nominal + upperDeviation);

    /// <summary>The middle of the limits: what is aimed at.</summary>
    public double Middle => 0.5 * (Lower + Upper);

    /// <summary>Greatest less least.</summary>
    public double Width => Upper - Lower;

    /// <summary>Least less nominal.</summary>
    public double LowerDeviation => Lower - Nominal;

    /// <summary>Greatest less nominal.</summary>
    public double UpperDeviation => Upper - Nominal;

    /// <summary>Whether a value lies within the limits, closed to 1e-9. NaN never does.</summary>
    /// <param name="value">The value.</param>
    /// <returns>True inside.</returns>
    public bool Contains(double value) => value >= Lower - Closed && value <= Upper + Closed;
}
