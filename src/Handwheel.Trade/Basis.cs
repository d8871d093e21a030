namespace Handwheel.Trade;

/// <summary>Where a number comes from and how firm that is.</summary>
/// <param name="Source">The standard and table, handbook chapter, or "common practice".</param>
/// <param name="Evidence">How firm the source is.</param>
public sealed record Basis(string Source, Evidence Evidence)
{
    /// <summary>The evidence in words, as it is printed.</summary>
    public string EvidenceWords => Evidence switch
    {
        Evidence.StandardFormula => "formula of a standard",
        Evidence.HandbookTable => "table of a handbook",
        Evidence.CommonPractice => "common practice",
        _ => "from memory",
    };
}
