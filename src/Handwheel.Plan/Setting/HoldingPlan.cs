using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Stocks;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// The part and the stock as they lie in a holding at theta 0. Millimetres, holding frame.
internal sealed class HoldingPlan
{
    private readonly AimedDrawing drawing;
    private readonly Stock stock;

    internal HoldingPlan(AimedDrawing drawing, Stock stock, Placement placement)
    {
        this.drawing = drawing;
        this.stock = stock;
        Placement = placement;
        (Least, Most) = StockBox();
    }

    internal Placement Placement { get; }

    // Box of the bare stock as it lies.
    internal Point3 Least { get; }

    internal Point3 Most { get; }

    internal Stock Stock => stock;

    // The middle, along X, of the part as it lies.
    internal double PartAlongX()
    {
        var box = drawing.Part.Solid.Bounds;
        double a = Placement.Apply(box.Min).X, b = Placement.Apply(box.Max).X;
        return (a + b) / 2;
    }

    // How far the bare stock reaches from an axis along X, whichever way it is turned.
    internal double Swing(double y, double z)
    {
        double high = Math.Max(Most.Z - z, z - Least.Z), wide = Math.Max(Most.Y - y, y - Least.Y);
        return stock.Form == StockForm.Round ? Math.Max(high, wide) : Math.Sqrt((high * high) + (wide * wide));
    }

    // A height typed in a step, of the part frame turned into the holding: where a feature ends at it, as drawn, the middle of what its limits allow; the named feature's end before another's.
    internal double Height(double typed, string? feature)
    {
        var height = typed + Placement.Shift.Z;
        var ends = drawing.Job.Drawing.Features.Where(IsUpright).SelectMany(f => new[] { (f, Drawn: HeightAt(f, f.From.Nominal), Aimed: HeightAt(f, drawing.Ends(f).From)), (f, Drawn: HeightAt(f, f.To.Nominal), Aimed: HeightAt(f, drawing.Ends(f).To)) })
            .Where(e => !e.f.Through && Math.Abs(e.Drawn - height) < 1e-6).ToList();
        return ends.Where(e => e.f.Name == feature).Concat(ends).Select(e => (double?)e.Aimed).FirstOrDefault() ?? height;
    }

    // The same for a face: where the feature's other end is raw and stays as drawn, its height is reckoned from there.
    internal double FaceHeight(double typed, string? feature, double underside)
    {
        var height = typed + Placement.Shift.Z;
        foreach (var f in drawing.Job.Drawing.Features.Where(f => !f.IsCut && !f.Through && IsUpright(f)).OrderByDescending(f => f.Name == feature))
        {
            double a = HeightAt(f, f.From.Nominal), b = HeightAt(f, f.To.Nominal);
            var (from, to) = drawing.Ends(f);
            if (Math.Abs(Math.Max(a, b) - height) < 1e-6 && Math.Abs(Math.Min(a, b) - underside) < 1e-6)
            {
                return underside + Math.Abs(to - from);
            }
        }

        return Height(typed, feature);
    }

    private bool IsUpright(Feature f) => Math.Abs(Math.Abs(Placement.Direction(AimedDrawing.AxisOf(f.View)).Z) - 1) < 1e-9;

    // The feature's plan; null where its axis does not stand upright here.
    internal PlanFeature? Find(string? name) => drawing.Find(name) is { } f ? Of(f) : null;

    internal PlanFeature? Of(Feature f)
    {
        var axis = Placement.Direction(AimedDrawing.AxisOf(f.View));
        if (Math.Abs(Math.Abs(axis.Z) - 1) > 1e-9)
        {
            return Lying(f);
        }

        var (from, to) = drawing.Ends(f);
        double a = HeightAt(f, from), b = HeightAt(f, to);
        var mirrored = Mirrors(f.View);
        var outlines = f.Places.Select(p => drawing.Outline(f, p).Mapped(q => InPlan(f.View, q), mirrored)).ToList();
        var centres = f.Places.Select(p => InPlan(f.View, drawing.PlaceOf(f, p))).ToList();
        return new(f, outlines, centres, Math.Min(a, b), Math.Max(a, b));
    }

    // A block that lies on one of its sides stands as upright as on its end: its box is its outline. Null where it lies askew.
    private PlanFeature? Lying(Feature f)
    {
        if (f.Shape is not BlockShape { CornerRadius: <= 0 } block)
        {
            return null;
        }

        List<PlanOutline> outlines = [];
        List<Point2> centres = [];
        double low = 0, high = 0;
        foreach (var place in f.Places)
        {
            var centre = drawing.PlaceOf(f, place);
            var turn = (place.Mirrored ? -block.Turn : block.Turn) + place.Turn;
            var corners = PlanOutline.Rectangle(centre, block.Wide.Middle, block.Deep.Middle, turn).Edges
                .SelectMany(e => new[] { f.From.Middle, f.To.Middle }.Select(d => Placement.Apply(FeatureView.Place(f.View, e.From, d)))).ToList();
            Point3 least = new(corners.Min(p => p.X), corners.Min(p => p.Y), corners.Min(p => p.Z)), most = new(corners.Max(p => p.X), corners.Max(p => p.Y), corners.Max(p => p.Z));
            if (!corners.TrueForAll(p => Ends(p.X, least.X, most.X) && Ends(p.Y, least.Y, most.Y) && Ends(p.Z, least.Z, most.Z)))
            {
                return null;
            }

            centres.Add(new((least.X + most.X) / 2, (least.Y + most.Y) / 2));
            outlines.Add(PlanOutline.Rectangle(centres[^1], most.X - least.X, most.Y - least.Y, 0));
            (low, high) = (least.Z, most.Z);
        }

        return new(f, outlines, centres, low, high);
    }

    private static bool Ends(double at, double least, double most) => at - least < 1e-6 || most - at < 1e-6;

    internal double HeightAt(Feature f, double depth) => Placement.Apply(FeatureView.Place(f.View, f.Centre, depth)).Z;

    // The travel that a size across a feature, or along an axis of the part, lies along here; null where it lies along none.
    internal Axis? AxisOf(Size size, Feature feature)
    {
        var turn = feature.Shape switch { BlockShape b => b.Turn, SlotShape s => s.Turn, _ => 0 } + feature.Places[0].Turn;
        var way = (size.Kind, size.Along) switch
        {
            (SizeKind.Long, _) => FeatureView.Place(feature.View, Plane.Polar(new(0, 0), 1, turn), 0),
            (SizeKind.Wide or SizeKind.AcrossFlats, _) => FeatureView.Place(feature.View, Plane.Polar(new(0, 0), 1, turn + (Math.PI / 2)), 0),
            (SizeKind.Across, _) => new(1, 0, 0),
            (SizeKind.Distance, "x") => new(1, 0, 0),
            (SizeKind.Distance, "y") => new(0, 1, 0),
            (SizeKind.Distance, "z") => new(0, 0, 1),
            _ => new Point3(0, 0, 0),
        };
        var here = Placement.Direction(way);
        return Math.Abs(Math.Abs(here.X) - 1) < 1e-9 ? Axis.X : Math.Abs(Math.Abs(here.Y) - 1) < 1e-9 ? Axis.Y : Math.Abs(Math.Abs(here.Z) - 1) < 1e-9 ? Axis.Z : null;
    }

    internal Point2 InPlan(View view, Point2 p)
    {
        var q = Placement.Apply(FeatureView.Place(view, p, 0));
        return new(q.X, q.Y);
    }

    private bool Mirrors(View view)
    {
        Point2 o = InPlan(view, new(0, 0)), x = InPlan(view, new(1, 0)), y = InPlan(view, new(0, 1));
        return ((x.X - o.X) * (y.Y - o.Y)) - ((x.Y - o.Y) * (y.X - o.X)) < 0;
    }

    private (Point3 Least, Point3 Most) StockBox()
    {
        double[] least = [double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity];
        double[] most = [double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity];
        for (var i = 0; i < 8; i++)
        {
            var p = Placement.Apply(new(
                stock.Least.X + ((i & 1) != 0 ? stock.Used.X : 0),
                stock.Least.Y + ((i & 2) != 0 ? stock.Used.Y : 0),
                stock.Least.Z + ((i & 4) != 0 ? stock.Used.Z : 0)));
            double[] at = [p.X, p.Y, p.Z];
            for (var k = 0; k < 3; k++)
            {
                least[k] = Math.Min(least[k], at[k]);
                most[k] = Math.Max(most[k], at[k]);
            }
        }

        return (new(least[0], least[1], least[2]), new(most[0], most[1], most[2]));
    }
}
