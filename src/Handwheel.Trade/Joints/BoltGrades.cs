namespace Handwheel.Trade.Joints;

/// <summary>Property classes and grades of screws.</summary>
/// <remarks>ISO 898-1 (4.6 to 12.9), ISO 3506-1 (stainless), SAE J429 (grades 2, 5, 8), ASTM A574 (socket head cap screws, inch).</remarks>
public static class BoltGrades
{
    private static readonly Basis Iso = new("ISO 898-1 proof stress by property class", Evidence.HandbookTable);
    private static readonly Basis Inox = new("ISO 3506-1 (0.2 % proof stress and tensile strength)", Evidence.HandbookTable);
    private static readonly Basis Sae = new("SAE J429 (Shigley Table 8-9)", Evidence.HandbookTable);
    private static readonly Basis Astm = new("ASTM A574 Table 2", Evidence.HandbookTable);
    private const double Ksi = 6.894757;

    /// <summary>Every grade.</summary>
    public static IReadOnlyList<BoltGrade> All { get; } =
    [
        new("4.6", 225, 400, 0, 39, Iso), new("4.8", 310, 420, 0, 16, Iso), new("5.6", 280, 500, 0, 39, Iso), new("5.8", 380, 520, 0, 39, Iso),
        new("6.8", 440, 600, 0, 39, Iso), new("8.8", 580, 800, 0, 16, Iso), new("8.8", 600, 830, 16, 39, Iso), new("9.8", 650, 900, 0, 16, Iso),
        new("10.9", 830, 1040, 0, 39, Iso), new("12.9", 970, 1220, 0, 39, Iso),
        new("A2-50", 210, 500, 0, 39, Inox), new("A2-70", 450, 700, 0, 24, Inox), new("A4-70", 450, 700, 0, 24, Inox), new("A2-80", 600, 800, 0, 24, Inox),
        new("A4-80", 600, 800, 0, 24, Inox),
        new("grade 2", 55 * Ksi, 74 * Ksi, 0, 19.1, Sae), new("grade 2", 33 * Ksi, 60 * Ksi, 19.1, 38.2, Sae), new("grade 5", 85 * Ksi, 120 * Ksi, 0, 25.5, Sae),
        new("grade 5", 74 * Ksi, 105 * Ksi, 25.5, 38.2, Sae), new("grade 8", 120 * Ksi, 150 * Ksi, 0, 38.2, Sae),
        new("A574", 140 * Ksi, 180 * Ksi, 0, 12.8, Astm), new("A574", 135 * Ksi, 170 * Ksi, 12.8, 100, Astm),
    ];

    /// <summary>The grade of a screw by its size.</summary>
    /// <param name="name">Name; case does not matter.</param>
    /// <param name="diameterMm">Thread diameter, mm.</param>
    /// <returns>The grade, or null.</returns>
    public static BoltGrade? Find(string name, double diameterMm) =>
        All.FirstOrDefault(g => string.Equals(g.Name, name, StringComparison.OrdinalIgnoreCase) && diameterMm > g.FromMm && diameterMm <= g.ToMm);
}
