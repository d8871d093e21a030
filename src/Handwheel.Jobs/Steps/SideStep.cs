using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>side arm, both flanks, to -13.4 with em10, 1.0 a pass</c>: edges by the flank of the cutter.</summary>
public sealed record SideStep : Step
{
    /// <summary>The feature.</summary>
    public required string Feature { get; init; }

    /// <summary>Which edges: <c>near flank</c>, <c>far flank</c> of a tangent outline; <c>near</c>, <c>far</c>, <c>left</c>, <c>right</c> of a block; <c>all</c>; an outline&#39;s corner numbers as <c>1-2</c>.</summary>
    public required IReadOnlyList<string> Edges { get; init; }

    /// <summary>The height cut down to.</summary>
    public required Typed To { get; init; }

    /// <summary>Depth of one pass.</summary>
    public Typed? PerPass { get; init; }

    /// <summary>Metal left, a side.</summary>
    public Typed? Allow { get; init; }
}
