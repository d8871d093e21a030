namespace Handwheel.Trade.Cutting;

/// <summary>Drilling thrust, torque and power after Machinery's Handbook.</summary>
/// <remarks>Machinery's Handbook 31st ed. p. 1152: T = 2 Kd Ff FT B W + Kd D^2 J W; M = Kd Ff FM A W; Ff = f^0.8, FT = D^0.8, FM = D^1.8. Inches, lbf.
/// Factors A, B, J go with the chisel edge (1.085, 1.355, 0.030 at a web of 0.18 D). Within 20 to 30 %.</remarks>
public static class HandbookDrilling
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("Machinery's Handbook 31st ed. pp. 1152-1153", Evidence.StandardFormula);

    /// <summary>Feed factor.</summary>
    /// <param name="feedIn">Feed, in per turn.</param>
    /// <returns>f^0.8.</returns>
    public static double FeedFactor(double feedIn) => Math.Pow(feedIn, 0.8);

    /// <summary>Thrust factor of the diameter.</summary>
    /// <param name="diameterIn">Drill, in.</param>
    /// <returns>D^0.8.</returns>
    public static double ThrustFactor(double diameterIn) => Math.Pow(diameterIn, 0.8);

    /// <summary>Torque factor of the diameter.</summary>
    /// <param name="diameterIn">Drill, in.</param>
    /// <returns>D^1.8.</returns>
    public static double TorqueFactor(double diameterIn) => Math.Pow(diameterIn, 1.8);

    /// <summary>Thrust.</summary>
    /// <param name="workMaterial">Kd of the metal.</param>
    /// <param name="diameterIn">Drill, in.</param>
    /// <param name="feedIn">Feed, in per turn.</param>
    /// <param name="wear">Wear factor W, 1 when sharp.</param>
    /// <param name="b">Chisel factor B.</param>
    /// <param name="j">Chisel factor J.</param>
    /// <returns>lbf.</returns>
    public static double ThrustLbf(double workMaterial, double diameterIn, double feedIn, double wear, double b = 1.355, double j = 0.030) =>
        (2 * workMaterial * FeedFactor(feedIn) * ThrustFactor(diameterIn) * b * wear) + (workMaterial * diameterIn * diameterIn * j * wear);

    /// <summary>Torque.</summary>
    /// <param name="workMaterial">Kd of the metal.</param>
    /// <param name="diameterIn">Drill, in.</param>
    /// <param name="feedIn">Feed, in per turn.</param>
    /// <param name="wear">Wear factor W.</param>
    /// <param name="a">Chisel factor A.</param>
    /// <returns>lbf in.</returns>
    public static double TorqueLbfIn(double workMaterial, double diameterIn, double feedIn, double wear, double a = 1.085) =>
        workMaterial * FeedFactor(feedIn) * TorqueFactor(diameterIn) * a * wear;

    /// <summary>Power at the drill.</summary>
    /// <param name="torqueLbfIn">Torque, lbf in.</param>
    /// <param name="rpm">Turns a minute.</param>
    /// <returns>hp.</returns>
    public static double Horsepower(double torqueLbfIn, double rpm) => torqueLbfIn * rpm / 63_025;
}
