namespace Handwheel.Trade.Metals;

/// <summary>A range of cutting speeds.</summary>
/// <param name="LowMPerMin">Where to start, m/min.</param>
/// <param name="HighMPerMin">What a rigid set-up with coolant and a sharp cutter stands, m/min.</param>
public readonly record struct SpeedRange(double LowMPerMin, double HighMPerMin)
{
    /// <summary>A range from feet a minute.</summary>
    /// <param name="low">ft/min.</param>
    /// <param name="high">ft/min.</param>
    /// <returns>The range.</returns>
    public static SpeedRange FromFeetPerMinute(double low, double high) => new(low * 0.3048, high * 0.3048);

    /// <summary>Low end, ft/min.</summary>
    public double LowFtPerMin => LowMPerMin / 0.3048;

    /// <summary>High end, ft/min.</summary>
    public double HighFtPerMin => HighMPerMin / 0.3048;
}
