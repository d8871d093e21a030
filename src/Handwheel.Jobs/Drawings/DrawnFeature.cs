using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Drawings;

/// <summary>One feature of a drawing in one of its variants. Millimetres; outlines and centres in the plan of the feature&#39;s view, part frame.</summary>
public sealed record DrawnFeature
{
    /// <summary>The feature as typed.</summary>
    public required Feature Feature { get; init; }

    /// <summary>Its centre at each place.</summary>
    public required IReadOnlyList<Point2> Centres { get; init; }

    /// <summary>Its outer outline at each place.</summary>
    public required IReadOnlyList<Outline> Outlines { get; init; }

    /// <summary>The inner outline of a ring at each place; empty for anything else.</summary>
    public required IReadOnlyList<Outline> Bores { get; init; }

    /// <summary>Diameter of a round or ring, across flats of a polygon, width of a slot, greater diameter of a cone; null for anything else.</summary>
    public required double? Across { get; init; }

    /// <summary>Its lower end along its view&#39;s axis. A cut typed through reaches past the whole drawing.</summary>
    public required double From { get; init; }

    /// <summary>Its upper end along its view&#39;s axis.</summary>
    public required double To { get; init; }

    /// <summary>Its solid at all its places, before later features add to it or cut it.</summary>
    public required ISolid Solid { get; init; }
}
