using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// Flanks by the side of the cutter: the rotary turns each parallel to X; the far one is fed towards X minus, the near one towards X plus.
internal static class SidePlanner
{
    internal static Finding? Plan(Desk desk, SideStep step, Cutter cutter)
    {
        if (desk.Plan.Find(step.Feature) is not { } feature)
        {
            return desk.CannotPlan(step, $"{step.Feature} does not stand upright in this holding", "Hold it with its outline seen from above.");
        }

        var straights = feature.Outline.Edges.Where(e => !e.IsArc && e.Name == "flank").ToList();
        if (straights.Count == 0 || !desk.Turns)
        {
            return desk.CannotPlan(step, straights.Count == 0 ? "Only the flanks of a tangent outline are planned as sides yet" : "A flank that is not along an axis needs the rotary", "Write the moves out as typed moves.");
        }

        desk.Take(cutter);
        var far = step.Edges.Any(e => e.Contains("far", StringComparison.Ordinal) || e.Contains("both", StringComparison.Ordinal) || e.Contains("all", StringComparison.Ordinal));
        var near = step.Edges.Any(e => e.Contains("near", StringComparison.Ordinal) || e.Contains("both", StringComparison.Ordinal) || e.Contains("all", StringComparison.Ordinal));
        foreach (var edge in straights.OrderByDescending(e => Height(e.Normal)))
        {
            var isFar = Height(edge.Normal) > 0;
            if (isFar ? far : near)
            {
                Flank(desk, step, cutter, edge, isFar);
            }
        }

        return null;
    }

    // Far is +Y; for a flank that stands along Y, +X.
    internal static double Height(Point2 normal) => Math.Abs(normal.Y) > 1e-9 ? normal.Y : normal.X;

    // Theta that turns a flank parallel to X with its metal on the near (far flank) or far side, nearest to where the rotary stands.
    internal static Working Theta(Desk desk, PlanEdge edge, bool far)
    {
        var theta = ((far ? Math.PI / 2 : -Math.PI / 2) - Plane.Angle(edge.Normal)) * Plane.ToDegrees;
        theta += 360 * Math.Round((desk.Recorder.At.T - theta) / 360);
        return desk.Work.Reading(
            Axis.T,
            new(far ? "theta, far flank along X" : "theta, near flank along X", "a quarter turn less the flank's own direction: asin((r1 - r2)/apart) from the line of centres", $"{(far ? "90" : "-90")} - {Figures.Deg(Plane.Angle(edge.Normal) * Plane.ToDegrees)} deg", theta, Work.Geometry),
            Toward.Nearest,
            desk.Work.Rule("flank", edge.Length, "tangent to both rounds, each at the middle of its limits"));
    }

    private static void Flank(Desk desk, SideStep step, Cutter cutter, PlanEdge edge, bool far)
    {
        var f = desk.Work.Figures;
        double r = cutter.TrueAcross / 2, allow = step.Allow?.Value ?? 0, side = far ? 1 : -1;
        var theta = Theta(desk, edge, far);
        var turn = theta.Exact / Plane.ToDegrees;
        Point2 a = Plane.Turned(edge.From, desk.Recorder.Centre, turn), b = Plane.Turned(edge.To, desk.Recorder.Centre, turn);
        var y = desk.Work.Reading(
            Axis.Y,
            new(far ? "Y of the far flank" : "Y of the near flank", $"flank {(far ? "+" : "-")} {cutter.Name}/2", $"{f.L(a.Y)} {(far ? "+" : "-")} {f.L(2 * r)}/2", a.Y + (side * (r + allow)), Work.Geometry),
            far ? Toward.Plus : Toward.Minus,
            desk.Work.Rule("flank", a.Y, "where the flank lies once turned along X"),
            desk.Work.Shop(cutter.Name, cutter.TrueAcross, $"shop: {cutter.Name}'s true size", cutter.Where));
        var (x0, x1) = far ? (Math.Max(a.X, b.X), Math.Min(a.X, b.X)) : (Math.Min(a.X, b.X), Math.Max(a.X, b.X));
        var from = End(desk, "X where the flank begins", x0, far ? Toward.Plus : Toward.Minus);
        var to = End(desk, "X where the flank ends", x1, far ? Toward.Minus : Toward.Plus);
        var top = TopOf(desk, a, b, turn, side, r);
        var depths = desk.Depths(top, desk.Plan.Height(step.To.Value), new(step.To, step.PerPass));
        var lead = Lead(desk, from.Result, to.Result, theta.Result, depths[^1].Result, r, side, y.Result);
        foreach (var w in (Working[])[theta, y, from, to, lead])
        {
            desk.Show(w);
        }

        desk.Up();
        desk.Recorder.Go(Axis.T, theta, false, 0, "lock", Axis.X, Axis.Y);
        desk.Recorder.Go(Axis.Y, lead);
        desk.Recorder.Go(Axis.X, from);
        desk.Recorder.Passes(depths, false, "each pass", () =>
        {
            desk.Recorder.Go(Axis.Y, y, true, 0, string.Empty, Axis.X, Axis.Z, Axis.T);
            desk.Recorder.Go(Axis.X, to, true, 0, string.Empty, Axis.Y, Axis.Z, Axis.T);
            desk.Recorder.Go(Axis.Y, lead);
            desk.Recorder.Go(Axis.X, from);
        });
        desk.Up();
    }

    private static Working End(Desk desk, string name, double x, Toward toward) => desk.Work.Reading(
        Axis.X,
        new(name, "where the straight meets the round tangent, once turned along X", desk.Work.Figures.L(x), Math.Abs(x) < 1e-9 ? 0 : x, Work.Geometry),
        toward,
        desk.Work.Rule("tangent point", x, "plane geometry of the outline"));

    private static double TopOf(Desk desk, Point2 a, Point2 b, double turn, double side, double r)
    {
        var top = double.NegativeInfinity;
        foreach (var p in desk.Metal.Between(desk.Plan, desk.Plan.Least.Z, desk.Plan.Most.Z))
        {
            var q = Plane.Turned(p, desk.Recorder.Centre, turn);
            var off = (q.Y - a.Y) * side;
            if (off > 0.1 && off < (2 * r) - 0.1 && q.X > Math.Min(a.X, b.X) && q.X < Math.Max(a.X, b.X))
            {
                top = Math.Max(top, desk.Metal.TopAt(desk.Plan, p));
            }
        }

        return double.IsFinite(top) ? top : desk.Top;
    }

    private static Working Lead(Desk desk, double from, double to, double theta, double z, double r, double side, double y)
    {
        var far = Math.Ceiling((Math.Abs(y) + 2) / 5) * 5;
        for (var i = 0; i < 200 && !Free(desk, from, to, theta, z, r, side * far); i++)
        {
            far += 5;
        }

        return desk.Rule(Axis.Y, side * far, "Y lead-in", "the first round reading clear of the bar as it lies turned");
    }

    private static bool Free(Desk desk, double from, double to, double theta, double z, double r, double y)
    {
        for (var i = 0; i <= 8; i++)
        {
            if (!desk.Clear(from + ((to - from) * i / 8), y, theta, z, r))
            {
                return false;
            }
        }

        return true;
    }
}
