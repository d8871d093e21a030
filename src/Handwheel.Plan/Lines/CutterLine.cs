namespace Handwheel.Plan.Lines;

/// <summary>A cutter is put in.</summary>
public sealed record CutterLine : SheetLine
{
    /// <summary>Its name.</summary>
    public required string Cutter { get; init; }

    /// <summary>Spindle speed, turns a minute; 0 by hand.</summary>
    public required double Rpm { get; init; }

    /// <summary>How far it stands out, millimetres.</summary>
    public required double Out { get; init; }
}
