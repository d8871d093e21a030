namespace Handwheel.Trade.Joints;

/// <summary>Coefficients of static friction; an order of magnitude only, since a trace of oil halves them.</summary>
public static class FrictionTable
{
    private static readonly Basis Read = new("Marks' Standard Handbook sect. 3.2 (two public copies of its friction table)", Evidence.HandbookTable);
    private static readonly Basis Marks = new("Marks' Standard Handbook sect. 3.2 (nobody confirmed this value)", Evidence.Memory);
    private static readonly Basis Practice = new("common practice", Evidence.CommonPractice);

    /// <summary>Every pair.</summary>
    public static IReadOnlyList<FrictionPair> All { get; } =
    [
        new("hard steel on hard steel, dry", 0.78, 0.78, Read), new("hard steel on hard steel, greasy", 0.11, 0.23, Marks),
        new("mild steel on mild steel, dry", 0.74, 0.74, Read), new("mild steel on brass, dry", 0.51, 0.51, Marks),
        new("mild steel on cast iron, dry", 0.4, 0.4, Marks), new("aluminium on mild steel, dry", 0.61, 0.61, Read),
        new("taper in its socket, clean", 0.1, 0.2, Practice), new("taper in its socket, oiled", 0.05, 0.12, Practice),
        new("work in a vise", 0.1, 0.2, Practice), new("work in a vise with paper or card", 0.2, 0.3, Practice), new("press fit, steel, oiled", 0.07, 0.16, Practice),
        new("press fit, steel, dry", 0.12, 0.2, Practice),
    ];

    /// <summary>Finds a pair.</summary>
    /// <param name="pair">Its words.</param>
    /// <returns>The pair, or null.</returns>
    public static FrictionPair? Find(string pair) => All.FirstOrDefault(p => p.Pair == pair);
}
