namespace Handwheel.Plan.Lines;

/// <summary>The spindle is started or stopped.</summary>
public sealed record SpindleLine : SheetLine
{
    /// <summary>Speed it is started at, turns a minute, clockwise from above; 0: it is stopped.</summary>
    public required double Rpm { get; init; }
}
