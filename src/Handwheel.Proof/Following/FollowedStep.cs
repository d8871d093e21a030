using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Following;

/// <summary>One step as it was followed: the metal before and after it.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Step">The step.</param>
/// <param name="Before">The metal before.</param>
/// <param name="After">The metal after.</param>
internal sealed record FollowedStep(FollowedStage Stage, CourseStep Step, Metal Before, Metal After);
