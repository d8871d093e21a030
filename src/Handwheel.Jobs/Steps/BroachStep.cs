using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>broach socket to -6 with sq4</c>: a prism pushed along Z in the machine, indexed where its sides ask it.</summary>
public sealed record BroachStep : Step
{
    /// <summary>The feature.</summary>
    public required string Feature { get; init; }

    /// <summary>The height pushed to; null: the feature&#39;s own.</summary>
    public Typed? To { get; init; }

    /// <summary>Whether <c>through</c> was typed.</summary>
    public bool Through { get; init; }
}
