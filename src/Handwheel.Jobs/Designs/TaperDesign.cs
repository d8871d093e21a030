using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Designs;

/// <summary>A taper in its socket, drawn in by a pull or by a drawbar&#39;s torque: does it hold itself, what torque does it pass?</summary>
public sealed record TaperDesign : DesignLine
{
    /// <summary>Family of a named taper: <c>Morse</c>; null for a cone of the drawing.</summary>
    public string? Family { get; init; }

    /// <summary>Its number; empty where the family has one size only.</summary>
    public string Number { get; init; } = string.Empty;

    /// <summary>A cone of the drawing; null for a named taper.</summary>
    public string? Feature { get; init; }

    /// <summary>The drawbar&#39;s thread; null where a pull was typed.</summary>
    public string? Drawbar { get; init; }

    /// <summary>Torque on the drawbar, N mm.</summary>
    public Typed? Torque { get; init; }

    /// <summary>Grade of the drawbar; null: 8.8 or grade 5.</summary>
    public string? Grade { get; init; }

    /// <summary>The pull that draws it in, N; null: what the torque gives.</summary>
    public Typed? Pull { get; init; }

    /// <summary>The torque it is to pass, N mm; null: only told what it passes.</summary>
    public Typed? Drives { get; init; }

    /// <summary>How the faces are: <c>oiled</c>, <c>dry</c>; null: wiped clean.</summary>
    public string? Surface { get; init; }
}
