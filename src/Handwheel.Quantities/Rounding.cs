namespace Handwheel.Quantities;

/// <summary>Rounding of readings to the step of a readout or dial.</summary>
public static class Rounding
{
    /// <summary>A value this near to a step (in steps) is that step, so that 12.49 + 1e-12 is not pushed to the next.</summary>
    public const double Snap = 1e-6;

    /// <summary>The value rounded to a multiple of the step.</summary>
    /// <param name="value">The value, any unit.</param>
    /// <param name="step">The step, same unit, above 0.</param>
    /// <param name="toward">Which way.</param>
    /// <returns>A multiple of the step, worked out as count times step or count divided by steps a unit so that decimals stay clean.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The step is not above 0 or the value is not finite.</exception>
    public static double ToStep(double value, double step, Toward toward)
    {
        if (!(step > 0) || !double.IsFinite(step))
        {
            throw new ArgumentOutOfRangeException(nameof(step), step, "a step is above 0");
        }

        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "a reading is finite");
        }

        var steps = value / step;
        var nearest = Math.Round(steps, MidpointRounding.AwayFromZero);
        var count = toward switch
        {
            _ when Math.Abs(steps - nearest) <= Snap => nearest,
            Toward.Plus => Math.Ceiling(steps),
            Toward.Minus => Math.Floor(steps),
            _ => nearest,
        };
        return FromSteps(count, step);
    }

    private static double FromSteps(double count, double step)
    {
        var perUnit = Math.Round(1 / step);
        var clean = Math.Abs((perUnit * step) - 1) < 1e-12 ? count / perUnit : count * step;
        return clean == 0 ? 0 : clean;
    }
}
