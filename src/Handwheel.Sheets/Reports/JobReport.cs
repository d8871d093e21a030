using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Proof.Designs;
using Handwheel.Quantities;

namespace Handwheel.Sheets.Reports;

/// <summary>Everything a report tells about one job: what was read, worked out and proved, as far as that went.</summary>
public sealed record JobReport
{
    /// <summary>The job's title; empty where it could not be read.</summary>
    public required string Title { get; init; }

    /// <summary>The unit the report speaks.</summary>
    public required LengthUnit Unit { get; init; }

    /// <summary>Every finding, in order.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The moves; null where none came of it.</summary>
    public Course? Course { get; init; }

    /// <summary>How the moves came about; null for moves proved from a file alone.</summary>
    public JobPlan? Plan { get; init; }

    /// <summary>The proof; null where the moves were not proved.</summary>
    public ProofResult? Proof { get; init; }

    /// <summary>What came of each line of the design, as far as the job was proved.</summary>
    public IReadOnlyList<DesignResult> Designs => Proof?.Designs ?? [];

    /// <summary>The text of a line of a document, by file name and line from 1; null where it is not known.</summary>
    public Func<string, int, string?> LineOf { get; init; } = (_, _) => null;

    /// <summary>Whether a finding halts.</summary>
    public bool Halted => Findings.Any(f => f.Grade == Grade.Halt);

    /// <summary>How many findings there are of a grade.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns>The count.</returns>
    public int Count(Grade grade) => Findings.Count(f => f.Grade == grade);
}
