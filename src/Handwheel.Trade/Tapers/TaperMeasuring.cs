namespace Handwheel.Trade.Tapers;

/// <summary>Measuring tapers over rollers and balls.</summary>
/// <remarks>Plane geometry (any metrology text); exact for true rollers. Lengths in one unit, angles in degrees.</remarks>
public static class TaperMeasuring
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("plane geometry of a roller against a slope (metrology text)", Evidence.StandardFormula);

    /// <summary>Measurement over two rollers against a plug standing on its small end.</summary>
    /// <param name="small">Diameter at the plate.</param>
    /// <param name="halfAngleDeg">Half of the included angle.</param>
    /// <param name="roller">Roller diameter.</param>
    /// <param name="height">Height of the blocks under the rollers; 0 on the plate.</param>
    /// <returns>Over rollers: d + 2 (h + r) tan a + 2 r / cos a + 2 r.</returns>
    public static double OverRollers(double small, double halfAngleDeg, double roller, double height)
    {
        var a = halfAngleDeg * Math.PI / 180;
        var r = roller / 2;
        return small + (2 * (height + r) * Math.Tan(a)) + (2 * r / Math.Cos(a)) + (2 * r);
    }

    /// <summary>Included angle from two measurements over rollers.</summary>
    /// <param name="low">Over rollers on the plate.</param>
    /// <param name="high">Over rollers on the blocks.</param>
    /// <param name="height">Height of the blocks.</param>
    /// <returns>Included angle: 2 atan((M2 - M1) / 2H).</returns>
    public static double IncludedAngleDeg(double low, double high, double height) => 2 * Math.Atan((high - low) / (2 * height)) * 180 / Math.PI;

    /// <summary>Included angle of a taper hole from two balls.</summary>
    /// <param name="large">Diameter of the large ball.</param>
    /// <param name="small">Diameter of the small ball.</param>
    /// <param name="largeProud">How far the large ball stands above the face (negative below).</param>
    /// <param name="smallDepth">From the face down to the top of the small ball.</param>
    /// <returns>Included angle: 2 asin((R - r) / centre distance).</returns>
    public static double FromBallsDeg(double large, double small, double largeProud, double smallDepth)
    {
        var distance = smallDepth + (small / 2) - ((large / 2) - largeProud);
        return 2 * Math.Asin((large - small) / 2 / distance) * 180 / Math.PI;
    }

    /// <summary>How far a part goes in for a change of diameter.</summary>
    /// <param name="diameterChange">Stock to come off, on the diameter.</param>
    /// <param name="halfAngleDeg">Half angle.</param>
    /// <returns>Axial distance.</returns>
    public static double AxialFor(double diameterChange, double halfAngleDeg) => diameterChange / 2 / Math.Tan(halfAngleDeg * Math.PI / 180);
}
