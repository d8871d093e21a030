using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Steps;

/// <summary><c>spot hub, pin</c>, <c>drill pin to -14.5 with d2.9</c>, <c>ream pin through with r3</c>, bore, counterbore, countersink, tap.</summary>
public sealed record HoleStep : Step
{
    /// <summary>Which.</summary>
    public required HoleWork Work { get; init; }

    /// <summary>The features, each at all its places.</summary>
    public required IReadOnlyList<string> Features { get; init; }

    /// <summary>Depth to full diameter; null: through (0.5 past the solid at that place), or for a spot 0.8 of the smallest hole that follows.</summary>
    public Typed? To { get; init; }

    /// <summary>Whether <c>through</c> was typed.</summary>
    public bool Through { get; init; }

    /// <summary>Depth of one peck; null: as the diameter asks.</summary>
    public Typed? Peck { get; init; }

    /// <summary>Diameter to reach for a bore, spot or countersink.</summary>
    public Typed? ToAcross { get; init; }

    /// <summary>Depth of cut a pass, a side, of a bore; null: as bar and metal ask.</summary>
    public Typed? PerPass { get; init; }

    /// <summary>Metal left, a side.</summary>
    public Typed? Allow { get; init; }
}
