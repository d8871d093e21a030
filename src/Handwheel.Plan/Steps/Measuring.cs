using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// A size measured, with its strip where a last pass follows: if it measures this, crank to that.
internal sealed class Measuring(Bench bench)
{
    internal void Plan(MeasureStep step, Step? before)
    {
        if (bench.Drawing.SizeNamed(step.Size) is not { } size)
        {
            bench.Cannot(step, $"The drawing has no size '{step.Size}'.", "Name a size of the drawing.");
            return;
        }

        var (axis, sides, allow) = step.ThenLastPass ? Corrected(before) : (null, 1, 0);
        var lost = before switch
        {
            SideStep when axis is not null => bench.Offs.Sum(o => Rounded(o, allow) - allow),
            RoundStep when axis is { } rounded => sides * Lost(before, rounded, allow),
            _ => 0,
        };
        var expected = size.Limits.Middle + (sides * allow) + lost;
        (IReadOnlyList<(double, double)>, Working?) strip = axis is not { } a ? ([], null)
            : before is SideStep ? Beside(sides, expected, size.Limits.Middle, allow) : Strip(before!, a, sides, expected, allow);
        bench.Add(new Measured(size.Name, expected, step.ThenLastPass), new MeasureLine
        {
            Size = size.Name,
            Expected = expected,
            Limits = step.ThenLastPass ? null : (size.Limits.Lower, size.Limits.Upper),
            Corrects = axis,
            Strip = strip.Item1,
            Working = strip.Item2,
            With = With(expected, size.Limits.Width <= 0.1),
            Remark = "Spindle stopped, quill right up, burrs off." + (strip.Item2 is { } w ? $" Between two of these: {w.Name} = {w.PutIn}.{Later(step, before!, w)}" : string.Empty),
        });
    }

    // A cutter that cuts off its size does so on every flank after this one.
    private string Later(MeasureStep step, Step before, Working planned)
    {
        var later = bench.Job.Stages.SelectMany(s => s.Steps).SkipWhile(s => !ReferenceEquals(s, step)).Where(s => s is RoundStep or SideStep && s.Cutter == before.Cutter).Select(s => s.Id).ToArray();
        return before is not RoundStep || later.Length == 0 ? string.Empty
            : $" Is it other than {bench.Figures.R(planned.Result, bench.Work.Facts(Axis.X).Step)}, {before.Cutter} cuts off its size: shift its flank readings in {string.Join(", ", later)} by as much, outward or inward of the part as here.";
    }

    // The axis a last pass is corrected on, how many sides of the size it cuts, and what was left on each.
    private (Axis? Axis, int Sides, double Allow) Corrected(Step? before) => before switch
    {
        RoundStep r => (Axis.X, 2, r.Allow?.Value ?? 0),
        FaceStep f => (Axis.Z, 1, f.Allow?.Value ?? 0),
        SideStep s => (Off(s), Sides(s), s.Allow?.Value ?? 0),
        _ => (null, 1, 0),
    };

    private static int Sides(SideStep s) => s.Edges.Count > 1 || s.Edges[0].StartsWith("all", StringComparison.Ordinal) || s.Edges[0].StartsWith("both", StringComparison.Ordinal) ? 2 : 1;

    // The axis off the edges of a side, where those are the faces of one size.
    private Axis? Off(SideStep s) => ReferenceEquals(bench.OffsOf, s) && bench.Offs.Count == Sides(s) && bench.Offs.TrueForAll(o => o.Axis == bench.Offs[0].Axis) ? bench.Offs[0].Axis : null;

    // How far an edge stood off what was aimed at, as the reading with the allowance was rounded.
    private double Rounded(EdgeOff o, double allow)
    {
        var exact = o.Plus ? o.Exact + allow : o.Exact - allow;
        var stood = Rounding.ToStep(exact, bench.Work.Facts(o.Axis).Step, o.Plus ? Toward.Plus : Toward.Minus);
        return o.Plus ? stood - o.Exact : o.Exact - stood;
    }

    // For edges: each is cut closer by its share of what measures too much.
    private (IReadOnlyList<(double Measures, double CrankTo)> Pairs, Working? Working) Beside(int sides, double expected, double aimed, double allow)
    {
        var edge = bench.Offs[0];
        var facts = bench.Work.Facts(edge.Axis);
        var sign = edge.Plus ? 1 : -1;
        var stood = edge.Exact + (sign * Rounded(edge, allow));
        var by = bench.Job.Unit == LengthUnit.Inch ? 0.002 * LengthUnit.Inch.MillimetresPerUnit() : 0.05;
        double At(double measures) => stood - (sign * (measures - aimed) / sides);
        var pairs = Enumerable.Range(-2, 5).Select(i => (expected + (i * by), Rounding.ToStep(At(expected + (i * by)), facts.Step, edge.Plus ? Toward.Plus : Toward.Minus))).ToList();
        var others = string.Concat(bench.Offs.Skip(1).Select(o => $"; {o.Axis} along the {o.Word}: {bench.Figures.R(o.Exact + ((o.Plus ? 1 : -1) * Rounded(o, allow)), bench.Work.Facts(o.Axis).Step)} {(o.Plus ? "-" : "+")} the same"));
        var working = bench.Reading(
            edge.Axis,
            $"{edge.Axis} of the last pass along the {edge.Word}",
            $"reading before {(edge.Plus ? "-" : "+")} (measured - aimed){(sides == 2 ? "/2" : string.Empty)}",
            $"{bench.Figures.L(stood)} {(edge.Plus ? "-" : "+")} (measured - {bench.Figures.L(aimed)}){(sides == 2 ? "/2" : string.Empty)}{others}",
            edge.Exact,
            edge.Plus ? Toward.Plus : Toward.Minus,
            bench.CutterInput);
        return (pairs, working);
    }

    private (IReadOnlyList<(double Measures, double CrankTo)> Pairs, Working? Working) Strip(Step before, Axis axis, int sides, double expected, double allow)
    {
        var at = Full(before);
        if (double.IsNaN(at))
        {
            return ([], null);
        }

        var stood = at + allow + (before is RoundStep ? Lost(before, axis, allow) : 0);
        var aimed = expected - (sides * (stood - at));
        var facts = bench.Work.Facts(axis);
        var by = bench.Job.Unit == LengthUnit.Inch ? 0.002 * LengthUnit.Inch.MillimetresPerUnit() : 0.05;
        var pairs = Enumerable.Range(-2, 5).Select(i => (expected + (i * by), Rounding.ToStep(at - (i * by / sides), facts.Step, Toward.Plus))).ToList();
        var working = bench.Reading(
            axis,
            $"{axis} of the last pass",
            sides == 2 ? "reading before - (measured - aimed)/2" : "reading before - (measured - aimed)",
            $"{bench.Figures.L(stood)} - (measured - {bench.Figures.L(aimed)}){(sides == 2 ? "/2" : string.Empty)}",
            at,
            Toward.Plus,
            bench.CutterInput);
        return (pairs, working);
    }

    // Where the axis stands with nothing left on; NaN where it cannot be told.
    private double Full(Step before) => before switch
    {
        RoundStep { Inside: false } r when bench.Plan.Find(r.Feature) is { } f && AimedDrawing.RadiusOf(f.Feature) is { } radius => radius + bench.Radius,
        FaceStep s => bench.Plan.Height(s.To.Value),
        _ => double.NaN,
    };

    // What rounding the reading before left on the metal, a side.
    private double Lost(Step before, Axis axis, double allow)
    {
        var exact = Full(before) + allow;
        return double.IsNaN(exact) ? 0 : Rounding.ToStep(exact, bench.Work.Facts(axis).Step, Toward.Plus) - exact;
    }

    // A micrometer for close limits, else a caliper, of the shop and of a range that takes the size.
    private string With(double measures, bool close)
    {
        var fits = bench.Shop.Gauges.Values
            .Where(g => g.Kind is "micrometer" or "caliper" && g.Least <= measures + 1e-9 && (g.Size <= 0 || g.Size >= measures - 1e-9))
            .OrderBy(g => (g.Kind == "micrometer") == close ? 0 : 1).ThenBy(g => g.Size).ThenBy(g => g.Name, StringComparer.Ordinal).ToList();
        return fits.Count > 0
            ? $"{fits[0].Kind} {fits[0].Name}"
            : $"a {(close ? "micrometer" : "caliper or micrometer")} that takes {bench.Job.Unit.Said(measures)} (the shop tells of none)";
    }
}
