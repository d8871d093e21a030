using Handwheel.Jobs.Findings;
using Handwheel.Proof.Designs;

namespace Handwheel.Proof;

/// <summary>What cutting the whole course in exact simulation showed.</summary>
public sealed record ProofResult
{
    /// <summary>Every finding, in the order of the course, gravest first at one place.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Every size of the drawing.</summary>
    public required IReadOnlyList<SizeResult> Sizes { get; init; }

    /// <summary>What came of each line of the design.</summary>
    public IReadOnlyList<DesignResult> Designs { get; init; } = [];

    /// <summary>The release.</summary>
    public required ReleaseResult Release { get; init; }

    /// <summary>What was looked at and how surely: the grid&#39;s spacing and what it cannot overlook, in a sentence.</summary>
    public required string Guarantee { get; init; }

    /// <summary>The stock after each step, for pictures: soundings can be asked of it.</summary>
    public required IReadOnlyList<StepStock> Stocks { get; init; }
}
