namespace Handwheel.Jobs.Moves;

/// <summary>Something done by hand, as far as metal is concerned.</summary>
public sealed record Handwork : CourseEvent
{
    /// <summary>What: <c>press</c>, <c>run</c>, <c>break web</c>, <c>file</c>, <c>rub</c>, <c>break edges</c>, <c>saw</c>, <c>tap</c>, <c>other</c>.</summary>
    public required string Work { get; init; }

    /// <summary>The broach, punch or drill used; null else.</summary>
    public string? Cutter { get; init; }

    /// <summary>Part-frame place: axis of a press or drill; a point of the web that is broken; a point of the face filed or rubbed.</summary>
    public Place3 At { get; init; }

    /// <summary>The direction worked in, part frame, unit: into the metal for a press or drill; out of the part for a face filed or rubbed.</summary>
    public Place3 Direction { get; init; }

    /// <summary>Depth of a press or drill along <see cref="Direction"/> from <see cref="At"/>; how far off the kept face metal may be removed for filing and rubbing; how far the waste reaches beyond a hand saw&#39;s cut.</summary>
    public double Depth { get; init; }

    /// <summary>Turn of a press&#39;s prism about its axis, degrees from part X.</summary>
    public double Turn { get; init; }

    /// <summary>The feature or face worked, for findings.</summary>
    public string? Feature { get; init; }
}
