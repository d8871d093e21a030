using Handwheel.Jobs.Findings;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Sheets.Pictures;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>What every block of one sheet is made from.</summary>
/// <param name="Plan">The job worked out.</param>
/// <param name="Proof">What the proof found; null where none was made.</param>
/// <param name="Fingerprint">Of the job's and the shop's text.</param>
/// <param name="Part">The part to draw.</param>
/// <param name="Numbers">How numbers that belong to no holding are printed.</param>
/// <param name="Findings">Everything found, gravest first.</param>
/// <param name="Stocks">The stock after each step.</param>
internal sealed record SheetParts(
    JobPlan Plan,
    ProofResult? Proof,
    string Fingerprint,
    PartColumns Part,
    SheetNumbers Numbers,
    IReadOnlyList<Finding> Findings,
    IReadOnlyDictionary<string, StepStock> Stocks)
{
    /// <summary>How many findings there are of a grade.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns>The count.</returns>
    public int Count(Grade grade) => Findings.Count(f => f.Grade == grade);

    /// <summary>Whether cutting as planned must not be begun.</summary>
    public bool Halted => Count(Grade.Halt) > 0;
}
