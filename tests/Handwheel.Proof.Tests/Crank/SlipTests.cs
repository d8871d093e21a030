using CsCheck;
using Handwheel.Draws;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Tests.Crank;

/// <summary>Whatever is done to a course, the proof answers, the same each time, whatever the threads.</summary>
public sealed class SlipTests(ITestOutputHelper output)
{
    private static readonly Func<double, double>[] Slips =
    [
        v => -v, v => v + 5, v => v - 5, v => v * 10, v => v * 25.4, v => v / 25.4, v => v + 0.5, v => v - 10, v => 0, v => 1e6, v => -1e6,
    ];

    [Fact]
    public void A_slip_anywhere_is_answered() =>
        Gen.Select(Gen.Int[0, 400], Gen.Int[0, 3], Gen.Int[0, Slips.Length - 1]).Hold(
            (which, axis, slip) =>
            {
                var count = 0;
                Move Slipped(Move m) => axis switch
                {
                    0 => m with { To = m.To with { X = Slips[slip](m.To.X) } },
                    1 => m with { To = m.To with { Y = Slips[slip](m.To.Y) } },
                    2 => m with { To = m.To with { Z = Slips[slip](m.To.Z) } },
                    _ => m with { To = m.To with { T = Slips[slip](m.To.T) } },
                };
                var course = CrankCourse.Sound();
                foreach (var step in course.Stages.SelectMany(s => s.Steps).ToList())
                {
                    course = course.Each(step.Id, e => e is Move m && count++ == which ? Slipped(m) : e);
                }

                var clock = System.Diagnostics.Stopwatch.StartNew();
                var result = Prover.Prove(course, CrankCourse.Job.Drawing, CrankCourse.Job.Stock, CrankCourse.Shop);
                output.WriteLine(FormattableString.Invariant($"{which} {axis} {slip}: {clock.Elapsed.TotalSeconds:F1} s {string.Join(", ", result.Findings.Where(f => f.Grade == Grade.Halt).Select(f => f.Code + " " + f.Step))}"));
                Assert.NotEmpty(result.Guarantee);
            },
            times: int.TryParse(Environment.GetEnvironmentVariable("HANDWHEEL_SLIPS"), System.Globalization.CultureInfo.InvariantCulture, out var wanted) ? wanted : 6,
            threads: 1);

    [Fact]
    public void Threads_change_nothing()
    {
        ProofResult By(int threads) => Prover.Prove(
            CrankCourse.Sound().Moves("A12", r => r with { Y = r.Y == 9.99 ? 9.49 : r.Y }), CrankCourse.Job.Drawing, CrankCourse.Job.Stock, CrankCourse.Shop, options: new ProofOptions { Threads = threads });
        var one = By(1);
        var two = By(2);
        Assert.Equal(one.Findings, two.Findings);
        Assert.Equal(one.Sizes, two.Sizes);
        Assert.Equal(one.Release, two.Release);
    }
}
