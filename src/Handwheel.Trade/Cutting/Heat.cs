namespace Handwheel.Trade.Cutting;

/// <summary>What the colour of warm steel says.</summary>
/// <remarks>Temper colours of clean carbon steel after some minutes (Machinery's Handbook, heat treatment; a machinist's table). Alloy and high-speed steels
/// colour 20 to 50 K hotter, and a flash at the wheel shows more than the steel beneath has had.</remarks>
public static class Heat
{
    /// <summary>The basis of the table.</summary>
    public static Basis Basis { get; } = new("temper colours, Machinery's Handbook (heat treatment)", Evidence.Memory);

    /// <summary>Colours and temperatures.</summary>
    public static IReadOnlyList<(string Colour, double Celsius, string Meaning)> Colours { get; } =
    [
        ("pale yellow", 215, "scrapers, light turning tools"),
        ("straw", 230, "drills, reamers, taps"),
        ("dark straw", 245, "punches, dies"),
        ("brown", 255, "shears, drifts"),
        ("purple", 275, "cold chisels for steel, press tools"),
        ("blue", 295, "springs, screwdrivers; a carbon-steel edge is spoilt from here on"),
        ("pale blue", 315, "springs"),
        ("grey", 340, "soft for cutting; carbon steel must be hardened again"),
    ];

    /// <summary>Temperature to which a cutting edge keeps its hardness.</summary>
    /// <param name="material">What it is made of.</param>
    /// <returns>Celsius.</returns>
    public static double KeepsHardnessC(Metals.CutterMaterial material) => material switch
    {
        Metals.CutterMaterial.CarbonSteel => 200,
        Metals.CutterMaterial.HighSpeedSteel => 600,
        _ => 900,
    };
}
