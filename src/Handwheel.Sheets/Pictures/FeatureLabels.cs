using Handwheel.Jobs.Drawings;
using Handwheel.Quantities;
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
            if (Sides(drawing, feature, numbers) is { Count: > 0 } sides)
            {
                labels.AddRange(sides.Select(s => (s.Label, feature.Centre, s.Rim, feature.Name)));
            }
            else if (Label(drawing, feature, numbers) is var (label, rim))
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

    /// <summary>What is seen only from the front or the right: each such feature in a line with its sizes, as no label from above can point at it.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="numbers">How the sheet prints.</param>
    /// <returns>Lines in the order typed.</returns>
    public static IReadOnlyList<string> FromAside(Drawing drawing, SheetNumbers numbers)
    {
        var lines = new List<string>();
        foreach (var feature in drawing.Features.Where(f => f.View != View.Top))
        {
            var labels = Sides(drawing, feature, numbers).Select(s => s.Label).ToList();
            if (labels.Count == 0 && Label(drawing, feature, numbers) is var (label, _))
            {
                labels.Add(label);
            }

            var at = $"{numbers.Short(feature.Centre.X)}, {numbers.Short(feature.Centre.Y)}";
            var sizes = labels.Select(l => $"{(l.Symbol == "round" ? "\u00D8 " : string.Empty)}{l.Value}{(l.Upper.Length > 0 ? " " + l.Upper : string.Empty)}{(l.Lower.Length > 0 ? " " + l.Lower : string.Empty)} {l.Name}").ToArray();
            lines.Add($"from {(feature is { View: View.Top, Behind: true } ? string.Empty : "the ")}{FeatureView.Said(feature.View, feature.Behind)}: {(sizes.Length > 0 ? $"{string.Join("; ", sizes)}; middle at {at}" : Name(feature, numbers) + ", its corners as the drawing says")}");
        }

        return lines;
    }

    // A block or slot of which a side has limits of its own is told side by side, each with its limits.
    private static List<(SizeLabel Label, double Rim)> Sides(Drawing drawing, Feature feature, SheetNumbers numbers)
    {
        var name = Name(feature, numbers);
        (Limits Long, Limits Wide)? sides = feature.Shape switch
        {
            BlockShape block => (block.Wide, block.Deep),
            SlotShape slot => (slot.Long, slot.Wide),
            _ => null,
        };
        if (sides is not { } s || (!Stated(drawing, feature, SizeKind.Long) && !Stated(drawing, feature, SizeKind.Wide)))
        {
            return [];
        }

        return
        [
            (SizeLabel.Of(numbers, s.Long, Stated(drawing, feature, SizeKind.Long), name: $"{feature.Name}, long"), s.Wide.Middle / 2),
            (SizeLabel.Of(numbers, s.Wide, Stated(drawing, feature, SizeKind.Wide), name: $"{name}, wide"), s.Wide.Middle / 2),
        ];
    }

    // A cut cone is told as a countersink: its widest, and the angle between its sides.
    private static SizeLabel Cone(Feature feature, ConeShape cone, SheetNumbers numbers, string name)
    {
        var (low, high) = (cone.AcrossLow.Nominal, cone.AcrossHigh.Nominal);
        if (!feature.IsCut)
        {
            return new() { Symbol = "round", Value = $"{numbers.Short(low)} to {numbers.Short(high)}", Name = name };
        }

        var angle = 2 * Math.Atan(Math.Abs(high - low) / 2 / (feature.To.Nominal - feature.From.Nominal)) * 180 / Math.PI;
        return new() { Symbol = "round", Value = numbers.Short(Math.Max(low, high)), Name = $"{name}, {Markup.Number(Math.Round(angle, 1))}\u00B0" };
    }

    private static (SizeLabel Label, double Rim)? Label(Drawing drawing, Feature feature, SheetNumbers numbers)
    {
        var name = Name(feature, numbers);
        return feature.Shape switch
        {
            RoundShape round => (SizeLabel.Of(numbers, round.Across, Stated(drawing, feature, SizeKind.Across), "round", name), round.Across.Middle / 2),
            RingShape ring => (SizeLabel.Of(numbers, ring.Across, Stated(drawing, feature, SizeKind.Across), "round", name), ring.Across.Middle / 2),
            ConeShape cone => (Cone(feature, cone, numbers, name), Math.Max(cone.AcrossLow.Middle, cone.AcrossHigh.Middle) / 2),
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
