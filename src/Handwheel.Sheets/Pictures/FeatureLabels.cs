using Handwheel.Jobs.Drawings;
using Handwheel.Sheets.Text;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>What a drawing writes beside each feature, and the place on the feature it points at.</summary>
internal static class FeatureLabels
{
    /// <summary>The labels of the features drawn from above.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="numbers">How the sheet prints.</param>
    /// <returns>Label, centre, how far its rim is from there, and the feature's name.</returns>
    public static IReadOnlyList<(SizeLabel Label, Point2 Centre, double Rim, string Name)> Of(Drawing drawing, SheetNumbers numbers)
    {
        var labels = new List<(SizeLabel, Point2, double, string)>();
        foreach (var feature in drawing.Features.Where(f => f.View == View.Top))
        {
            if (Label(drawing, feature, numbers) is var (label, rim))
            {
                labels.Add((label, feature.Centre, rim, feature.Name));
            }

            if (feature.Shape is RingShape ring)
            {
                labels.Add((SizeLabel.Of(numbers, ring.Bore, stated: false, "round", feature.Name + ", inside"), feature.Centre, ring.Bore.Middle / 2, feature.Name));
            }
        }

        return labels;
    }

    private static (SizeLabel Label, double Rim)? Label(Drawing drawing, Feature feature, SheetNumbers numbers)
    {
        var name = Name(feature, numbers);
        return feature.Shape switch
        {
            RoundShape round => (SizeLabel.Of(numbers, round.Across, Stated(drawing, feature, SizeKind.Across), "round", name), round.Across.Middle / 2),
            RingShape ring => (SizeLabel.Of(numbers, ring.Across, Stated(drawing, feature, SizeKind.Across), "round", name), ring.Across.Middle / 2),
            ConeShape cone => (new SizeLabel { Symbol = "round", Value = $"{numbers.Short(cone.AcrossLow.Nominal)} to {numbers.Short(cone.AcrossHigh.Nominal)}", Name = name }, Math.Max(cone.AcrossLow.Middle, cone.AcrossHigh.Middle) / 2),
            PolygonShape polygon => (SizeLabel.Of(numbers, polygon.AcrossFlats, Stated(drawing, feature, SizeKind.AcrossFlats), polygon.Sides == 4 ? "square" : string.Empty, polygon.Sides == 4 ? name : Invariant($"{polygon.Sides} flats, {name}")), polygon.AcrossFlats.Middle / 2),
            BlockShape block => (new SizeLabel { Value = $"{numbers.Short(block.Wide.Nominal)} \u00D7 {numbers.Short(block.Deep.Nominal)}", Name = name }, Math.Min(block.Wide.Middle, block.Deep.Middle) / 2),
            SlotShape slot => (new SizeLabel { Value = $"{numbers.Short(slot.Wide.Nominal)} \u00D7 {numbers.Short(slot.Long.Nominal)}", Name = name }, slot.Wide.Middle / 2),
            _ => null,
        };
    }

    private static string Name(Feature feature, SheetNumbers numbers)
    {
        var many = feature.Places.Count > 1 ? Invariant($"{feature.Places.Count} of ") : string.Empty;
        var thread = feature.Thread is { } t ? ", " + t : string.Empty;
        var depth = !feature.IsCut ? string.Empty : feature.Through ? ", through" : $", {numbers.Short(feature.To.Nominal - feature.From.Nominal)} deep";
        return many + feature.Name + thread + depth;
    }

    private static bool Stated(Drawing drawing, Feature feature, SizeKind kind) =>
        drawing.Sizes.Any(s => s.Stated && s.Kind == kind && string.Equals(s.Feature, feature.Name, StringComparison.Ordinal))
        || drawing.Sizes.Any(s => s.Kind == kind && string.Equals(s.Feature, feature.Name, StringComparison.Ordinal) && drawing.Others is { } o && Math.Abs(s.Limits.Width - o.Width) > 1e-9);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
