using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// A saw under a kept face, fed along X with the flank turned parallel, until a web is left along it. Its upper face stops short of the kept face.
internal sealed class SawPlanner(Desk desk)
{
    // A point of the web left, holding plan at theta 0 and height; null where none was left.
    internal Point3? Web { get; private set; }

    internal Finding? Plan(SawStep step, Cutter saw)
    {
        if (desk.Plan.Find(step.Under) is not { } feature || step.From is not ("near" or "far"))
        {
            return desk.CannotPlan(step, "Only a saw under a named feature, from the near or the far side, is planned yet", "Write the moves out as typed moves.");
        }

        var far = step.From == "near";
        var edge = feature.Outline.Edges.Where(e => !e.IsArc).OrderByDescending(e => (far ? 1 : -1) * SidePlanner.Height(e.Normal)).FirstOrDefault();
        if (edge == default || step.Web is not { } web)
        {
            return desk.CannotPlan(step, "The web has no straight flank to lie along", "Write the moves out as typed moves.");
        }

        desk.Take(saw);
        Cut(step, saw, feature, edge, web, far ? 1 : -1);
        desk.Cautions.Add("A slitting saw grabs: feed slowly, never back through the cut, stand out of its plane. The thin web lets go suddenly; hold nothing against it.");
        return null;
    }

    private void Cut(SawStep step, Cutter saw, PlanFeature feature, PlanEdge edge, Jobs.Documents.Typed web, int side)
    {
        var f = desk.Work.Figures;
        var r = saw.TrueAcross / 2;
        var theta = desk.Turns ? SidePlanner.Theta(desk, edge, side > 0) : desk.Rule(Axis.T, 0, "theta", "no rotary");
        var turn = theta.Exact / Plane.ToDegrees;
        var flank = Plane.Turned(edge.From, desk.Recorder.Centre, turn).Y;
        var y = desk.Work.Reading(
            Axis.Y,
            new("Y of the saw", $"flank {(side > 0 ? "-" : "+")} web {(side > 0 ? "-" : "+")} {saw.Name}/2", $"{f.L(flank)} {(side > 0 ? "-" : "+")} {web.Text} {(side > 0 ? "-" : "+")} {f.L(saw.TrueAcross)}/2", flank - (side * (web.Value + r)), Work.Geometry),
            side > 0 ? Toward.Minus : Toward.Plus,
            desk.Work.Typed("web", web),
            desk.Work.Shop(saw.Name, saw.TrueAcross, $"shop: {saw.Name}'s true size", saw.Where));
        var allow = step.Allow?.Value ?? 0;
        var z = desk.Work.Reading(
            Axis.Z,
            new("Z of the saw's lower face", $"underside of {feature.Feature.Name} - allow - {saw.Name} thick", $"{f.L(feature.Low)} - {f.L(allow)} - {f.L(saw.Thick)}", feature.Low - allow - saw.Thick, Work.Practice),
            Toward.Minus,
            desk.Work.Rule("underside", feature.Low, $"the drawing's {feature.Feature.Name}, aimed"),
            desk.Work.Shop($"{saw.Name} thick", saw.Thick, $"shop: {saw.Name}", saw.Where));
        var (x0, x1) = Ends(saw, feature, turn, y.Result, z.Result, flank - (side * web.Value), side);
        desk.Show(theta);
        desk.Show(y);
        desk.Show(z);
        desk.Show(x0);
        desk.Show(x1);
        var away = desk.Rule(Axis.Y, -side * (Math.Ceiling(r + Reach()) + 3), "Y clear of all", "half the saw and the bar's reach");
        desk.Up();
        desk.Recorder.Go(Axis.Y, away);
        desk.Recorder.Go(Axis.T, theta);
        desk.Recorder.Go(Axis.X, x0);
        desk.Recorder.Go(Axis.Z, z);
        desk.Recorder.Go(Axis.Y, y);
        desk.Recorder.Go(Axis.X, x1, true, 0, string.Empty, Axis.Y, Axis.Z, Axis.T);
        desk.Recorder.Go(Axis.Y, away, false, 0, "out sideways through its own slot");
        desk.Up();
        var middle = new Point2((Plane.Turned(edge.From, desk.Recorder.Centre, turn).X + Plane.Turned(edge.To, desk.Recorder.Centre, turn).X) / 2, flank - (side * web.Value / 2));
        var back = Plane.Turned(middle, desk.Recorder.Centre, -turn);
        Web = new(back.X, back.Y, z.Result + (saw.Thick / 2));
    }

    private double Reach() => new[] { desk.Plan.Least.X, desk.Plan.Most.X, desk.Plan.Least.Y, desk.Plan.Most.Y }.Max(Math.Abs);

    // Start: the saw clear of all metal between its lower face and the top; end: where the outline falls below the web's line and the saw has passed it.
    private (Working From, Working To) Ends(Cutter saw, PlanFeature feature, double turn, double y, double z, double line, int side)
    {
        var r = saw.TrueAcross / 2;
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        for (var level = z + 0.25; level < desk.Plan.Most.Z; level += 1)
        {
            foreach (var p in desk.Metal.Between(desk.Plan, level, level + 0.9))
            {
                var q = Plane.Turned(p, desk.Recorder.Centre, turn);
                var off = q.Y - y;
                if (Math.Abs(off) < r)
                {
                    var half = Math.Sqrt((r * r) - (off * off));
                    (least, most) = (Math.Min(least, q.X - half), Math.Max(most, q.X + half));
                }
            }
        }

        var ends = Crossings(feature, turn, line);
        var from = side > 0 ? Math.Floor(least - 1) : Math.Ceiling(most + 1);
        var to = side > 0 ? Math.Ceiling(ends.Most) : Math.Floor(ends.Least);
        return (
            desk.Rule(Axis.X, from, "X clear of the metal", "half the saw from the nearest metal at its height, and one more"),
            desk.Rule(Axis.X, to, "X where the web is all that is left", "where the outline crosses the web's line, to the next whole millimetre"));
    }

    private (double Least, double Most) Crossings(PlanFeature feature, double turn, double line)
    {
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        foreach (var edge in feature.Outline.Edges)
        {
            for (var i = 0; i <= 400; i++)
            {
                var p = edge.IsArc ? Plane.Polar(edge.Centre, edge.Radius, Plane.Angle(edge.Centre, edge.From) + (edge.Sweep * i / 400)) : new Point2(edge.From.X + ((edge.To.X - edge.From.X) * i / 400), edge.From.Y + ((edge.To.Y - edge.From.Y) * i / 400));
                var q = Plane.Turned(p, desk.Recorder.Centre, turn);
                if (Math.Abs(q.Y - line) < 0.05)
                {
                    (least, most) = (Math.Min(least, q.X), Math.Max(most, q.X));
                }
            }
        }

        return (least, most);
    }
}
