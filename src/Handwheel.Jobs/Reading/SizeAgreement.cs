using System.Globalization;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

// Holds angles, and distances from a face to a side, against the outlines that are drawn, once all of them are known.
internal sealed class SizeAgreement(FindingBag bag, Drawing drawing, LengthUnit unit)
{
    private const double Closed = 1e-6;
    private readonly Dictionary<string, Feature> features = drawing.Features.ToDictionary(f => f.Name, StringComparer.Ordinal);
    private readonly FeatureOutlines outlines = new(drawing, PartVariant.Nominal);

    public void Check()
    {
        foreach (var size in drawing.Sizes.Where(s => s.Stated && features.ContainsKey(s.Feature) && (s.Other is null || features.ContainsKey(s.Other))))
        {
            // An angle without limits has its finding already.
            if (size is { Kind: SizeKind.Angle, Limits.Width: > 0 })
            {
                Angle(size);
            }
            else if (size is { Kind: SizeKind.Distance, Other: not null } && (IsSide(size.Face) || IsSide(size.OtherFace)))
            {
                Sides(size);
            }
            else if (size.Kind == SizeKind.Radius && features[size.Feature].Shape is OutlineShape)
            {
                Radius(size);
            }
        }
    }

    // An outline's radius is that of one of its arcs; any other shape's stands in its own line.
    private void Radius(Size size)
    {
        var arcs = outlines.Of(features[size.Feature]).Outlines[0].Pieces.Where(p => p.IsArc).Select(p => p.Radius).OrderBy(r => Math.Abs(r - size.Limits.Middle)).ToList();
        if (arcs.Count == 0)
        {
            bag.Add(FindingCatalogue.NotThere(size.Where, $"'{size.Feature}' has no arc, so it has no radius.", "Round a corner of the outline, or leave the size out."));
        }
        else if (arcs[0] < size.Limits.Lower - Closed || arcs[0] > size.Limits.Upper + Closed)
        {
            bag.Add(FindingCatalogue.Contradiction(
                size.Where,
                $"The size says {size.Name} {unit.Said(size.Limits.Nominal)}; the nearest arc is drawn with {unit.Said(arcs[0])}.",
                "Write the same value in both."));
        }
    }

    // The directions of straight sides in the plan of their view, radians from its first axis.
    private static IEnumerable<double> Directions(Outline outline) =>
        outline.Pieces.Where(p => !p.IsArc && p.Length > Closed).Select(p => Math.Atan2(p.To.Y - p.From.Y, p.To.X - p.From.X));

    private static bool IsSide(string? face) => face is "left" or "right" or "near" or "far";

    // Which way an axis of the part lies in the plan of a view; null where the view looks along it.
    private static double? AxisIn(View view, string axis) => (view, axis) switch
    {
        (View.Top, "x") or (View.Front, "x") or (View.Right, "y") => 0,
        (View.Top, "y") or (View.Front, "z") or (View.Right, "z") => Math.PI / 2,
        _ => null,
    };

    private void Angle(Size size)
    {
        var first = features[size.Feature];
        var from = Directions(outlines.Of(first).Outlines[0]).ToList();
        List<double> to;
        if (size.Other is { } name)
        {
            to = [.. Directions(outlines.Of(features[name]).Outlines[0])];
            if (features[name].View != first.View)
            {
                bag.Add(FindingCatalogue.NotThere(size.Where, $"'{first.Name}' and '{name}' are drawn in different views, so no angle is seen between them.", "Take the angle to 'x', 'y' or 'z'."));
                return;
            }
        }
        else if (AxisIn(first.View, size.Along ?? string.Empty) is { } axis)
        {
            to = [axis];
        }
        else
        {
            bag.Add(FindingCatalogue.NotThere(size.Where, $"'{first.Name}' is drawn looking along {size.Along}, so it has no angle to it.", "Take the angle to one of the other two axes."));
            return;
        }

        foreach (var (feature, sides) in new[] { (size.Feature, from), (size.Other ?? size.Feature, to) })
        {
            if (sides.Count == 0)
            {
                bag.Add(FindingCatalogue.NotThere(size.Where, $"'{feature}' has no straight side to take an angle from.", "Name a feature with straight sides."));
                return;
            }
        }

        var drawn = from.SelectMany(a => to.SelectMany(b => Between(a, b))).ToList();
        if (!drawn.Any(d => d >= size.Limits.Lower - Closed && d <= size.Limits.Upper + Closed))
        {
            var told = drawn.Select(d => Math.Round(d * 180 / Math.PI, 3)).Distinct().Order().Take(6).Select(d => d.ToString("0.###", CultureInfo.InvariantCulture));
            bag.Add(FindingCatalogue.Contradiction(
                size.Where,
                string.Create(CultureInfo.InvariantCulture, $"The size says {size.Name} {size.Limits.Nominal * 180 / Math.PI:0.###} deg; their sides are drawn at {string.Join(", ", told)} deg."),
                "Write the angle that is drawn, or draw the one that is meant."));
        }
    }

    // The angles two lines make: one, and what is left to half a turn.
    private static IEnumerable<double> Between(double a, double b)
    {
        var between = Math.Abs(a - b) % Math.PI;
        yield return between;
        yield return Math.PI - between;
    }

    private void Sides(Size size)
    {
        var axis = size.Along ?? "x";
        var pairs = Places(features[size.Feature], size.Face, axis).SelectMany(a => Places(features[size.Other!], size.OtherFace, axis).Select(b => Math.Abs(a - b))).ToList();
        if (!pairs.Any(d => d >= size.Limits.Lower - Closed && d <= size.Limits.Upper + Closed))
        {
            var drawn = pairs.MinBy(d => Math.Abs(d - size.Limits.Nominal));
            bag.Add(FindingCatalogue.Contradiction(
                size.Where,
                $"The size says {size.Name} {unit.Said(size.Limits.Nominal)}; they are drawn {unit.Said(drawn)} apart.",
                "Write the same value in both."));
        }
    }

    // Where a face of a feature (its axis without one) stands along an axis of the part, at each of its places.
    private IEnumerable<double> Places(Feature feature, string? face, string axis)
    {
        if (AxisIn(feature.View, axis) is not { } way)
        {
            yield return face switch
            {
                "left" or "near" or "bottom" => Math.Min(feature.From.Nominal, feature.To.Nominal),
                "right" or "far" or "top" => Math.Max(feature.From.Nominal, feature.To.Nominal),
                _ => (feature.From.Nominal + feature.To.Nominal) / 2,
            };
            yield break;
        }

        var (centres, outer, _) = outlines.Of(feature);
        for (var i = 0; i < outer.Count; i++)
        {
            double Along(Point2 p) => way == 0 ? p.X : p.Y;
            yield return face switch
            {
                "left" or "near" or "bottom" => Along(outer[i].Min),
                "right" or "far" or "top" => Along(outer[i].Max),
                _ => Along(centres[i]),
            };
        }
    }
}
