using Handwheel.Jobs.Findings;
using Handwheel.Proof.Designs;

namespace Handwheel.Proof.Questions;

/// <summary>Design: does what the part must stand, stand? One finding a line that does not, or only nearly.</summary>
internal static class Design
{
    /// <summary>Asks.</summary>
    /// <param name="results">What came of each line.</param>
    /// <returns>Findings <c>design</c>.</returns>
    public static IEnumerable<Finding> Ask(IReadOnlyList<DesignResult> results) =>
        from result in results
        where result.Grade is not null
        select FindingCatalogue.Design(
            new FindingPlace(null, result.Line.Where),
            result.Verdict,
            result.Mend,
            result.Margin is { } margin && double.IsFinite(margin) ? margin : null,
            result.Grade ?? Grade.Note,
            string.Join("; ", result.Answers.Select(a => a.Basis.Source).Distinct(StringComparer.Ordinal)));
}
