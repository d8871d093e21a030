using System.Globalization;
using System.Text.RegularExpressions;
using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Tests.Jobs;

namespace Handwheel.Plan.Tests.Shown;

/// <summary>What a machinist looks for on the sheet beside the readings: when the spindle runs, what is set in which order, what a number rests on (common practice, no source, where nothing else is named).</summary>
public sealed partial class AtTheMachineTests
{
    private static readonly PlannedJob Crank = new("crank.handwheel");
    private static readonly PlannedJob[] Jobs = [Crank, .. new[] { "clamp-knob", "friction-quadrant", "plain-dial", "tslot-clamp" }.Select(n => new PlannedJob(n + ".handwheel"))];

    [Fact]
    public void Nothing_cuts_with_the_spindle_stopped_and_no_hand_comes_near_while_it_turns()
    {
        foreach (var one in Jobs.SelectMany(j => j.Plan.Course.Stages).SelectMany(s => s.Steps).SelectMany(s => s.Events).Aggregate(
            (Turning: false, Wrong: new List<CourseEvent>()),
            (state, e) =>
            {
                var near = e is CutterIn or Measured or Handwork or TouchOff { Paper: > 0 };
                if (e is Move { Cutting: true, Feed: > 0 } ? !state.Turning : near && state.Turning)
                {
                    state.Wrong.Add(e);
                }

                return (e is Spindle s ? s.Rpm > 0 : state.Turning, state.Wrong);
            }).Wrong)
        {
            Assert.Fail(one.ToString());
        }

        Assert.Contains(Crank.Lines("A12"), l => l is SpindleLine { Rpm: 0 });
        Assert.Equal(900, Crank.Lines("A3").OfType<SpindleLine>().First().Rpm);
    }

    [Fact]
    public void The_work_is_turned_once_by_hand_before_a_holdings_first_large_turn()
    {
        var holdings = 0;
        foreach (var stage in Jobs.SelectMany(j => j.Plan.Stages).Where(s => s.Setup?.Rotary is { Lies: false }))
        {
            var lines = stage.Steps.SelectMany(s => s.Lines).ToList();
            var dry = lines.FindIndex(l => l is HandLine h && h.Says.Contains("turn the work once round by the crank", StringComparison.Ordinal));
            var large = lines.FindIndex(l => Moves(l).Any(m => m.Axis == Axis.T && Math.Abs(m.To - m.From) >= 90));
            Assert.True(large < 0 ? dry < 0 : dry >= 0 && dry < large);
            Assert.Equal(large < 0 ? 0 : 1, lines.Count(l => l is HandLine h && h.Says.Contains("once round", StringComparison.Ordinal)));
            holdings += large < 0 ? 0 : 1;
        }

        Assert.True(holdings >= 3);
    }

    // The rotary's centre, the vise on it, its jaw swept, then T, come to as every other turn is: the work clockwise.
    [Fact]
    public void T_is_set_when_the_vise_is_and_from_the_side_all_turns_come_from()
    {
        var touches = Crank.Lines("A1").OfType<TouchOffLine>().ToList();
        Assert.Equal([Axis.X, Axis.Y, Axis.T], touches.Select(t => t.TouchOff.Axis));
        Assert.StartsWith("Now set the vise and the work", touches[2].Says, StringComparison.Ordinal);
        Assert.Contains(Crank.Plan.Stages[0].HowSet, h => h.StartsWith("When A1 has found X and Y, and before it sets T", StringComparison.Ordinal));
        foreach (var t in new[] { "A1", "B1" }.Select(s => Crank.Lines(s).OfType<TouchOffLine>().Single(l => l.TouchOff.Axis == Axis.T)))
        {
            Assert.Contains("clockwise", t.Says, StringComparison.Ordinal);
        }

        Assert.Contains("half the swing", Crank.Lines("B1").OfType<TouchOffLine>().Single(l => l.TouchOff.Axis == Axis.Y).Says, StringComparison.Ordinal);
    }

    // Against a round from both sides a cutter reads c + (R + r) and c - (R + r): half the sum is the centre, half the difference the radii; plane geometry.
    [Fact]
    public void A_round_off_its_size_is_told_from_a_zero_off_its_place()
    {
        var remark = Crank.Lines("A10").OfType<MeasureLine>().Single().Remark;
        Assert.Contains("Half the sum of the two readings is how far X 0 is off", remark, StringComparison.Ordinal);
        Assert.Contains("A11, A12, B3", remark, StringComparison.Ordinal);
    }

    // The knob's head and neck are both turned by em500: the second measurement only points to the first.
    [Fact]
    public void It_is_told_once_in_a_holding()
    {
        var remarks = Jobs[1].Plan.Stages[0].Steps.SelectMany(s => s.Lines).OfType<MeasureLine>().Where(l => l.Corrects == Axis.X).Select(l => l.Remark).ToList();
        Assert.Equal(2, remarks.Count);
        Assert.Contains("Half the sum", remarks[0], StringComparison.Ordinal);
        Assert.Contains("find out which it is as in", remarks[1], StringComparison.Ordinal);
    }

    // Four corners of a square of 4.03 round a hole of 4 in brass: some 3 kN before friction, within half either way.
    [Fact]
    public void A_push_tells_its_force_its_stop_and_its_guide()
    {
        var line = Assert.IsType<HandLine>(Crank.Lines("h1").Single());
        Assert.Contains("against a stop", line.Says, StringComparison.Ordinal);
        Assert.Contains("4.03 mm", line.Says, StringComparison.Ordinal);
        Assert.Contains("guides it", line.Says, StringComparison.Ordinal);
        Assert.InRange(line.Workings.Single(w => w.Unit == "N").Exact / 1.3, 1500, 4500);
        Assert.Contains(" kN of the press's 10 kN", line.Says, StringComparison.Ordinal);
    }

    // A quill held back is not cranked twice a second.
    [Fact]
    public void Brass_is_drilled_no_faster_than_it_can_be_held_back()
    {
        foreach (var move in new[] { "A4", "A5", "A6" }.SelectMany(s => Crank.Lines(s)).SelectMany(Moves).Where(m => m is { Axis: Axis.Z, Cutting: true }))
        {
            Assert.True(move.Pace >= 1, FormattableString.Invariant($"move {move.Number}: {move.Pace:0.00} s a turn"));
        }
    }

    [Fact]
    public void What_was_cut_is_freed_of_burrs_before_it_is_touched()
    {
        Assert.DoesNotContain("burrs", Crank.Lines("A2").OfType<TouchOffLine>().Single().Says, StringComparison.Ordinal);
        Assert.Contains("burrs off", Crank.Lines("A8").OfType<TouchOffLine>().Single().Says, StringComparison.Ordinal);
    }

    [Fact]
    public void The_knee_is_locked_once_in_each_holding()
    {
        foreach (var stage in Crank.Plan.Stages.Where(s => s.Setup is not null))
        {
            var touches = stage.Steps.SelectMany(s => s.Lines).OfType<TouchOffLine>().Where(l => l.TouchOff.Axis == Axis.Z).ToList();
            Assert.Contains("the knee (where there is one) locked", touches[0].Says, StringComparison.Ordinal);
            Assert.All(touches.Skip(1), t => Assert.DoesNotContain("knee", t.Says, StringComparison.Ordinal));
        }
    }

    // pi d n = v, worked out from the figures as they are printed.
    [Fact]
    public void A_speed_as_printed_is_the_sum_as_printed()
    {
        var sums = Jobs.SelectMany(j => j.Plan.Stages).SelectMany(s => s.Steps).SelectMany(s => s.Workings).Where(w => w.Name.StartsWith("speed of", StringComparison.Ordinal)).ToList();
        Assert.True(sums.Count > 20);
        foreach (var sum in sums)
        {
            var told = Sum().Match(sum.PutIn);
            Assert.True(told.Success, sum.PutIn);
            double Figure(string name) => double.Parse(told.Groups[name].Value, CultureInfo.InvariantCulture);
            Assert.Equal(Figure("rpm"), Math.Round(Figure("by") * Figure("speed") / (Math.PI * Figure("across")), MidpointRounding.AwayFromZero), 1e-9);
        }
    }

    private static IEnumerable<MoveLine> Moves(SheetLine line) => line switch
    {
        MoveLine m => [m],
        PassBracket b => [.. b.DepthMoves, .. b.Lines.SelectMany(Moves)],
        _ => [],
    };

    [GeneratedRegex(@"^(?<by>1000|12) x (?<speed>[\d.]+) (m|ft)/min / \(pi x (?<across>[\d.]+) (mm|in)\) = (?<rpm>\d+): ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Sum();
}
