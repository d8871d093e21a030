namespace Handwheel.Jobs.Drawings;

/// <summary>Which sizes a feature has of itself.</summary>
public static class DrawnSizes
{
    /// <summary>The kinds of size that can be asked of one feature alone.</summary>
    /// <param name="feature">The feature.</param>
    /// <returns>The kinds, in the order a drawing would name them.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="feature"/> is null.</exception>
    public static IReadOnlyList<SizeKind> Of(Feature feature)
    {
        ArgumentNullException.ThrowIfNull(feature);
        SizeKind[] inPlan = feature.Shape switch
        {
            RoundShape or RingShape => [SizeKind.Across, SizeKind.Radius],
            ConeShape => [SizeKind.Across, SizeKind.Angle],
            PolygonShape p when p.Sides % 2 == 0 => [SizeKind.AcrossFlats],
            BlockShape => [SizeKind.Long, SizeKind.Wide, SizeKind.AcrossFlats],
            SlotShape => [SizeKind.Long, SizeKind.Wide],
            _ => [],
        };
        SizeKind[] along = feature switch
        {
            { IsCut: true, Through: true } => [],
            { IsCut: true } => [SizeKind.Deep],
            _ => [SizeKind.High],
        };
        SizeKind[] place = feature.Shape is TangentShape or OutlineShape ? [] : [SizeKind.Position];
        return [.. inPlan, .. along, .. place];
    }
}
