using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// A slitting saw that comes in from a side and is fed along it, until a web is left along the other; it comes back the way it went.
internal sealed class Sawing(Bench bench)
{
    // From the near or far side it is fed along X, from an end along Y.
    private bool alongX = true;

    // A place of the web last left, part frame, and out of the part there.
    internal (Place3 At, Place3 Outward)? Web { get; private set; }

    // All that falls away with the web: a place of the saw's upper face and the way down, part frame.
    internal (Place3 At, Place3 Way)? Waste { get; private set; }

    internal void Plan(SawStep step)
    {
        if (step.From is not ("near" or "far" or "left" or "right") || bench.Cutter is not { } saw)
        {
            bench.Cannot(step, "The side the saw comes from is not understood.", "Write 'from near side', 'from far side', 'from left end' or 'from right end'.");
            return;
        }

        alongX = step.From is "near" or "far";

        var named = step.Under is { } under ? bench.Plan.Find(under) : null;
        var upper = step.At is { } at ? bench.Plan.Height(at.Value) : named is not null ? named.Low - (step.Allow?.Value ?? 0) : double.NaN;
        if (double.IsNaN(upper) || (named is null && step.Web is not null))
        {
            bench.Cannot(step, $"What the saw goes under ('{step.Under}') does not stand upright in this holding.", "Name a feature that lies level here.");
            return;
        }

        var lower = bench.Show(Lower(step, named, upper, saw.Thick));
        var theta = Lay(step, named);
        var turn = theta?.Result ?? 0;
        var kerf = Kerf(named, turn, upper - saw.Thick, upper);
        var far = step.From is "near" or "left";
        var y = bench.Show(Across(step, kerf, saw.TrueAcross / 2, far));
        bench.Up();
        if (theta is not null)
        {
            bench.Free(Axis.T, theta);
        }

        Run(kerf, lower, y, turn, far);
        Leave(kerf, upper - (saw.Thick / 2), y, turn, far, saw.TrueAcross / 2);
    }

    private Working Lower(SawStep step, PlanFeature? named, double upper, double thick)
    {
        var figures = bench.Figures;
        var allow = step.Allow?.Value ?? 0;
        return bench.Reading(
            Axis.Z,
            "Z of the saw's lower face",
            named is null ? "its upper face - the saw" : "underside - allowance - the saw",
            named is null ? $"{figures.L(upper)} - {figures.L(thick)}" : $"{figures.L(named.Low)} - {figures.L(allow)} - {figures.L(thick)}",
            upper - thick,
            Toward.Minus,
            bench.Work.Shop("saw", thick, $"shop: {bench.Cutter!.Name} is so thick", bench.Cutter.Where));
    }

    // Theta that lays the web's flank along X; a side is taken as the work stands at theta 0.
    private Working? Lay(SawStep step, PlanFeature? named)
    {
        if (bench.Machine.Setup.Rotary is not { Lies: false })
        {
            return null;
        }

        if (named is not null && step.WebAlong is { } word && SideMilling.Edges(named.Outline, word).Select(e => (PlanEdge?)e).FirstOrDefault() is { } edge)
        {
            var turn = (new SideMilling(bench).Turn(edge) ?? 0) * Plane.ToDegrees;
            return bench.Show(SideMilling.Laid(bench, named, edge, word, turn));
        }

        return bench.AngleZero;
    }

    // Places of the outline that is sawn under, as the work lies; the metal's at that height where none is named.
    private List<Point2> Kerf(PlanFeature? named, double turn, double low, double high)
    {
        List<Point2> places = [];
        if (named is not null)
        {
            foreach (var e in named.Outline.Edges)
            {
                for (var i = 0; i <= 180; i++)
                {
                    places.Add(e.IsArc
                        ? Plane.Polar(e.Centre, e.Radius, Plane.Angle(e.Centre, e.From) + (e.Sweep * i / 180))
                        : new(e.From.X + ((e.To.X - e.From.X) * i / 180), e.From.Y + ((e.To.Y - e.From.Y) * i / 180)));
                }
            }
        }
        else
        {
            var box = bench.Metal.Box(turn);
            var x = bench.Metal.Extent(true, box.Min.Y, box.Max.Y, low, turn, high) ?? (box.Min.X, box.Max.X);
            var y = bench.Metal.Extent(false, box.Min.X, box.Max.X, low, turn, high) ?? (box.Min.Y, box.Max.Y);
            places.AddRange([new(x.Low, y.Low), new(x.High, y.Low), new(x.High, y.High), new(x.Low, y.High)]);
            return places;
        }

        return [.. places.Select(p => Plane.Turned(p, new(0, 0), turn / Plane.ToDegrees))];
    }

    private Axis Feed => alongX ? Axis.X : Axis.Y;

    private Axis Side => alongX ? Axis.Y : Axis.X;

    private double Along(Point2 p) => alongX ? p.X : p.Y;

    private double Over(Point2 p) => alongX ? p.Y : p.X;

    // far edge - web - saw/2, towards the side the web is left thicker.
    private Working Across(SawStep step, List<Point2> kerf, double radius, bool far)
    {
        var figures = bench.Figures;
        var edge = far ? kerf.Max(Over) : kerf.Min(Over);
        var web = step.Web?.Value ?? -bench.Clear / 4;
        var (sign, least) = far ? ("-", Toward.Minus) : ("+", Toward.Plus);
        var name = (alongX, far) switch { (true, true) => "far edge", (true, false) => "near edge", (false, true) => "right end", _ => "left end" };
        return bench.Reading(
            Side,
            $"{Side} of the saw",
            $"{name} {sign} web {sign} saw/2",
            $"{figures.L(edge)} {sign} {figures.L(web)} {sign} {figures.L(2 * radius)}/2",
            far ? edge - web - radius : edge + web + radius,
            least,
            bench.CutterInput);
    }

    private void Run(List<Point2> kerf, Working lower, Working over, double turn, bool far)
    {
        var r = bench.Radius;
        var (low, high) = (lower.Result, lower.Result + bench.Cutter!.Thick);
        var before = Reached(over.Result, turn, low, high);
        var ends = kerf.Where(p => far ? Over(p) <= over.Result + r + 1e-9 : Over(p) >= over.Result - r - 1e-9)
            .Select(p => (At: Along(p), Half: Math.Sqrt(Math.Max(0, (r * r) - ((Over(p) - over.Result) * (Over(p) - over.Result)))))).ToList();
        // Metal to the left of the feed: from the near side and the right end towards plus, from the others towards minus.
        var plus = far == alongX;
        var start = plus ? before.Low : before.High;
        var end = plus ? ends.Max(e => e.At - e.Half) : ends.Min(e => e.At + e.Half);
        var from = bench.Clearing(Feed, "clear of the metal", plus ? start - (bench.Clear / 2) : start + (bench.Clear / 2), up: !plus);
        var to = bench.Show(bench.Clearing(Feed, "until all but the web is through", plus ? end + 0.3 : end - 0.3, plus));
        bench.Up();
        bench.Free(Feed, from);
        bench.Free(Side, over);
        bench.Free(Axis.Z, lower);
        bench.Machine.Go(new(Feed, to, true) { Remark = "slow; brush the chips out of the kerf", ReadBack = true });
        bench.Machine.Go(new(Feed, from, false));
        bench.Up();
    }

    // Where along its feed the saw (and its screw) no longer meets metal at its height.
    private (double Low, double High) Reached(double over, double turn, double low, double high)
    {
        var r = bench.Radius;
        var box = bench.Metal.Box(turn);
        double least = alongX ? box.Max.X : box.Max.Y, most = alongX ? box.Min.X : box.Min.Y;
        for (var i = 0; i <= 80; i++)
        {
            var across = over + (r * 0.9995 * ((2 * i / 80.0) - 1));
            var half = Math.Sqrt((r * r) - ((across - over) * (across - over)));
            for (var k = 0; k <= 2; k++)
            {
                var height = low + 1e-4 + ((high - low - 2e-4) * k / 2);
                foreach (var span in bench.Metal.Sound(alongX ? Line3.AlongX(across, height) : Line3.AlongY(across, height), turn))
                {
                    (least, most) = (Math.Min(least, span.From - half), Math.Max(most, span.To + half));
                }
            }
        }

        return (least, most);
    }

    // Where the web is: in the kerf's middle height, between the saw's reach and the edge.
    private void Leave(List<Point2> kerf, double z, Working over, double turn, bool far, double r)
    {
        var reach = far ? over.Result + r : over.Result - r;
        var edge = far ? kerf.Max(Over) : kerf.Min(Over);
        var at = kerf.Where(p => Math.Abs(Over(p) - edge) < 1e-3).Select(Along).ToList();
        var along = at.Count > 0 ? (at.Min() + at.Max()) / 2 : 0;
        var pose = Poses.At(bench.Machine.Setup, turn).Inverse();
        Point3 web = alongX ? new(along, (reach + edge) / 2, z) : new((reach + edge) / 2, along, z);
        var place = pose.Apply(web);
        var sign = far ? 1 : -1;
        var way = pose.ApplyDirection(alongX ? new Vector3(0, sign, 0) : new Vector3(sign, 0, 0));
        var down = pose.ApplyDirection(new Vector3(0, 0, -1));
        var upper = place + (down * (-bench.Cutter!.Thick / 2));
        Waste = (new(upper.X, upper.Y, upper.Z), new(down.X, down.Y, down.Z));
        Web = (new(place.X, place.Y, place.Z), new(way.X, way.Y, way.Z));
    }
}
