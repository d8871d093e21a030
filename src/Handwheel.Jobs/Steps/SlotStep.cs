using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>slot key to -3 with em6</c>: a slot as wide as the cutter, or wider by two flanks.</summary>
public sealed record SlotStep : Step
{
    /// <summary>The feature.</summary>
    public required string Feature { get; init; }

    /// <summary>The height cut down to; null: the feature&#39;s own.</summary>
    public Typed? To { get; init; }

    /// <summary>Whether <c>through</c> was typed.</summary>
    public bool Through { get; init; }

    /// <summary>Depth of one pass.</summary>
    public Typed? PerPass { get; init; }

    /// <summary>Metal left, a side.</summary>
    public Typed? Allow { get; init; }
}
