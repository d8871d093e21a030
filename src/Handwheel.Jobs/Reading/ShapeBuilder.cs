using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

// Makes a feature's plan shape of its draft.
internal sealed class ShapeBuilder(FindingBag bag, DrawingWorker worker)
{
    // Null, with a finding made, where it cannot be.
    public FeatureShape? Shape(FeatureDraft draft)
    {
        if (draft.Shape == ShapeForm.Tangent)
        {
            return Tangent(draft);
        }

        var measures = Measures.Of(draft.Shape).Select(m => Of(draft, m)).ToList();
        var turn = Turn(draft);
        if (measures.Contains(null) || turn is null)
        {
            return null;
        }

        return draft.Shape switch
        {
            ShapeForm.Round => new RoundShape(measures[0]!.Value),
            ShapeForm.Ring => Ring(draft, measures[0]!.Value, measures[1]!.Value),
            ShapeForm.Block => Block(draft, new BlockShape(measures[0]!.Value, measures[1]!.Value, turn.Value)),
            ShapeForm.Slot => Slot(draft, measures[0]!.Value, measures[1]!.Value, turn.Value),
            ShapeForm.Polygon => new PolygonShape(draft.Sides, measures[0]!.Value, PolygonTurn(draft, turn.Value)),
            ShapeForm.Cone => new ConeShape(measures[0]!.Value, measures[1]!.Value),
            ShapeForm.Outline => draft.Curve is { } curve ? Curved(draft, curve) : Outline(draft),
            _ => null,
        };
    }

    private Limits? Of(FeatureDraft draft, Measure measure) =>
        draft.Shape == ShapeForm.Cone && measure == Measure.AcrossBottom && draft.Point is not null && !draft.Typed.ContainsKey(measure)
            ? new Limits(0, 0, 0)
            : worker.LimitsOf(draft, measure, draft.Where)?.ToLimits();

    // Radians; 0 where none was typed.
    private double? Turn(FeatureDraft draft)
    {
        var word = draft.TurnByWord * Math.PI / 180;
        return draft.Turn is null ? word : worker.Evaluator.Angle(draft.Turn) is { } turn ? word + (turn.ToDouble() * Math.PI / 180) : null;
    }

    // One side's normal; told 'sides along x' (or nothing) a side lies along X. Brought under one side's share of a turn.
    private static double PolygonTurn(FeatureDraft draft, double turn)
    {
        var degrees = (draft.TurnByWord == 0 ? 90 : 0) + (turn * 180 / Math.PI);
        var share = 360d / draft.Sides;
        var rest = degrees - (share * Math.Floor((degrees / share) + 1e-12));
        return (Math.Abs(rest) < 1e-9 ? 0 : rest) * Math.PI / 180;
    }

    private BlockShape? Block(FeatureDraft draft, BlockShape block)
    {
        if (draft.CornerRadius is null)
        {
            return block;
        }

        if (worker.Evaluator.TypedSize(draft.CornerRadius) is not { } radius)
        {
            return null;
        }

        if (2 * radius.Value <= Math.Min(block.Wide.Middle, block.Deep.Middle))
        {
            return block with { CornerRadius = radius.Value };
        }

        bag.Add(FindingCatalogue.Contradiction(radius.Where, $"Corners of radius {radius.Text} do not fit in '{draft.Name}'.", "Write a radius of at most half its width."));
        return null;
    }

    private FeatureShape? Ring(FeatureDraft draft, Limits across, Limits bore)
    {
        if (bore.Upper < across.Lower)
        {
            return new RingShape(across, bore);
        }

        bag.Add(FindingCatalogue.Contradiction(draft.Where, $"The bore of '{draft.Name}' is not smaller than the ring.", "Write the outer diameter first: 'ring 20 bore 10'."));
        return null;
    }

    private FeatureShape? Slot(FeatureDraft draft, Limits length, Limits wide, double turn)
    {
        if (length.Nominal >= wide.Nominal)
        {
            return new SlotShape(wide, length, turn);
        }

        bag.Add(FindingCatalogue.Contradiction(draft.Where, $"The slot '{draft.Name}' is shorter than it is wide.", "A slot's length is over its round ends; turn it with 'along y'."));
        return null;
    }

    private FeatureShape? Tangent(FeatureDraft draft)
    {
        var (first, second) = draft.Rounds ?? default;
        if (first is null || first.Broken || second.Broken)
        {
            return null;
        }

        foreach (var round in new[] { first, second })
        {
            if (round.Shape is not (ShapeForm.Round or ShapeForm.Ring))
            {
                bag.Add(FindingCatalogue.NotThere(draft.Where, $"'{round.Name}' is no round, so '{draft.Name}' cannot be tangent to it.", "Name two rounds."));
                return null;
            }
        }

        if (worker.Centre(first) is not { } a || worker.Centre(second) is not { } b
            || Of(first, Measure.Across) is not { } one || Of(second, Measure.Across) is not { } other)
        {
            return null;
        }

        var apart = Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
        if (apart > Math.Abs(one.Middle - other.Middle) / 2)
        {
            return new TangentShape(first.Name, second.Name);
        }

        bag.Add(FindingCatalogue.NotThere(draft.Where, $"No line is tangent to '{first.Name}' and '{second.Name}': one lies inside the other.", "Move one, or name two other rounds."));
        return null;
    }

    // Four arcs: two about the circle's middle, a round end on each.
    private OutlineShape? Curved(FeatureDraft draft, (TypedNumber Wide, TypedNumber Circle, TypedNumber From, TypedNumber To) curve)
    {
        var e = worker.Evaluator;
        if (e.TypedSize(curve.Wide) is not { } wide || e.TypedSize(curve.Circle) is not { } circle || e.TypedAngle(curve.From) is not { } from || e.TypedAngle(curve.To) is not { } to)
        {
            return null;
        }

        var (sweep, half) = (to.Value - from.Value, wide.Value / 2);
        sweep -= 2 * Math.PI * Math.Floor(sweep / (2 * Math.PI));
        var radius = circle.Value / 2;
        if (half >= radius || sweep < 1e-6 || (2 * Math.PI) - sweep < wide.Value / radius)
        {
            bag.Add(FindingCatalogue.Contradiction(draft.Where, $"The curved slot '{draft.Name}' closes on itself.", "Write a narrower slot, a larger circle, or ends further apart; a whole ring is 'ring 20 bore 14'."));
            return null;
        }

        Point2 At(double r, double angle) => Point2.Polar(default, r, angle);
        double a = from.Value, b = from.Value + sweep;
        return new OutlineShape(
        [
            new(At(radius + half, a), 0, 0, default(Point2), true),
            new(At(radius + half, b), 0, 0, At(radius, b), true),
            new(At(radius - half, b), 0, 0, default(Point2), false),
            new(At(radius - half, a), 0, 0, At(radius, a), true),
        ]);
    }

    private OutlineShape? Outline(FeatureDraft draft)
    {
        var e = worker.Evaluator;
        var corners = new List<OutlineCorner>();
        for (var i = 0; i < draft.Corners.Count; i++)
        {
            var c = draft.Corners[i];
            var next = draft.Corners[(i + 1) % draft.Corners.Count];
            if (Point(c.X, c.Y) is not { } at)
            {
                return null;
            }

            var arc = next.ArcX is null ? null : Point(next.ArcX, next.ArcY!);
            corners.Add(new OutlineCorner(at, e.TypedSize(c.Fillet)?.Value ?? 0, e.TypedSize(c.Chamfer)?.Value ?? 0, arc, !next.Clockwise));
        }

        return new OutlineCheck(bag, worker.Unit).Sound(draft, corners);
    }

    private Point2? Point(TypedNumber x, TypedNumber y) =>
        worker.Evaluator.Length(x) is { } a && worker.Evaluator.Length(y) is { } b ? new Point2(a.ToDouble(), b.ToDouble()) : null;
}
