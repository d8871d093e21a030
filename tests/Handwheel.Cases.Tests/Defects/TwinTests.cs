using System.Text.RegularExpressions;
using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Proof;

namespace Handwheel.Cases.Tests.Defects;

/// <summary>Every spoiled twin gives the finding written in its document, at its place, and no halt beside it that is not a true consequence (cases/README.md).</summary>
public sealed partial class TwinTests(ITestOutputHelper output)
{
    private static string Folder => Path.Combine(Courses.Root, "tests", "Handwheel.Cases.Tests", "cases", "defects");

    public static TheoryData<string> Names() => [.. Directory.GetDirectories(Folder).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    public static TheoryData<string> NamesWithShop() =>
        [.. Directory.GetDirectories(Folder).Where(d => File.Exists(Path.Combine(d, "home.handwheel")) && File.Exists(Path.Combine(d, "patch.json"))).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_twin_gives_its_finding_and_no_false_halt(string name)
    {
        var folder = Path.Combine(Folder, name);
        var file = Directory.GetFiles(folder, "*.handwheel").Single(f => Path.GetFileName(f) != "home.handwheel");
        var text = File.ReadAllText(file);
        string? Open(string shop) => File.ReadAllText(File.Exists(Path.Combine(folder, shop)) ? Path.Combine(folder, shop) : Path.Combine(Courses.Root, "examples", shop));
        var read = JobReader.Read(Path.GetFileName(file), text, Open);
        var findings = read.Findings.ToList();
        if (read.Value is { } job)
        {
            findings.AddRange(Proved(job, Open(job.ShopFile)!, Path.Combine(folder, "patch.json")));
        }

        var halts = findings.Where(f => f.Grade == Grade.Halt).ToList();
        foreach (var halt in halts)
        {
            output.WriteLine($"{halt.Where} {halt.Code} {halt.Step} {halt.Message}");
        }

        var marks = Marks(text);
        Assert.Contains(marks, m => m.Expected);
        Assert.All(marks.Where(m => m.Expected), m => Assert.Contains(halts, h => Fits(m, h, read.Value)));
        Assert.All(halts, h => Assert.Contains(marks, m => Fits(m, h, read.Value)));
    }

    // A twin in a shop of its own is spoiled by its patch alone: unspoiled, the same job in the same shop is sound.
    [Theory]
    [MemberData(nameof(NamesWithShop))]
    public void A_twin_in_a_shop_of_its_own_is_sound_until_it_is_spoiled(string name)
    {
        var folder = Path.Combine(Folder, name);
        var text = File.ReadAllText(Directory.GetFiles(folder, "*.handwheel").Single(f => Path.GetFileName(f) != "home.handwheel"));
        var shop = File.ReadAllText(Path.Combine(folder, "home.handwheel"));
        var job = JobReader.Read(name, text, _ => shop).Value!;
        Assert.Empty(Proved(job, shop, Path.Combine(folder, "none.json")).Where(f => f.Grade == Grade.Halt).Select(f => f.Message));
    }

    private static IEnumerable<Finding> Proved(Job job, string shopText, string patch)
    {
        var shop = ShopReader.Read(job.ShopFile, shopText).Value!;
        var plan = Planner.Plan(job, shop);
        var course = File.Exists(patch) ? Patch.Apply(plan.Course, File.ReadAllText(patch)) : plan.Course;
        return [.. plan.Findings, .. Prover.Prove(course, job.Drawing, job.Stock, shop).Findings];
    }

    // A mark on a step's line wants the finding of that step.
    private static bool Fits(Mark mark, Finding finding, Job? job)
    {
        if (mark.Code != finding.Code || (mark.Line > 0 && finding.Where?.Line != mark.Line))
        {
            return false;
        }

        var step = job?.Stages.SelectMany(s => s.Steps).FirstOrDefault(s => s.Where.Line == mark.Line);
        return step is null || finding.Step == step.Id;
    }

    private static List<Mark> Marks(string text)
    {
        var marks = new List<Mark>();
        var lines = text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            foreach (Match m in Marking().Matches(lines[i]))
            {
                var anywhere = m.Groups["any"].Success;
                foreach (var code in m.Groups["codes"].Value.Split(','))
                {
                    marks.Add(new(anywhere ? 0 : i + 1, code.Trim()["halt ".Length..].Trim(), m.Groups["word"].Value == "expect"));
                }
            }
        }

        return marks;
    }

    [GeneratedRegex(@"--\s+(?<any>anywhere\s+)?(?<word>expect|then):\s*(?<codes>halt [a-z-]+(,\s*halt [a-z-]+)*)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Marking();

    private sealed record Mark(int Line, string Code, bool Expected);
}
