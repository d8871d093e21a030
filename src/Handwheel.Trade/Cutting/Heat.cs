namespace Handwheel.Trade.Cutting;

/// <summary>What the colour of warm steel says.</summary>
/// <remarks>Temper colours of clean carbon steel after some minutes: the mean of five sources in Colvin and Juthe, The Working of Steel (430, 458, 478,
/// 523, 551, 572, 603, 627 F); brown 500 F, an encyclopedia. Alloy and high-speed steels
/// colour 20 to 50 K hotter, and a flash at the wheel shows more than the steel beneath has had.</remarks>
public static class Heat
{
    /// <summary>The basis of the table.</summary>
    public static Basis Basis { get; } = new("temper colours: the mean of five sources, Colvin and Juthe, The Working of Steel", Evidence.HandbookTable);

    /// <summary>Colours and temperatures.</summary>
    public static IReadOnlyList<(string Colour, double Celsius, string Meaning)> Colours { get; } =
    [
        ("pale yellow", 221, "scrapers, light turning tools"),
        ("straw", 237, "drills, reamers, taps"),
        ("dark straw", 248, "punches, dies"),
        ("brown", 260, "shears, drifts"),
        ("purple", 273, "cold chisels for steel, press tools"),
        ("blue", 300, "springs, screwdrivers; a carbon-steel edge is spoilt from here on"),
        ("pale blue", 317, "springs"),
        ("greenish blue to grey", 331, "soft for cutting; carbon steel must be hardened again"),
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
