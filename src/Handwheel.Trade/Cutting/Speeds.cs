namespace Handwheel.Trade.Cutting;

/// <summary>Spindle speed, feed, chip thinning.</summary>
public static class Speeds
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("n = 1000 v / (pi D); N = 12 V / (pi D)", Evidence.StandardFormula);

    /// <summary>Spindle speed for a cutting speed.</summary>
    /// <param name="speedMPerMin">Cutting speed, m/min.</param>
    /// <param name="diameterMm">Diameter that turns: of the cutter, or of the work in a lathe, mm.</param>
    /// <returns>Turns a minute.</returns>
    public static double Rpm(double speedMPerMin, double diameterMm) => 1000 * speedMPerMin / (Math.PI * diameterMm);

    /// <summary>Spindle speed for a cutting speed in feet.</summary>
    /// <param name="speedFtPerMin">Cutting speed, ft/min.</param>
    /// <param name="diameterIn">Diameter that turns, in.</param>
    /// <returns>Turns a minute.</returns>
    public static double RpmFromFeet(double speedFtPerMin, double diameterIn) => 12 * speedFtPerMin / (Math.PI * diameterIn);

    /// <summary>Cutting speed of a spindle speed.</summary>
    /// <param name="rpm">Turns a minute.</param>
    /// <param name="diameterMm">Diameter, mm.</param>
    /// <returns>m/min.</returns>
    public static double CuttingSpeed(double rpm, double diameterMm) => Math.PI * diameterMm * rpm / 1000;

    /// <summary>Greatest chip thickness when less than half of the cutter is in the cut.</summary>
    /// <param name="perToothMm">Feed a tooth, mm.</param>
    /// <param name="widthMm">Radial width, mm.</param>
    /// <param name="cutterMm">Cutter, mm.</param>
    /// <returns>Chip, mm: fz 2 sqrt(r - r^2) with r = width/diameter, the feed itself from half on.</returns>
    public static double ThinnedChip(double perToothMm, double widthMm, double cutterMm)
    {
        var r = widthMm / cutterMm;
        return r >= 0.5 ? perToothMm : perToothMm * 2 * Math.Sqrt(r - (r * r));
    }

    /// <summary>Feed a tooth that gives a chip in a narrow cut.</summary>
    /// <param name="chipMm">Chip wanted, mm.</param>
    /// <param name="widthMm">Radial width, mm.</param>
    /// <param name="cutterMm">Cutter, mm.</param>
    /// <returns>Feed a tooth, mm.</returns>
    public static double FeedForChip(double chipMm, double widthMm, double cutterMm) => chipMm / ThinnedChip(1, widthMm, cutterMm);

    /// <summary>Feed a tooth to start with for an end mill cranked by hand: 0.6 % of the diameter, 0.005 to 0.06 mm (common practice).</summary>
    /// <param name="cutterMm">Cutter, mm.</param>
    /// <returns>mm a tooth.</returns>
    public static double StartingFeedPerTooth(double cutterMm) => Math.Clamp(0.006 * cutterMm, 0.005, 0.06);

    /// <summary>Feed a turn to start with for a twist drill: 1.5 % of the diameter, 0.01 to 0.3 mm (common practice; handbooks give 1 to 2 %).</summary>
    /// <param name="drillMm">Drill, mm.</param>
    /// <returns>mm a turn.</returns>
    public static double StartingFeedPerTurn(double drillMm) => Math.Clamp(0.015 * drillMm, 0.01, 0.3);
}
