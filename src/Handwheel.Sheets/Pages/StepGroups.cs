using System.Globalization;
using Handwheel.Jobs.Steps;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Workings;

namespace Handwheel.Sheets.Pages;

/// <summary>Steps as the sheet heads them: moves typed one after another stand under one heading, from where the cutter is lifted clear to where it is lifted again.</summary>
internal static class StepGroups
{
    /// <summary>A stage's steps under their headings.</summary>
    /// <param name="steps">The steps in order.</param>
    /// <returns>Groups in order, none empty.</returns>
    public static IReadOnlyList<IReadOnlyList<PlanStep>> Of(IReadOnlyList<PlanStep> steps)
    {
        var groups = new List<List<PlanStep>>();
        foreach (var step in steps)
        {
            var last = groups.Count > 0 ? groups[^1] : null;
            var goesOn = step.Step is MoveStep move && last?[^1].Step is MoveStep && (move.Cutting || !Cuts(last));
            if (goesOn)
            {
                last!.Add(step);
            }
            else
            {
                groups.Add([step]);
            }
        }

        // A lift after which nothing more is cut ends the run before it.
        for (var i = groups.Count - 1; i > 0; i--)
        {
            if (groups[i].TrueForAll(s => s.Step is MoveStep) && !Cuts(groups[i]) && groups[i - 1][^1].Step is MoveStep)
            {
                groups[i - 1].AddRange(groups[i]);
                groups.RemoveAt(i);
            }
        }

        return groups;
    }

    /// <summary>A group as one step: its lines and workings in order, each line marked with the step it belongs to.</summary>
    /// <param name="group">The group.</param>
    /// <returns>The step itself where it stands alone.</returns>
    public static PlanStep Merged(IReadOnlyList<PlanStep> group)
    {
        if (group.Count == 1)
        {
            return group[0];
        }

        var first = group[0];
        return first with
        {
            Step = first.Step with { Text = $"moves as typed, {first.Step.Id} to {group[^1].Step.Id}" },
            Lines = [.. group.SelectMany(Marked)],
            Workings = [.. group.SelectMany(s => s.Workings).Where(w => !Plain(w))],
            Cautions = [.. group.SelectMany(s => s.Cautions).Distinct(StringComparer.Ordinal)],
            Heading = group.Select(s => s.Heading).LastOrDefault(h => h.Length > 0) ?? string.Empty,
            Minutes = group.Sum(s => s.Minutes),
        };
    }

    /// <summary>Step names with those that follow on one another told as a run: <c>A2, B5 to B9</c>.</summary>
    /// <param name="ids">The names in order.</param>
    /// <returns>Text.</returns>
    public static string Runs(IReadOnlyList<string> ids)
    {
        var runs = new List<string>();
        for (var i = 0; i < ids.Count;)
        {
            var end = i;
            while (end + 1 < ids.Count && Follows(ids[end], ids[end + 1]))
            {
                end++;
            }

            runs.AddRange(end - i < 2 ? ids.Skip(i).Take(end - i + 1) : [$"{ids[i]} to {ids[end]}"]);
            i = end + 1;
        }

        return string.Join(", ", runs);
    }

    private static bool Cuts(IEnumerable<PlanStep> group) => group.Any(s => s.Step is MoveStep { Cutting: true });

    private static IEnumerable<SheetLine> Marked(PlanStep step) => step.Lines.Select((line, i) => line switch
    {
        MoveLine move => move with { Remark = Joined(i == 0 ? step.Step.Id : string.Empty, move.Remark == step.Step.Text ? string.Empty : move.Remark) },
        _ => line,
    });

    private static string Joined(params string[] parts) => string.Join("; ", parts.Where(p => p.Length > 0));

    // A number taken as it was typed works nothing out.
    private static bool Plain(Working working) => double.TryParse(working.PutIn, NumberStyles.Float, CultureInfo.InvariantCulture, out _);

    private static bool Follows(string a, string b) =>
        a.Length > 1 && b.Length > 1 && a[0] == b[0]
        && int.TryParse(a.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var m) && int.TryParse(b.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n == m + 1;
}
