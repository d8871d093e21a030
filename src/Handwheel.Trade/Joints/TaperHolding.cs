namespace Handwheel.Trade.Joints;

/// <summary>What a taper holds, and what seats and frees it.</summary>
/// <remarks>
/// Statics of a cone with one coefficient of friction (any machine-design text, cone clutches and cotters). N is the total normal force on the cone:
/// pulling in needs N (sin a + mu cos a), driving out N (mu cos a - sin a), torque mu N r at the mean radius. Friction is the weak input: dry clean steel
/// 0.1 to 0.2, oiled 0.05 to 0.12; expect answers within a factor of two. Forces in N, lengths in mm, torque in N mm.
/// </remarks>
public static class TaperHolding
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("statics of the wedge and cone (machine-design text)", Evidence.StandardFormula);

    /// <summary>Friction angle.</summary>
    /// <param name="friction">Coefficient of friction, over 0.</param>
    /// <returns>Degrees: atan(mu).</returns>
    public static double FrictionAngleDeg(double friction) => Math.Atan(friction) * 180 / Math.PI;

    /// <summary>Whether a cone holds itself: half angle less than the friction angle.</summary>
    /// <param name="halfAngleDeg">Half of the included angle, degrees.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <returns>True where it stays in without its bolt.</returns>
    public static bool HoldsItself(double halfAngleDeg, double friction) => halfAngleDeg < FrictionAngleDeg(friction);

    /// <summary>Coefficient of friction at which a cone begins to hold itself.</summary>
    /// <param name="halfAngleDeg">Half angle, degrees.</param>
    /// <returns>tan of the half angle.</returns>
    public static double ChangeOverFriction(double halfAngleDeg) => Math.Tan(halfAngleDeg * Math.PI / 180);

    /// <summary>Force to drive a cone out, as a share of the force that pulled it in.</summary>
    /// <param name="halfAngleDeg">Half angle, degrees.</param>
    /// <param name="friction">Coefficient of friction, the same both ways.</param>
    /// <returns>Ratio; negative where it lets go by itself.</returns>
    public static double OutOverIn(double halfAngleDeg, double friction)
    {
        var a = halfAngleDeg * Math.PI / 180;
        return ((friction * Math.Cos(a)) - Math.Sin(a)) / (Math.Sin(a) + (friction * Math.Cos(a)));
    }

    /// <summary>Normal force on the cone from the force that pulls it in.</summary>
    /// <param name="pullN">Axial pull of the drawbar, or the blow's equivalent, N.</param>
    /// <param name="halfAngleDeg">Half angle, degrees.</param>
    /// <param name="friction">Coefficient of friction while it slides in.</param>
    /// <returns>N.</returns>
    public static double NormalForceN(double pullN, double halfAngleDeg, double friction)
    {
        var a = halfAngleDeg * Math.PI / 180;
        return pullN / (Math.Sin(a) + (friction * Math.Cos(a)));
    }

    /// <summary>Torque the cone passes by friction before it slips.</summary>
    /// <param name="pullN">Pull that seated it, N.</param>
    /// <param name="halfAngleDeg">Half angle, degrees.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="meanDiameterMm">Mean diameter of the cone in contact, mm.</param>
    /// <returns>N mm.</returns>
    public static double TorqueNmm(double pullN, double halfAngleDeg, double friction, double meanDiameterMm) =>
        friction * NormalForceN(pullN, halfAngleDeg, friction) * meanDiameterMm / 2;

    /// <summary>Mean pressure on the cone.</summary>
    /// <param name="pullN">Pull that seated it, N.</param>
    /// <param name="halfAngleDeg">Half angle, degrees.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <param name="meanDiameterMm">Mean diameter, mm.</param>
    /// <param name="lengthMm">Length in contact, mm.</param>
    /// <returns>MPa.</returns>
    public static double PressureMPa(double pullN, double halfAngleDeg, double friction, double meanDiameterMm, double lengthMm) =>
        NormalForceN(pullN, halfAngleDeg, friction) / (Math.PI * meanDiameterMm * lengthMm / Math.Cos(halfAngleDeg * Math.PI / 180));

    /// <summary>What a drive key or tang must carry.</summary>
    /// <param name="torqueNmm">Torque at work, N mm.</param>
    /// <param name="byFrictionNmm">Torque that friction is trusted with, N mm; 0 for a steep taper.</param>
    /// <param name="radiusMm">Radius at which the key bears, mm.</param>
    /// <param name="keys">How many keys share it.</param>
    /// <returns>Force on each key, N.</returns>
    public static double KeyForceN(double torqueNmm, double byFrictionNmm, double radiusMm, int keys) =>
        Math.Max(0, torqueNmm - byFrictionNmm) / radiusMm / keys;

    /// <summary>Force to drive a wedge under a load, friction on both faces.</summary>
    /// <param name="loadN">Load, N.</param>
    /// <param name="angleDeg">Wedge angle, degrees.</param>
    /// <param name="friction">Coefficient of friction on both faces.</param>
    /// <returns>W (tan(a + phi) + tan phi).</returns>
    public static double WedgeDriveN(double loadN, double angleDeg, double friction)
    {
        var phi = Math.Atan(friction);
        return loadN * (Math.Tan((angleDeg * Math.PI / 180) + phi) + friction);
    }

    /// <summary>Force to pull a wedge out from under a load.</summary>
    /// <param name="loadN">Load, N.</param>
    /// <param name="angleDeg">Wedge angle, degrees.</param>
    /// <param name="friction">Coefficient of friction on both faces.</param>
    /// <returns>W (tan(phi - a) + tan phi); negative where it comes out by itself (angle over twice the friction angle).</returns>
    public static double WedgeWithdrawN(double loadN, double angleDeg, double friction)
    {
        var phi = Math.Atan(friction);
        return loadN * (Math.Tan(phi - (angleDeg * Math.PI / 180)) + friction);
    }
}
