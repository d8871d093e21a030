using Handwheel.Jobs.Findings;
using Handwheel.Proof.Nets;

namespace Handwheel.Proof.Questions;

/// <summary>What following the pieces showed.</summary>
/// <param name="Findings">Findings <c>release</c> and <c>loose</c>.</param>
/// <param name="Pieces">The pieces in the end, and the metal they are pieces of.</param>
/// <param name="Part">The piece that is the part; -1 where there is none.</param>
/// <param name="Result">The release.</param>
/// <param name="Finished">Whether the part stands as a piece of its own: released, or never meant to be.</param>
internal sealed record ReleaseAnswer(IReadOnlyList<Finding> Findings, PieceMap Pieces, int Part, ReleaseResult Result, bool Finished);
