using Handwheel.Jobs.Drawings;
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
        var expected = size.Limits.Middle + (sides * allow) + (axis is { } rounded && before is RoundStep ? sides * Lost(before, rounded, allow) : 0);
        var strip = axis is { } a ? Strip(before!, a, sides, expected, allow) : ([], null);
        bench.Add(new Measured(size.Name, expected, step.ThenLastPass), new MeasureLine
        {
            Size = size.Name,
            Expected = expected,
            Limits = step.ThenLastPass ? null : (size.Limits.Lower, size.Limits.Upper),
            Corrects = axis,
            Strip = strip.Item1,
            Working = strip.Item2,
            With = With(size),
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
    private static (Axis? Axis, int Sides, double Allow) Corrected(Step? before) => before switch
    {
        RoundStep r => (Axis.X, 2, r.Allow?.Value ?? 0),
        FaceStep f => (Axis.Z, 1, f.Allow?.Value ?? 0),
        SideStep s => (null, s.Edges.Count > 1 || s.Edges[0].StartsWith("all", StringComparison.Ordinal) || s.Edges[0].StartsWith("both", StringComparison.Ordinal) ? 2 : 1, s.Allow?.Value ?? 0),
        _ => (null, 1, 0),
    };

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

    private string With(Size size)
    {
        var fits = bench.Shop.Gauges.Values.Where(g => g.Kind is "micrometer" or "caliper" && (g.Size <= 0 || g.Size >= size.Limits.Upper)).OrderBy(g => g.Kind == "micrometer" ? 0 : 1).ThenBy(g => g.Size).ThenBy(g => g.Name, StringComparer.Ordinal).ToList();
        var close = size.Limits.Width <= 0.1;
        var best = close ? fits.FirstOrDefault() : fits.LastOrDefault();
        return best is null ? close ? "a micrometer" : "a caliper" : $"{best.Kind} {best.Name}";
    }
}
