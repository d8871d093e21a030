using Handwheel.Quantities;

namespace Handwheel.Jobs.Moves;

/// <summary>
/// All the proof takes of how a job is cut: set-up facts, touch-offs and moves in order. No workings and no intentions. Plain numbers (millimetres,
/// degrees), so that it can be written to a file, changed by anyone, and proved again.
/// </summary>
public sealed record Course
{
    /// <summary>The job&#39;s title.</summary>
    public required string Title { get; init; }

    /// <summary>The job document&#39;s name, without folders; empty where there is none.</summary>
    public string JobFile { get; init; } = string.Empty;

    /// <summary>The shop document&#39;s name as the job typed it; empty where there is none.</summary>
    public string ShopFile { get; init; } = string.Empty;

    /// <summary>The unit findings speak.</summary>
    public required LengthUnit Unit { get; init; }

    /// <summary>Holdings and work by hand in order.</summary>
    public required IReadOnlyList<CourseStage> Stages { get; init; }

    /// <summary>The id of the step by which the part is meant to come free; null: it is never meant to.</summary>
    public string? ReleaseAt { get; init; }
}
