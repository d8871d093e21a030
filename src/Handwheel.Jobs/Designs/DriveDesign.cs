using Handwheel.Jobs.Documents;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Designs;

/// <summary>A socket of an even number of sides driven round by a shaft that fits it.</summary>
public sealed record DriveDesign : DesignLine
{
    /// <summary>The socket.</summary>
    public required string Feature { get; init; }

    /// <summary>Its sides: 4 or 6.</summary>
    public required int Sides { get; init; }

    /// <summary>Across its flats in the drawing, mm.</summary>
    public required Limits Flats { get; init; }

    /// <summary>The torque it takes, N mm.</summary>
    public required Typed Torque { get; init; }

    /// <summary>Length that bears, mm; null: what the drawing has.</summary>
    public Typed? Long { get; init; }

    /// <summary>What the shaft is made of; null: mild steel.</summary>
    public string? Of { get; init; }
}
