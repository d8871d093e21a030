namespace Handwheel.Trade.Geometry;

/// <summary>Dovetails, V-blocks, countersinks, drill points, cusps, sine bars, keyseats.</summary>
/// <remarks>Plane geometry, exact for true cutters and pins. Lengths in one unit, angles in degrees.</remarks>
public static class Shapes
{
    /// <summary>Over pins of a male dovetail: a + D (1 + cot(angle/2)).</summary>
    /// <param name="root">Width at the sharp inner corners where the pins sit.</param>
    /// <param name="angleDeg">Dovetail angle.</param>
    /// <param name="pin">Pin diameter.</param>
    /// <returns>Over pins.</returns>
    public static double DovetailOver(double root, double angleDeg, double pin) => root + (pin * (1 + Cot(angleDeg / 2)));

    /// <summary>Between pins of a female dovetail: b - D (1 + cot(angle/2)).</summary>
    /// <param name="root">Width at the sharp bottom corners.</param>
    /// <param name="angleDeg">Dovetail angle.</param>
    /// <param name="pin">Pin diameter.</param>
    /// <returns>Between pins.</returns>
    public static double DovetailBetween(double root, double angleDeg, double pin) => root - (pin * (1 + Cot(angleDeg / 2)));

    /// <summary>A round in a V-block.</summary>
    /// <param name="diameter">Diameter of the round.</param>
    /// <param name="angleDeg">Angle of the V.</param>
    /// <returns>Heights of centre and top over the sharp bottom, and width between the lines of contact.</returns>
    public static (double Centre, double Top, double Contact) Vee(double diameter, double angleDeg)
    {
        var half = angleDeg * Math.PI / 360;
        var centre = diameter / 2 / Math.Sin(half);
        return (centre, centre + (diameter / 2), diameter * Math.Cos(half));
    }

    /// <summary>Depth of a countersink from where it first touches.</summary>
    /// <param name="angleDeg">Included angle.</param>
    /// <param name="diameter">Diameter wanted at the face.</param>
    /// <param name="tip">Diameter it starts from: the cutter's flat, or the hole's.</param>
    /// <returns>(D - T)/2 cot(angle/2).</returns>
    public static double CountersinkDepth(double angleDeg, double diameter, double tip) => (diameter - tip) / 2 * Cot(angleDeg / 2);

    /// <summary>Length of a drill's point.</summary>
    /// <param name="angleDeg">Point angle.</param>
    /// <param name="diameter">Diameter.</param>
    /// <returns>D/2 cot(angle/2).</returns>
    public static double DrillPoint(double angleDeg, double diameter) => diameter / 2 * Cot(angleDeg / 2);

    /// <summary>Cusp between passes of a ball on a flat.</summary>
    /// <param name="radius">Ball radius.</param>
    /// <param name="step">Step-over, up to twice the radius.</param>
    /// <returns>R - sqrt(R^2 - (s/2)^2).</returns>
    public static double Cusp(double radius, double step) => radius - Math.Sqrt((radius * radius) - (step * step / 4));

    /// <summary>Step-over for a cusp.</summary>
    /// <param name="radius">Ball radius.</param>
    /// <param name="cusp">Cusp height.</param>
    /// <returns>2 sqrt(2 R h - h^2).</returns>
    public static double StepForCusp(double radius, double cusp) => 2 * Math.Sqrt((2 * radius * cusp) - (cusp * cusp));

    /// <summary>Ridge left on a round milled in flats by turning in steps.</summary>
    /// <param name="radius">Radius.</param>
    /// <param name="stepDeg">Step.</param>
    /// <returns>R (1/cos(step/2) - 1).</returns>
    public static double Ridge(double radius, double stepDeg) => radius * ((1 / Math.Cos(stepDeg * Math.PI / 360)) - 1);

    /// <summary>Blocks under one end of a sine bar.</summary>
    /// <param name="length">Length between rolls.</param>
    /// <param name="angleDeg">Angle.</param>
    /// <returns>L sin(angle).</returns>
    public static double SineBar(double length, double angleDeg) => length * Math.Sin(angleDeg * Math.PI / 180);

    /// <summary>Angle of a sine bar from its blocks.</summary>
    /// <param name="length">Length between rolls.</param>
    /// <param name="height">Blocks.</param>
    /// <returns>Degrees.</returns>
    public static double SineBarAngleDeg(double length, double height) => Math.Asin(height / length) * 180 / Math.PI;

    /// <summary>Height of the arc over a keyseat: (D - sqrt(D^2 - W^2))/2.</summary>
    /// <param name="shaft">Shaft diameter.</param>
    /// <param name="width">Keyseat width.</param>
    /// <returns>Y.</returns>
    public static double KeyseatArc(double shaft, double width) => (shaft - Math.Sqrt((shaft * shaft) - (width * width))) / 2;

    private static double Cot(double degrees) => 1 / Math.Tan(degrees * Math.PI / 180);
}
