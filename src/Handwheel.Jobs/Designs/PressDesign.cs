using Handwheel.Jobs.Documents;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Designs;

/// <summary>A pin or shaft pressed into the part, or the part pressed into a hub: pressure, stress, push, torque.</summary>
public sealed record PressDesign : DesignLine
{
    /// <summary>The feature that is the joint.</summary>
    public required string Feature { get; init; }

    /// <summary>Its across in the drawing, mm.</summary>
    public required Limits OwnLimits { get; init; }

    /// <summary>Whether it is the hole of the two.</summary>
    public required bool OwnIsHole { get; init; }

    /// <summary>The other as typed.</summary>
    public required string Counter { get; init; }

    /// <summary>Its limits, mm.</summary>
    public required Limits CounterLimits { get; init; }

    /// <summary>Length of the joint, mm; null: what the drawing has.</summary>
    public Typed? Long { get; init; }

    /// <summary>Outside of the hub, mm; null: what the drawing has round the hole, or twice the joint.</summary>
    public Typed? Outside { get; init; }

    /// <summary>What the other is made of; null: steel.</summary>
    public string? Of { get; init; }

    /// <summary>Torque it is to pass, N mm.</summary>
    public Typed? Drives { get; init; }

    /// <summary>Pull along its axis it is to stand, N.</summary>
    public Typed? Pull { get; init; }
}
