using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Plan.Lines;

namespace Handwheel.Plan.Tests.Jobs;

/// <summary>No number typed in a holding or a step is thrown away: another one gives another plan, or a finding.</summary>
public sealed partial class EveryNumberTests
{
    [Theory]
    [InlineData("crank.handwheel")]
    public void Another_number_is_another_plan(string file)
    {
        var lines = PlannedJob.Text(file).Split('\n');
        var planned = Said(lines, string.Empty);
        var looked = 0;
        for (var i = Array.FindIndex(lines, l => l.StartsWith("holding", StringComparison.Ordinal)); i < lines.Length; i++)
        {
            var line = lines[i];
            var comment = line.IndexOf("--", StringComparison.Ordinal);
            var bare = comment < 0 ? line : line[..comment];
            foreach (Match number in Number().Matches(bare))
            {
                var value = double.Parse(number.Value, CultureInfo.InvariantCulture);
                var others = new[] { value * 0.93, value + 0.7 }.Select(v =>
                {
                    var copy = (string[])lines.Clone();
                    copy[i] = string.Concat(bare.AsSpan(0, number.Index), v.ToString("0.####", CultureInfo.InvariantCulture), bare.AsSpan(number.Index + number.Length));
                    return Said(copy, copy[i].Trim());
                });
                Assert.True(others.Any(o => o is null || o != planned!.Replace(bare.Trim(), "@", StringComparison.Ordinal)), $"'{number.Value}' in '{bare.Trim()}'");
                looked++;
            }
        }

        Assert.True(looked > 10);
    }

    // The plan as text, a step's own words exchanged for a mark; null where it does not read.
    private static string? Said(string[] lines, string own)
    {
        var read = JobReader.Read("other.handwheel", string.Join('\n', lines), name => PlannedJob.Text(name));
        if (read is not { Halted: false, Value: { } job, Shop: { } shop })
        {
            return null;
        }

        var plan = Planner.Plan(job, shop);
        var text = new StringBuilder(CourseFile.Write(plan.Course)).AppendJoin('\n', plan.Findings.Select(f => f.Message));
        foreach (var stage in plan.Stages)
        {
            text.AppendJoin('\n', stage.HowSet).AppendJoin('\n', stage.Steps.SelectMany(s => s.Lines).Select(l => l is TouchOffLine t ? t.Says : l.ToString()));
        }

        return own.Length > 0 ? text.ToString().Replace(own, "@", StringComparison.Ordinal) : text.ToString();
    }

    [GeneratedRegex(@"(?<![\w.#])-?\d*\.?\d+(?![\w.]*[a-z])", RegexOptions.None, 1000)]
    private static partial Regex Number();
}
