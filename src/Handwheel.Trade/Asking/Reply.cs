namespace Handwheel.Trade.Asking;

/// <summary>What comes back for a question.</summary>
public sealed record Reply
{
    /// <summary>The question as it was put.</summary>
    public required string Question { get; init; }

    /// <summary>The topic it was taken for; empty where none was found.</summary>
    public string Topic { get; init; } = string.Empty;

    /// <summary>The answers; none where refused.</summary>
    public IReadOnlyList<Answer> Answers { get; init; } = [];

    /// <summary>What can hurt people, work or machine.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>What was assumed, and what was not understood.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Why there is no answer; null where there is.</summary>
    public Refusal? Refusal { get; init; }
}
