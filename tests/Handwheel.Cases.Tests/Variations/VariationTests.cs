using System.Globalization;
using CsCheck;
using Handwheel.Draws;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Membership;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Slips;

namespace Handwheel.Cases.Tests.Variations;

/// <summary>The planner is not shaped to one job: cranks drawn by a seed plan and prove unedited, and what is left of them is what the membership test says.</summary>
public sealed class VariationTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(1001)]
    [InlineData(1002)]
    [InlineData(1003)]
    public void A_variation_plans_and_proves_unedited(int seed) => Assert.Empty(Halts(seed));

    // HANDWHEEL_JOBS asks for more of them.
    [Fact]
    public void A_sound_random_job_proves_without_a_gouge() =>
        Gen.Int[0, 100_000].Hold(
            seed => Assert.DoesNotContain(Halts(seed), f => f.StartsWith("gouge", StringComparison.Ordinal)),
            times: int.TryParse(Environment.GetEnvironmentVariable("HANDWHEEL_JOBS"), CultureInfo.InvariantCulture, out var wanted) ? wanted : 3,
            threads: 1);

    private List<string> Halts(int seed)
    {
        var text = Variation.Text(seed);
        var shopText = File.ReadAllText(Path.Combine(Courses.Root, "examples", "home.handwheel"));
        var read = JobReader.Read("variation.handwheel", text, _ => shopText);
        var shop = ShopReader.Read("home.handwheel", shopText).Value!;
        var plan = Planner.Plan(read.Value!, shop);
        var proof = Prover.Prove(plan.Course, plan.Job.Drawing, plan.Job.Stock, shop);
        var part = Plain.Of(plan.Job.Drawing);
        var judge = new Judge(CourseFile.Write(plan.Course), Plain.Of(plan.Job.Stock), part, Plain.Of(shop));
        output.WriteLine(FormattableString.Invariant($"{seed}: {proof.Release.Step}; by membership {judge.Sound}"));
        List<string> halts = [.. read.Findings.Concat(plan.Findings).Concat(proof.Findings).Where(f => f.Grade == Grade.Halt).Select(f => $"{f.Code} {f.Step}: {f.Message}")];
        if (judge.Dropped > 0 || judge.Harm(CourseFile.Write(plan.Course)) is not null)
        {
            halts.Add(FormattableString.Invariant($"membership: {judge.Dropped} places beside the surface, {judge.Harm(CourseFile.Write(plan.Course))}"));
        }

        foreach (var halt in halts)
        {
            output.WriteLine(FormattableString.Invariant($"{seed} {halt}"));
        }

        return halts;
    }
}
