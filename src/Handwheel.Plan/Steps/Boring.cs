using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// Holes bored with the boring head: it is set pass by pass, from the hole that is there to what is asked; the last of a close one waits for what was measured.
internal sealed class Boring(Bench bench, Toucher toucher)
{
    // Limits no wider than this want a measurement before the last pass, millimetres (common practice, no source).
    private const double Close = 0.0508;

    // What is too little to be cut twice, a side: a tip rubs on less (common practice, no source).
    private const double Least = 0.05;

    private double rpm;
    private double feed;

    private bool Inch => bench.Job.Unit == LengthUnit.Inch;

    internal void Plan(HoleStep step, double allow, bool measured = false)
    {
        var making = new HoleMaking(bench, toucher);
        if (making.Holes(step) is not { Count: > 0 } holes || !bench.Shop.Cutters.TryGetValue(step.Cutter ?? string.Empty, out var bar))
        {
            return;
        }

        bench.Straighten();
        var first = holes[0];
        var to = BoreTo(step, first) - (2 * allow);
        var there = making.There(step, holes, to);
        var most = Most(step, bar);
        measured |= IsMeasured(first);
        var trial = allow <= 0 && !measured && IsClose(first, to);
        var passes = there is { } d && d < to ? Passes((d, to), most, trial) : [to];
        if (!Head(step, bar, there, (passes[0], to), out var stands))
        {
            return;
        }

        Cut(step, holes, bar, passes, (there, stands, allow <= 0 && (measured || trial), measured));
    }

    // The head set and gone down for each pass; the last of a close one is set by what is measured before it.
    private void Cut(HoleStep step, IReadOnlyList<PlanFeature> holes, Cutter bar, IReadOnlyList<double> passes, (double? There, double? Stands, bool ByMeasure, bool Measured) at)
    {
        var (first, to, stands) = (holes[0], passes[^1], at.Stands);
        for (var i = 0; i < passes.Count; i++)
        {
            var before = i > 0 ? passes[i - 1] : at.There;
            var waits = at.ByMeasure && i == passes.Count - 1 && before is not null;
            if (waits && !at.Measured)
            {
                Measure(first, before!.Value, to, holes.Sum(h => h.Centres.Count) > 1);
            }

            bench.Machine.Open(bar, rpm, feed, Set(step, first, bar, (before, passes[i], to, at.There), stands, waits));
            stands = passes[i];
            new HoleMaking(bench, toucher).EachPlace(step, holes);
        }
    }

    // The head's diameter: the middle of the limits where the nominal was typed.
    internal static double BoreTo(HoleStep step, PlanFeature hole)
    {
        var limits = AimedDrawing.AcrossOf(hole.Feature.Shape);
        var typed = step.ToAcross?.Value;
        return limits is { } l && (typed is null || Math.Abs(typed.Value - l.Nominal) < 1e-9) ? l.Middle : typed ?? 0;
    }

    // If it measures this, open the head by that on the diameter.
    internal MeasureLine Line(Size size, double expected, double to, string remark)
    {
        var by = (Inch ? 0.001 * LengthUnit.Inch.MillimetresPerUnit() : 0.02) * ((to - expected) < 0.1 ? 0.5 : 1);
        var figures = bench.Figures;
        var working = Work.Value(
            new("how much the head is opened on the diameter", "aimed - measured, half of it on its radius", $"{figures.L(to)} - {figures.L(expected)}", to - expected, Work.Geometry, "The sum is for what is expected; put in what was measured."),
            "mm");
        return new()
        {
            Size = size.Name,
            Expected = expected,
            Limits = (size.Limits.Lower, size.Limits.Upper),
            OpensHead = true,
            Strip = [.. Enumerable.Range(-2, 5).Select(i => expected + (i * by)).Select(m => (m, Math.Max(0, to - m)))],
            Working = working,
            With = new Measuring(bench).With(size, expected),
            Remark = $"Spindle stopped, {bench.Retracted}, burrs off.{remark} Between two of these: open the head by {figures.L(to)} - measured on the diameter, half of that on its radius. Is it {figures.L(to)} or more already, do not open it.",
        };
    }

    private void Measure(PlanFeature hole, double expected, double to, bool many)
    {
        if (bench.Drawing.SizeOf(hole.Feature.Name, SizeKind.Across, SizeKind.Bore) is not { } size)
        {
            return;
        }

        bench.Machine.Stop();
        bench.Add(new Measured(size.Name, expected, true), Line(size, expected, to, many ? " In the first of them; the others come alike." : string.Empty));
    }

    // Whether the line before has just measured it.
    private bool IsMeasured(PlanFeature hole) => bench.StepBefore is MeasureStep measure
        && bench.Drawing.SizeNamed(measure.Size) is { Kind: SizeKind.Across or SizeKind.Bore } size && size.Feature == hole.Feature.Name;

    private static bool IsClose(PlanFeature hole, double to) =>
        AimedDrawing.AcrossOf(hole.Feature.Shape) is { } limits && limits.Width <= Close + 1e-9 && limits.Contains(to);

    // How deep a pass may be a side: as typed, or what bends the bar aside by two thousandths of an inch, not over twenty thousandths.
    private double Most(HoleStep step, Cutter bar)
    {
        if (step.PerPass is { Value: > 0 } typed)
        {
            return typed.Value;
        }

        var (bend, cap, least) = Inch ? (0.002 * LengthUnit.Inch.MillimetresPerUnit(), 0.02 * LengthUnit.Inch.MillimetresPerUnit(), 0.002 * LengthUnit.Inch.MillimetresPerUnit()) : (0.05, 0.5, 0.05);
        var metal = bench.Speeds.Metal;
        var (neck, turn) = (CutterShapes.SetTo(bar, bar.TrueAcross).Arbor, bench.Speeds.ChipATooth(bar));
        var bends = Trade.Cutting.BoringDepth.ThatBendsMm(metal.Kc11, metal.Mc, turn, neck, Math.Max(bar.Out, neck), bend);
        var most = Math.Clamp(bends, least, cap);
        var give = Trade.Cutting.BoringDepth.GiveMmPerN(neck, Math.Max(bar.Out, neck));
        var figures = bench.Figures;
        return bench.Show(Work.Value(
            new(
                $"depth of cut a side, {bar.Name} at most",
                "bend / (0.5 x force a depth x give of the bar), not over what a head is cut with by hand",
                $"{Figures.Bare(bend)} mm / (0.5 x {Figures.Bare(turn)} mm x {Figures.Bare(Trade.Cutting.Kienzle.Specific(metal.Kc11, metal.Mc, turn), 0)} N/mm2 x {Figures.Bare(1000 * give)} mm/kN) = {figures.LU(bends)}, not over {figures.LU(cap)}",
                most,
                Trade.Cutting.BoringDepth.Basis.Source,
                "Chatter or a dull tip: less."),
            "mm")).Result;
    }

    // The diameters to set, the last as asked. A close one keeps two light cuts alike for its end, so that the bar bends as much in the one measured as in the last.
    private List<double> Passes((double From, double To) hole, double most, bool trial)
    {
        var side = (hole.To - hole.From) / 2;
        var light = !trial || side < 2 * Least ? 0 : Math.Min(Math.Min(Inch ? 0.005 * LengthUnit.Inch.MillimetresPerUnit() : 0.125, most), side / 2);
        light = light > 0 && side - (2 * light) < Least ? side / 2 : light;
        var rough = side - (2 * light);
        var n = rough <= 1e-6 ? 0 : (int)Math.Ceiling((rough / most) - 1e-6);
        var grain = Inch ? 0.0005 * LengthUnit.Inch.MillimetresPerUnit() : 0.01;
        List<double> passes = [.. Enumerable.Range(1, n).Select(i => hole.From + (2 * rough * i / n))];
        passes.AddRange(light > 0 ? [hole.To - (2 * light), hole.To] : []);
        return [.. passes.Select((d, i) => i == passes.Count - 1 ? hole.To : Rounding.ToStep(d, grain, Toward.Nearest))];
    }

    // The bar put in and touched off, where it is not in the head already.
    private bool Head(HoleStep step, Cutter bar, double? there, (double First, double Last) to, out double? stands)
    {
        stands = null;
        if (bench.Cutter is { Kind: CutterKind.BoringBar } now && now.Name == bar.Name)
        {
            stands = now.TrueAcross;
            (rpm, feed) = toucher.Running(step, CutterShapes.SetTo(bar, to.Last));
            return true;
        }

        if (!toucher.Use(step, there is { } d && d >= bar.TrueAcross ? d : to.First, null, to.Last))
        {
            return false;
        }

        (rpm, feed) = (bench.Machine.Rpm, bench.Machine.Feed);
        return true;
    }

    private HeadLine Set(HoleStep step, PlanFeature hole, Cutter bar, (double? Before, double Now, double Last, double? There) at, double? stands, bool waits)
    {
        var figures = bench.Figures;
        var (name, last) = (hole.Feature.Name, Math.Abs(at.Now - at.Last) < 1e-9);
        var from = stands ?? at.There;
        var opens = from is { } f ? at.Now - f : (double?)null;
        var found = stands is null && at.There is { } d
            ? $"Bar down in {name}, turned by hand: open the head until its tip just drags on the wall; there it bores {figures.LU(d)}, what the hole is cut to (measure it). Then {bench.Retracted}. "
            : string.Empty;
        var sum = waits ? $"Open it by {figures.L(at.Now)} - what {name} measured, on the diameter; half of that on its radius: " : string.Empty;
        var by = opens is not { } o ? $"Set it by caliper over tip and bar: half of {figures.L(at.Now)} and half of the bar."
            : Math.Abs(o) < 1e-9 ? "It stays as it is: a spring pass, which takes what the bar bent away from."
            : $"{(waits ? "where it measured as expected, " : o > 0 ? "Open it " : "Close it, past and back, by ")}{figures.LU(Math.Abs(o))} on the diameter, {figures.LU(Math.Abs(o) / 2)} on its radius.";
        var text = last ? step.ToAcross is not null && !IsAimed(hole, at.Now) ? "as asked" : "the middle of its limits" : string.Empty;
        return new()
        {
            Cutter = bar.Name,
            Across = at.Now,
            Opens = opens,
            Waits = waits,
            Says = $"Spindle stopped. {found}{sum}{by} Come to it opening, gib screw nipped.",
            Working = bench.Show(Setting(step, hole, at, text)),
        };
    }

    private static bool IsAimed(PlanFeature hole, double across) => AimedDrawing.AcrossOf(hole.Feature.Shape) is { } l && Math.Abs(l.Middle - across) < 1e-9;

    private Working Setting(HoleStep step, PlanFeature hole, (double? Before, double Now, double Last, double? There) at, string last)
    {
        var figures = bench.Figures;
        var name = $"head set to bore {hole.Feature.Name} {figures.L(at.Now)}";
        List<WorkingInput> inputs = [];
        if (step.ToAcross is { } typed)
        {
            inputs.Add(bench.Work.Typed("across", typed));
        }

        if (step.Allow is { Value: > 0 } allow && last.Length > 0 && !IsAimed(hole, at.Now))
        {
            inputs.Add(bench.Work.Typed("allow", allow));
            return Work.Value(new(name, "what it is bored to - 2 x what is left a side", $"{figures.L(at.Now + (2 * allow.Value))} - 2 x {figures.L(allow.Value)}", at.Now, Work.Geometry), "mm", [.. inputs]);
        }

        return last.Length > 0 || at.Before is not { } before
            ? Work.Value(new(name, last.Length > 0 ? last : "as asked", figures.L(at.Now), at.Now, Work.Geometry), "mm", [.. inputs])
            : Work.Value(new(name, "the hole before + 2 x the depth of cut", $"{figures.L(before)} + 2 x {figures.L((at.Now - before) / 2)}", at.Now, Work.Practice), "mm", [.. inputs]);
    }
}
