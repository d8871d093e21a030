using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

// Makes the sizes of a drawing, and holds each against what is drawn.
internal sealed class SizeBuilder(FindingBag bag, DrawingWorker worker)
{
    // Null, with a finding made, where the solid does not have it.
    public Size? Build(SizeDraft size)
    {
        if (size.Measure is { } measure)
        {
            return Measured(size, measure);
        }

        return size.Kind switch
        {
            SizeKind.Distance => new DistanceCheck(bag, worker).Sound(size) is { } limits ? Made(size, limits, false) : null,
            SizeKind.Angle => worker.Own(size, true) is { } limits ? Made(size, limits, true) : null,
            SizeKind.Position => worker.Evaluator.Size(size.Value) is { } disc ? Made(size, new ExactLimits(disc, Exact.Zero, disc), false) : null,
            _ => worker.Own(size, false) is { } limits ? Made(size, limits, false) : null,
        };
    }

    // The dimensions no size line states: those with limits of their own in the feature's line, or those left to others.
    public IEnumerable<Size> Left(FeatureDraft feature, bool own)
    {
        Measure[] heights = feature.Through ? [] : [Measure.High];
        foreach (var measure in Measures.Of(feature.Shape).Concat(heights))
        {
            var typed = feature.Typed.TryGetValue(measure, out var number) && number.Limits is not null;
            // A countersink's point hangs in the hole it sinks: it has no lower end to be measured.
            var countersinkPoint = feature is { Shape: ShapeForm.Cone, Point: not null } && measure is Measure.AcrossBottom or Measure.High && !feature.Typed.ContainsKey(measure);
            if (typed != own || countersinkPoint || worker.SizeOf(feature, measure) is not null || worker.LimitsOf(feature, measure, feature.Where) is not { } limits)
            {
                continue;
            }

            yield return new Size
            {
                Name = feature is { Shape: ShapeForm.Cone, Point: not null } && measure == Measure.AcrossTop ? $"{feature.Name} across" : $"{feature.Name} {Measures.Name(measure, feature.IsCut)}",
                Kind = Kind(measure, feature.IsCut),
                Feature = feature.Name,
                Face = measure switch { Measure.AcrossBottom => "bottom", Measure.AcrossTop => "top", _ => null },
                Limits = limits.ToLimits(),
                Stated = own,
                Where = feature.Where,
            };
        }
    }

    private static SizeKind Kind(Measure measure, bool isCut) => measure switch
    {
        Measure.Flats => SizeKind.AcrossFlats,
        Measure.Bore => SizeKind.Bore,
        Measure.Long => SizeKind.Long,
        Measure.Wide => SizeKind.Wide,
        Measure.High => isCut ? SizeKind.Deep : SizeKind.High,
        _ => SizeKind.Across,
    };

    private Size? Measured(SizeDraft size, Measure measure)
    {
        if (!DrawingWorker.Has(size.Feature, measure))
        {
            var has = string.Join(", ", Measures.Of(size.Feature.Shape).Append(Measure.High).Where(m => DrawingWorker.Has(size.Feature, m)).Select(m => Measures.Name(m, size.Feature.IsCut)));
            bag.Add(FindingCatalogue.NotThere(size.NameWhere, $"'{size.Feature.Name}' has no such size as '{size.Name}'.", $"It has: {has}."));
            return null;
        }

        if (size.Kind is SizeKind.High && size.Feature.IsCut)
        {
            bag.Add(FindingCatalogue.NotThere(size.NameWhere, $"'{size.Feature.Name}' is cut away, so it is not high.", $"Write '{size.Feature.Name} deep'."));
            return null;
        }

        if (worker.LimitsOf(size.Feature, measure, size.Where) is not { } limits)
        {
            return null;
        }

        var half = Exact.Ratio(2, 1);
        if (size.Kind == SizeKind.AcrossCorners)
        {
            var cosine = Exact.FromDouble(Math.Cos(Math.PI / size.Feature.Sides));
            return Made(size, new ExactLimits(limits.Nominal / cosine, limits.Lower / cosine, limits.Upper / cosine), false);
        }

        return Made(size, size.IsRadius ? new ExactLimits(limits.Nominal / half, limits.Lower / half, limits.Upper / half) : limits, false);
    }

    private static Size Made(SizeDraft size, ExactLimits limits, bool angle) => new()
    {
        Name = size.Name,
        Kind = size.Kind,
        Feature = size.Feature.Name,
        Other = size.Other?.Name,
        Along = size.Along,
        Face = size.Face,
        OtherFace = size.OtherFace,
        Limits = angle ? limits.ToRadians() : limits.ToLimits(),
        Stated = true,
        Where = size.Where,
    };
}
