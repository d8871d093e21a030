namespace Handwheel.Trade.Geometry;

/// <summary>Where straight lines touch rounds. Angles in radians, lengths in one unit throughout.</summary>
/// <remarks>Plane geometry. Formulas are exact; answers are good to a few units in the last place.</remarks>
public static class Tangency
{
    /// <summary>Angle between the line of centres and the radius to where an outer common tangent touches: acos((R1 - R2)/L), for both rounds.</summary>
    /// <param name="first">Radius of the first round, at least 0.</param>
    /// <param name="second">Radius of the second round, at least 0.</param>
    /// <param name="apart">Distance of the centres, above the difference of the radii.</param>
    /// <returns>The angle at either centre, measured from the direction first to second.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One round lies inside the other, so there is no outer tangent.</exception>
    public static double TouchAngle(double first, double second, double apart)
    {
        var cosine = (first - second) / apart;
        return Math.Abs(cosine) <= 1
            ? Math.Acos(cosine)
            : throw new ArgumentOutOfRangeException(nameof(apart), apart, "one round lies inside the other: they have no outer tangent");
    }

    /// <summary>Angle between an outer common tangent and the line of centres: asin((R1 - R2)/L).</summary>
    /// <param name="first">Radius of the first round.</param>
    /// <param name="second">Radius of the second round.</param>
    /// <param name="apart">Distance of the centres.</param>
    /// <returns>The angle; positive where the first round is the greater.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One round lies inside the other.</exception>
    public static double SlopeAngle(double first, double second, double apart) => (Math.PI / 2) - TouchAngle(first, second, apart);

    /// <summary>Length of an outer common tangent between its two touching places: sqrt(L^2 - (R1 - R2)^2).</summary>
    /// <param name="first">Radius of the first round.</param>
    /// <param name="second">Radius of the second round.</param>
    /// <param name="apart">Distance of the centres.</param>
    /// <returns>The length.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One round lies inside the other.</exception>
    public static double Length(double first, double second, double apart) => apart * Math.Sin(TouchAngle(first, second, apart));
}
