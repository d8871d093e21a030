namespace Handwheel.Trade.Strength;

/// <summary>Bending and shear of webs, thin walls, cutters and pins.</summary>
/// <remarks>Straight beams, small deflections, elastic (Shigley Table A-9 and any strength text). Consistent units. Short thick webs (length under three
/// thicknesses) shear more than they bend: the deflection then is low by up to a third.</remarks>
public static class Beams
{
    /// <summary>The basis of the formulas.</summary>
    public static Basis Basis { get; } = new("beam formulas, Shigley 9th ed. Table A-9", Evidence.StandardFormula);

    /// <summary>A strip held at one end, loaded at the other.</summary>
    /// <param name="width">Width of the strip (along the fixed edge).</param>
    /// <param name="thickness">Thickness, in the direction of the load.</param>
    /// <param name="length">Free length.</param>
    /// <param name="force">Force at the tip.</param>
    /// <param name="modulus">Modulus.</param>
    /// <returns>Bending stress 6 F L / (b t^2) and deflection 4 F L^3 / (E b t^3).</returns>
    public static (double Stress, double Deflection) Cantilever(double width, double thickness, double length, double force, double modulus) =>
        (6 * force * length / (width * thickness * thickness), 4 * force * Math.Pow(length, 3) / (modulus * width * Math.Pow(thickness, 3)));

    /// <summary>A strip resting on both ends, loaded in the middle.</summary>
    /// <param name="width">Width.</param>
    /// <param name="thickness">Thickness, in the direction of the load.</param>
    /// <param name="span">Span.</param>
    /// <param name="force">Force in the middle.</param>
    /// <param name="modulus">Modulus.</param>
    /// <returns>Bending stress 1.5 F L / (b t^2) and deflection F L^3 / (4 E b t^3).</returns>
    public static (double Stress, double Deflection) Supported(double width, double thickness, double span, double force, double modulus) =>
        (1.5 * force * span / (width * thickness * thickness), force * Math.Pow(span, 3) / (4 * modulus * width * Math.Pow(thickness, 3)));

    /// <summary>A strip fixed at both ends, loaded in the middle: a web between two pieces.</summary>
    /// <param name="width">Width.</param>
    /// <param name="thickness">Thickness, in the direction of the load.</param>
    /// <param name="span">Span.</param>
    /// <param name="force">Force in the middle.</param>
    /// <param name="modulus">Modulus.</param>
    /// <returns>Bending stress 0.75 F L / (b t^2) and deflection F L^3 / (16 E b t^3).</returns>
    public static (double Stress, double Deflection) Fixed(double width, double thickness, double span, double force, double modulus) =>
        (0.75 * force * span / (width * thickness * thickness), force * Math.Pow(span, 3) / (16 * modulus * width * Math.Pow(thickness, 3)));

    /// <summary>A round bar held at one end, loaded at the tip.</summary>
    /// <param name="diameter">Diameter.</param>
    /// <param name="length">Overhang.</param>
    /// <param name="force">Force at the tip.</param>
    /// <param name="modulus">Modulus.</param>
    /// <returns>Bending stress 32 F L / (pi d^3) and deflection 64 F L^3 / (3 pi E d^4).</returns>
    public static (double Stress, double Deflection) Round(double diameter, double length, double force, double modulus) =>
        (32 * force * length / (Math.PI * Math.Pow(diameter, 3)), 64 * force * Math.Pow(length, 3) / (3 * Math.PI * modulus * Math.Pow(diameter, 4)));

    /// <summary>Mean shear stress of a section, and the greatest of a rectangle (1.5 times it).</summary>
    /// <param name="width">Width.</param>
    /// <param name="thickness">Thickness.</param>
    /// <param name="force">Force across it.</param>
    /// <returns>Mean and greatest shear stress.</returns>
    public static (double Mean, double Greatest) Shear(double width, double thickness, double force) =>
        (force / (width * thickness), 1.5 * force / (width * thickness));

    /// <summary>Shear stress in a pin.</summary>
    /// <param name="diameter">Diameter.</param>
    /// <param name="force">Force.</param>
    /// <param name="planes">Shear planes: 1 or 2.</param>
    /// <returns>F / (n A).</returns>
    public static double PinShear(double diameter, double force, int planes) => force / (planes * Math.PI * diameter * diameter / 4);

    /// <summary>Force to punch a round hole through sheet.</summary>
    /// <param name="diameter">Diameter.</param>
    /// <param name="thickness">Sheet thickness.</param>
    /// <param name="shearStrength">Shear strength of the sheet.</param>
    /// <returns>Force pi d t tau and the squeeze in the punch 4 t tau / d.</returns>
    public static (double Force, double PunchStress) Punching(double diameter, double thickness, double shearStrength) =>
        (Math.PI * diameter * thickness * shearStrength, 4 * thickness * shearStrength / diameter);

    /// <summary>Wall left between a bore and a thread or another bore.</summary>
    /// <param name="centreDistance">Distance of the axes.</param>
    /// <param name="firstDiameter">First diameter (a thread's major diameter).</param>
    /// <param name="secondDiameter">Second diameter.</param>
    /// <returns>Least wall; negative where they break into each other.</returns>
    public static double WallBetween(double centreDistance, double firstDiameter, double secondDiameter) =>
        centreDistance - ((firstDiameter + secondDiameter) / 2);
}
