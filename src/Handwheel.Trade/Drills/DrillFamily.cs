namespace Handwheel.Trade.Drills;

/// <summary>How a drill is named.</summary>
public enum DrillFamily
{
    /// <summary>Number drills 1 to 97.</summary>
    Number,

    /// <summary>Letter drills A to Z.</summary>
    Letter,

    /// <summary>Fractions of an inch.</summary>
    Fraction,

    /// <summary>Millimetres.</summary>
    Metric,
}
