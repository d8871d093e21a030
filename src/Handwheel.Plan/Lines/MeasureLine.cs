using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Lines;

/// <summary>A measurement with its strip: if it measures this, crank to that.</summary>
public sealed record MeasureLine : SheetLine
{
    /// <summary>The size&#39;s name.</summary>
    public required string Size { get; init; }

    /// <summary>What is expected, millimetres.</summary>
    public required double Expected { get; init; }

    /// <summary>The least and greatest value allowed in the end; null where it has none.</summary>
    public (double Lower, double Upper)? Limits { get; init; }

    /// <summary>The axis corrected; null where nothing follows.</summary>
    public Jobs.Moves.Axis? Corrects { get; init; }

    /// <summary>Pairs of measured value and reading to crank to, millimetres.</summary>
    public IReadOnlyList<(double Measures, double CrankTo)> Strip { get; init; } = [];

    /// <summary>Whether the strip tells, in place of a reading, how much a boring head is opened on the diameter.</summary>
    public bool OpensHead { get; init; }

    /// <summary>How a reading of the strip is worked out; null without a strip.</summary>
    public Working? Working { get; init; }

    /// <summary>What to measure with, in words.</summary>
    public required string With { get; init; }
}
