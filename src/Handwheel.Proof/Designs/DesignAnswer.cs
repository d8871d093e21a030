using Handwheel.Trade;

namespace Handwheel.Proof.Designs;

/// <summary>One value worked out for a line of a design.</summary>
public sealed record DesignAnswer
{
    /// <summary>What it is: <c>pull that strips free-cutting brass</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The number; null where the answer is a word.</summary>
    public double? Number { get; init; }

    /// <summary>Its unit: <c>N</c>, <c>N m</c>, <c>MPa</c>, <c>mm</c>, <c>deg</c>; empty for a ratio or a word.</summary>
    public string Unit { get; init; } = string.Empty;

    /// <summary>The word; null where it is a number.</summary>
    public string? Text { get; init; }

    /// <summary>How it came about, its numbers put in; mm, N, MPa.</summary>
    public required string Working { get; init; }

    /// <summary>Where the rule is from, and how firm that is.</summary>
    public required Basis Basis { get; init; }

    /// <summary>How wide it may be off; empty where it is exact.</summary>
    public string Spread { get; init; } = string.Empty;
}
