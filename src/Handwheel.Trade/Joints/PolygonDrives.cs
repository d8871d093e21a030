namespace Handwheel.Trade.Joints;

/// <summary>Squares and hexagons that drive: pressure on the flats, twist of the bar.</summary>
/// <remarks>
/// Pressure rises from nothing at the middle of each side to its greatest at the corner, on the half of the side that bears: its force p s L / 4 acts at
/// s / 3 from the middle, so T = n p s^2 L / 12 for n sides of length s. Twist: Saint-Venant, T / (0.208 s^3) for a square (Shigley 9th ed. section 3-12), T / (0.188 s^3) for
/// a hexagon across flats s (Dubbel, memory). N, mm, MPa. A loose fit bears nearer the corners: a third to a half more pressure.
/// </remarks>
public static class PolygonDrives
{
    /// <summary>The basis of the pressure.</summary>
    public static Basis PressureBasis { get; } = new("statics: pressure rising from the middle of each side to its corner (machine-design text)", Evidence.CommonPractice);

    /// <summary>The basis of the twist.</summary>
    public static Basis TwistBasis { get; } = new("torsion of a square or hexagon bar: Shigley 9th ed. section 3-12; Dubbel (hexagon)", Evidence.Memory);

    /// <summary>Greatest pressure, at the corners.</summary>
    /// <param name="torqueNmm">Torque, N mm.</param>
    /// <param name="sides">4 or 6.</param>
    /// <param name="flatsMm">Across flats, mm.</param>
    /// <param name="lengthMm">Length that bears, mm.</param>
    /// <returns>MPa.</returns>
    public static double PressureMPa(double torqueNmm, int sides, double flatsMm, double lengthMm)
    {
        var side = flatsMm * Math.Tan(Math.PI / sides);
        return 12 * torqueNmm / (sides * side * side * lengthMm);
    }

    /// <summary>Greatest shear stress in the bar, at the middle of its sides.</summary>
    /// <param name="torqueNmm">Torque, N mm.</param>
    /// <param name="sides">4 or 6.</param>
    /// <param name="flatsMm">Across flats, mm.</param>
    /// <returns>MPa.</returns>
    public static double TwistMPa(double torqueNmm, int sides, double flatsMm) => torqueNmm / ((sides == 4 ? 0.208 : 0.188) * Math.Pow(flatsMm, 3));
}
