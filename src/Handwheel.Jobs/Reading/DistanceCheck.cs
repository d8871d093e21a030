using Handwheel.Jobs.Findings;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Reading;

// Holds a distance against the places that are drawn.
internal sealed class DistanceCheck(FindingBag bag, DrawingWorker worker)
{
    // The distance's limits; null, with a finding made, where it cannot be.
    public ExactLimits? Sound(SizeDraft size)
    {
        if (size.Other is null || size.Other.Broken || worker.Own(size, false) is not { } limits)
        {
            return null;
        }

        if (size.Face is not null || size.OtherFace is not null || size.Along == "z")
        {
            return BetweenFaces(size, limits);
        }

        if (worker.Centre(size.Feature) is not { } a || worker.Centre(size.Other) is not { } b)
        {
            return null;
        }

        var (x, y) = (Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y));
        return Held(size, limits, size.Along switch { "x" => x, "y" => y, _ => Math.Sqrt((x * x) + (y * y)) });
    }

    // Between faces along Z: tops and undersides. Faces to the sides are held against the outlines (SizeAgreement).
    private ExactLimits? BetweenFaces(SizeDraft size, ExactLimits limits)
    {
        var (a, b) = (Faces.End(size.Face), Faces.End(size.OtherFace));
        if (a is null || b is null)
        {
            return limits;
        }

        foreach (var (feature, end) in new[] { (size.Feature, a.Value), (size.Other!, b.Value) })
        {
            if (!DrawingWorker.Has(feature, end))
            {
                bag.Add(FindingCatalogue.NotThere(size.NameWhere, $"'{feature.Name}' goes through and has no {Measures.Name(end, false)}.", "Name another face."));
                return null;
            }
        }

        return worker.Aimed(size.Feature, a.Value, size.Where) is { } from && worker.Aimed(size.Other!, b.Value, size.Where) is { } to
            ? Held(size, limits, Math.Abs((from - to).ToDouble())) : null;
    }

    private ExactLimits? Held(SizeDraft size, ExactLimits limits, double drawn)
    {
        if (drawn >= limits.Lower.ToDouble() - 1e-6 && drawn <= limits.Upper.ToDouble() + 1e-6)
        {
            return limits;
        }

        bag.Add(FindingCatalogue.Contradiction(
            size.Value.Where,
            $"The size says {size.Name} {size.Value.Text}; they are drawn {worker.Unit.Said(drawn)} apart.",
            "Write the same value in both."));
        return limits;
    }
}
