using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Following;

/// <summary>One measurement.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Step">The step.</param>
/// <param name="Measured">What the course says.</param>
/// <param name="Strokes">How many strokes were made by then.</param>
internal sealed record FollowedMeasure(FollowedStage Stage, CourseStep Step, Measured Measured, int Strokes);
