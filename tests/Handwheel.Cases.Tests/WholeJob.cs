using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Proof;

namespace Handwheel.Cases.Tests;

/// <summary>A job from its document to its proof, as a sound one goes.</summary>
internal static class WholeJob
{
    /// <summary>Reads and plans without a finding, proves without a halt, every size within its limits.</summary>
    public static ProofResult Sound(string folder, string name, ITestOutputHelper output)
    {
        string Text(string file) => File.ReadAllText(Path.Combine(folder, file));
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
        return proof;
    }
}
