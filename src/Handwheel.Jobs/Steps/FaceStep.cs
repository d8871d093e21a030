using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>face arm to -8 with em10, 1.0 a pass, 0.3 clear of hub, from the bar&#39;s end</c>: clears all stock within one cutter of the outline above a height.</summary>
public sealed record FaceStep : Step
{
    /// <summary>The feature faced; null: the whole top of the stock.</summary>
    public string? Feature { get; init; }

    /// <summary>The height faced to.</summary>
    public required Typed To { get; init; }

    /// <summary>Depth of one pass; null: as the cutter stands.</summary>
    public Typed? PerPass { get; init; }

    /// <summary>Features kept clear of.</summary>
    public IReadOnlyList<ClearOf> Clear { get; init; } = [];

    /// <summary>Where it comes in from: <c>end</c>, <c>near</c>, <c>far</c>, <c>left</c>, <c>right</c>; null: the nearest open side.</summary>
    public string? From { get; init; }

    /// <summary>Metal left on for a later pass.</summary>
    public Typed? Allow { get; init; }
}
