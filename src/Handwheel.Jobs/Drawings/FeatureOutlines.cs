using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Drawings;

/// <summary>A feature&#39;s outlines at all its places, in one variant of the drawing.</summary>
/// <param name="drawing">The drawing.</param>
/// <param name="variant">Which limits are taken.</param>
internal sealed class FeatureOutlines(Drawing drawing, PartVariant variant)
{
    private readonly FeatureBands bands = new(drawing);

    // +1 where the feature's outside is grown in this variant, -1 where it is shrunk, 0 where it is neither.
    internal int Sense(Feature feature) => variant switch
    {
        PartVariant.LeastMetal => feature.IsCut ? 1 : -1,
        PartVariant.MostMetal => feature.IsCut ? -1 : 1,
        _ => 0,
    };

    internal (IReadOnlyList<Point2> Centres, IReadOnlyList<Outline> Outlines, IReadOnlyList<Outline> Bores) Of(Feature feature)
    {
        var sense = Sense(feature);
        if (feature.Shape is TangentShape tangent)
        {
            return Tangent(tangent, sense);
        }

        var (shift, radius) = variant == PartVariant.Nominal ? (default, 0) : bands.Place(feature);
        var outer = Local(feature, sense, sense * radius);
        var inner = feature.Shape is RingShape ring
            ? Outline.Circle(default, Half(feature, null, ring.Bore, -sense, -sense * radius))
            : null;
        var centres = feature.Places.Select(p => p.Centre + shift).ToArray();
        return (
            centres,
            [.. feature.Places.Select((p, i) => OutlinePlacing.Placed(outer, p with { Centre = centres[i] }))],
            inner is null ? [] : [.. feature.Places.Select((p, i) => OutlinePlacing.Placed(inner, p with { Centre = centres[i] }))]);
    }

    internal double? Across(Feature feature) => feature.Shape switch
    {
        RoundShape s => Whole(feature, SizeKind.Across, s.Across),
        RingShape s => Whole(feature, SizeKind.Across, s.Across),
        PolygonShape s => Whole(feature, SizeKind.AcrossFlats, s.AcrossFlats),
        SlotShape s => Whole(feature, SizeKind.Wide, s.Wide),
        ConeShape => Math.Max(Cone(feature).Low, Cone(feature).High),
        _ => null,
    };

    // A cone's two diameters; its band of place is left in both.
    internal (double Low, double High) Cone(Feature feature)
    {
        var shape = (ConeShape)feature.Shape;
        var sense = Sense(feature);
        var room = variant == PartVariant.Nominal ? 0 : 2 * sense * bands.Place(feature).Radius;
        return (
            Math.Max(0, Value(ConeEnd(feature, shape.AcrossLow, "bottom"), sense) + room),
            Math.Max(0, Value(ConeEnd(feature, shape.AcrossHigh, "top"), sense) + room));
    }

    // A chamfer's leg: the general limits take it larger in least metal, smaller in most.
    internal double Leg(double leg) => leg <= 0 ? 0 : variant switch
    {
        PartVariant.LeastMetal => leg + (drawing.Others?.UpperDeviation ?? 0),
        PartVariant.MostMetal => Math.Max(0, leg + (drawing.Others?.LowerDeviation ?? 0)),
        _ => leg,
    };

    // A cone's diameters at ends that limits have moved: it goes on at its own slope, and its place along its axis has the band of its ends.
    internal (double Low, double High) ConeAt(Feature feature, double from, double to)
    {
        var (low, high) = Cone(feature);
        var ends = bands.Ends(feature);
        var (a, b) = (ends.From.Middle, ends.To.Middle);
        if (feature.Through || variant is PartVariant.Nominal or PartVariant.Aimed || b - a < 1e-6)
        {
            return (low, high);
        }

        var slope = (high - low) / (b - a);
        var room = Sense(feature) * Math.Abs(slope) * Math.Max(Math.Abs(from - a), Math.Abs(to - b));
        return (Math.Max(0, low + (slope * (from - a)) + room), Math.Max(0, high + (slope * (to - b)) + room));
    }

    // Limits of one end of a cone; what was drawn as a point stays one.
    private Quantities.Limits ConeEnd(Feature feature, Quantities.Limits own, string face) =>
        own.Width > 0 || own.Nominal <= 0 ? own : bands.Dimension(feature, SizeKind.Across, own, face);

    // Lower and upper end along the view's axis.
    internal (double From, double To) Ends(Feature feature)
    {
        var (from, to) = bands.Ends(feature);
        var sense = Sense(feature);
        return (Value(from, -sense), Value(to, sense));
    }

    private static double Positive(double value) => Math.Max(value, 1e-6);

    private double Value(Quantities.Limits limits, int sense) => variant switch
    {
        PartVariant.Nominal => limits.Nominal,
        PartVariant.Aimed => limits.Middle,
        _ => sense > 0 ? limits.Upper : limits.Lower,
    };

    private double Whole(Feature feature, SizeKind kind, Quantities.Limits own) =>
        Value(variant == PartVariant.Nominal ? own : bands.Dimension(feature, kind, own), Sense(feature));

    private double Half(Feature feature, SizeKind? kind, Quantities.Limits own, int sense, double room) =>
        Positive((Value(variant == PartVariant.Nominal ? own : bands.Dimension(feature, kind, own), sense) / 2) + room);

    // The outline about its own centre; room is the band of its place, outwards positive.
    private Outline Local(Feature feature, int sense, double room)
    {
        double Side(SizeKind kind, Quantities.Limits own) => 2 * Half(feature, kind, own, sense, room);
        switch (feature.Shape)
        {
            case RoundShape s:
                return Outline.Circle(default, Side(SizeKind.Across, s.Across) / 2);
            case RingShape s:
                return Outline.Circle(default, Side(SizeKind.Across, s.Across) / 2);
            case ConeShape:
                var (low, high) = Cone(feature);
                return Outline.Circle(default, Positive(Math.Max(low, high) / 2));
            case PolygonShape s:
                return Outline.RegularPolygon(default, Side(SizeKind.AcrossFlats, s.AcrossFlats), s.Sides, s.Turn);
            case BlockShape s:
                double length = Side(SizeKind.Long, s.Wide), across = Side(SizeKind.Wide, s.Deep);
                return s.CornerRadius > 0 ? Rounded(length, across, Corner(s.CornerRadius, sense), s.Turn) : Outline.Rectangle(default(Point2), length, across, s.Turn);
            case SlotShape s:
                var wide = Side(SizeKind.Wide, s.Wide);
                var half = Math.Max(0, (Side(SizeKind.Long, s.Long) - wide) / 2);
                return Outline.Slot(Point2.Polar(default, -half, s.Turn), Point2.Polar(default, half, s.Turn), wide);
            case OutlineShape s:
                var drawn = OutlineDrawing.Of(s);
                var band = sense * (drawing.Others?.Width ?? 0) / 4;
                return band + room == 0 ? drawn : OutlineDrawing.Offset(drawn, band + room);
            default:
                throw new ArgumentException($"No outline is known for {feature.Shape.GetType().Name}.", nameof(feature));
        }
    }

    // A rounder corner has less of an added block, and leaves more metal in a cut one.
    private double Corner(double radius, int sense) => Math.Max(0, radius - (sense * (drawing.Others?.UpperDeviation ?? 0)));

    private static Outline Rounded(double length, double across, double radius, double turn)
    {
        radius = Math.Min(radius, (Math.Min(length, across) / 2) - 1e-6);
        if (radius < 1e-6)
        {
            return Outline.Rectangle(default(Point2), length, across, turn);
        }

        double x = (length / 2) - radius, y = (across / 2) - radius;
        Point2[] centres = [new(x, -y), new(x, y), new(-x, y), new(-x, -y)];
        var pieces = new List<OutlinePiece>();
        for (var i = 0; i < 4; i++)
        {
            var start = ((i - 1) * Math.PI / 2) + turn;
            Point2 At(int k) => Point2.Polar(default, Math.Sqrt((x * x) + (y * y)), Math.Atan2(centres[k % 4].Y, centres[k % 4].X) + turn);
            var arc = OutlinePiece.Arc(At(i), radius, start, Math.PI / 2);
            pieces.Add(arc);
            pieces.Add(OutlinePiece.Straight(arc.To, OutlinePiece.Arc(At(i + 1), radius, start + (Math.PI / 2), Math.PI / 2).From));
        }

        return Outline.FromPieces(pieces);
    }

    // Drawn again round its two rounds, each taken to this outline's side.
    private (IReadOnlyList<Point2> Centres, IReadOnlyList<Outline> Outlines, IReadOnlyList<Outline> Bores) Tangent(TangentShape shape, int sense)
    {
        var (c1, r1) = Round(shape.First, sense);
        var (c2, r2) = Round(shape.Second, sense);
        return ([c1], [Outline.TangentHull(c1, r1, c2, r2)], []);
    }

    private (Point2 Centre, double Radius) Round(string name, int sense)
    {
        var feature = drawing.Features.FirstOrDefault(f => f.Name == name)
            ?? throw new ArgumentException($"The drawing has no feature named {name}.", nameof(name));
        var across = feature.Shape switch
        {
            RoundShape s => s.Across,
            RingShape s => s.Across,
            _ => throw new ArgumentException($"{name} is no round.", nameof(name)),
        };
        var (shift, room) = variant == PartVariant.Nominal ? (default, 0) : bands.Place(feature);
        return (feature.Centre + shift, Half(feature, SizeKind.Across, across, sense, sense * room));
    }
}
