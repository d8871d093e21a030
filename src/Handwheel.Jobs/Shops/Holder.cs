using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Shops;

/// <summary>One vise, chuck or set of clamps. Millimetres.</summary>
public sealed record Holder
{
    /// <summary>Its name in the shop.</summary>
    public required string Name { get; init; }

    /// <summary>Its kind.</summary>
    public required HolderKind Kind { get; init; }

    /// <summary>Width of its jaws, along them; a chuck's diameter; a clamp's width.</summary>
    public required double JawsWide { get; init; }

    /// <summary>Opening at most.</summary>
    public required double Open { get; init; }

    /// <summary>Depth of its jaws, from their tops down to the bed; a clamp's height over what it holds.</summary>
    public required double JawsDeep { get; init; }

    /// <summary>Thickness of each jaw across, for what a cutter may strike.</summary>
    public double JawThick { get; init; } = 12;

    /// <summary>Height of its bed over what it stands on.</summary>
    public double BedHigh { get; init; } = 15;

    /// <summary>Width of its body across the jaws' opening, bed and screw included; 0: as the jaws ask.</summary>
    public double BodyLong { get; init; }

    /// <summary>Whether its jaws may be cut into (soft jaws).</summary>
    public bool Soft { get; init; }

    /// <summary>Grip with which it presses, newtons; 0 not said.</summary>
    public double Press { get; init; }

    /// <summary>Where it was typed.</summary>
    public required SourceSpan Where { get; init; }
}
