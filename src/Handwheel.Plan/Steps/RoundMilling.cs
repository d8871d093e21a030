using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// A boss or ring about the rotary's axis: whole turns, or the arc that lies on an outline; the work turns clockwise outside, counterclockwise inside.
internal sealed class RoundMilling(Bench bench)
{
    internal void Plan(RoundStep step, double allow, Typed? perPass)
    {
        if (bench.Plan.Find(step.Feature) is not { } f || AimedDrawing.RadiusOf(f.Feature) is not { } radius)
        {
            bench.Cannot(step, $"'{step.Feature}' is no upright round in this holding.", "Name a round whose axis is upright here; the rounded end of another feature is 'round pin end of body to -8'.");
            return;
        }

        if (!Centred(step, f))
        {
            return;
        }

        var to = bench.Plan.Height(step.To.Value, f.Feature.Name);
        if (step.Inside)
        {
            var inner = f.Feature.Shape is RingShape ring ? ring.Bore.Middle / 2 : radius;
            new PocketMilling(bench).Ring(step, f, inner, to, allow, perPass);
        }
        else if (step.EndOf is { } outline)
        {
            Arc(step, f, outline, to, allow, perPass);
        }
        else if (InTheWay(f, radius + allow, to) is { } other)
        {
            bench.Cannot(step, $"'{other}' stands in the way of a whole turn round '{f.Feature.Name}' at this height.", $"Write 'round {f.Feature.Name} end of {other} to ...': it turns only where the round is the part's outside.");
        }
        else
        {
            Whole(f, Out(f, f.Feature.Name, radius, allow), bench.Depths(Top(radius + allow, to, 0, 360), to, perPass, "the height"), allow <= 0);
        }
    }

    internal bool Centred(Step step, PlanFeature f)
    {
        if (bench.Machine.Setup.Rotary is { Lies: false } r && Math.Abs(f.Centre.X - r.X) < 1e-6 && Math.Abs(f.Centre.Y - r.Y) < 1e-6)
        {
            return true;
        }

        bench.Cannot(step, $"'{f.Feature.Name}' does not stand on the rotary's centre in this holding.", $"Write 'zero x, y at {f.Feature.Name} on rotary centre' in a holding on the rotary.");
        return false;
    }

    // Another feature of the part that a whole turn beside the round would cut into on some of its way; null where none is. One that stands all round is cut
    // into by the depth, which the proof tells.
    private string? InTheWay(PlanFeature f, double radius, double to)
    {
        string? met = null;
        var open = false;
        for (var i = 0; i < 360 && !(open && met is not null); i++)
        {
            var other = ((double[])[0.2, 1, 1.8]).Select(share => Standing(f, Plane.Polar(f.Centre, radius + (share * bench.Radius), (i + 0.5) / Plane.ToDegrees), to)).FirstOrDefault(o => o is not null);
            (met, open) = (met ?? other, open || other is null);
        }

        return open ? met : null;
    }

    // The feature whose metal the finished part has at a place above a height.
    private string? Standing(PlanFeature f, Point2 p, double to) => bench.DrawnTopAt(p, 0) > to + 0.1
        ? bench.Drawing.Features.Where(o => !o.IsCut && o != f.Feature).Select(bench.Plan.Of).FirstOrDefault(o => o is not null && o.High > to + 0.1 && o.Outlines.Any(l => l.Contains(p)))?.Feature.Name
        : null;

    // R + r outside, metal left.
    private Working Out(PlanFeature f, string name, double radius, double allow)
    {
        var figures = bench.Figures;
        List<WorkingInput> inputs =
        [
            new($"{name} across", 2 * radius, figures.L(2 * radius), InputKind.Aimed, $"the middle of the limits of {name}", f.Feature.Where, null),
            bench.CutterInput,
        ];
        var more = allow > 0 ? $" + {figures.L(allow)}" : string.Empty;
        return bench.Show(bench.Reading(
            Axis.X,
            $"X round {name}",
            $"{name}/2 + {bench.Cutter!.Name}/2{(allow > 0 ? " + allowance" : string.Empty)}",
            $"{figures.L(2 * radius)}/2 + {figures.L(2 * bench.Radius)}/2{more}",
            radius + bench.Radius + allow,
            bench.Leaving(plus: true),
            [.. inputs]));
    }

    private double Top(double radius, double to, double fromDegrees, double sweep)
    {
        var top = to;
        for (var i = 0; i <= 72; i++)
        {
            var a = (fromDegrees + (sweep * i / 72)) / Plane.ToDegrees;
            for (var k = 0; k <= 6; k++)
            {
                top = Math.Max(top, bench.Metal.TopAt(Plane.Polar(new(0, 0), radius + 0.01 + (2 * bench.Radius * k / 6.01), a), 0) ?? to);
            }
        }

        return top;
    }

    private Working Clear(double theta, double z, string name) => bench.Clearing(
        Axis.X,
        name,
        (bench.Metal.Reach(new(0, 0), bench.Radius, z, theta) ?? 0) + bench.Radius + bench.Clear,
        up: true);

    // Once round at each depth, in and out beside the metal.
    internal void Whole(PlanFeature f, Working x, IReadOnlyList<Working> depths, bool last)
    {
        var start = Clear(0, depths[^1].Result, $"clear of the metal beside {f.Feature.Name}");
        bench.Up();
        bench.Machine.Go(new(Axis.T, bench.AngleZero, false));
        bench.Free(Axis.X, start);
        bench.Free(Axis.Y, Middle());
        bench.Machine.Passes(depths, plunges: false,
        [
            new(Axis.X, x, true) { ReadBack = last },
            new(Axis.T, bench.AngleZero, true) { WholeTurn = true },
            new(Axis.X, start, false),
        ]);
        bench.Up();
    }

    private Working Middle() => bench.Reading(Axis.Y, "Y of the rotary's centre", "0", "0", 0, Toward.Nearest);

    // The arc of the round that lies on an outline: the work turns clockwise from its start to its end, no further than its tangent points.
    private void Arc(RoundStep step, PlanFeature f, string outline, double to, double allow, Typed? perPass)
    {
        if (Lying(step, f, outline, bench.Radius + allow) is not { } edge)
        {
            return;
        }

        var radius = edge.Radius;
        var own = !f.Feature.IsCut && Math.Abs((AimedDrawing.RadiusOf(f.Feature) ?? 0) - radius) < 1e-9;

        double first = Degrees(Plane.Angle(edge.Centre, edge.From)), sweep = edge.Sweep * Plane.ToDegrees;
        Arc(f, outline, edge, Out(f, own ? f.Feature.Name : $"the rounded end of {outline}", radius, allow), bench.Depths(Top(radius + allow, to, first, sweep), to, perPass, "the height"));
    }

    // The arc of a feature's outline about another; null, with a finding, where none lies there.
    internal PlanEdge? Lying(Step step, PlanFeature f, string outline, double beside)
    {
        if (bench.Plan.Find(outline) is { } whole && RoundedEnd.Of(whole.Outline, f, beside) is { Radius: > 0 } edge)
        {
            return edge;
        }

        bench.Cannot(step, $"No rounded end of '{outline}' lies about '{f.Feature.Name}'.", "Name the feature at its middle: a round the outline is tangent to, what an arc of the outline has its centre on, or a round that stands out of it.");
        return null;
    }

    internal void Arc(PlanFeature f, string outline, PlanEdge edge, Working x, IReadOnlyList<Working> depths)
    {
        var (first, last) = (Degrees(Plane.Angle(edge.Centre, edge.From)), Degrees(Plane.Angle(edge.Centre, edge.To)));
        var to = depths[^1].Result;
        var arcs = bench.Plan.Find(outline) is { } whole ? TangentArcs.Of(whole.Outline, f.Feature.Name, bench.Figures) : null;
        var start = bench.Show(Tangent(arcs, "theta where the arc begins", first, Toward.Minus));
        var end = bench.Show(Tangent(arcs, "theta where the arc ends", last, Toward.Plus));
        var inAt = Clear(start.Result, to, "clear of the metal where the arc begins");
        var outAt = Clear(end.Result, to, "clear of the metal where the arc ends");
        bench.Up();
        bench.Free(Axis.T, start);
        bench.Free(Axis.X, inAt);
        bench.Free(Axis.Y, Middle());
        bench.Machine.Passes(depths, plunges: false,
        [
            new(Axis.X, x, true) { ReadBack = true },
            new(Axis.T, end, true),
            new(Axis.X, outAt, false),
            new(Axis.Z, bench.Safe(), false),
            new(Axis.T, start, false),
            new(Axis.X, inAt, false),
        ]);
        bench.Up();
    }

    // Where it meets a straight: acos((R - r)/L) from the line of the centres; the rotary stands at minus the angle.
    private Working Tangent(TangentArcs? arcs, string name, double degrees, Toward toward)
    {
        return arcs?.Touch(degrees) is { } touch
            ? bench.Angle(name, "- the angle of the tangent point, acos((R - r)/L) off the line of centres", touch.Sum, touch.Degrees, toward)
            : bench.Angle(name, "- the angle of the tangent point", "-" + Figures.Deg(degrees), -degrees, toward);
    }

    private static double Degrees(double radians) => Plane.Positive(radians) * Plane.ToDegrees;
}
