namespace Handwheel.Jobs.Shops;

/// <summary>One axis of a machine: travel, readout or dial. Millimetres.</summary>
public sealed record MachineAxis
{
    /// <summary>Its whole travel.</summary>
    public required double Travel { get; init; }

    /// <summary>The readout's step; null where the axis has only its dial.</summary>
    public double? ReadoutStep { get; init; }

    /// <summary>Whether the readout or dial counts the other way; only printed readings flip.</summary>
    public bool CountsOtherWay { get; init; }

    /// <summary>Travel of one turn of the handwheel.</summary>
    public required double PerTurn { get; init; }

    /// <summary>Divisions on the dial.</summary>
    public required int Divisions { get; init; }

    /// <summary>Slack on reversing.</summary>
    public double Backlash { get; init; }

    /// <summary>Whether turning the handwheel clockwise makes the reading grow.</summary>
    public bool ClockwiseGrows { get; init; } = true;

    /// <summary>The step readings are rounded to: the readout's, else one division of the dial.</summary>
    public double Step => ReadoutStep ?? (PerTurn / Divisions);
}
