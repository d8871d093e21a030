using System.Globalization;
using System.Text;
using Handwheel.Jobs.Moves;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Reports;

/// <summary>What <c>why</c> prints: each reading of a step down to the typed numbers.</summary>
public static class WhyText
{
    /// <summary>Workings are followed so deep at most.</summary>
    public const int Deepest = 40;

    /// <summary>The step's readings as an indented tree.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="stage">The stage the step stands in.</param>
    /// <param name="step">The step.</param>
    /// <returns>Lines, ending in a line feed.</returns>
    public static string Write(JobPlan plan, PlanStage stage, PlanStep step)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(stage);
        ArgumentNullException.ThrowIfNull(step);
        var numbers = new SheetNumbers(plan.Job.Unit, plan.Shop, stage.Setup);
        var text = new StringBuilder();
        text.Append(step.Step.Id).Append("  ").Append(step.Step.Text).Append('\n');
        var told = new Dictionary<Working, string>(ReferenceEqualityComparer.Instance);
        foreach (var (what, working) in Readings(step.Lines, numbers))
        {
            text.Append("\n  ").Append(what).Append('\n');
            Tree(text, working, 2, told, what, plan.Job.Unit);
        }

        if (told.Count == 0)
        {
            text.Append("  no reading is worked out for this step\n");
        }

        return text.ToString();
    }

    /// <summary>Where a number comes from, in words.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>A word or two.</returns>
    internal static string Kind(InputKind kind) => kind switch
    {
        InputKind.Typed => "typed",
        InputKind.Aimed => "aimed",
        InputKind.Shop => "shop",
        InputKind.WorkedOut => "worked out",
        _ => "rule",
    };

    /// <summary>The readings of lines with their workings, in order; plain holding-frame figures without a unit system of its own.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="numbers">How readings are printed; null: millimetres and degrees.</param>
    /// <returns>What it is, and its working.</returns>
    internal static IEnumerable<(string What, Working Working)> Readings(IEnumerable<SheetLine> lines, SheetNumbers? numbers = null)
    {
        string Print(Axis axis, double value) => numbers?.Reading(axis, value) ?? Markup.Number(value);
        foreach (var line in lines)
        {
            switch (line)
            {
                case MoveLine move:
                    yield return (string.Create(CultureInfo.InvariantCulture, $"move {move.Number}  {move.Axis} {Print(move.Axis, move.To)}"), move.Working);
                    break;
                case TouchOffLine touch:
                    yield return ($"touch off  {touch.TouchOff.Axis} set {Print(touch.TouchOff.Axis, touch.TouchOff.SetTo)}", touch.Working);
                    break;
                case HeadLine head:
                    yield return ($"head of {head.Cutter}", head.Working);
                    break;
                case PassBracket bracket:
                    foreach (var (z, working) in bracket.Depths.Zip(bracket.DepthWorkings))
                    {
                        yield return (string.Create(CultureInfo.InvariantCulture, $"move {bracket.Number}  Z {Print(Axis.Z, z)}"), working);
                    }

                    foreach (var inner in Readings(bracket.Lines, numbers))
                    {
                        yield return inner;
                    }

                    break;
                case MeasureLine { Working: { } working } measure:
                    yield return ($"after measuring {measure.Size}", working);
                    break;
                case HandLine hand:
                    foreach (var working in hand.Workings)
                    {
                        yield return (hand.Says, working);
                    }

                    break;
            }
        }
    }

    private static void Tree(StringBuilder text, Working working, int depth, Dictionary<Working, string> told, string where, LengthUnit unit)
    {
        var indent = new string(' ', depth * 2);
        if (told.TryGetValue(working, out var before))
        {
            text.Append(indent).Append(working.Name).Append(": as for ").Append(before).Append('\n');
            return;
        }

        told[working] = where;
        text.Append(indent).Append(working.Name).Append('\n');
        text.Append(indent).Append("  = ").Append(working.Formula).Append('\n');
        if (working.PutIn != working.Formula)
        {
            text.Append(indent).Append("  = ").Append(working.PutIn).Append('\n');
        }

        text.Append(indent).Append("  = ").Append(Value(working.Exact, working.Unit, unit)).Append(working.Rounded.Length > 0 ? "; " + working.Rounded : string.Empty).Append('\n');
        text.Append(indent).Append("  rule: ").Append(working.Source).Append('\n');
        if (working.Note.Length > 0)
        {
            text.Append(indent).Append("  ").Append(working.Note).Append('\n');
        }

        foreach (var input in working.Inputs)
        {
            var place = input.Where is { } w ? $"  {w}" : string.Empty;
            text.Append(indent).Append("    ").Append(input.Name).Append(' ').Append(input.Text).Append("  ").Append(Origin(input)).Append(place).Append('\n');
            if (input.From is { } from && depth < Deepest)
            {
                Tree(text, from, depth + 3, told, where, unit);
            }
        }
    }

    private static string Origin(WorkingInput input)
    {
        var kind = Kind(input.Kind) + ": ";
        return input.Says.StartsWith(kind, StringComparison.Ordinal) ? input.Says : kind + input.Says;
    }

    private static string Value(double value, string unit, LengthUnit shown) => unit switch
    {
        "mm" => $"{shown.FromMillimetres(value).ToString(shown == LengthUnit.Inch ? "0.00000" : "0.0000", CultureInfo.InvariantCulture)} {shown.Symbol()}",
        "1" => value.ToString("0.######", CultureInfo.InvariantCulture),
        _ => $"{value.ToString("0.####", CultureInfo.InvariantCulture)} {unit}",
    };
}
