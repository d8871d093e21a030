using Handwheel.Jobs;
using Handwheel.Jobs.Drawings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// The drawing with every size at the middle of its limits: what all workings use. Part frame, millimetres.
internal sealed class AimedDrawing
{
    private readonly Dictionary<string, Feature> features = new(StringComparer.Ordinal);
    private DrawnPart? part;

    internal AimedDrawing(Job job)
    {
        Job = job;
        foreach (var f in job.Drawing.Features)
        {
            features.TryAdd(f.Name, f);
        }
    }

    internal Job Job { get; }

    // The whole part as aimed, as a solid in the part frame.
    internal DrawnPart Part => part ??= DrawnPart.Of(Job.Drawing, PartVariant.Aimed);

    internal IEnumerable<Feature> Features => Job.Drawing.Features;

    internal Feature? Find(string? name) => name is null ? null : features.GetValueOrDefault(name);

    internal Size? SizeOf(string feature, params SizeKind[] kinds) =>
        Job.Drawing.Sizes.FirstOrDefault(s => s.Feature == feature && kinds.Contains(s.Kind));

    internal Size? SizeNamed(string name) => Job.Drawing.Sizes.FirstOrDefault(s => s.Name == name);

    internal static Limits? AcrossOf(FeatureShape shape) => shape switch
    {
        RoundShape r => r.Across,
        RingShape r => r.Across,
        PolygonShape p => p.AcrossFlats,
        SlotShape s => s.Wide,
        ConeShape c => c.AcrossHigh,
        _ => null,
    };

    // Radius of a round feature, aimed; null where it is not round.
    internal static double? RadiusOf(Feature f) => f.Shape switch
    {
        RoundShape r => r.Across.Middle / 2,
        RingShape r => r.Across.Middle / 2,
        ConeShape c => Math.Max(c.AcrossHigh.Middle, c.AcrossLow.Middle) / 2,
        _ => null,
    };

    // The ends of a feature along its view's axis, aimed; of a cut that goes through, as typed.
    internal (double From, double To) Ends(Feature f) =>
        !f.Through && Part.Find(f.Name) is { } drawn ? (drawn.From, drawn.To) : (f.From.Middle, f.To.Middle);

    // A centre aimed at the middle of the distances that a stated size gives it from another feature.
    internal Point2 CentreOf(Feature f) => Shifted(f, f.Centre);

    internal Point2 PlaceOf(Feature f, Place place) => Shifted(f, place.Centre);

    // The outline of one place, in the plan of the feature's view.
    internal PlanOutline Outline(Feature f, Place place)
    {
        if (f.Shape is TangentShape t)
        {
            return OutlineOfTangent(t);
        }

        var own = OwnOutline(f);
        var centre = PlaceOf(f, place);
        return own.Mapped(
            p =>
            {
                var q = place.Mirrored ? new Point2(-p.X, p.Y) : p;
                q = Plane.Turned(q, new(0, 0), place.Turn);
                return new(q.X + centre.X, q.Y + centre.Y);
            },
            place.Mirrored);
    }

    internal static Point3 AxisOf(View view) => FeatureView.Place(view, default, 1);

    private PlanOutline OutlineOfTangent(TangentShape t)
    {
        if (Find(t.First) is not { } first || Find(t.Second) is not { } second)
        {
            return PlanOutline.Circle(new(0, 0), 1, string.Empty);
        }

        return PlanOutline.Tangent(
            CentreOf(first), RadiusOf(first) ?? 1, first.Name,
            CentreOf(second), RadiusOf(second) ?? 1, second.Name);
    }

    private static PlanOutline OwnOutline(Feature f) => f.Shape switch
    {
        BlockShape b => PlanOutline.Rectangle(new(0, 0), b.Wide.Middle, b.Deep.Middle, b.Turn, b.CornerRadius),
        PolygonShape p => Polygon(p),
        SlotShape s => Slot(s),
        OutlineShape o => OutlineBuilder.Build(o),
        _ => PlanOutline.Circle(new(0, 0), RadiusOf(f) ?? 1, f.Name),
    };

    private static PlanOutline Polygon(PolygonShape p)
    {
        var corner = Trade.Geometry.RegularPolygon.AcrossCorners(p.Sides, p.AcrossFlats.Middle) / 2;
        return PlanOutline.Polyline([.. Enumerable.Range(0, p.Sides).Select(i => Plane.Polar(new(0, 0), corner, p.Turn + (((2 * i) - 1) * Math.PI / p.Sides)))]);
    }

    private static PlanOutline Slot(SlotShape s)
    {
        var half = Math.Max(0, (s.Long.Middle - s.Wide.Middle) / 2);
        Point2 a = Plane.Polar(new(0, 0), -half, s.Turn), b = Plane.Polar(new(0, 0), half, s.Turn);
        var r = s.Wide.Middle / 2;
        return PlanOutline.Tangent(a, r, "end", b, r, "end");
    }

    private Point2 Shifted(Feature f, Point2 centre)
    {
        var (x, y) = (centre.X, centre.Y);
        foreach (var s in Job.Drawing.Sizes.Where(s => s.Kind == SizeKind.Distance && s.Stated && s.Other == f.Name))
        {
            if (Find(s.Feature) is not { } datum)
            {
                continue;
            }

            var by = s.Limits.Middle - s.Limits.Nominal;
            x += s.Along == "x" && Math.Abs(Math.Abs(f.Centre.X - datum.Centre.X) - s.Limits.Nominal) < 1e-6 ? by * Math.Sign(f.Centre.X - datum.Centre.X) : 0;
            y += s.Along == "y" && Math.Abs(Math.Abs(f.Centre.Y - datum.Centre.Y) - s.Limits.Nominal) < 1e-6 ? by * Math.Sign(f.Centre.Y - datum.Centre.Y) : 0;
        }

        return new(x, y);
    }
}
