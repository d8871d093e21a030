using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;

namespace Handwheel.Plan;

/// <summary>A job worked out: what the proof takes (<see cref="Course"/>), and how each number came about.</summary>
public sealed record JobPlan
{
    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>The shop.</summary>
    public required Shop Shop { get; init; }

    /// <summary>The moves and set-up facts: all the proof is given.</summary>
    public required Course Course { get; init; }

    /// <summary>Stages with lines and workings; their events, in order, are those of <see cref="Course"/>.</summary>
    public required IReadOnlyList<PlanStage> Stages { get; init; }

    /// <summary>What could not be planned, and what is worth knowing.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}
