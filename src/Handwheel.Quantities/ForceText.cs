namespace Handwheel.Quantities;

/// <summary>Forces and torques in words: in newtons, and in an inch job in pounds with the newtons beside.</summary>
public static class ForceText
{
    // One pound-force is 4.4482216152605 N (NIST SP 811, from the pound and standard gravity); a pound-force inch 25.4 mm of it.
    private const double Pound = 4.4482216152605;
    private const double PoundInch = Pound * 0.0254;

    /// <summary>Newtons in pounds.</summary>
    /// <param name="newtons">The force, N.</param>
    /// <returns>The force, lbf.</returns>
    public static double Pounds(double newtons) => newtons / Pound;

    /// <summary>A force.</summary>
    /// <param name="unit">The job&#39;s unit of length.</param>
    /// <param name="newtons">The force, N.</param>
    /// <returns>Such as <c>7560 N</c>, or <c>1700 lbf (7560 N)</c>.</returns>
    public static string Force(this LengthUnit unit, double newtons) => Both(unit, newtons, "N", Pound, "lbf");

    /// <summary>A torque.</summary>
    /// <param name="unit">The job&#39;s unit of length.</param>
    /// <param name="newtonMetres">The torque, N m.</param>
    /// <returns>Such as <c>1.36 N m</c>, or <c>12 lbf in (1.36 N m)</c>.</returns>
    public static string Torque(this LengthUnit unit, double newtonMetres) => Both(unit, newtonMetres, "N m", PoundInch, "lbf in");

    private static string Both(LengthUnit unit, double value, string metric, double per, string inch)
    {
        var told = $"{ThreeFigures.Of(value)} {metric}";
        return unit == LengthUnit.Inch ? $"{ThreeFigures.Of(value / per)} {inch} ({told})" : told;
    }
}
