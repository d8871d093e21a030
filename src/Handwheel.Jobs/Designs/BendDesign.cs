using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Designs;

/// <summary>The part as a beam: held at one feature, or resting on two, and loaded at another.</summary>
public sealed record BendDesign : DesignLine
{
    /// <summary>The load, N.</summary>
    public required Typed Load { get; init; }

    /// <summary>The feature at whose axis it stands.</summary>
    public required string At { get; init; }

    /// <summary>The feature it is held at; null where it rests on two.</summary>
    public string? Held { get; init; }

    /// <summary>The two features (or ends) it rests on; empty where it is held.</summary>
    public IReadOnlyList<string> Rests { get; init; } = [];

    /// <summary>Whether the load stands across in plan, and not along Z.</summary>
    public bool Across { get; init; }
}
