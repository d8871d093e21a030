using Handwheel.Jobs.Findings;

namespace Handwheel.Proof.Following;

/// <summary>A course as it was truly followed: what every question of the proof looks at.</summary>
internal sealed record Trace
{
    /// <summary>Steps in order.</summary>
    public required IReadOnlyList<FollowedStep> Steps { get; init; }

    /// <summary>Moves and cutting handwork in order.</summary>
    public required IReadOnlyList<Stroke> Strokes { get; init; }

    /// <summary>Touch-offs in order.</summary>
    public required IReadOnlyList<FollowedTouch> Touches { get; init; }

    /// <summary>Changes of cutter in order.</summary>
    public required IReadOnlyList<FollowedChange> Changes { get; init; }

    /// <summary>Measurements in order.</summary>
    public required IReadOnlyList<FollowedMeasure> Measures { get; init; }

    /// <summary>The metal as each stage with a machine began.</summary>
    public required IReadOnlyList<(FollowedStage Stage, Metal Metal)> Held { get; init; }

    /// <summary>The bare stock.</summary>
    public required Metal Bare { get; init; }

    /// <summary>The metal in the end.</summary>
    public required Metal Last { get; init; }

    /// <summary>What was found while following: zeros missing, cutters not on hand.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Whether something could not be followed (a cutter that is not on hand), so that what is left over proves nothing.</summary>
    public required bool Incomplete { get; init; }
}
