namespace Handwheel.Jobs.Moves;

/// <summary>One stage: a holding with its set-up facts, or (<see cref="Setup"/> null) work by hand.</summary>
public sealed record CourseStage
{
    /// <summary>The holding&#39;s name, or <c>by hand</c>.</summary>
    public required string Name { get; init; }

    /// <summary>How the work is held; null by hand.</summary>
    public SetupFacts? Setup { get; init; }

    /// <summary>Its steps in order.</summary>
    public required IReadOnlyList<CourseStep> Steps { get; init; }
}
