namespace Handwheel.Trade.Asking;

/// <summary>One value of a reply, with how it was come by.</summary>
public sealed record Answer
{
    /// <summary>What it is.</summary>
    public required string Name { get; init; }

    /// <summary>The number; null where the answer is a word.</summary>
    public double? Number { get; init; }

    /// <summary>The word; null where the answer is a number.</summary>
    public string? Text { get; init; }

    /// <summary>Unit of the number; empty where it has none.</summary>
    public string Unit { get; init; } = string.Empty;

    /// <summary>The same in metric units; null where units do not matter.</summary>
    public Measure? Metric { get; init; }

    /// <summary>The same in inch units; null where units do not matter.</summary>
    public Measure? Inch { get; init; }

    /// <summary>Lines a person can check: formula, numbers put in, result.</summary>
    public IReadOnlyList<string> Working { get; init; } = [];

    /// <summary>Standard and table, handbook, or practice, and how firm that is.</summary>
    public required Basis Basis { get; init; }

    /// <summary>Whether the question named this very value; such answers come first.</summary>
    public bool Asked { get; init; }

    /// <summary>How wide it may be off; empty where it is exact.</summary>
    public string Spread { get; init; } = string.Empty;
}
