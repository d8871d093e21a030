using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Designs;

/// <summary>The metal left between two features at their worst limits.</summary>
public sealed record WallDesign : DesignLine
{
    /// <summary>The one feature.</summary>
    public required string Feature { get; init; }

    /// <summary>The other.</summary>
    public required string Other { get; init; }

    /// <summary>The thickness needed, mm; null: what its load needs.</summary>
    public Typed? AtLeast { get; init; }

    /// <summary>Pressure in the first feature, MPa.</summary>
    public Typed? Holds { get; init; }
}
