using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// A boss about the rotary's axis: all round, or the arc that lies on an outline. The work turns clockwise, so that the cutter cuts conventional.
internal sealed class RoundPlanner(Desk desk)
{
    private Action<Working>? last;
    private double lastAllow;
    private PlanFeature? lastFeature;
    private Cutter? lastCutter;
    private RoundStep? lastStep;

    internal Finding? Plan(RoundStep step, Cutter cutter)
    {
        if (!desk.Turns || desk.Plan.Find(step.Feature) is not { } round || AimedDrawing.RadiusOf(round.Feature) is not { } radius)
        {
            return desk.CannotPlan(step, $"{step.Feature} is turned about the rotary's axis, and here it is not upright on a rotary", "Hold the work on the rotary, or write the moves out.");
        }

        if (Plane.Distance(round.Centre, desk.Recorder.Centre) > 1e-6 || step.Inside)
        {
            return desk.CannotPlan(step, step.Inside ? "The inside of a round is not planned yet" : $"{step.Feature} does not stand on the rotary's centre in this holding", $"Zero x, y at {step.Feature} on the rotary centre, or write the moves out.");
        }

        desk.Take(cutter);
        var allow = step.Allow?.Value ?? 0;
        var x = Stand(round, radius, cutter, step);
        var (from, to) = Arc(step, round);
        var top = TopOf(radius, cutter, from.Result, to.Result, allow);
        var depths = desk.Depths(top, desk.Plan.Height(step.To.Value), new(step.To, step.PerPass));
        var lead = Lead(x, from.Result, depths[^1].Result, cutter);
        foreach (var w in (Working[])[x, lead, from, to])
        {
            desk.Show(w);
        }

        desk.Up();
        var y = desk.Rule(Axis.Y, desk.Recorder.Centre.Y, "Y of the rotary's axis", "the cutter stands beside the axis along X");
        desk.Recorder.Go(Axis.Y, y);
        desk.Recorder.Go(Axis.X, lead);
        desk.Recorder.Go(Axis.T, from);
        desk.Recorder.Passes(depths, false, "each pass", () => Turn(x, lead, from, to, cutter));
        desk.Up();
        desk.Cautions.Add("Turn the rotary clockwise only while it cuts. The other way the cut is climb, and slack lets it grab.");
        Remember(step, round, cutter, allow, ready => Turn(ready, lead, desk.Rule(Axis.T, desk.Recorder.At.T, "T where it stands", "once round from here"), Once(), cutter));
        return null;
    }

    // Measures what was left large, and repeats the turn at full depth by what was measured.
    internal Finding? Measure(MeasureStep step)
    {
        if (!step.ThenLastPass)
        {
            desk.Recorder.Say(new MeasureLine { Size = step.Size, Expected = desk.Drawing.SizeNamed(step.Size)?.Limits.Middle ?? 0, With = "micrometer" }, new Measured(step.Size, desk.Drawing.SizeNamed(step.Size)?.Limits.Middle ?? 0, false));
            return null;
        }

        if (last is null || lastFeature is null || lastCutter is null || lastStep is null)
        {
            return desk.CannotPlan(step, "There is no pass before it that left metal to correct", "Write allow on the round before it.");
        }

        var f = desk.Work.Figures;
        var aimed = 2 * (AimedDrawing.RadiusOf(lastFeature.Feature) ?? 0);
        var first = Stand(lastFeature, aimed / 2, lastCutter, lastStep);
        var expected = aimed + (2 * lastAllow) + (2 * (first.Result - first.Exact));
        var final = Stand(lastFeature, aimed / 2, lastCutter, lastStep with { Allow = null });
        var z = desk.Plan.Height(lastStep.To.Value);
        desk.Recorder.Go(Axis.Z, desk.Rule(Axis.Z, desk.ChangeAt, "height to measure under", "the micrometer goes under the cutter"), false, 0, "spindle off");
        var strip = desk.Work.Reading(
            Axis.X,
            new("X of the last pass", "X before - (measured - aimed)/2", $"{f.L(first.Result)} - (measured - {f.L(aimed)})/2", first.Result - ((expected - aimed) / 2), Work.Geometry),
            Toward.Plus,
            desk.Work.From("X before", first),
            Sizes.Across(desk, lastFeature));
        desk.Recorder.Say(
            new MeasureLine
            {
                Size = step.Size,
                Expected = expected,
                Corrects = Axis.X,
                With = "micrometer",
                Working = strip,
                Strip = [.. Enumerable.Range(-2, 5).Select(i => (expected + (i * 0.01), Rounding.ToStep(first.Result - ((expected + (i * 0.01) - aimed) / 2), desk.Setup.Axes.X.Step, Toward.Plus)))],
            },
            new Measured(step.Size, expected, true));
        desk.Show(strip);
        desk.Show(final);
        desk.Cautions.Add("Spindle off and still before the micrometer goes near; quill up, out of its way.");
        desk.Recorder.Go(Axis.Z, desk.Rule(Axis.Z, z, "full depth", "the depth typed, at once"), false, 0, "spindle on");
        last(final);
        desk.Up();
        return null;
    }

    private void Remember(RoundStep step, PlanFeature round, Cutter cutter, double allow, Action<Working> again)
    {
        (last, lastAllow, lastFeature, lastCutter, lastStep) = step is { Allow: not null, EndOf: null } ? (again, allow, round, cutter, step) : (null, 0, null, null, null);
    }

    private Working Once() => desk.Rule(Axis.T, desk.Recorder.At.T - 360, "T once round", "clockwise from above");

    private void Turn(Working x, Working lead, Working from, Working to, Cutter cutter)
    {
        var whole = Math.Abs(to.Result - from.Result + 360) < 1e-9;
        var end = whole ? Once() : to;
        desk.Recorder.Go(Axis.X, x, true, 0, string.Empty, Axis.Y, Axis.Z, Axis.T);
        desk.Recorder.Go(Axis.T, end, true, x.Result, whole ? "once round" : string.Empty, Axis.X, Axis.Y, Axis.Z);
        desk.Recorder.Go(Axis.X, lead);
        if (whole)
        {
            return;
        }

        var clear = true;
        for (var t = end.Result; t <= from.Result; t += 10)
        {
            clear &= desk.Clear(lead.Result, desk.Recorder.Centre.Y, t, desk.Recorder.At.Z, cutter.TrueAcross / 2);
        }

        if (!clear)
        {
            desk.Up();
        }

        desk.Recorder.Go(Axis.T, from, false, 0, "back, not cutting");
    }

    private Working Stand(PlanFeature round, double radius, Cutter cutter, RoundStep step)
    {
        var f = desk.Work.Figures;
        var allow = step.Allow?.Value ?? 0;
        var exact = desk.Recorder.Centre.X + radius + (cutter.TrueAcross / 2) + allow;
        var inputs = new List<WorkingInput> { Sizes.Across(desk, round), desk.Work.Shop(cutter.Name, cutter.TrueAcross, $"shop: {cutter.Name}'s true size", cutter.Where) };
        if (step.Allow is { } typed)
        {
            inputs.Add(desk.Work.Typed("allow", typed));
        }

        var plus = step.Allow is null ? string.Empty : $" + {step.Allow.Text}";
        return desk.Work.Reading(
            Axis.X,
            new($"X of the {round.Feature.Name}", $"{round.Feature.Name}/2 + {cutter.Name}/2{(step.Allow is null ? string.Empty : " + allow")}", $"{f.L(2 * radius)}/2 + {f.L(cutter.TrueAcross)}/2{plus}", exact, Work.Geometry),
            Toward.Plus,
            [.. inputs]);
    }

    // The point of the part at angle phi faces +X when theta = -phi.
    private (Working From, Working To) Arc(RoundStep step, PlanFeature round)
    {
        var stands = desk.Recorder.At.T;
        var edge = step.EndOf is { } outline && desk.Plan.Find(outline) is { } o ? o.Outline.Edges.FirstOrDefault(e => e.IsArc && e.Name == round.Feature.Name) : default;
        if (!edge.IsArc || Plane.Distance(edge.From, edge.To) < 1e-9)
        {
            return (desk.Rule(Axis.T, stands, "T from", "where it stands"), desk.Rule(Axis.T, stands - 360, "T once round", "clockwise from above"));
        }

        var phi = Plane.Angle(edge.Centre, edge.From);
        var from = -phi * Plane.ToDegrees;
        from += 360 * Math.Round((stands - from) / 360);
        return (Theta(round, edge, "where the arc begins", from), Theta(round, edge, "where the arc ends", from - (edge.Sweep * Plane.ToDegrees)));
    }

    private Working Theta(PlanFeature round, PlanEdge edge, string name, double theta)
    {
        var touch = Math.Abs(edge.Sweep) * Plane.ToDegrees / 2;
        return desk.Work.Reading(
            Axis.T,
            new($"theta {name}", "minus the angle at which the straight touches the round: acos((r1 - r2)/apart) either side of the line of centres", $"half the arc {Figures.Deg(touch)} deg: {Figures.Deg(((theta % 360) + 360) % 360)} deg", theta, Work.Geometry, "clockwise from above"),
            Toward.Nearest,
            Sizes.Across(desk, round));
    }

    private double TopOf(double radius, Cutter cutter, double from, double to, double allow)
    {
        double inner = radius + allow, outer = inner + cutter.TrueAcross, top = double.NegativeInfinity;
        foreach (var p in desk.Metal.Between(desk.Plan, desk.Plan.Least.Z, desk.Plan.Most.Z))
        {
            var d = Plane.Distance(p, desk.Recorder.Centre);
            var phi = Plane.Angle(desk.Recorder.Centre, p);
            var along = Plane.Positive(phi + (from / Plane.ToDegrees)) * Plane.ToDegrees;
            if (d > inner + 0.1 && d < outer - 0.1 && along <= from - to + 1e-9)
            {
                top = Math.Max(top, desk.Metal.TopAt(desk.Plan, p));
            }
        }

        return double.IsFinite(top) ? top : desk.Top;
    }

    private Working Lead(Working x, double theta, double z, Cutter cutter)
    {
        var far = Math.Ceiling((x.Result + 2) / 5) * 5;
        for (var i = 0; i < 200 && !desk.Clear(far, desk.Recorder.Centre.Y, theta, z, cutter.TrueAcross / 2); i++)
        {
            far += 5;
        }

        return desk.Rule(Axis.X, far, "X lead-in", "the first round reading clear of metal");
    }
}
