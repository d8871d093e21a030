using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Lines;

/// <summary>Something done by hand, with how to check it.</summary>
public sealed record HandLine : SheetLine
{
    /// <summary>What to do, in words.</summary>
    public required string Says { get; init; }

    /// <summary>How to check it, in words; empty where nothing.</summary>
    public string Check { get; init; } = string.Empty;

    /// <summary>What was worked out for it (a force, a depth); empty mostly.</summary>
    public IReadOnlyList<Working> Workings { get; init; } = [];
}
