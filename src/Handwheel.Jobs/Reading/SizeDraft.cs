using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Drawings;

namespace Handwheel.Jobs.Reading;

/// <summary>A <c>size</c> line before it is worked out.</summary>
internal sealed record SizeDraft
{
    /// <summary>Its line.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Its name as typed, lower-cased.</summary>
    public required string Name { get; init; }

    /// <summary>Its name&#39;s place.</summary>
    public required SourceSpan NameWhere { get; init; }

    /// <summary>The feature.</summary>
    public required FeatureDraft Feature { get; init; }

    /// <summary>What it measures.</summary>
    public required SizeKind Kind { get; init; }

    /// <summary>The feature&#39;s measure it limits; null for distances, angles, positions, radii of corners.</summary>
    public Measure? Measure { get; init; }

    /// <summary>The second feature.</summary>
    public FeatureDraft? Other { get; init; }

    /// <summary>The direction of a distance.</summary>
    public string? Along { get; init; }

    /// <summary>The face of the first feature.</summary>
    public string? Face { get; init; }

    /// <summary>The face of the second.</summary>
    public string? OtherFace { get; init; }

    /// <summary>Its value.</summary>
    public required TypedNumber Value { get; init; }

    /// <summary>Its limits; null: others.</summary>
    public LimitsDraft? Limits { get; init; }

    /// <summary>Whether the typed value is a radius of what the measure has as a diameter.</summary>
    public bool IsRadius => Kind == SizeKind.Radius;
}
