using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// A slitting saw fed along X from the near or the far side, until a web is left along the other; it comes back the way it went.
internal sealed class Sawing(Bench bench)
{
    // A place of the web last left, part frame, and out of the part there.
    internal (Place3 At, Place3 Outward)? Web { get; private set; }

    // All that falls away with the web: a place of the saw's upper face and the way down, part frame.
    internal (Place3 At, Place3 Way)? Waste { get; private set; }

    internal void Plan(SawStep step)
    {
        if (step.From is not ("near" or "far") || bench.Cutter is not { } saw)
        {
            bench.Cannot(step, "A saw is worked out from the near or the far side only.", "Turn the work so that it comes from there, or write its moves out.");
            return;
        }

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
        var kerf = Kerf(named, turn);
        var far = step.From == "near";
        var y = bench.Show(Across(step, kerf, saw.TrueAcross / 2, far));
        bench.Up();
        if (theta is not null)
        {
            bench.Free(Axis.T, theta);
        }

        Run(step, kerf, lower, y, turn, far);
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
        if (bench.Machine.Setup.Rotary is null)
        {
            return null;
        }

        if (named is not null && step.WebAlong is { } word && SideMilling.Edges(named.Outline, word).Select(e => (PlanEdge?)e).FirstOrDefault() is { } edge)
        {
            var turn = (new SideMilling(bench).Turn(edge) ?? 0) * Plane.ToDegrees;
            return bench.Show(bench.Angle($"theta that lays the {word} along X", "90 deg - the angle of its normal", Figures.Deg(turn), turn, Toward.Nearest));
        }

        return bench.AngleZero;
    }

    // Places of the outline that is sawn under, as the work lies; the stock's where none is named.
    private List<Point2> Kerf(PlanFeature? named, double turn)
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
            places.AddRange([new(box.Min.X, box.Min.Y), new(box.Max.X, box.Min.Y), new(box.Max.X, box.Max.Y), new(box.Min.X, box.Max.Y)]);
            return places;
        }

        return [.. places.Select(p => Plane.Turned(p, new(0, 0), turn / Plane.ToDegrees))];
    }

    // far edge - web - saw/2, towards the side the web is left thicker.
    private Working Across(SawStep step, List<Point2> kerf, double radius, bool far)
    {
        var figures = bench.Figures;
        var edge = far ? kerf.Max(p => p.Y) : kerf.Min(p => p.Y);
        var web = step.Web?.Value ?? -bench.Clear;
        var (sign, least) = far ? ("-", Toward.Minus) : ("+", Toward.Plus);
        return bench.Reading(
            Axis.Y,
            "Y of the saw",
            $"{(far ? "far" : "near")} edge {sign} web {sign} saw/2",
            $"{figures.L(edge)} {sign} {figures.L(web)} {sign} {figures.L(2 * radius)}/2",
            far ? edge - web - radius : edge + web + radius,
            least,
            bench.CutterInput);
    }

    private void Run(SawStep step, List<Point2> kerf, Working lower, Working y, double turn, bool far)
    {
        var r = bench.Radius;
        var (low, high) = (lower.Result, lower.Result + bench.Cutter!.Thick);
        var (before, _) = Reached(y.Result, turn, low, high);
        var ends = kerf.Where(p => far ? p.Y <= y.Result + r + 1e-9 : p.Y >= y.Result - r - 1e-9)
            .Select(p => (p.X, Half: Math.Sqrt(Math.Max(0, (r * r) - ((p.Y - y.Result) * (p.Y - y.Result)))))).ToList();
        // Metal to the left of the feed: from the near side towards plus, from the far side towards minus.
        var start = far ? before.Low : before.High;
        var end = far ? ends.Max(e => e.X - e.Half) : ends.Min(e => e.X + e.Half);
        var from = bench.Clearing(Axis.X, "clear of the metal", far ? start - (bench.Clear / 2) : start + (bench.Clear / 2), up: !far);
        var to = bench.Show(bench.Clearing(Axis.X, "until all but the web is through", far ? end + 0.3 : end - 0.3, far));
        bench.Up();
        bench.Free(Axis.X, from);
        bench.Free(Axis.Y, y);
        bench.Free(Axis.Z, lower);
        bench.Machine.Go(new(Axis.X, to, true) { Remark = "slow; brush the chips out of the kerf", ReadBack = true });
        bench.Machine.Go(new(Axis.X, from, false));
        bench.Up();
        _ = step;
    }

    // Where along X the saw (and its screw) no longer meets metal at its height.
    private ((double Low, double High) Clear, bool Any) Reached(double y, double turn, double low, double high)
    {
        var r = bench.Radius;
        var box = bench.Metal.Box(turn);
        double least = box.Max.X, most = box.Min.X;
        var any = false;
        for (var i = 0; i <= 80; i++)
        {
            var across = y + (r * 0.9995 * ((2 * i / 80.0) - 1));
            var half = Math.Sqrt((r * r) - ((across - y) * (across - y)));
            for (var k = 0; k <= 2; k++)
            {
                foreach (var span in bench.Metal.Sound(Line3.AlongX(across, low + 1e-4 + ((high - low - 2e-4) * k / 2)), turn))
                {
                    any = true;
                    (least, most) = (Math.Min(least, span.From - half), Math.Max(most, span.To + half));
                }
            }
        }

        return ((least, most), any);
    }

    // Where the web is: in the kerf's middle height, between the saw's reach and the edge.
    private void Leave(List<Point2> kerf, double z, Working y, double turn, bool far, double r)
    {
        var reach = far ? y.Result + r : y.Result - r;
        var edge = far ? kerf.Max(p => p.Y) : kerf.Min(p => p.Y);
        var at = kerf.Where(p => Math.Abs(p.Y - edge) < 1e-3).Select(p => p.X).ToList();
        var x = at.Count > 0 ? (at.Min() + at.Max()) / 2 : 0;
        var pose = Poses.At(bench.Machine.Setup, turn).Inverse();
        var place = pose.Apply(new Point3(x, (reach + edge) / 2, z));
        var way = pose.ApplyDirection(new Vector3(0, far ? 1 : -1, 0));
        var down = pose.ApplyDirection(new Vector3(0, 0, -1));
        var upper = place + (down * (-bench.Cutter!.Thick / 2));
        Waste = (new(upper.X, upper.Y, upper.Z), new(down.X, down.Y, down.Z));
        Web = (new(place.X, place.Y, place.Z), new(way.X, way.Y, way.Z));
    }
}
