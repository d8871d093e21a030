namespace Handwheel.Trade.Geometry;

/// <summary>Circles, chords, bolt circles, polygons, tangents.</summary>
/// <remarks>Plane geometry, exact. Lengths in one unit, angles in degrees, counterclockwise from +X.</remarks>
public static class Circles
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("plane geometry", Evidence.StandardFormula);

    /// <summary>Chord over pitch-circle diameter for equal divisions.</summary>
    /// <param name="divisions">Divisions, 2 or more.</param>
    /// <returns>sin(180/n).</returns>
    public static double ChordFactor(int divisions) => Math.Sin(Math.PI / divisions);

    /// <summary>Places of holes on a circle.</summary>
    /// <param name="holes">How many.</param>
    /// <param name="diameter">Pitch circle diameter.</param>
    /// <param name="startDeg">Angle of the first.</param>
    /// <param name="clockwise">True to go clockwise.</param>
    /// <returns>X and Y of each from the centre.</returns>
    public static IReadOnlyList<(double X, double Y)> BoltCircle(int holes, double diameter, double startDeg, bool clockwise = false)
    {
        var places = new (double X, double Y)[holes];
        for (var i = 0; i < holes; i++)
        {
            var angle = (startDeg + ((clockwise ? -360.0 : 360.0) * i / holes)) * Math.PI / 180;
            places[i] = (diameter / 2 * Math.Cos(angle), diameter / 2 * Math.Sin(angle));
        }

        return places;
    }

    /// <summary>Corner circle and side of a regular polygon from its flats.</summary>
    /// <param name="sides">Sides, 3 or more.</param>
    /// <param name="flats">Diameter of the inscribed circle (across flats where the sides are even).</param>
    /// <returns>Corner circle diameter and side length.</returns>
    public static (double Corners, double Side) PolygonFromFlats(int sides, double flats) =>
        (flats / Math.Cos(Math.PI / sides), flats * Math.Tan(Math.PI / sides));

    /// <summary>Flats of a regular polygon from its corner circle: the largest a round bar gives.</summary>
    /// <param name="sides">Sides.</param>
    /// <param name="corners">Corner circle diameter.</param>
    /// <returns>Inscribed diameter.</returns>
    public static double FlatsFromCorners(int sides, double corners) => corners * Math.Cos(Math.PI / sides);

    /// <summary>Radius of an arc from its chord and height.</summary>
    /// <param name="chord">Chord.</param>
    /// <param name="height">Height of the arc over it.</param>
    /// <returns>c^2/(8h) + h/2.</returns>
    public static double RadiusFromChord(double chord, double height) => (chord * chord / (8 * height)) + (height / 2);

    /// <summary>Height of an arc from its radius and chord.</summary>
    /// <param name="radius">Radius.</param>
    /// <param name="chord">Chord, up to twice the radius.</param>
    /// <returns>R - sqrt(R^2 - c^2/4); NaN where the chord is too long.</returns>
    public static double Sagitta(double radius, double chord) => radius - Math.Sqrt((radius * radius) - (chord * chord / 4));

    /// <summary>Chord of a circle at a height of arc.</summary>
    /// <param name="radius">Radius.</param>
    /// <param name="height">Height of the arc.</param>
    /// <returns>2 sqrt(2 R h - h^2).</returns>
    public static double Chord(double radius, double height) => 2 * Math.Sqrt((2 * radius * height) - (height * height));

    /// <summary>Radius of a convex arc resting on a plate between two rolls.</summary>
    /// <param name="overRolls">Width over the rolls.</param>
    /// <param name="roll">Roll diameter.</param>
    /// <returns>(L - D)^2 / (8 D).</returns>
    public static double RadiusOverRolls(double overRolls, double roll) => (overRolls - roll) * (overRolls - roll) / (8 * roll);

    /// <summary>Where an arm's edge meets a round boss, sharp and with a fillet.</summary>
    /// <param name="boss">Boss radius.</param>
    /// <param name="width">Arm width, its middle through the boss's centre.</param>
    /// <param name="fillet">Fillet radius.</param>
    /// <returns>X of the sharp corner; centre of the fillet; its tangent points on boss and edge.</returns>
    public static (double Sharp, (double X, double Y) Centre, (double X, double Y) OnBoss, (double X, double Y) OnEdge) ArmIntoBoss(
        double boss, double width, double fillet)
    {
        var half = width / 2;
        var y = half + fillet;
        var reach = boss + fillet;
        var x = Math.Sqrt((reach * reach) - (y * y));
        return (Math.Sqrt((boss * boss) - (half * half)), (x, y), (x * boss / reach, y * boss / reach), (x, half));
    }

    /// <summary>Outer tangent of two bosses on one line.</summary>
    /// <param name="first">Radius of the boss at the origin.</param>
    /// <param name="second">Radius of the other.</param>
    /// <param name="centres">Distance of centres, along +X, over the difference of the radii.</param>
    /// <returns>Upper tangent points, slope (degrees, negative falling away from the first where it is larger), length between them, and the angle of the radius to the tangent point from +X.</returns>
    public static ((double X, double Y) First, (double X, double Y) Second, double SlopeDeg, double Length, double AngleDeg) OuterTangent(
        double first, double second, double centres)
    {
        var sine = (first - second) / centres;
        var cosine = Math.Sqrt(1 - (sine * sine));
        return ((first * sine, first * cosine), (centres + (second * sine), second * cosine), -Math.Asin(sine) * 180 / Math.PI, centres * cosine, Math.Acos(sine) * 180 / Math.PI);
    }
}
