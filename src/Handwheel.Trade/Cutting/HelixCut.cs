namespace Handwheel.Trade.Cutting;

/// <summary>How much of a helical tooth is in the cut at once.</summary>
/// <remarks>
/// A tooth of helix b that cuts over an angle p passes it at all heights one after another: at any moment no more of its length is in the cut than r p / tan b
/// (geometry of the developed helix). So a deep and narrow cut by an end mill bends it far less than a straight tooth would. Force then is nearly steady,
/// and the mean over the turn is its floor.
/// </remarks>
public static class HelixCut
{
    /// <summary>The basis of the rule.</summary>
    public static Basis Basis { get; } = new("geometry of the developed helix", Evidence.StandardFormula);

    /// <summary>What a nearly steady force still swings above its mean, its radial share of 0.4 taken with it: 1.3 (common practice, no source).</summary>
    public const double Ripple = 1.3;

    /// <summary>Share of the depth that one tooth has in the cut at once.</summary>
    /// <param name="cutterMm">Cutter, mm.</param>
    /// <param name="depthMm">Axial depth, mm, over 0.</param>
    /// <param name="engagementDeg">Angle through which a tooth cuts, degrees.</param>
    /// <param name="helixDeg">Helix, degrees; 0 for straight teeth.</param>
    /// <returns>0 to 1.</returns>
    public static double Share(double cutterMm, double depthMm, double engagementDeg, double helixDeg) =>
        helixDeg <= 0 ? 1 : Math.Min(1, cutterMm / 2 * (engagementDeg * Math.PI / 180) / (depthMm * Math.Tan(helixDeg * Math.PI / 180)));
}
