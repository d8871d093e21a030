using Handwheel.Jobs.Moves;

namespace Handwheel.Slips;

/// <summary>One mistake done to a course.</summary>
/// <param name="Kind">Which of the kinds.</param>
/// <param name="What">What was done, in words.</param>
/// <param name="Course">The course with it.</param>
public sealed record Slip(string Kind, string What, Course Course);
