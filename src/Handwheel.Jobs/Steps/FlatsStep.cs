using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>flats head with em16, 1 a pass</c>: the sides of a polygon faced one after the other, the indexer turned between.</summary>
public sealed record FlatsStep : Step
{
    /// <summary>The polygon, its axis along the indexer&#39;s.</summary>
    public required string Feature { get; init; }

    /// <summary>Depth of a pass; null: in one.</summary>
    public Typed? PerPass { get; init; }

    /// <summary>Metal left on each flat.</summary>
    public Typed? Allow { get; init; }
}
