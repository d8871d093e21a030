using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>bites grips to -12 with em12</c>: the cutter plunged at each place of a feature, for finger grips and lobes.</summary>
public sealed record BitesStep : Step
{
    /// <summary>The feature whose places are bitten.</summary>
    public required string Feature { get; init; }

    /// <summary>The height cut down to; null: the feature&#39;s own.</summary>
    public Typed? To { get; init; }

    /// <summary>Whether <c>through</c> was typed.</summary>
    public bool Through { get; init; }

    /// <summary>Depth of one pass.</summary>
    public Typed? PerPass { get; init; }
}
