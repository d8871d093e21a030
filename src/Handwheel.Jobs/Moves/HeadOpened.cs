namespace Handwheel.Jobs.Moves;

/// <summary>A boring head is set to another diameter, its bar left in: Z stands as it was found.</summary>
/// <param name="Across">The diameter it is set to, millimetres.</param>
/// <param name="Rpm">Spindle speed from here on.</param>
public sealed record HeadOpened(double Across, double Rpm) : CourseEvent;
