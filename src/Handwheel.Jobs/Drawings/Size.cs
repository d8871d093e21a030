using Handwheel.Jobs.Documents;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Drawings;

/// <summary>One toleranced measurement of the drawing (ISO 14405-1 calls it a size).</summary>
public sealed record Size
{
    /// <summary>As typed: <c>hub to pin along x</c>.</summary>
    public required string Name { get; init; }

    /// <summary>What it measures.</summary>
    public required SizeKind Kind { get; init; }

    /// <summary>The feature measured, or the first of two (the datum of a distance).</summary>
    public required string Feature { get; init; }

    /// <summary>The second feature of a distance or an angle.</summary>
    public string? Other { get; init; }

    /// <summary>The face of the first feature a distance is taken from: <c>top</c>, <c>bottom</c>, <c>left</c>, <c>right</c>, <c>near</c>, <c>far</c>; for a cone&#39;s across the end it is taken at; null: its axis.</summary>
    public string? Face { get; init; }

    /// <summary>The face of the second feature; null: its axis.</summary>
    public string? OtherFace { get; init; }

    /// <summary>The direction of a distance: <c>x</c>, <c>y</c>, <c>z</c>; null for the straight distance. For an angle without a second feature, the axis it is taken to.</summary>
    public string? Along { get; init; }

    /// <summary>Its limits.</summary>
    public required Limits Limits { get; init; }

    /// <summary>Whether a line of the drawing stated it; false where it comes from a feature with <c>others</c>.</summary>
    public required bool Stated { get; init; }

    /// <summary>Where it was typed (its feature's line where it was not stated).</summary>
    public required SourceSpan Where { get; init; }
}
