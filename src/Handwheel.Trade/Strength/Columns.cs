namespace Handwheel.Trade.Strength;

/// <summary>Buckling of punches, broaches and props.</summary>
/// <remarks>
/// Shigley 9th ed. section 4-12 to 4-13: Euler above the transition slenderness sqrt(2 pi^2 C E / Sy), J. B. Johnson's parabola below. End constant C:
/// one end free 1/4, both pinned 1, fixed and pinned 1.2 (2 in theory), both fixed 1.2 (4 in theory). Straight, centred load; take a factor of 3 or more for a
/// hand-guided push. Consistent units.
/// </remarks>
public static class Columns
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("Euler and J. B. Johnson, Shigley 9th ed. Eqs. 4-44 to 4-48", Evidence.StandardFormula);

    /// <summary>Slenderness at which Euler and Johnson meet.</summary>
    /// <param name="yield">Yield strength.</param>
    /// <param name="modulus">Modulus.</param>
    /// <param name="endConstant">End constant C.</param>
    /// <returns>l/k.</returns>
    public static double Transition(double yield, double modulus, double endConstant) => Math.Sqrt(2 * Math.PI * Math.PI * endConstant * modulus / yield);

    /// <summary>Critical load.</summary>
    /// <param name="area">Section area.</param>
    /// <param name="gyration">Least radius of gyration k = sqrt(I/A): d/4 for a round, h/sqrt(12) for a strip of thickness h.</param>
    /// <param name="length">Free length.</param>
    /// <param name="yield">Yield strength.</param>
    /// <param name="modulus">Modulus.</param>
    /// <param name="endConstant">End constant C.</param>
    /// <returns>Load and whether Euler's formula gave it.</returns>
    public static (double Load, bool Euler) CriticalLoad(double area, double gyration, double length, double yield, double modulus, double endConstant)
    {
        var slenderness = length / gyration;
        if (slenderness >= Transition(yield, modulus, endConstant))
        {
            return (area * endConstant * Math.PI * Math.PI * modulus / (slenderness * slenderness), true);
        }

        var bent = yield / (2 * Math.PI) * slenderness;
        return (area * (yield - (bent * bent / (endConstant * modulus))), false);
    }

    /// <summary>Diameter of a round column by Euler.</summary>
    /// <param name="load">Load times factor.</param>
    /// <param name="length">Free length.</param>
    /// <param name="modulus">Modulus.</param>
    /// <param name="endConstant">End constant C.</param>
    /// <returns>(64 P l^2 / (pi^3 C E))^(1/4).</returns>
    public static double EulerDiameter(double load, double length, double modulus, double endConstant) =>
        Math.Pow(64 * load * length * length / (Math.Pow(Math.PI, 3) * endConstant * modulus), 0.25);

    /// <summary>Width of a rectangular column of given thickness by Johnson.</summary>
    /// <param name="load">Load times factor.</param>
    /// <param name="thickness">Thickness, the lesser side.</param>
    /// <param name="length">Free length.</param>
    /// <param name="yield">Yield strength.</param>
    /// <param name="modulus">Modulus.</param>
    /// <param name="endConstant">End constant C.</param>
    /// <returns>Width.</returns>
    public static double JohnsonWidth(double load, double thickness, double length, double yield, double modulus, double endConstant) =>
        load / (thickness * yield * (1 - (3 * length * length * yield / (Math.PI * Math.PI * endConstant * modulus * thickness * thickness))));
}
