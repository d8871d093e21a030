namespace Handwheel.Trade.Geometry;

/// <summary>Pointed cutters. Lengths in one unit throughout, angles in radians.</summary>
/// <remarks>Plane trigonometry; Machinery's Handbook gives the same as factors (118 deg: 0.3004 D, 82 deg countersink: 0.5752 D).</remarks>
public static class Point
{
    /// <summary>Depth from a point's tip (or flat tip) to where it is a diameter across: (D - T)/2 * cot(angle/2).</summary>
    /// <param name="across">The diameter reached.</param>
    /// <param name="angle">Included angle of the point, above 0, at most pi.</param>
    /// <param name="tip">Diameter of a flat tip; 0 sharp.</param>
    /// <returns>The depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public static double Depth(double across, double angle, double tip = 0) => angle is > 0 and <= Math.PI
        ? (across - tip) / 2 / Math.Tan(angle / 2)
        : throw new ArgumentOutOfRangeException(nameof(angle), angle, "a point's angle lies above 0 and at most half a turn");

    /// <summary>Diameter at a depth above the tip: T + 2 z tan(angle/2).</summary>
    /// <param name="depth">Height above the tip.</param>
    /// <param name="angle">Included angle of the point.</param>
    /// <param name="tip">Diameter of a flat tip; 0 sharp.</param>
    /// <returns>The diameter.</returns>
    public static double Across(double depth, double angle, double tip = 0) => tip + (2 * depth * Math.Tan(angle / 2));
}
