using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>chamfer hub 0.5 with ch6</c>: a conical cutter along an edge.</summary>
public sealed record ChamferStep : Step
{
    /// <summary>The feature whose upper edge is chamfered.</summary>
    public required string Feature { get; init; }

    /// <summary>The outline the feature&#39;s arc lies on, for <c>chamfer eye end of arm</c>; null else.</summary>
    public string? EndOf { get; init; }

    /// <summary>The edges chamfered, as a <c>side</c> names them; empty: all that can be.</summary>
    public IReadOnlyList<string> Edges { get; init; } = [];

    /// <summary>Leg of the chamfer.</summary>
    public required Typed Wide { get; init; }
}
