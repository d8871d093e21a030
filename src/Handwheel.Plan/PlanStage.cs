using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan;

/// <summary>One stage worked out.</summary>
public sealed record PlanStage
{
    /// <summary>What was meant.</summary>
    public required Stage Stage { get; init; }

    /// <summary>Set-up facts; null by hand.</summary>
    public SetupFacts? Setup { get; init; }

    /// <summary>How it is set up, as sentences, each with its numbers (jaws&#39; height, end of the bar, what it bears on, how the zero is found again).</summary>
    public IReadOnlyList<string> HowSet { get; init; } = [];

    /// <summary>Workings of the set-up.</summary>
    public IReadOnlyList<Working> Workings { get; init; } = [];

    /// <summary>Dry check: places to stand the cutter over scribed lines before the first chip, as sentences.</summary>
    public IReadOnlyList<string> DryCheck { get; init; } = [];

    /// <summary>Height retracted to, reading, millimetres.</summary>
    public double RetractZ { get; init; }

    /// <summary>Its steps.</summary>
    public required IReadOnlyList<PlanStep> Steps { get; init; }
}
