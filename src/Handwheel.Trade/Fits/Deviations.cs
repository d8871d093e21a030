namespace Handwheel.Trade.Fits;

/// <summary>Upper and lower limit deviation from a nominal size, in millimetres.</summary>
/// <param name="UpperMm">Upper limit deviation (ES or es), mm.</param>
/// <param name="LowerMm">Lower limit deviation (EI or ei), mm.</param>
public readonly record struct Deviations(double UpperMm, double LowerMm)
{
    /// <summary>Upper minus lower, mm.</summary>
    public double ToleranceMm => UpperMm - LowerMm;
}
