namespace Handwheel.Trade.Indexing;

/// <summary>Hole circles on hand: one plate or several, each with its circles.</summary>
/// <param name="Name">What the set is called.</param>
/// <param name="Plates">Hole circles of each plate (a side that cannot be used with another counts as its own plate).</param>
/// <param name="Basis">Where the circles come from.</param>
public sealed record PlateSet(string Name, IReadOnlyList<IReadOnlyList<int>> Plates, Basis Basis)
{
    /// <summary>Every circle of the set, ascending, once.</summary>
    public IReadOnlyList<int> Circles { get; } = [.. Plates.SelectMany(p => p).Distinct().Order()];

    /// <summary>Three plates, six circles each.</summary>
    public static PlateSet ThreePlates { get; } = new(
        "three plates of six circles",
        [[15, 16, 17, 18, 19, 20], [21, 23, 27, 29, 31, 33], [37, 39, 41, 43, 47, 49]],
        new Basis("Practical Treatise on Milling and Milling Machines, index plates", Evidence.HandbookTable));

    /// <summary>One plate with circles on both sides.</summary>
    public static PlateSet TwoSided { get; } = new(
        "one plate, two sides",
        [[24, 25, 28, 30, 34, 37, 38, 39, 41, 42, 43], [46, 47, 49, 51, 53, 54, 57, 58, 59, 62, 66]],
        new Basis("US Army Ordnance course OD1644, index plate", Evidence.HandbookTable));

    /// <summary>Two plates, as often sold with small rotary tables.</summary>
    public static PlateSet TwoPlates { get; } = new(
        "two plates for a small rotary table",
        [[15, 18, 21, 29, 33, 39, 43, 47], [16, 20, 23, 27, 31, 37, 41, 49]],
        new Basis("plates as commonly sold; count the holes of your own", Evidence.Memory));
}
