using Handwheel.Jobs.Documents;
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

        if (step.ThenLastPass && before is HoleStep bored)
        {
            Bored(step, bored, size);
            return;
        }

        var stands = MetalSize.Of(bench, size);
        var cut = step.ThenLastPass ? Cut(before, size, stands) : null;
        if (step.ThenLastPass && before is not null && cut is null)
        {
            bench.Cannot(step, $"What '{size.Name}' measures before the last pass cannot be told: the step before leaves metal on faces that are not those of this one size.", "Measure a size of the face just cut, or leave 'then last pass' out and write the last pass as a step of its own.");
            return;
        }

        bench.IsClose = cut is { } faced && size.Limits.Width / 2 <= bench.Work.Facts(faced.Offs[0].Axis).Step + 1e-9;
        var expected = cut is { } left ? size.Limits.Middle + left.Left : stands ?? size.Limits.Middle;
        (IReadOnlyList<(double, double)>, Working?) strip = cut is { } c ? Strip(c, expected, size.Limits.Middle) : ([], null);
        var after = step.ThenLastPass ? strip.Item2 is { } w ? $" Between two of these: {w.Name} = {w.PutIn}.{Later(step, before!, w)}" : string.Empty : new Actuals(bench).Said(step, size, stands);
        bench.Machine.Stop();
        bench.Add(new Measured(size.Name, expected, step.ThenLastPass), new MeasureLine
        {
            Size = size.Name,
            Expected = expected,
            Limits = (size.Limits.Lower, size.Limits.Upper),
            Corrects = cut?.Offs[0].Axis,
            Strip = strip.Item1,
            Working = strip.Item2,
            With = With(size, expected),
            Remark = $"Spindle stopped, {bench.Retracted}, burrs off." + after,
        });
    }

    // A bore with metal left: how much the head is opened hangs on what it measures.
    private void Bored(MeasureStep step, HoleStep bored, Size size)
    {
        if (bench.Plan.Find(size.Feature) is not { } hole || !bored.Features.Contains(size.Feature) || size.Kind is not (SizeKind.Across or SizeKind.Bore))
        {
            bench.Cannot(step, $"'{size.Name}' is not the across of what {bored.Id} bores.", $"Write 'measure {bored.Features[0]} across, then last pass'.");
            return;
        }

        var to = Boring.BoreTo(bored, hole);
        var expected = to - (2 * (bored.Allow?.Value ?? 0));
        bench.Machine.Stop();
        bench.Add(new Measured(size.Name, expected, true), new Boring(bench, new(bench)).Line(size, expected, to, string.Empty));
    }

    internal string With(Size size, double measures) => With(measures, size.Limits.Width <= 0.1, IsInside(size));

    // A cutter that cuts off its size does so on every flank after this one.
    private string Later(MeasureStep step, Step before, Working planned)
    {
        if (before is not RoundStep)
        {
            return string.Empty;
        }

        var later = bench.Job.Stages.SelectMany(s => s.Steps).SkipWhile(s => !ReferenceEquals(s, step)).Where(s => s is RoundStep or SideStep && s.Cutter == before.Cutter).Select(s => s.Id).ToArray();
        var reading = bench.Figures.R(planned.Result, bench.Work.Facts(Axis.X).Step);
        var shift = later.Length > 0 ? $"shift its flank readings in {string.Join(", ", later)} by as much, outward or inward of the part as here" : "write its true size in";
        if (bench.ToldApart.TryGetValue(before.Cutter ?? string.Empty, out var told))
        {
            return $" Is it other than {reading}, find out which it is as in {told}.";
        }

        bench.ToldApart[before.Cutter ?? string.Empty] = step.Id;
        return before is RoundStep { Inside: false, EndOf: null } round
            ? $" Is it other than {reading}, either {before.Cutter} cuts off its size or X 0 stands off the centre. To tell: spindle stopped, {before.Cutter} on paper against {round.Feature} at X+ and at X\u2212. Half the sum of the two readings{Other(-bench.Machine.Dials.Way(Axis.X))} is how far X 0 is off: set X anew; what was drilled before is off by as much, and the readings told here were of the old zero. Is that nought, it is {before.Cutter}: {shift}. Back to X {bench.Figures.R(bench.Machine.At.X, bench.Work.Facts(Axis.X).Step)}, Y {bench.Figures.R(bench.Machine.At.Y, bench.Work.Facts(Axis.Y).Step)} before Z goes down."
            : $" Is it other than {reading}, {before.Cutter} cuts off its size, or X 0 stands off the centre. Is it {before.Cutter}: {shift}.";
    }

    // One of the two is come to the other way than X 0 was: a dial reads it off by the slack.
    private string Other(int way) => bench.Machine.Dials.Slack(Axis.X) is > 0 and var slack
        ? $", the slack, {bench.Figures.LU(slack)}, {(way < 0 ? "added to the one at X+" : "taken off the one at X\u2212")}, which was come to the other way,"
        : string.Empty;

    // The faces of one size that a step has cut and left metal on: how many of the size's two ends they are, whether metal lies between them or air, and how much
    // more (less) the size measures for it, as the readings were rounded.
    private readonly record struct CutFaces(IReadOnlyList<EdgeOff> Offs, int Ends, bool Outer, double Allow, double Left);

    private CutFaces? Cut(Step? before, Size size, double? stands) => Found(before, size) is not { } cut ? null
        : stands is { } measures ? Signed(cut, measures - size.Limits.Middle)
        : size.Kind is SizeKind.Distance or SizeKind.Deep ? null : cut;

    // The metal says which way the size runs: what is left on the face makes it too large, and cutting less; or too small, and cutting more. Null where the face is
    // not one of its ends, so that cutting changes nothing.
    private static CutFaces? Signed(CutFaces cut, double off) =>
        cut.Allow <= 0 || Math.Abs(off) < 0.2 * cut.Allow ? null : cut with { Outer = off > 0, Left = off };

    private CutFaces? Found(Step? before, Size size)
    {
        var found = before switch
        {
            RoundStep { Inside: false } r when bench.Plan.Find(r.Feature) is { } f && AimedDrawing.RadiusOf(f.Feature) is { } radius => Faces([new("rim", Axis.X, true, radius + bench.Radius)], 2, true, r.Allow),
            RoundStep { Inside: true } r when bench.Plan.Find(r.Feature) is { } f && AimedDrawing.RadiusOf(f.Feature) is { } radius => Faces([new("rim", Axis.X, false, radius - bench.Radius)], 2, false, r.Allow),
            FaceStep f => Faces([new("face", Axis.Z, true, bench.Plan.FaceHeight(f.To.Value, f.Feature, bench.Metal.Box(0).Min.Z))], 1, true, f.Allow),
            SideStep s => Faces([.. Own(s)], Sides(s), true, s.Allow),
            FlatsStep s when size.Kind == SizeKind.AcrossFlats => Faces([.. Own(s)], 2, true, s.Allow),
            PocketStep p => Hollow(p, p.Feature, p.Allow, size),
            SlotStep s => Hollow(s, s.Feature, s.Allow, size),
            _ => null,
        };
        return found is { } c && c.Offs.Count > 0 && c.Offs.All(o => o.Axis == c.Offs[0].Axis) && (c.Offs.Count == c.Ends || c.Offs.Count == 1)
            ? c with { Left = (c.Outer ? 1 : -1) * c.Ends / (double)c.Offs.Count * c.Offs.Sum(o => Rounded(o, c.Allow)) } : null;
    }

    private static CutFaces? Faces(IReadOnlyList<EdgeOff> offs, int ends, bool outer, Typed? allow) => new(offs, ends, outer, allow?.Value ?? 0, 0);

    private IEnumerable<EdgeOff> Own(Step step) => ReferenceEquals(bench.OffsOf, step) ? bench.Offs : [];

    // The walls of a hollow that a size lies between, or the one it is taken from.
    private CutFaces? Hollow(Step step, string feature, Typed? allow, Size size)
    {
        if (bench.Plan.Find(feature) is not { } hollow || bench.Plan.AxisOf(size, hollow.Feature) is not { } along)
        {
            return null;
        }

        List<EdgeOff> offs = [.. Own(step).Where(o => o.Axis == along)];
        if (size.Kind != SizeKind.Distance)
        {
            return Faces(offs, size.Kind == SizeKind.Across ? 2 : offs.Count, false, allow);
        }

        return offs.Count == 1 ? Faces(offs, 1, true, allow) : null;
    }

    private static int Sides(SideStep s) => s.Edges.Count > 1 || s.Edges[0].StartsWith("all", StringComparison.Ordinal) || s.Edges[0].StartsWith("both", StringComparison.Ordinal) ? 2 : 1;

    // How far an edge stood off what was aimed at, as the reading with the allowance was rounded.
    private double Rounded(EdgeOff o, double allow)
    {
        var exact = o.Plus ? o.Exact + allow : o.Exact - allow;
        var stood = Rounding.ToStep(exact, bench.Work.Facts(o.Axis).Step, o.Plus ? Toward.Plus : Toward.Minus);
        return o.Plus ? stood - o.Exact : o.Exact - stood;
    }

    // Where the cutter stood beside a face that it left an allowance on.
    private double Stood(EdgeOff o, double allow) => o.Exact + ((o.Plus ? 1 : -1) * Rounded(o, allow));

    // If it measures this, crank to that: each face is cut closer by its share of what is too much.
    private (IReadOnlyList<(double Measures, double CrankTo)> Pairs, Working? Working) Strip(CutFaces cut, double expected, double aimed)
    {
        var edge = cut.Offs[0];
        var facts = bench.Work.Facts(edge.Axis);
        var stood = Stood(edge, cut.Allow);
        var sign = edge.Plus == cut.Outer ? -1 : 1;
        var by = bench.Job.Unit == LengthUnit.Inch ? 0.002 * LengthUnit.Inch.MillimetresPerUnit() : 0.05;
        var slack = bench.Machine.Dials.Over(edge.Axis, stood);
        double At(double measures) => stood + (sign * (measures - aimed) / cut.Ends);
        bench.Beyond = bench.IsClose && cut.Ends == 1 ? At(expected) - edge.Exact : 0;
        var pairs = Enumerable.Range(-2, 5).Select(i => (expected + (i * by), Rounding.ToStep(At(expected + (i * by)), facts.Step, bench.Leaving(edge.Plus)) + slack)).ToList();
        var told = sign < 0 ? "-" : "+";
        var half = cut.Ends == 2 ? "/2" : string.Empty;
        var others = string.Concat(cut.Offs.Skip(1).Select(o => $"; {o.Axis} along the {o.Word}: {bench.Figures.R(Stood(o, cut.Allow) + bench.Machine.Dials.Over(o.Axis, Stood(o, cut.Allow)), bench.Work.Facts(o.Axis).Step)} {(o.Plus == cut.Outer ? "-" : "+")} the same"));
        var working = bench.Reading(
            edge.Axis,
            $"{edge.Axis} of the last pass{(edge.Word is "rim" or "face" ? string.Empty : $" along the {edge.Word}")}",
            $"reading before {told} (measured - aimed){half}",
            $"{bench.Figures.L(stood + slack)} {told} (measured - {bench.Figures.L(aimed)}){half}{others}",
            edge.Exact + bench.Beyond + slack,
            bench.Leaving(edge.Plus),
            bench.CutterInput);
        return (pairs, working);
    }

    // Whether a size lies between walls that face one another: an outside micrometer does not go in.
    private bool IsInside(Size size) => size.Kind is SizeKind.Bore || (size.Kind is SizeKind.Across or SizeKind.AcrossFlats or SizeKind.Long or SizeKind.Wide && bench.Drawing.Find(size.Feature) is { IsCut: true });

    // A micrometer for close limits, inside one or a bore gauge, else a caliper, of the shop and of a range that takes the size.
    private string With(double measures, bool close, bool inside)
    {
        var fits = bench.Shop.Gauges.Values
            .Where(g => (g.Kind == "caliper" || (inside ? g.Kind is "bore gauge" or "inside micrometer" : g.Kind == "micrometer")) && g.Least <= measures + 1e-9 && (g.Size <= 0 || g.Size >= measures - 1e-9))
            .OrderBy(g => (g.Kind != "caliper") == close ? 0 : 1).ThenBy(g => g.Size).ThenBy(g => g.Name, StringComparer.Ordinal).ToList();
        var other = inside ? "an inside micrometer, gauge pins or blocks, or a caliper" : close ? "a micrometer" : "a caliper or micrometer";
        return fits.Count > 0
            ? $"{fits[0].Kind} {fits[0].Name}{(inside && close && fits[0].Kind == "caliper" ? ", or gauge pins or blocks" : string.Empty)}"
            : $"{other} that takes {bench.Job.Unit.Said(measures)} (the shop tells of none)";
    }
}
