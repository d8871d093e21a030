using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Proof;

namespace Handwheel.Cases.Tests;

/// <summary>Every job of the examples, whole: it reads and plans without a finding, and its moves prove without a halt, every size within its limits.</summary>
public sealed class ExampleJobsTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("crank.handwheel", "h3")]
    [InlineData("clamp-knob.handwheel", "h1")]
    [InlineData("friction-quadrant.handwheel", "h1")]
    [InlineData("plain-dial.handwheel", null)]
    [InlineData("tslot-clamp.handwheel", null)]
    public void A_job_reads_plans_and_proves(string name, string? release)
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
        Assert.All(proof.Sizes, s => Assert.True(s.Ok, s.Name));
        Assert.Equal(release, proof.Release.Step);
    }

    private static string Text(string name)
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Handwheel.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return File.ReadAllText(Path.Combine(folder, "examples", name));
    }
}
