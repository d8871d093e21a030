using System.Text.RegularExpressions;
using Handwheel.Jobs.Reading;

namespace Handwheel.Plan.Tests.Jobs;

/// <summary>Every step that the language's reference shows, done alone on its sample part: it is worked out, or a finding says why not.</summary>
public sealed partial class EveryStepTests
{
    private static readonly string Reference = File.ReadAllText(Path.Combine(Root(), "docs", "language.md"));

    public static TheoryData<string> Steps => [.. Blocks("steps").SelectMany(b => b.Split('\n')).Select(l => l.Trim()).Where(l => l.Length > 0 && !l.StartsWith("zero", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Steps))]
    public void A_step_is_worked_out_or_told_why_not(string step)
    {
        var text = $"""
            job   One step
            unit  mm
            metal steel, free-cutting
            shop  home.handwheel
            drawing
            {Blocks("sample").Single()}
              others +/-0.1
            stock bar 28 wide, 30 high, 66 long
              x from -12
              z top 0.5
            holding A in small vise on rotary
              zero x, y on rotary centre
              zero z on bar top by paper 0.05
              {step}
            """;
        var read = JobReader.Read("step.handwheel", text, name => File.ReadAllText(Path.Combine(Root(), "examples", name)));
        Assert.True(read.Value is not null && read.Shop is not null);
        var plan = Planner.Plan(read.Value, read.Shop);
        Assert.All(plan.Findings, f => Assert.Contains(f.Code, (string[])["cannot-plan", "cuts-nothing"]));
        var planned = plan.Stages.Single().Steps[^1];
        Assert.True(planned.Lines.Count > 0 || plan.Findings.Any(f => f.Step == planned.Step.Id), step);
    }

    private static IEnumerable<string> Blocks(string kind) => Fenced().Matches(Reference).Where(m => m.Groups["kind"].Value == kind).Select(m => m.Groups["text"].Value.TrimEnd());

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Handwheel.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }

    [GeneratedRegex(@"```handwheel (?<kind>\w+)\n(?<text>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Fenced();
}
