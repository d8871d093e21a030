using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

// Makes the drawing of what was read: features with their limits and places, and every size.
internal sealed class DrawingBuilder(FindingBag bag, FeatureNames names, DrawingWorker worker)
{
    private readonly Dictionary<FeatureDraft, Feature> built = [];
    private readonly Dictionary<FeatureDraft, IReadOnlyList<Place>?> placed = [];

    public Drawing Build(IReadOnlyList<SizeDraft> sizes)
    {
        var shapes = new ShapeBuilder(bag, worker);
        foreach (var draft in names.All.Where(f => !f.Through))
        {
            Add(draft, shapes, null);
        }

        var extent = Extents.Of(built.Values);
        foreach (var draft in names.All.Where(f => f.Through))
        {
            Add(draft, shapes, extent);
        }

        // Nothing that was typed is left out without a word.
        foreach (var draft in names.All.Where(f => !bag.Halts && !built.ContainsKey(f)))
        {
            bag.Add(FindingCatalogue.Missing(draft.Where, $"Something that '{draft.Name}' needs to be drawn", "Give its shape, its place and both its ends, as in 'hub round 10 at 0, 0 from -12 to 0'."));
        }

        var checks = new SizeBuilder(bag, worker);
        var stated = sizes.Where(s => built.ContainsKey(s.Feature)).Select(checks.Build).OfType<Size>().ToList();
        var typed = names.All.Where(built.ContainsKey).SelectMany(f => checks.Left(f, true));
        var left = names.All.Where(built.ContainsKey).SelectMany(f => checks.Left(f, false));
        return new Drawing
        {
            Features = [.. names.All.Where(built.ContainsKey).Select(f => built[f])],
            Sizes = [.. stated, .. typed, .. left],
            Others = worker.Others?.ToLimits(),
        };
    }

    private void Add(FeatureDraft draft, ShapeBuilder shapes, Box3? extent)
    {
        if (draft.Broken || bag.Full || shapes.Shape(draft) is not { } shape || Ends(draft, extent) is not { } ends)
        {
            return;
        }

        if (draft.At is { Broken: false } at && at.View != draft.View)
        {
            bag.Add(FindingCatalogue.Contradiction(
                draft.Where,
                $"'{draft.Name}' is seen from {Said(draft)}, and '{at.Name}', where it stands, from {Said(at)}: a place in the one is none in the other.",
                at.View == View.Top ? $"Give '{draft.Name}' a place of its own, or leave 'seen from {Said(draft)}' out." : $"Write 'seen from {Said(at)}' here too, or give '{draft.Name}' a place of its own."));
            draft.Broken = true;
            return;
        }

        var places = PlacesOf(draft);
        if (places is null || draft.Broken)
        {
            return;
        }

        if (Leg(draft, shape, ends) is not { } leg)
        {
            return;
        }

        built[draft] = new Feature
        {
            Name = draft.Name,
            Where = draft.Where,
            IsCut = draft.IsCut,
            Shape = shape,
            Centre = places[0].Centre,
            Places = places,
            From = ends.From,
            To = ends.To,
            Through = draft.Through,
            View = draft.View,
            Behind = draft.Behind,
            PointAngle = draft.Shape == ShapeForm.Cone ? null : worker.Evaluator.TypedAngle(draft.Point)?.Value,
            Thread = draft.Thread,
            ChamferAbove = leg.Above,
            ChamferBelow = leg.Below,
        };
    }

    private static string Said(FeatureDraft draft) => FeatureView.Said(draft.View, draft.Behind);

    // The legs of its chamfers, 0 for none; null, with a finding made, where they cannot be.
    private (double Above, double Below)? Leg(FeatureDraft draft, FeatureShape shape, (Limits From, Limits To) ends)
    {
        if (draft.Chamfer is null)
        {
            return (0, 0);
        }

        return worker.Evaluator.TypedSize(draft.Chamfer) is { } leg && new ChamferCheck(bag, worker.Unit).Sound(draft, shape, leg.Value, ends.To.Middle - ends.From.Middle)
            ? (draft.Chamfered.Above ? leg.Value : 0, draft.Chamfered.Below ? leg.Value : 0)
            : null;
    }

    // A feature at another one stands at all its places. Null, with a finding made, where they cannot be worked out.
    private IReadOnlyList<Place>? PlacesOf(FeatureDraft draft)
    {
        if (placed.TryGetValue(draft, out var known))
        {
            return known;
        }

        placed[draft] = null;
        var unplaced = draft.Shape is ShapeForm.Tangent or ShapeForm.Outline && draft.At is null && !draft.Typed.ContainsKey(Measure.X);
        var centre = unplaced ? new Point2(0, 0) : worker.Centre(draft);
        var inherited = draft is { At: { } at, Repeat: null, Broken: false } ? PlacesOf(at) : null;
        return placed[draft] = centre is { } c ? new PlaceBuilder(bag, worker).Places(draft, c, inherited) : null;
    }

    private (Limits From, Limits To)? Ends(FeatureDraft draft, Box3? extent)
    {
        if (draft.Through)
        {
            var (from, to) = FeatureView.Ends(draft.View, extent ?? default);
            return (new Limits(from, from, from), new Limits(to, to, to));
        }

        if (worker.LimitsOf(draft, Measure.High, draft.Where) is null)
        {
            return null;
        }

        return worker.LimitsOf(draft, Measure.Bottom, draft.Where) is { } bottom && worker.LimitsOf(draft, Measure.Top, draft.Where) is { } top
            ? (bottom.ToLimits(), top.ToLimits()) : null;
    }
}
