namespace Handwheel.Trade.Geometry;

/// <summary>Chords of a round. Lengths in one unit throughout.</summary>
/// <remarks>Plane geometry (the theorem of Pythagoras).</remarks>
public static class Chord
{
    /// <summary>Half the chord at a distance from the centre: sqrt(R^2 - h^2).</summary>
    /// <param name="radius">The round's radius.</param>
    /// <param name="offset">Distance of the chord from the centre, either side.</param>
    /// <returns>Half the chord; 0 where the line passes the round by.</returns>
    public static double Half(double radius, double offset) =>
        Math.Abs(offset) >= radius ? 0 : Math.Sqrt((radius - Math.Abs(offset)) * (radius + Math.Abs(offset)));

    /// <summary>The radius that a chord and its height give: c^2/(8h) + h/2.</summary>
    /// <param name="chord">The chord.</param>
    /// <param name="height">Height of the arc over it, above 0.</param>
    /// <returns>The radius.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is not above 0.</exception>
    public static double Radius(double chord, double height) => height > 0
        ? (chord * chord / (8 * height)) + (height / 2)
        : throw new ArgumentOutOfRangeException(nameof(height), height, "an arc has a height above 0");

    /// <summary>Height of the ridge left between two rows of a ball-nosed cutter on a flat: R - sqrt(R^2 - (s/2)^2).</summary>
    /// <param name="radius">The ball's radius.</param>
    /// <param name="stepOver">Distance of the rows, at most twice the radius.</param>
    /// <returns>The ridge's height.</returns>
    public static double Cusp(double radius, double stepOver) => radius - Half(radius, stepOver / 2);
}
