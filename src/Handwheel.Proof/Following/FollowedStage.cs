using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Following;

/// <summary>One stage as it was followed.</summary>
/// <param name="Index">Its place among the stages.</param>
/// <param name="Facts">What the course says of it.</param>
/// <param name="Frame">Its frames; null by hand.</param>
internal sealed record FollowedStage(int Index, CourseStage Facts, HoldingFrame? Frame);
