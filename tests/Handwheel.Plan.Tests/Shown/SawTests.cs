using System.Globalization;
using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Tests.Jobs;

namespace Handwheel.Plan.Tests.Shown;

/// <summary>A slitting saw as it is worked by hand: what it leaves is measured before the last pass, it starts well clear, and it leaves its kerf stopped (common practice, no source).</summary>
public sealed class SawTests
{
    private static readonly PlannedJob Crank = new("crank.handwheel");
    private static readonly PlannedJob Quadrant = new("friction-quadrant.handwheel");
    private static readonly PlannedJob Knob = new("clamp-knob.handwheel");

    // The far flank at 4.0022, web 0.3, the saw 63: -27.8 (rounded with metal left); the trial leaves 0.5 more. A web 0.05 thinner than thought is 0.05 less to go.
    [Fact]
    public void A_trial_is_measured_and_the_last_pass_goes_by_it()
    {
        var lines = Crank.Lines("B4").ToList();
        var at = lines.FindIndex(l => l is MeasureLine);
        var measure = (MeasureLine)lines[at];
        Assert.Equal((0.8, Axis.Y), (Math.Round(measure.Expected, 9), measure.Corrects!.Value));
        Assert.Equal(-27.8, measure.Strip.Single(p => Math.Abs(p.Measures - 0.8) < 1e-9).CrankTo, 9);
        Assert.Equal(-27.85, measure.Strip.Single(p => Math.Abs(p.Measures - 0.75) < 1e-9).CrankTo, 9);
        Assert.Equal(-28.3, lines.Take(at).OfType<MoveLine>().Last(m => m.Axis == Axis.Y && m.To > -35).To, 9);
        Assert.Contains(lines.Take(at), l => l is MoveLine { Cutting: true });
        Assert.Contains(lines.Skip(at), l => l is MoveLine { Cutting: true });
        Assert.Contains("0.05 mm", measure.Remark, StringComparison.Ordinal);
        Assert.Contains("0.2 mm", measure.Remark, StringComparison.Ordinal);
    }

    // Hub of 9.975/2 about X -28, Y 0; a saw of 31.5: what is between them where it comes down.
    [Fact]
    public void It_comes_down_well_clear_of_the_hub()
    {
        var at = Lowered(Crank, "B4").ToList();
        Assert.Equal(2, at.Count);
        Assert.All(at, p => Assert.True(Math.Sqrt(Math.Pow(p.X + 28, 2) + Math.Pow(p.Y, 2)) - 31.5 - (9.975 / 2) > 5));
    }

    [Fact]
    public void It_leaves_its_kerf_stopped_and_sideways()
    {
        foreach (var (job, step) in new[] { (Crank, "B4"), (Quadrant, "B4"), (Knob, "A12") })
        {
            var turning = false;
            var cut = false;
            foreach (var one in job.Plan.Course.Stages.SelectMany(s => s.Steps).Single(s => s.Id == step).Events)
            {
                turning = one is Spindle s ? s.Rpm > 0 : turning;
                if (one is Move move)
                {
                    Assert.True(!cut || move.Cutting || !turning);
                    cut = move.Cutting || (cut && move.To.Z < 0);
                }
            }
        }

        var away = Crank.Lines("B4").OfType<MoveLine>().SkipWhile(m => !m.Cutting).First(m => !m.Cutting);
        Assert.Equal((Axis.Y, -1), (away.Axis, Math.Sign(away.To - away.From)));
    }

    // Where the saw stands, nothing of it is over the first 5 mm of the arm: they reach from X -33 to -28, their near edge at Y -5.
    [Fact]
    public void A_shim_goes_in_behind_it_where_the_kerf_is_free()
    {
        var lines = Crank.Lines("B4").ToList();
        var at = lines.FindIndex(l => l is HandLine h && h.Says.Contains("shim", StringComparison.Ordinal));
        var stop = lines.Take(at).OfType<MoveLine>().Last(m => m.Cutting).To;
        Assert.True(Math.Sqrt(Math.Pow(stop + 28, 2) + Math.Pow(-27.8 + (9.975 / 2), 2)) > 31.5);
        Assert.True(stop < 0);
        Assert.Equal(0, lines.Take(at).OfType<SpindleLine>().Last().Rpm);
        Assert.True(lines.Skip(at).OfType<SpindleLine>().First().Rpm > 0);
    }

    // Its screw hangs 4 below: -13.1 - 4 = -17.1, the jaws end at -19.
    [Fact]
    public void What_passes_over_the_jaws_is_told() =>
        Assert.Single(Crank.Lines("B4").OfType<MoveLine>(), m => m.Remark.Contains("-17.100, 1.9 mm above the jaws", StringComparison.Ordinal));

    // The kerf's bottom at Y 3.7 leaves the eye's round of 4 at sqrt(4^2 - 3.7^2) = 1.520; plane geometry. The flank is laid to a minute: 0.002.
    [Fact]
    public void It_is_fed_until_the_web_ends()
    {
        var to = Crank.Lines("B4").OfType<MoveLine>().Last(m => m.Cutting);
        Assert.Equal(2, to.To, 9);
        var told = double.Parse(to.Working.PutIn.Split(' ')[0], CultureInfo.InvariantCulture);
        Assert.Equal(Math.Sqrt(16 - (3.7 * 3.7)), told, 0.003);
    }

    [Fact]
    public void The_web_is_broken_with_the_saw_out_of_the_way()
    {
        var says = Assert.IsType<HandLine>(Crank.Lines("h3").Single()).Says;
        Assert.StartsWith("Spindle stopped, saw1 out of it, the table run clear.", says, StringComparison.Ordinal);
        Assert.Contains("nub", says, StringComparison.Ordinal);
    }

    private static IEnumerable<(double X, double Y)> Lowered(PlannedJob job, string step)
    {
        var before = double.PositiveInfinity;
        foreach (var move in job.Plan.Course.Stages.SelectMany(s => s.Steps).Single(s => s.Id == step).Events.OfType<Move>())
        {
            if (move.To.Z < 0 && before >= 0)
            {
                yield return (move.To.X, move.To.Y);
            }

            before = move.To.Z;
        }
    }
}
