using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Drawings;

/// <summary>
/// A drawing as solids in one of its four variants. Part frame, millimetres. Adds and cuts are applied in the order typed. A cut typed through passes
/// all the metal at its place. Least and most metal screen: a good part lies between them, a part between them need not be good.
/// </summary>
public sealed class DrawnPart
{
    // How far a through cut stands out past the drawing on both sides.
    private const double Past = 1;

    private readonly Dictionary<string, DrawnFeature> byName;

    private DrawnPart(PartVariant variant, IReadOnlyList<DrawnFeature> features, ISolid solid)
    {
        Variant = variant;
        Features = features;
        Solid = solid;
        byName = features.ToDictionary(f => f.Feature.Name, StringComparer.Ordinal);
    }

    /// <summary>Which limits were taken.</summary>
    public PartVariant Variant { get; }

    /// <summary>Its features in the order typed.</summary>
    public IReadOnlyList<DrawnFeature> Features { get; }

    /// <summary>The whole part.</summary>
    public ISolid Solid { get; }

    /// <summary>A feature by its name; null where the drawing has none of that name.</summary>
    /// <param name="name">The name as the drawing has it.</param>
    /// <returns>The feature, or null.</returns>
    public DrawnFeature? Find(string name) => byName.GetValueOrDefault(name);

    /// <summary>Draws a part.</summary>
    /// <param name="drawing">The drawing, checked by the reader: at least one add, names that exist, sizes above 0.</param>
    /// <param name="variant">Which limits are taken.</param>
    /// <returns>The part.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="drawing"/> is null.</exception>
    /// <exception cref="ArgumentException">The drawing adds nothing, cuts before it adds, or names a feature that it does not have.</exception>
    public static DrawnPart Of(Drawing drawing, PartVariant variant)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        var outlines = new FeatureOutlines(drawing, variant);
        var features = new List<DrawnFeature>();
        ISolid? solid = null;
        foreach (var feature in drawing.Features)
        {
            var drawn = Draw(feature, outlines, solid?.Bounds);
            features.Add(drawn);
            if (feature.IsCut)
            {
                solid = new Difference(
                    solid ?? throw new ArgumentException($"{feature.Name} is cut before anything is there.", nameof(drawing)),
                    drawn.Solid);
            }
            else
            {
                solid = solid is null ? drawn.Solid : new Union(solid, drawn.Solid);
            }
        }

        return new(variant, features, solid ?? throw new ArgumentException("The drawing adds nothing.", nameof(drawing)));
    }

    private static DrawnFeature Draw(Feature feature, FeatureOutlines outlines, Box3? sofar)
    {
        var (centres, outer, inner) = outlines.Of(feature);
        var (from, to) = outlines.Ends(feature);
        if (feature is { Through: true, IsCut: true } && sofar is { } box)
        {
            (from, to) = FeatureView.Ends(feature.View, box);
            (from, to) = (from - Past, to + Past);
        }

        var solids = outer.Select((o, i) => FeatureSolids.Of(feature, outlines, (o, inner.Count > 0 ? inner[i] : null, centres[i]), from, to)).ToArray();
        return new()
        {
            Feature = feature,
            Centres = centres,
            Outlines = outer,
            Bores = inner,
            Across = outlines.Across(feature),
            From = from,
            To = to,
            Solid = solids.Length == 1 ? solids[0] : new Union(solids),
        };
    }
}
