namespace Handwheel.Trade.Strength;

/// <summary>Chains of sizes and how errors add.</summary>
/// <remarks>Worst case adds limits; the root of squares holds for independent sizes near the middle of their limits (Shigley 9th ed. section 1-13; JCGM 100).</remarks>
public static class Stack
{
    /// <summary>Worst case: the sum.</summary>
    /// <param name="tolerances">Plus and minus of each size.</param>
    /// <returns>Plus and minus of the chain.</returns>
    public static double Worst(IEnumerable<double> tolerances) => tolerances.Sum(Math.Abs);

    /// <summary>Root of the sum of squares.</summary>
    /// <param name="tolerances">Plus and minus of each size.</param>
    /// <returns>Plus and minus of the chain.</returns>
    public static double RootSquares(IEnumerable<double> tolerances) => Math.Sqrt(tolerances.Sum(t => t * t));

    /// <summary>Volume of a cylinder and its standard uncertainty to first order.</summary>
    /// <param name="diameter">Diameter.</param>
    /// <param name="diameterUncertainty">Its standard uncertainty.</param>
    /// <param name="length">Length.</param>
    /// <param name="lengthUncertainty">Its standard uncertainty.</param>
    /// <returns>Volume and standard uncertainty.</returns>
    public static (double Volume, double Uncertainty) Cylinder(double diameter, double diameterUncertainty, double length, double lengthUncertainty)
    {
        var volume = Math.PI / 4 * diameter * diameter * length;
        return (volume, Math.Sqrt(Math.Pow(volume * 2 / diameter * diameterUncertainty, 2) + Math.Pow(volume / length * lengthUncertainty, 2)));
    }
}
