using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

// All the places of a feature: where it stands, its repeat, its mirror images.
internal sealed class PlaceBuilder(FindingBag bag, DrawingWorker worker)
{
    // Null, with a finding made, where they cannot be worked out.
    public IReadOnlyList<Place>? Places(FeatureDraft draft, Point2 centre, IReadOnlyList<Place>? inherited)
    {
        var places = draft.Repeat is { } repeat ? Repeated(repeat, centre) : inherited ?? [new Place(centre, 0, false)];
        if (places is null || !draft.Mirrored.AcrossX && !draft.Mirrored.AcrossY)
        {
            return places;
        }

        if (places.Count * 4 > ReadingLimits.Places)
        {
            bag.Add(Findings.FindingCatalogue.TooMuch(draft.Where, "There are too many places to mirror.", "Draw it in several features."));
            return null;
        }

        IReadOnlyList<Place> all = places;
        all = draft.Mirrored.AcrossY ? [.. all, .. all.Select(AcrossY).Where(p => !all.Any(q => q.Centre == p.Centre))] : all;
        var before = all;
        return draft.Mirrored.AcrossX ? [.. before, .. before.Select(AcrossX).Where(p => !before.Any(q => q.Centre == p.Centre))] : before;
    }

    private static Place AcrossY(Place p) => new(new Point2(0 - p.Centre.X, p.Centre.Y), 0 - p.Turn, !p.Mirrored);

    // Across the X axis: the image across Y, turned half round.
    private static Place AcrossX(Place p) => new(new Point2(p.Centre.X, 0 - p.Centre.Y), Math.PI - p.Turn, !p.Mirrored);

    private IReadOnlyList<Place>? Repeated(RepeatDraft repeat, Point2 centre)
    {
        if (worker.Evaluator.Size(repeat.Pitch) is not { } exact)
        {
            return null;
        }

        var pitch = exact.ToDouble();
        var direction = repeat.Direction is null ? 0 : worker.Evaluator.TypedAngle(repeat.Direction)?.Value;
        if (direction is null)
        {
            return null;
        }

        var turn = repeat.Form == "column" ? Math.PI / 2 : direction.Value;
        return repeat.Form switch
        {
            "circle" => [.. Enumerable.Range(0, repeat.Count).Select(i => Around(centre, pitch / 2, turn + (2 * Math.PI * i / repeat.Count)))],
            "grid" => worker.Evaluator.Size(repeat.PitchY!) is { } other ? Grid(repeat, centre, pitch, other.ToDouble()) : null,
            _ => [.. Enumerable.Range(0, repeat.Count).Select(i => new Place(Along(centre, pitch * i, turn), 0, false))],
        };
    }

    private static List<Place> Grid(RepeatDraft repeat, Point2 first, double x, double y)
    {
        var places = new List<Place>();
        for (var j = 0; j < repeat.CountY; j++)
        {
            for (var i = 0; i < repeat.Count; i++)
            {
                places.Add(new Place(new Point2(first.X + (x * i), first.Y + (y * j)), 0, false));
            }
        }

        return places;
    }

    private static Place Around(Point2 centre, double radius, double angle) => new(Along(centre, radius, angle), angle, false);

    private static Point2 Along(Point2 from, double by, double angle) => new(Clean(from.X + (by * Math.Cos(angle))), Clean(from.Y + (by * Math.Sin(angle))));

    // A cosine of 90 deg is not quite 0: what is under a millionth of a millionth is.
    private static double Clean(double value) => Math.Abs(value) < 1e-12 ? 0 : value;
}
