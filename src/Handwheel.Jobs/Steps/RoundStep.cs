using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>round hub to -8 with em10, 1.0 a pass, allow 0.2</c>, <c>round hub end of arm to -13.4 with em10</c>: a boss or ring about the rotary&#39;s axis, whole turns or the arc that lies on an outline.</summary>
public sealed record RoundStep : Step
{
    /// <summary>The round.</summary>
    public required string Feature { get; init; }

    /// <summary>The outline whose end it is; null: all round.</summary>
    public string? EndOf { get; init; }

    /// <summary>The height cut down to.</summary>
    public required Typed To { get; init; }

    /// <summary>Depth of one pass.</summary>
    public Typed? PerPass { get; init; }

    /// <summary>Metal left, a side.</summary>
    public Typed? Allow { get; init; }

    /// <summary>Whether the inside of a ring or hole is cut.</summary>
    public bool Inside { get; init; }
}
