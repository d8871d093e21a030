namespace Handwheel.Jobs.Moves;

/// <summary>The spindle is started or stopped. Where a course says neither, nothing is known of it since the cutter was put in.</summary>
/// <param name="Rpm">Speed it is started at, turns a minute, clockwise from above; 0: it is stopped, and stands.</param>
public sealed record Spindle(double Rpm) : CourseEvent;
