using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Proof;

namespace Handwheel.Cases.Tests;

/// <summary>Small sound jobs, one for each way of working that the examples leave out: each reads and plans without a finding, and proves without a halt, every size within its limits.</summary>
public sealed class SoundJobsTests(ITestOutputHelper output)
{
    private static readonly string Folder = Path.Combine(Courses.Root, "tests", "Handwheel.Cases.Tests", "cases", "sound");

    public static TheoryData<string> Jobs => [.. Directory.EnumerateFiles(Folder, "*.handwheel").Where(f => File.ReadAllText(f).StartsWith("job", StringComparison.Ordinal)).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_job_reads_plans_and_proves(string name)
    {
        var read = JobReader.Read(name, Text(name), Text);
        Assert.Empty(read.Findings);
        var plan = Planner.Plan(read.Value!, read.Shop!);
        Assert.Empty(plan.Findings);
        var proof = Prover.Prove(plan.Course, read.Value!.Drawing, read.Value.Stock, read.Shop!);
        foreach (var f in proof.Findings)
        {
            output.WriteLine(FormattableString.Invariant($"{f.Grade} {f.Code} {f.Step} {f.Move}: {f.Message}"));
        }

        Assert.DoesNotContain(proof.Findings, f => f.Grade == Grade.Halt);
        Assert.DoesNotContain(proof.Findings, f => f.Code == "direction");
        Assert.All(proof.Sizes, s => Assert.True(s.Ok, s.Name));
    }

    private static string Text(string name) => File.ReadAllText(Path.Combine(Folder, name));
}
