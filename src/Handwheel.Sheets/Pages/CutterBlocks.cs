using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Quantities;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>The cutters with their true sizes, and what each handwheel does.</summary>
internal static class CutterBlocks
{
    /// <summary>The cutters used, in the order they are first needed.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>Name, the shop's cutter where it has it, speeds, steps.</returns>
    public static IReadOnlyList<(string Name, Cutter? Cutter, IReadOnlyList<double> Rpm, IReadOnlyList<string> Steps)> Used(JobPlan plan)
    {
        var used = new List<(string Name, List<double> Rpm, List<string> Steps)>();
        string? stands = null;
        foreach (var step in plan.Stages.SelectMany(s => s.Steps))
        {
            var names = step.Lines.OfType<CutterLine>().Select(c => (c.Cutter, c.Rpm)).ToList();
            if (step.Step.Cutter is { } named && names.All(n => !string.Equals(n.Cutter, named, StringComparison.Ordinal)))
            {
                names.Add((named, -1));
            }

            // A step that names none may still cut with what stands in the spindle: a last pass after a measurement, a move as typed.
            if (names.Count == 0 && stands is not null && GoesOn(step))
            {
                names.Add((stands, -1));
            }

            stands = step.Lines.OfType<CutterLine>().LastOrDefault()?.Cutter ?? stands;

            foreach (var (name, rpm) in names)
            {
                var entry = used.FirstOrDefault(u => string.Equals(u.Name, name, StringComparison.Ordinal));
                if (entry.Name is null)
                {
                    entry = (name, [], []);
                    used.Add(entry);
                }

                if (rpm >= 0 && !entry.Rpm.Contains(rpm))
                {
                    entry.Rpm.Add(rpm);
                }

                if (!entry.Steps.Contains(step.Step.Id))
                {
                    entry.Steps.Add(step.Step.Id);
                }
            }
        }

        return [.. used.Select(u => (u.Name, plan.Shop.Cutters.TryGetValue(u.Name, out var c) ? c : null, (IReadOnlyList<double>)u.Rpm, (IReadOnlyList<string>)u.Steps))];
    }

    /// <summary>The block.</summary>
    /// <param name="parts">The sheet's parts.</param>
    /// <param name="under">Whether the handwheels stand under the cutters, as the right column is taken.</param>
    /// <returns>A block.</returns>
    public static Block Of(SheetParts parts, bool under = false)
    {
        var unit = parts.Numbers.Unit.Symbol();
        List<Piece> left = [new("<div class=\"cu hdr\"><span></span><span></span><span>cutter</span><span>true size</span><span>measured</span><span>rpm</span><span>out</span><span>steps</span></div>", 3.8)];
        left.AddRange(Used(parts.Plan).Select(u => Row(parts, u)));
        var cutters = Bits.Together(Bits.Headed(Bits.Heading("cutters", $"{unit}; write the true size in: readings that rest on it move with it"), Bits.Headed(left[0], left.Skip(1))));
        var notes = Bits.Together(Bits.Headed(Bits.Heading("all through the job"), Notes(parts).Select(t => Bits.Paragraph(t, Block.OverviewLeft, "para", 8.2))));
        var wheels = Bits.Together(Bits.Headed(Bits.Heading("your handwheels"), Handwheels(parts)));
        var space = new Piece(string.Empty, Paginator.Gap);
        return new() { Columns = Columns.Overview, Left = [.. cutters, space, .. notes, .. under ? [space, .. wheels] : Array.Empty<Piece>()], Right = under ? [] : wheels };
    }

    /// <summary>A cutter in a few words.</summary>
    /// <param name="cutter">The cutter.</param>
    /// <param name="numbers">How sizes are printed.</param>
    /// <returns>Text.</returns>
    public static string Says(Cutter cutter, SheetNumbers numbers)
    {
        var kind = cutter.Kind switch
        {
            CutterKind.EndMill => "end mill",
            CutterKind.Ball => "ball end mill",
            CutterKind.BullNose => "bull-nose end mill",
            CutterKind.SpottingDrill => "spotting drill",
            CutterKind.CentreDrill => "centre drill",
            CutterKind.TSlot => "T-slot cutter",
            CutterKind.BoringBar => "boring bar",
            CutterKind.FlyCutter => "fly cutter",
            CutterKind.Saw => "slitting saw",
            CutterKind.Broach => "square punch or broach",
            _ => cutter.Kind.ToString().ToLowerInvariant(),
        };
        var more = cutter.Kind switch
        {
            CutterKind.Saw => $", {numbers.Short(cutter.TrueAcross)} across{Teeth(cutter, "teeth")}",
            CutterKind.Drill or CutterKind.SpottingDrill or CutterKind.Countersink or CutterKind.Chamfer when cutter.PointAngle > 0 => $", {Markup.Number(Math.Round(cutter.PointAngle * 180 / Math.PI, 1))} deg",
            CutterKind.Reamer => $"{(cutter.Lead > 0 ? $", lead {numbers.Short(cutter.Lead)}" : string.Empty)}{Teeth(cutter, "flutes")}",
            CutterKind.TSlot or CutterKind.Woodruff or CutterKind.Dovetail or CutterKind.Counterbore => Teeth(cutter, "teeth"),
            CutterKind.EndMill or CutterKind.Ball or CutterKind.BullNose => FormattableString.Invariant($", {cutter.Teeth} teeth{(cutter.CutsToCentre ? ", cuts to centre" : string.Empty)}"),
            _ => string.Empty,
        };
        return kind + more;
    }

    private static bool GoesOn(PlanStep step) => step.Step is MoveStep || step.Lines.Any(l => l is MoveLine { Cutting: true } or PassBracket);

    private static string Teeth(Cutter cutter, string word) => cutter.Teeth > 1 ? FormattableString.Invariant($", {cutter.Teeth} {word}") : string.Empty;

    private static Piece Row(SheetParts parts, (string Name, Cutter? Cutter, IReadOnlyList<double> Rpm, IReadOnlyList<string> Steps) used)
    {
        var n = parts.Numbers;
        var says = used.Cutter is { } cutter ? Says(cutter, n) : "not in the shop";
        var size = used.Cutter is { } c ? n.Length(c.Kind == CutterKind.Saw ? c.Thick : c.TrueAcross) : string.Empty;
        var rpm = used.Rpm.Count == 0 ? string.Empty : string.Join(", ", used.Rpm.Select(r => r > 0 ? Bits.Fixed(r, 0) : "by hand"));
        var steps = StepGroups.Runs(used.Steps);
        var lines = Math.Max(TextMeasure.Lines(says, Face.Plain, 8.2, 28.5), Math.Max(TextMeasure.Lines(steps, Face.Plain, 7.6, 17.5), TextMeasure.Lines(rpm, Face.Plain, 8.2, 11.5)));
        return new(
            $"<div class=\"cu\">{Bits.Box}<b class=\"id\">{Markup.Escape(used.Name)}</b><span>{Markup.Escape(says)}</span><span class=\"n r\">{Markup.Figures(size)}</span><span class=\"ln\"></span><span class=\"r\">{rpm}</span><span class=\"r\">{(used.Cutter is { Out: > 0 } o ? n.Short(o.Out) : string.Empty)}</span><span class=\"stp\">{Markup.Escape(steps)}</span></div>",
            Math.Max(5.4, (lines * 3.6) + 1.8));
    }

    private static List<Piece> Handwheels(SheetParts parts)
    {
        var shop = parts.Plan.Shop;
        var pieces = new List<Piece> { new("<div class=\"hw hdr\"><span></span><span>one turn</span><span>clockwise</span><span>and the cutter goes</span></div>", 3.8) };
        if (shop.Mill is { } mill)
        {
            pieces.Add(Wheel(parts, "X", mill.X, "to the right", "to the left"));
            pieces.Add(Wheel(parts, "Y", mill.Y, "away from you", "toward you"));
            pieces.Add(Wheel(parts, "Z", mill.Z, mill.DepthByQuill ? "up: the quill" : "up over the work: the knee sinks", mill.DepthByQuill ? "down: the quill" : "down to the work: the knee rises"));
        }

        if (shop.Rotary is { } rotary && parts.Plan.Stages.Any(s => s.Setup?.Rotary is { Lies: false }))
        {
            var clockwise = rotary.CrankClockwiseTurnsClockwise;
            var grows = clockwise == (rotary.Sense < 0);
            pieces.Add(Row("T", ReadingText.Rotary(360 / rotary.Worm, rotary.DialStep * 180 / Math.PI), grows, $"work {(clockwise ? "clockwise" : "counterclockwise")}"));
        }

        return pieces;
    }

    private static IEnumerable<string> Notes(SheetParts parts)
    {
        var retracts = parts.Plan.Stages.Where(s => s.Setup is not null).Select(s => Retract(s, new(parts.Numbers.Unit, parts.Plan.Shop, s.Setup))).ToArray();
        yield return $"Retract as the rows say: {string.Join("; ", retracts)}. To change a cutter: spindle stopped, {(parts.Plan.Shop.Mill is { DepthByQuill: false } ? "table well down" : "quill right up")}; touch the new one off before it cuts.";
        yield return "Arrive from the side told: it takes up the slack. Where a move would come from the other side, go past and come back.";
        yield return "Zero lost, or the work moved: find X and Y again as the holding's first steps say, then touch the cutter in the spindle off on the surface its own step names. Is that surface cut away, stop and work it out anew.";
        yield return "Burrs off and jaws brushed clean before the work is clamped again, measured or touched off. Cutting fluid where a row says so, else what the metal and the cutter want; finish as the cutter leaves it unless a size or a step says otherwise.";
        if (parts.Plan.Job.ToMake > 1)
        {
            yield return FormattableString.Invariant($"To make: {parts.Plan.Job.ToMake}. Set a work stop against the end of the first, and the rest lie alike.");
        }
    }

    // The height most rows lift to, and the steps in which rows lift to another.
    private static string Retract(PlanStage stage, SheetNumbers numbers)
    {
        var lifts = stage.Steps
            .SelectMany(s => Flat(s.Lines).OfType<MoveLine>().Where(m => m is { Axis: Axis.Z, Cutting: false } && m.To > m.From).Select(m => (s.Step.Id, Z: numbers.Reading(Axis.Z, m.To))))
            .GroupBy(l => l.Z, StringComparer.Ordinal).OrderByDescending(g => g.Count()).ToArray();
        if (lifts.Length == 0)
        {
            return $"{stage.Stage.Name} to Z {Markup.TrueMinus(numbers.Reading(Axis.Z, stage.RetractZ))}";
        }

        var others = lifts.Skip(1).Select(g => $"{Markup.TrueMinus(g.Key)} in {string.Join(", ", g.Select(l => l.Id).Distinct(StringComparer.Ordinal))}").ToArray();
        return $"{stage.Stage.Name} to Z {Markup.TrueMinus(lifts[0].Key)}{(others.Length > 0 ? ", but " + string.Join(", ", others) : string.Empty)}";
    }

    private static IEnumerable<SheetLine> Flat(IEnumerable<SheetLine> lines) => lines.SelectMany(l => l is PassBracket b ? b.Lines : [l]);

    private static Piece Wheel(SheetParts parts, string name, MachineAxis axis, string plus, string minus)
    {
        // The printed reading counts the other way where the shop says so; where the cutter goes does not change.
        var cutterPlus = axis.ClockwiseGrows != axis.CountsOtherWay;
        return Row(name, ReadingText.Plain(axis.PerTurn, parts.Numbers.Unit, axis.Step), axis.ClockwiseGrows, cutterPlus ? plus : minus);
    }

    private static Piece Row(string axis, string perTurn, bool grows, string goes) => new(
        $"<div class=\"hw\"><b>{axis}</b><span class=\"n\">{Markup.Figures(perTurn)}</span><span>{Bits.Symbol("cw", 4.4, 3.9)} {(grows ? "grows" : "falls")}</span><span>{Markup.Escape(goes)}</span></div>",
        5 + ((TextMeasure.Lines(goes, Face.Plain, 8.2, 24) - 1) * 3.4));
}
