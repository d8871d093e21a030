using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;

namespace Handwheel.Plan.Tests.Jobs;

/// <summary>The rows as a hand works them: which way, how far, from where.</summary>
public sealed class HandworkedRowsTests
{
    private static readonly PlannedJob Crank = new("crank.handwheel");

    // A handwheel's clockwise turn makes the reading shown grow or fall; a readout that counts the other way shows the frame's growth as a fall, so the hand turns the other way.
    [Fact]
    public void A_readout_that_counts_the_other_way_is_cranked_the_other_way()
    {
        var other = new PlannedJob("crank.handwheel", t => t.Replace("readout x, y, z by 0.005", "readout x by 0.005, counts the other way\n  readout y, z by 0.005", StringComparison.Ordinal));
        Assert.True(other.Plan.Shop.Mill!.X.CountsOtherWay);
        Assert.NotEmpty(Moves(Crank, "A8", Axis.X));
        Assert.Equal(Moves(Crank, "A8", Axis.X).Select(m => !m.CrankClockwise), Moves(other, "A8", Axis.X).Select(m => m.CrankClockwise));
        Assert.Equal(Moves(Crank, "A8", Axis.Y).Select(m => m.CrankClockwise), Moves(other, "A8", Axis.Y).Select(m => m.CrankClockwise));
    }

    public static TheoryData<string> Jobs => ["crank.handwheel", "clamp-knob.handwheel", "friction-quadrant.handwheel", "plain-dial.handwheel", "tslot-clamp.handwheel"];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void No_row_stands_still(string name) => Assert.DoesNotContain(Rows(new(name)), m => m.From == m.To || m.Turns <= 0);

    // The work is set by turning clockwise (theta falling); half a round is as far as a hand should go for it.
    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_rotary_is_turned_half_a_round_at_most_where_it_does_not_cut(string name)
    {
        var job = new PlannedJob(name);
        Assert.DoesNotContain(Rows(job), m => m.Axis == Axis.T && !m.Cutting && Math.Abs(m.To - m.From) > 185 + 1e-9);
        foreach (var moves in job.Plan.Course.Stages.SelectMany(s => s.Steps).Select(s => s.Events.OfType<Move>().ToArray()))
        {
            // Turned back, it comes forward before anything else is done.
            foreach (var (before, back, next) in moves.Zip(moves.Skip(1), moves.Skip(2)))
            {
                Assert.False(!back.Cutting && back.To.T > before.To.T && (next.Cutting || next.To.T >= back.To.T));
            }
        }
    }

    // Up from -1 is 1 + 4 = 5 mm, from -13.4 it is 17.4; a turn of the quill's wheel is 2.5 mm.
    [Fact]
    public void A_row_of_passes_tells_its_last_pass_too()
    {
        var up = Moves(Crank, "A11", Axis.Z).Single(m => m.Last is not null);
        Assert.Equal(-13.4, up.Last!.From, 9);
        Assert.Equal((up.To + 13.4) / 2.5, up.Last.Turns, 9);
        Assert.True(up.Turns < up.Last.Turns);
    }

    [Fact]
    public void A_drill_is_told_which_way_to_crank_how_far_and_how_fast()
    {
        foreach (var bracket in Crank.Lines("A5").Concat(Crank.Lines("A6")).OfType<PassBracket>())
        {
            Assert.Equal(bracket.Depths, bracket.DepthMoves.Select(m => m.To));
            Assert.All(bracket.DepthMoves, m => Assert.True(m is { Cutting: true, CrankClockwise: true, Turns: > 0, Pace: > 0, Arrive: "from +" } && m.Lock.SequenceEqual([Axis.X, Axis.Y, Axis.T])));
        }
    }

    [Theory]
    [InlineData("sqrt((9.975/2 + 5)^2 - -3^2)", "sqrt((9.975/2 + 5)^2 - (-3)^2)")]
    [InlineData("0 - -6", "0 - (-6)")]
    [InlineData("-3^2 + 1", "(-3)^2 + 1")]
    [InlineData("-4.9864 - 10/2", "-4.9864 - 10/2")]
    [InlineData("2 x -.5", "2 x (-.5)")]
    public void A_number_below_nought_stands_in_brackets(string putIn, string reads) =>
        Assert.Equal(reads, (Moves(Crank, "A3", Axis.X)[0].Working with { PutIn = putIn }).PutIn);

    // 6.98 + 1 - 10/2 = 2.98, and half a millimetre is what it is brought to.
    [Fact]
    public void A_row_brought_to_a_round_number_says_what_it_came_from()
    {
        var row = Crank.Plan.Stages[0].Steps.Single(s => s.Step.Id == "A3").Workings.First(w => w.Name == "Y of row 1 of 2, 1 past the far edge");
        Assert.Equal("6.98 + 1 - 10/2", row.PutIn);
        Assert.Equal(2.98, row.Exact, 9);
        Assert.Equal("2.98 to the nearest 0.5 mm: 0.02", row.Rounded);
        Assert.Equal(3, row.Result, 9);
    }

    [Fact]
    public void Every_step_of_a_machine_names_its_cutter_and_speed() =>
        Assert.All(Crank.Plan.Stages.SelectMany(s => s.Steps).Where(s => s.Lines.Any(l => l is MoveLine or PassBracket)), s => Assert.Matches("^(em10|sd6|d4|d2\\.9|r3|saw1).*, [0-9]+ rpm", s.Heading));

    // The bar is 30 high: pilot and pin end in it. A bar that stands no higher than the crank is broken through.
    [Fact]
    public void Brass_grabs_a_drill_in_a_blind_hole_and_pulls_it_through_an_open_one()
    {
        static string Said(PlannedJob job) => job.Plan.Stages.SelectMany(s => s.Steps).Single(s => s.Step.Id == "A5").Cautions.Single();
        Assert.StartsWith("Brass grabs", Said(Crank), StringComparison.Ordinal);
        Assert.StartsWith("Brass pulls a drill in as it breaks through", Said(new("crank.handwheel", t => t.Replace("drill pilot through with d4", "drill pilot to -31 with d4", StringComparison.Ordinal))), StringComparison.Ordinal);
    }

    private static IEnumerable<MoveLine> Rows(PlannedJob job) => job.Plan.Stages.SelectMany(s => s.Steps).SelectMany(s => job.Lines(s.Step.Id)).OfType<MoveLine>();

    private static IReadOnlyList<MoveLine> Moves(PlannedJob job, string step, Axis axis) => [.. job.Lines(step).OfType<MoveLine>().Where(m => m.Axis == axis)];
}
