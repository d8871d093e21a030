using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>pocket seat to -4 with em6, 1 a pass</c>: a closed or open hollow, straight-sided or round.</summary>
public sealed record PocketStep : Step
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
