namespace Handwheel.Jobs.Moves;

/// <summary>A cutter is put in; it ends the Z zero of the one before, and the quill is up.</summary>
/// <param name="Cutter">Its name in the shop.</param>
/// <param name="Rpm">Spindle speed.</param>
public sealed record CutterIn(string Cutter, double Rpm) : CourseEvent
{
    /// <summary>The diameter a boring head is set to, millimetres; 0: as the shop has it.</summary>
    public double Across { get; init; }

    /// <summary>How a broach stands in the spindle, locked against turning: the direction of one side&#39;s normal, degrees counterclockwise from holding X; 0 for what turns.</summary>
    public double Turn { get; init; }
}
