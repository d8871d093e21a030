namespace Handwheel.Jobs.Moves;

/// <summary>A size is measured at this point; later moves of the step may be corrected by it.</summary>
/// <param name="Size">The size&#39;s name.</param>
/// <param name="Expected">What it should measure, millimetres.</param>
/// <param name="Corrects">Whether the moves that follow are corrected by what was measured.</param>
public sealed record Measured(string Size, double Expected, bool Corrects) : CourseEvent;
