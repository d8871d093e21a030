namespace Handwheel.Trade.Geometry;

/// <summary>Regular polygons. Lengths in one unit throughout.</summary>
/// <remarks>Plane trigonometry; a hexagon's corners are 1.154701, a square's 1.414214 of its flats.</remarks>
public static class RegularPolygon
{
    /// <summary>Diameter of the circle through the corners: F/cos(pi/n), F twice the distance from the centre to a side.</summary>
    /// <param name="sides">Number of sides, 3 or more.</param>
    /// <param name="acrossFlats">Twice the distance from the centre to a side.</param>
    /// <returns>The diameter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 3 sides.</exception>
    public static double AcrossCorners(int sides, double acrossFlats) => acrossFlats / Math.Cos(Math.PI / Checked(sides));

    /// <summary>Length of a side: F tan(pi/n).</summary>
    /// <param name="sides">Number of sides, 3 or more.</param>
    /// <param name="acrossFlats">Twice the distance from the centre to a side.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 3 sides.</exception>
    public static double Side(int sides, double acrossFlats) => acrossFlats * Math.Tan(Math.PI / Checked(sides));

    /// <summary>Area: n F^2/4 tan(pi/n).</summary>
    /// <param name="sides">Number of sides, 3 or more.</param>
    /// <param name="acrossFlats">Twice the distance from the centre to a side.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 3 sides.</exception>
    public static double Area(int sides, double acrossFlats) => sides * acrossFlats * acrossFlats / 4 * Math.Tan(Math.PI / Checked(sides));

    private static int Checked(int sides) => sides >= 3 ? sides : throw new ArgumentOutOfRangeException(nameof(sides), sides, "a polygon has 3 sides or more");
}
