using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// A slitting saw that comes in from a side and is fed along it, until a web is left along the other; it comes back the way it went.
internal sealed partial class Sawing(Bench bench)
{
    private const string Slow = "slow; brush the chips out of the kerf";

    // From the near or far side it is fed along X, from an end along Y.
    private bool alongX = true;

    // Whether a slit is sawn, which ends in the part, and no web is left.
    private bool slits;

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
        if (step.Slit is { } slit)
        {
            Slit(step, slit, saw);
            return;
        }

        var named = step.Under is { } under ? bench.Plan.Find(under) : null;
        var upper = step.At is { } at ? bench.Plan.Height(at.Value, feature: step.Under) : named is not null ? named.Low - (step.Allow?.Value ?? 0) : double.NaN;
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

    private string Ends => slits ? "slit" : "web";

    private string Passed => slits ? "past the end of the slit" : "until all but the web is through";

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

    // From the near side and the right end it is fed towards plus, from the others towards minus: metal to the left of the feed.
    private void Run(SawStep step, List<Point2> kerf, Working lower, Working over, double turn, bool far)
    {
        var plus = far == alongX;
        var before = Reached(over.Result, turn, lower.Result, lower.Result + bench.Cutter!.Thick);
        var from = Beside(plus ? before.Low : before.High, plus);
        bench.Up();
        bench.Free(Feed, from);
        if (step.Web is { } web)
        {
            Trial(step, kerf, lower, over, from, (turn, far, plus, web.Value));
        }
        else
        {
            bench.Free(Side, over);
            Down(lower);
        }

        bench.Machine.Go(new(Side, over, false) { Remark = step.Web is null ? string.Empty : "or as the strip says" });
        bench.Free(Axis.Z, lower);
        var to = Until(kerf, over, far, plus, show: true);
        if (step.Web is not null && Shim(kerf, over, far, plus, to) is { } stop)
        {
            Wedged(stop, plus);
        }

        bench.Machine.Go(new(Feed, to, true) { Remark = Slow, ReadBack = true });
        Out(lower, over, from, turn, far);
    }

    // What a saw starts clear of is more than a cutter needs: it is wide and hangs on a thin arbor. Less where the travel ends (common practice, no source).
    private Working Beside(double edge, bool plus)
    {
        var facts = bench.Work.Facts(Feed);
        foreach (var room in new[] { 3 * bench.Clear, 2 * bench.Clear, bench.Clear })
        {
            var at = bench.Clearing(Feed, "clear of the metal", plus ? edge - room : edge + room, up: !plus);
            if (!(at.Result < facts.Least) && !(at.Result > facts.Most))
            {
                return at;
            }
        }

        return bench.Clearing(Feed, "clear of the metal", plus ? edge - (bench.Clear / 2) : edge + (bench.Clear / 2), up: !plus);
    }

    // Down to its height, with what is under its arbor told.
    private void Down(Working lower)
    {
        var screw = lower.Result + Math.Min(0, bench.Machine.Shape?.LowestPoint ?? 0);
        var under = bench.Machine.Setup.Fixtures.Where(f => f.Holds && f.Most.Z <= screw + 1e-9).OrderByDescending(f => f.Most.Z).FirstOrDefault();
        var remark = under is null || screw >= lower.Result ? string.Empty
            : $"the arbor's screw ends at Z {bench.Figures.R(screw, bench.Work.Facts(Axis.Z).Step)}, {bench.Figures.LU(screw - under.Most.Z)} above the {(under.Name.EndsWith("jaw", StringComparison.Ordinal) ? "jaws" : under.Name)}";
        bench.Machine.Go(new(Axis.Z, lower, false) { Remark = remark });
    }

    // How far the saw is fed until the kerf has reached the web all along.
    private Working Until(List<Point2> kerf, Working over, bool far, bool plus, bool show)
    {
        var (r, past) = (bench.Radius, bench.Job.Unit == LengthUnit.Inch ? 0.012 * LengthUnit.Inch.MillimetresPerUnit() : 0.3);
        var edge = far ? over.Result + r : over.Result - r;
        List<double> ends = [];
        for (var i = 0; i < kerf.Count; i++)
        {
            var (p, q) = (kerf[i], kerf[(i + 1) % kerf.Count]);
            if (far ? Over(p) <= edge : Over(p) >= edge)
            {
                var half = Math.Sqrt(Math.Max(0, (r * r) - ((Over(p) - over.Result) * (Over(p) - over.Result))));
                ends.Add(plus ? Along(p) - half : Along(p) + half);
            }

            // Where the web begins and ends: the kerf's bottom and the outline meet between two places.
            var share = (edge - Over(p)) / (Over(q) - Over(p));
            if (share is > 0 and < 1)
            {
                ends.Add(Along(p) + ((Along(q) - Along(p)) * share));
            }
        }

        // A web wider than all that is sawn: to the outline's end.
        ends.AddRange(ends.Count == 0 ? kerf.Select(Along) : []);
        var end = plus ? ends.Max() : ends.Min();
        var to = bench.Clearing(Feed, Passed, plus ? end + past : end - past, plus) with { IsClear = false };
        to = to with { Formula = $"where the {Ends} ends + some room", PutIn = $"{bench.Figures.L(end)} {(plus ? "+" : "-")} {bench.Figures.L(past)}, {(plus ? "up" : "down")} to {bench.Figures.L(to.Result)}" };
        return show ? bench.Show(to) : to;
    }

    // A first pass that leaves more; what it left is measured, as neither the saw's size nor how true it runs is known (common practice, no source).
    private void Trial(SawStep step, List<Point2> kerf, Working lower, Working over, Working from, (double Turn, bool Far, bool Plus, double Web) at)
    {
        var figures = bench.Figures;
        var (sign, word) = at.Far ? (-1, "-") : (1, "+");
        var first = bench.Show(bench.Reading(Side, $"{Side} of the trial pass", $"{Side} of the saw {word} what it leaves more", $"{figures.L(over.Result)} {word} {figures.L(bench.Past)}", over.Result + (sign * bench.Past), at.Far ? Toward.Minus : Toward.Plus));
        bench.Free(Side, first);
        Down(lower);
        bench.Machine.Go(new(Feed, Until(kerf, first, at.Far, at.Plus, show: false), true) { Remark = $"trial: {figures.LU(bench.Past)} more web; {Slow}" });
        Out(lower, first, from, at.Turn, at.Far);
        Measured(step, first, over, at);
        bench.Free(Feed, from);
    }

    // A caliper over a strip tells a web within this; a saw's size and how true it runs tell it within four times as much (common practice, no source).
    private void Measured(SawStep step, Working first, Working over, (double Turn, bool Far, bool Plus, double Web) at)
    {
        var figures = bench.Figures;
        var by = figures.Unit == LengthUnit.Inch ? 0.002 * LengthUnit.Inch.MillimetresPerUnit() : 0.05;
        var sign = at.Far ? 1 : -1;
        var (expected, least) = (at.Web + Math.Abs(over.Result - first.Result), at.Far ? Toward.Minus : Toward.Plus);
        double To(double measured) => Rounding.ToStep(first.Result + (sign * (measured - at.Web)), bench.Work.Facts(Side).Step, least);
        var face = step.WebAlong ?? "far side";
        bench.Machine.Tell(new MeasureLine
        {
            Size = "web",
            Expected = expected,
            Corrects = Side,
            Strip = [.. Enumerable.Range(-2, 5).Select(i => (expected + (i * by), To(expected + (i * by))))],
            With = "a strip and a caliper",
            Working = bench.Reading(Side, $"{Side} of the last pass", $"{Side} of the trial {(at.Far ? "+" : "-")} (measured - web)", $"{figures.L(first.Result)} {(at.Far ? "+" : "-")} (measured - {figures.L(at.Web)})", over.Exact, least, bench.CutterInput),
            Remark = $"Spindle stopped, {bench.Retracted}. Push a straight strip thinner than the kerf to its bottom; caliper over strip and {face} at the thinnest, less the strip's breadth, is the web. {Side} of the last pass = {figures.L(first.Result)} {(at.Far ? "+" : "-")} (measured - {figures.L(at.Web)}). Measured so it comes within {figures.LU(by)}; by the saw's size alone it may be out by {figures.LU(4 * by)}, as the saw runs.",
        });
    }

    // Where the saw has left the first of the kerf, so that a shim goes in behind it; null where it never does before its end.
    private Working? Shim(List<Point2> kerf, Working over, bool far, bool plus, Working to)
    {
        var r = bench.Radius;
        var room = 2.5 * bench.Clear;
        var entry = plus ? kerf.Min(Along) + room : kerf.Max(Along) - room;
        var edge = far ? over.Result + r : over.Result - r;
        var left = kerf.Where(p => (plus ? Along(p) <= entry : Along(p) >= entry) && (far ? Over(p) <= edge : Over(p) >= edge))
            .Select(p => (At: Along(p), Half: Math.Sqrt(Math.Max(0, (r * r) - ((Over(p) - over.Result) * (Over(p) - over.Result)))))).ToList();
        if (left.Count == 0)
        {
            return null;
        }

        var at = plus ? left.Max(p => p.At + p.Half) : left.Min(p => p.At - p.Half);
        var stop = bench.Clearing(Feed, "where a shim goes in behind the saw", plus ? at + (bench.Clear / 2) : at - (bench.Clear / 2), up: plus) with { IsClear = false };
        return (plus ? stop.Result < to.Result - bench.Clear : stop.Result > to.Result + bench.Clear) ? bench.Show(stop) : null;
    }

    // The saw stopped and backed off the metal a little, a shim put in behind it, and on.
    private void Wedged(Working stop, bool plus)
    {
        var back = bench.Clear / 2;
        bench.Machine.Go(new(Feed, stop, true) { Remark = Slow });
        bench.Machine.Stop("it stands in its kerf");
        bench.Free(Feed, bench.Clearing(Feed, "back off the metal", plus ? stop.Result - back : stop.Result + back, up: !plus));
        bench.Machine.Tell(new HandLine { Says = $"Slip a shim as thick as the kerf, {bench.Figures.LU(bench.Cutter!.Thick)}, into the kerf behind the saw: the part must not come down on the saw when the web lets go. Hands away." });
    }

    // Out of the kerf with the spindle stopped: sideways, away from the web, where no metal is; else back the way it came.
    private void Out(Working lower, Working over, Working from, double turn, bool far)
    {
        bench.Machine.Stop("before it leaves its kerf: turning, it would climb");
        var box = bench.Metal.Box(turn);
        var (low, high) = (lower.Result, lower.Result + bench.Cutter!.Thick);
        var reach = bench.Metal.Extent(!alongX, alongX ? box.Min.X : box.Min.Y, alongX ? box.Max.X : box.Max.Y, low, turn);
        var edge = far ? reach?.Low ?? over.Result : reach?.High ?? over.Result;
        var away = bench.Clearing(Side, "clear of the metal", far ? edge - bench.Radius - bench.Clear : edge + bench.Radius + bench.Clear, up: !far);
        var facts = bench.Work.Facts(Side);
        if (away.Result < facts.Least || away.Result > facts.Most || Crosses(over.Result, away.Result, (low, high), turn))
        {
            bench.Free(Feed, from);
        }
        else
        {
            bench.Free(Side, away);
        }

        bench.Up();
    }

    // Whether metal stands in the saw's way as it leaves sideways.
    private bool Crosses(double from, double to, (double Low, double High) heights, double turn)
    {
        const double Touch = 1e-3;
        var stands = alongX ? bench.Machine.At.X : bench.Machine.At.Y;
        for (var i = 0; i <= 24; i++)
        {
            var over = from + ((to - from) * i / 24);
            for (var k = 0; k < 72; k++)
            {
                var (s, c) = Math.SinCos(k * Math.PI / 36);
                var (along, across) = (stands + (0.9995 * bench.Radius * c), over + (0.9995 * bench.Radius * s));
                var line = alongX ? Line3.AlongZ(along, across) : Line3.AlongZ(across, along);
                foreach (var span in bench.Metal.Sound(line, turn))
                {
                    if (Math.Min(span.To, heights.High) - Math.Max(span.From, heights.Low) > Touch)
                    {
                        return true;
                    }
                }
            }
        }

        return false;
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
