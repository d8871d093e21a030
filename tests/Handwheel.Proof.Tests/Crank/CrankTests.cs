using Handwheel.Jobs.Findings;

namespace Handwheel.Proof.Tests.Crank;

public sealed class CrankTests(ITestOutputHelper output)
{
    [Fact]
    public void The_crank_proves_without_a_halt()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var result = Prover.Prove(CrankCourse.Sound(), CrankCourse.Job.Drawing, CrankCourse.Job.Stock, CrankCourse.Shop);
        output.WriteLine(FormattableString.Invariant($"{clock.Elapsed.TotalSeconds:F2} s"));
        foreach (var f in result.Findings)
        {
            output.WriteLine(FormattableString.Invariant($"{f.Grade} {f.Code} {f.Step} {f.Move}: {f.Message} | {f.Mend} {f.At}"));
        }

        foreach (var s in result.Sizes)
        {
            output.WriteLine(FormattableString.Invariant($"{s.Name}: {s.Least} {s.Greatest} in {s.Lower} {s.Upper} {s.Ok} {s.ByHand}"));
        }

        output.WriteLine(FormattableString.Invariant($"{result.Release} {result.Guarantee}"));
        Assert.DoesNotContain(result.Findings, f => f.Grade == Grade.Halt);
    }
}
