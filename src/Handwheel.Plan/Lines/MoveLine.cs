using Handwheel.Jobs.Moves;
using Handwheel.Plan.Workings;

namespace Handwheel.Plan.Lines;

/// <summary>One move of the sheet. Readings in millimetres (T: degrees of theta, unwrapped), holding frame, before any printed flip.</summary>
public sealed record MoveLine : SheetLine
{
    /// <summary>Its number, 1 on.</summary>
    public required int Number { get; init; }

    /// <summary>The axis cranked.</summary>
    public required Axis Axis { get; init; }

    /// <summary>Where it stands before.</summary>
    public required double From { get; init; }

    /// <summary>Where it is brought to.</summary>
    public required double To { get; init; }

    /// <summary>Another axis cranked along with it, where a step says two together; null else.</summary>
    public Axis? Along { get; init; }

    /// <summary>Whether it cuts.</summary>
    public required bool Cutting { get; init; }

    /// <summary>The side to arrive from: <c>from -</c>, <c>from +</c>; empty where it does not matter.</summary>
    public string Arrive { get; init; } = string.Empty;

    /// <summary>Way to crank: true clockwise.</summary>
    public required bool CrankClockwise { get; init; }

    /// <summary>Turns of the crank.</summary>
    public required double Turns { get; init; }

    /// <summary>Pace, seconds a turn of the crank; 0 free.</summary>
    public double Pace { get; init; }

    /// <summary>Axes locked meanwhile.</summary>
    public IReadOnlyList<Axis> Lock { get; init; } = [];

    /// <summary>Whether a slip here would scrap the part, so that the reading is read back into a box.</summary>
    public bool ReadBack { get; init; }

    /// <summary>For T: which way the work turns from above, in words (<c>clockwise</c>); empty else.</summary>
    public string WorkTurns { get; init; } = string.Empty;

    /// <summary>The same move as it is made in a bracket&#39;s last pass, where that begins elsewhere than the first; null else.</summary>
    public MoveLine? Last { get; init; }

    /// <summary>How the reading was worked out.</summary>
    public required Working Working { get; init; }
}
