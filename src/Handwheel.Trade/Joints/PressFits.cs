namespace Handwheel.Trade.Joints;

/// <summary>Press and shrink fits as thick cylinders.</summary>
/// <remarks>
/// Lame (Shigley 9th ed. Eqs. 3-56 and 3-57), elastic, ends not counted, interference on the diameter; forces in N, mm, MPa. Valid while the hub's
/// von Mises stress stays below yield. Rough surfaces lose some 0.8 of their peaks: take 5 to 10 um off for turned parts. Friction 0.1 to 0.2
/// decides push and torque: within a factor of two.
/// </remarks>
public static class PressFits
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("Lame thick cylinders, Shigley 9th ed. Eqs. 3-56, 3-57", Evidence.StandardFormula);

    /// <summary>Solves a fit.</summary>
    /// <param name="diameterMm">Diameter of the joint, mm.</param>
    /// <param name="interferenceMm">Interference on the diameter, mm.</param>
    /// <param name="hubOuterMm">Outside diameter of the hub, mm, over the joint's.</param>
    /// <param name="shaftBoreMm">Bore of the shaft, mm; 0 where solid.</param>
    /// <param name="hubModulusMPa">Modulus of the hub, MPa.</param>
    /// <param name="shaftModulusMPa">Modulus of the shaft, MPa.</param>
    /// <param name="hubPoisson">Poisson's ratio of the hub.</param>
    /// <param name="shaftPoisson">Poisson's ratio of the shaft.</param>
    /// <param name="lengthMm">Length of the joint, mm.</param>
    /// <param name="friction">Coefficient of friction.</param>
    /// <returns>Pressure, stresses, push and torque.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A diameter stands where it cannot.</exception>
    public static PressFit Solve(
        double diameterMm,
        double interferenceMm,
        double hubOuterMm,
        double shaftBoreMm,
        double hubModulusMPa,
        double shaftModulusMPa,
        double hubPoisson,
        double shaftPoisson,
        double lengthMm,
        double friction)
    {
        if (!(diameterMm > 0) || !(hubOuterMm > diameterMm) || !(shaftBoreMm >= 0) || !(shaftBoreMm < diameterMm))
        {
            throw new ArgumentOutOfRangeException(nameof(hubOuterMm), hubOuterMm, "the hub must be larger than the joint and the shaft's bore smaller");
        }

        var d2 = diameterMm * diameterMm;
        var o2 = hubOuterMm * hubOuterMm;
        var i2 = shaftBoreMm * shaftBoreMm;
        var hub = (((o2 + d2) / (o2 - d2)) + hubPoisson) / hubModulusMPa;
        var shaft = (((d2 + i2) / (d2 - i2)) - shaftPoisson) / shaftModulusMPa;
        var pressure = interferenceMm / (diameterMm * (hub + shaft));
        var push = friction * pressure * Math.PI * diameterMm * lengthMm;
        return new PressFit(
            pressure,
            pressure * (o2 + d2) / (o2 - d2),
            shaftBoreMm > 0 ? -2 * pressure * d2 / (d2 - i2) : -pressure,
            push,
            push * diameterMm / 2);
    }

    /// <summary>Warmth that opens a hub to drop on.</summary>
    /// <param name="diameterMm">Diameter, mm.</param>
    /// <param name="openingMm">Interference plus what is wanted to spare, mm.</param>
    /// <param name="expansionPerK">Expansion of the hub, 1/K.</param>
    /// <returns>Rise of temperature, K.</returns>
    public static double RiseK(double diameterMm, double openingMm, double expansionPerK) => openingMm / (diameterMm * expansionPerK);
}
