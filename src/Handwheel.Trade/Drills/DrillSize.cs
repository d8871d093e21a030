namespace Handwheel.Trade.Drills;

/// <summary>One drill that can be bought by name.</summary>
/// <param name="Name">As it is asked for: <c>#7</c>, <c>F</c>, <c>17/64</c>, <c>5.1 mm</c>.</param>
/// <param name="DiameterMm">Diameter, mm.</param>
/// <param name="Family">Number, letter, fraction or metric.</param>
public sealed record DrillSize(string Name, double DiameterMm, DrillFamily Family)
{
    /// <summary>Diameter, inches.</summary>
    public double DiameterIn => DiameterMm / 25.4;
}
