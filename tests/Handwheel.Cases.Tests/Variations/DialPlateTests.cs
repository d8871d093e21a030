using System.Globalization;
using CsCheck;
using Handwheel.Draws;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Plan;
using Handwheel.Proof;

namespace Handwheel.Cases.Tests.Variations;

/// <summary>
/// Random plates in a shop with dials alone: what is cut is what the readout&#39;s shop cuts, to what the coarser dials round (common practice, no source: with the slack taken
/// up on one side a dial is as true as its graduations).
/// </summary>
public sealed class DialPlateTests(ITestOutputHelper output)
{
    // Dials by 0.05 mm, as the example's own, with 0.6 mm of slack, more than twice what the plates' limits bear.
    private const double Graduation = 0.05;

    private static readonly string Readout = File.ReadAllText(Path.Combine(Courses.Root, "examples", "home.handwheel")) + "\nd4.3 drill 4.3, HSS, point 118\n";

    private static readonly string Dials = string.Join('\n', Readout.Split('\n').Where(l => !l.TrimStart().StartsWith("readout", StringComparison.Ordinal)))
        .Replace("backlash 0.15", "backlash 0.6", StringComparison.Ordinal).Replace("backlash 0.12", "backlash 0.6", StringComparison.Ordinal).Replace("backlash 0.10", "backlash 0.6", StringComparison.Ordinal);

    [Theory]
    [InlineData("zero x on left end of stock by finder 10 mm", "zero y on fixed jaw by indicator")]
    [InlineData("zero x on right end of stock by finder 10 mm", "zero y on middle of stock by finder 10 mm")]
    public void Dials_cut_what_the_readout_cuts_whichever_side_the_zero_is_found_on(string x, string y) => Gen.Int[0, 100_000].Hold(
        seed =>
        {
            var text = Text(seed).Replace("zero x on left end of stock by finder 10 mm", x, StringComparison.Ordinal).Replace("zero y on fixed jaw by indicator", y, StringComparison.Ordinal);
            var (sound, _) = Proved(text, Readout);
            var (dials, course) = Proved(text, Dials);
            Assert.All(course.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Events).OfType<TouchOff>(), t => Assert.NotEqual(0, t.Way));
            List<string> halts = [.. dials.Findings.Where(f => f.Grade == Grade.Halt).Select(f => FormattableString.Invariant($"{f.Step} {f.Move} {f.Message}\n{text}"))];
            output.WriteLine(string.Join(Environment.NewLine, halts));
            Assert.Empty(halts);
            foreach (var (a, b) in sound.Sizes.Zip(dials.Sizes).Where(p => p.First.Least is not null))
            {
                output.WriteLine(FormattableString.Invariant($"{seed} {a.Name}: {a.Least:F3} {b.Least:F3}, {a.Greatest:F3} {b.Greatest:F3}"));

                // Two faces, each rounded once in either shop, and the zero with them.
                Assert.InRange(b.Least!.Value - a.Least!.Value, -3 * Graduation, 3 * Graduation);
                Assert.InRange(b.Greatest!.Value - a.Greatest!.Value, -3 * Graduation, 3 * Graduation);
            }
        },
        times: 6);

    [Fact]
    public void A_dial_set_with_its_slack_on_the_other_side_is_caught()
    {
        var read = JobReader.Read("plate.handwheel", Text(7), _ => Dials);
        var plan = Planner.Plan(read.Value!, read.Shop!);
        CourseEvent Other(CourseEvent e) => e is TouchOff { Axis: Axis.X } touch ? touch with { Way = -touch.Way } : e;
        var slip = plan.Course with { Stages = [.. plan.Course.Stages.Select(s => s with { Steps = [.. s.Steps.Select(t => t with { Events = [.. t.Events.Select(Other)] })] })] };
        var proof = Prover.Prove(slip, read.Value!.Drawing, read.Value.Stock, read.Shop!);
        Assert.Contains(proof.Findings, f => f is { Grade: Grade.Halt, Code: "gouge" or "leftover" or "size" });
    }

    private static string Text(int seed) => PlateVariation.Text(seed, "mm", n => (n * 0.254m).ToString(CultureInfo.InvariantCulture));

    private static (ProofResult Proof, Course Course) Proved(string text, string shop)
    {
        var read = JobReader.Read("plate.handwheel", text, _ => shop);
        var plan = Planner.Plan(read.Value!, read.Shop!);
        return (Prover.Prove(plan.Course, read.Value!.Drawing, read.Value.Stock, read.Shop!), plan.Course);
    }
}
