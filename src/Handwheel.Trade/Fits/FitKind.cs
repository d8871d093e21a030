namespace Handwheel.Trade.Fits;

/// <summary>How a hole and a shaft meet.</summary>
public enum FitKind
{
    /// <summary>There is always clearance, or at the limit none.</summary>
    Clearance,

    /// <summary>It may be either.</summary>
    Transition,

    /// <summary>There is always interference.</summary>
    Interference,
}
