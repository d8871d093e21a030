using Handwheel.Jobs.Moves;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Lines;

/// <summary>A touch-off: a reading that is set, not cranked to. It has no number.</summary>
public sealed record TouchOffLine : SheetLine
{
    /// <summary>The event the proof sees.</summary>
    public required TouchOff TouchOff { get; init; }

    /// <summary>What to do, in words.</summary>
    public required string Says { get; init; }

    /// <summary>The side to arrive from as the dial is set: <c>from -</c>, <c>from +</c>; empty on a readout, where it does not matter.</summary>
    public string Arrive { get; init; } = string.Empty;

    /// <summary>How the value set was worked out.</summary>
    public required Working Working { get; init; }
}
