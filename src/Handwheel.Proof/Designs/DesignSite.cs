using Handwheel.Jobs.Drawings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Trade.Metals;

namespace Handwheel.Proof.Designs;

/// <summary>What a line of a design is checked on: the drawing at its worst limits, the metal, the shop&#39;s press.</summary>
internal sealed record DesignSite
{
    /// <summary>The part with every limit on its side of least metal.</summary>
    public required DrawnPart Least { get; init; }

    /// <summary>The job&#39;s metal; mild steel where the reference does not have it.</summary>
    public required Metal Metal { get; init; }

    /// <summary>Whether the reference has it.</summary>
    public required bool MetalKnown { get; init; }

    /// <summary>The unit lengths are told in.</summary>
    public required LengthUnit Unit { get; init; }

    /// <summary>What the shop&#39;s press gives, N; null: none.</summary>
    public double? PressPush { get; init; }

    /// <summary>A metal by the name the reader found; the job&#39;s own for null.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The metal.</returns>
    public Metal MetalOf(string? name) => name is null ? Metal : MetalTable.Find(name) ?? Metal;

    /// <summary>The stress at which a metal gives way for good: yield, or tensile where it has none.</summary>
    /// <param name="metal">The metal.</param>
    /// <returns>MPa.</returns>
    public static double Strength(Metal metal) => double.IsNaN(metal.YieldMPa) ? metal.TensileMPa : metal.YieldMPa;

    /// <summary>Length of metal right round a hole, along it: the least of eight lines just off its edge, at its first place.</summary>
    /// <param name="feature">The hole.</param>
    /// <param name="corners">How far its corners lie beyond its flats: 1 for a round.</param>
    /// <returns>mm; 0 where there is none.</returns>
    public double RoundHole(DrawnFeature feature, double corners = 1)
    {
        var radius = (Radius(feature) * corners) + 0.02;
        var least = double.PositiveInfinity;
        for (var i = 0; i < 8; i++)
        {
            var (s, c) = Math.SinCos((i + 0.25) * Math.PI / 4);
            var centre = feature.Centres[0];
            least = Math.Min(least, Along(feature, new Point2(centre.X + (radius * c), centre.Y + (radius * s))));
        }

        return least;
    }

    /// <summary>Metal outside a hole: the thinnest seen from its axis, half way along it.</summary>
    /// <param name="feature">The hole.</param>
    /// <returns>mm.</returns>
    public double Round(DrawnFeature feature)
    {
        var bounds = Least.Solid.Bounds;
        var (low, high) = FeatureView.Ends(feature.Feature.View, bounds);
        var middle = (Math.Max(feature.From, low) + Math.Min(feature.To, high)) / 2;
        var radius = Radius(feature);
        var thinnest = double.PositiveInfinity;
        for (var i = 0; i < 48; i++)
        {
            var (s, c) = Math.SinCos((i + 0.25) * Math.PI / 24);
            var line = Line3.Through(FeatureView.Place(feature.Feature.View, feature.Centres[0], middle), FeatureView.Place(feature.Feature.View, feature.Centres[0] + new Point2(c, s), middle));
            var span = Least.Solid.Sound(line).Where(t => t.To > radius).Select(t => t.To - Math.Max(radius, t.From)).FirstOrDefault();
            thinnest = Math.Min(thinnest, span);
        }

        return thinnest;
    }

    // As it is cut at its worst limits, its place's too.
    private static double Radius(DrawnFeature feature) => (feature.Outlines[0].Max.X - feature.Outlines[0].Min.X) / 2;

    private double Along(DrawnFeature feature, Point2 p)
    {
        var line = Line3.Through(FeatureView.Place(feature.Feature.View, p, 0), FeatureView.Place(feature.Feature.View, p, 1));
        var length = 0.0;
        foreach (var span in Least.Solid.Sound(line))
        {
            length += Math.Max(0, Math.Min(span.To, feature.To) - Math.Max(span.From, feature.From));
        }

        return length;
    }
}
