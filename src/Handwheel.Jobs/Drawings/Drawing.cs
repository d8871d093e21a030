using Handwheel.Jobs.Designs;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Drawings;

/// <summary>What the finished part must be. Part frame, millimetres; Z up out of the top view.</summary>
public sealed record Drawing
{
    /// <summary>The features in the order typed; adds and cuts are applied in that order.</summary>
    public required IReadOnlyList<Feature> Features { get; init; }

    /// <summary>Every size: stated ones first in the order typed, then one for each dimension left to <c>others</c>.</summary>
    public required IReadOnlyList<Size> Sizes { get; init; }

    /// <summary>The general limits as deviations: <c>others +/-0.1</c>; null where none were given.</summary>
    public Limits? Others { get; init; }

    /// <summary>What it must stand, in the order typed: the lines of the design.</summary>
    public IReadOnlyList<DesignLine> Designs { get; init; } = [];
}
