namespace Handwheel.Trade.Fits;

/// <summary>A hole and a shaft of one nominal size.</summary>
/// <param name="NominalMm">Nominal size, mm.</param>
/// <param name="Hole">Deviations of the hole, mm.</param>
/// <param name="Shaft">Deviations of the shaft, mm.</param>
public readonly record struct Fit(double NominalMm, Deviations Hole, Deviations Shaft)
{
    /// <summary>Least clearance, mm; negative is interference.</summary>
    public double LeastClearanceMm => Hole.LowerMm - Shaft.UpperMm;

    /// <summary>Greatest clearance, mm; negative is interference.</summary>
    public double GreatestClearanceMm => Hole.UpperMm - Shaft.LowerMm;

    /// <summary>Clearance, transition or interference.</summary>
    public FitKind Kind =>
        LeastClearanceMm >= -1e-12 ? FitKind.Clearance
        : GreatestClearanceMm <= 1e-12 ? FitKind.Interference
        : FitKind.Transition;
}
