using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;

namespace Handwheel.Cases.Tests.Written;

/// <summary>Shoulders, corners, notches and channels: cuts with walls on some sides only.</summary>
public sealed class ShoulderTests
{
    private const string Job = """
        job   Shoulder
        unit  mm
        metal steel, free-cutting
        shop  home.handwheel
        drawing
          base   block 80 by 40 at 0, 0     from -25 to 0
          CUT
          others +/-0.2
        stock bar 40 wide, 25 high, 80 long
          x middle 0
        holding A in large vise, bar along jaws on parallels 14
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper .05
          STEP
        """;

    private static Whole Cut(string cut, string step) => new(Job.Replace("CUT", cut, StringComparison.Ordinal).Replace("STEP", step, StringComparison.Ordinal));

    [Theory]
    [InlineData("step cut block 80 by 20 at 0, -10 from -6 to 0")]
    [InlineData("step cut block 80 by 20 at 0, 10 from -6 to 0")]
    [InlineData("step cut block 30 by 40 at -25, 0 from -6 to 0")]
    [InlineData("step cut block 30 by 40 at 25, 0 from -6 to 0")]
    [InlineData("step cut block 80 by 14 at 0, 0 from -6 to 0")]
    [InlineData("step cut block 26 by 40 at 0, 0 from -6 to 0")]
    [InlineData("step cut block 80 by 10 at 0, 0 from -6 to 0")]
    public void It_is_cleared_to_its_wall_from_the_open_sides(string cut)
    {
        foreach (var verb in new[] { "pocket", "face" })
        {
            var job = Cut(cut, $"{verb} step to -6 with em10, 2 a pass");
            Assert.Empty(job.Halts);
            Assert.DoesNotContain(job.All, f => f.Code == "direction" && f.Step == "A4");
            Assert.All(job.Proof!.Sizes, z => Assert.True(z.Ok, z.Name));
            Assert.Equal(-6, job.Lines("A4").OfType<PassBracket>().Last().Depths[^1], 9);
        }
    }

    // A corner, a notch: the walls are gone along in one run; their inner corners keep the cutter's radius, and that is left over.
    [Theory]
    [InlineData("step cut block 40 by 20 at -20, -10 from -6 to 0")]
    [InlineData("step cut block 40 by 20 at 20, -10 from -6 to 0")]
    [InlineData("step cut block 40 by 20 at 20, 10 from -6 to 0")]
    [InlineData("step cut block 40 by 20 at -20, 10 from -6 to 0")]
    [InlineData("step cut block 24 by 20 at 0, -10 from -6 to 0")]
    [InlineData("step cut block 30 by 24 at 25, 0 from -6 to 0")]
    public void Walls_that_meet_are_gone_along_in_one_run(string cut)
    {
        var job = Cut(cut, "pocket step to -6 with em10, 2 a pass");
        Assert.DoesNotContain(job.All, f => f.Code is "gouge" or "strike" or "cannot-plan");
        Assert.DoesNotContain(job.All, f => f.Code == "direction" && f.Step == "A4");

        // (1 - 1/sqrt(2)) of the cutter's radius times sqrt(2) is left in a square corner, 2.07 mm off it: less than 3 mm stands out of the part.
        Assert.All(job.All.Where(f => f.Code == "leftover" && f.Message.Contains("the step", StringComparison.Ordinal)), f => Assert.InRange(f.Amount!.Value, 0, 3));
    }

    // The wall at Y 0, half of em10, 0.3 left: -5.3; then -5.
    [Fact]
    public void An_allowance_is_left_on_the_wall_and_taken_off_along_it_alone()
    {
        var job = Cut("step cut block 80 by 20 at 0, -10 from -6 to 0\n  size step wide 20 +/-0.05", "pocket step to -6 with em10, 2 a pass, allow 0.3\n  measure step wide, then last pass at full depth");
        var rough = job.Lines("A4").OfType<MoveLine>().Where(m => m.Axis == Axis.Y).Select(m => m.To).ToList();
        Assert.Equal(-5.3, rough[^1], 9);
        var last = job.Lines("A5").OfType<MoveLine>().ToList();
        Assert.Single(last, m => m.Cutting && m.Axis == Axis.X);
        Assert.Contains(last, m => m.Axis == Axis.Y && Math.Abs(m.To + 5) < 1e-9);
        Assert.Empty(job.Halts);
    }

    [Fact]
    public void A_cutter_wider_than_the_channel_is_told() =>
        Assert.Contains(Cut("step cut block 80 by 8 at 0, 0 from -6 to 0", "pocket step to -6 with em10").All, f => f.Code == "cannot-plan" && f.Message == "em10 is wider than 'step'.");

    // What stands outside a wall is wider than em10: several rows, the outermost first.
    [Fact]
    public void A_side_wider_than_its_cutter_is_cut_in_rows_from_outside()
    {
        var job = new Whole(Job.Replace("base   block 80 by 40 at 0, 0     from -25 to 0", "base block 80 by 40 at 0, 0 from -25 to -6\n  rib block 80 by 10 at 0, 15 from -6 to 0", StringComparison.Ordinal)
            .Replace("CUT", "size base wide 40 +/-0.2", StringComparison.Ordinal).Replace("STEP", "side rib, near side, to -6 with em10, 2 a pass", StringComparison.Ordinal));
        Assert.DoesNotContain(job.All, f => f.Code is "gouge" or "cannot-plan" or "direction");
        var rows = job.Lines("A4").OfType<MoveLine>().Where(m => m.Axis == Axis.Y).Select(m => m.To).ToList();
        Assert.Equal(rows.Order(), rows);
        Assert.Equal(5, rows[^1], 9);
        Assert.InRange(rows[0], -20, -15.1);
        Assert.Equal(10, job.Proof!.Sizes.Single(s => s.Name == "rib wide").Greatest!.Value, 6);
    }

    // A wall along the rows and a boss: both are kept clear of.
    [Fact]
    public void A_face_keeps_clear_of_a_wall_and_of_a_block()
    {
        var job = new Whole(Job.Replace("base   block 80 by 40 at 0, 0     from -25 to 0", "base block 80 by 40 at 0, 0 from -25 to -6\n  wall block 80 by 8 at 0, 16 from -6 to 0\n  pad block 14 by 12 at 5, -4 from -6 to 0", StringComparison.Ordinal)
            .Replace("  CUT\n", string.Empty, StringComparison.Ordinal).Replace("STEP", "face base to -6 with em10, 2 a pass, 0.3 clear of wall, 0.5 clear of pad", StringComparison.Ordinal));
        Assert.DoesNotContain(job.All, f => f.Code is "gouge" or "cannot-plan");
        var rows = job.Lines("A4").OfType<MoveLine>().Where(m => m is { Axis: Axis.Y }).Select(m => m.To).ToList();
        Assert.Equal(12 - 0.3 - 5, rows.Max(), 9);
        Assert.Contains(job.Lines("A4").OfType<MoveLine>(), m => m is { Axis: Axis.X, Cutting: true } && Math.Abs(m.To - (12 + 0.5 + 5)) < 1e-9);
    }

    // A notch has three walls: along each the cutter stays half its width from the next.
    [Theory]
    [InlineData("2-3", Axis.Y, -10)]
    [InlineData("3-4", Axis.X, 7)]
    [InlineData("4-1", Axis.Y, -10)]
    public void The_side_of_a_notch_stops_at_its_corners(string edge, Axis run, double corner)
    {
        var job = Cut("notch cut outline -12, -20; 12, -20; 12, -5; -12, -5 from -6 to 0", $"side notch, {edge}, to -6 with em10, 2 a pass");
        Assert.DoesNotContain(job.All, f => f.Code is "gouge" or "strike" or "cannot-plan");
        Assert.Contains(job.Lines("A4").OfType<MoveLine>(), m => m.Axis == run && Math.Abs(m.To - corner) < 1e-9);
    }

    // A boss right before a wall: the rows that come from the left for the boss keep clear of the wall too.
    [Fact]
    public void A_face_keeps_clear_of_a_wall_behind_a_boss()
    {
        var job = new Whole(Job.Replace("base   block 80 by 40 at 0, 0     from -25 to 0", "base block 80 by 40 at 0, 0 from -25 to -6\n  wall block 79.8 by 10 at 0, 15 from -6 to 0\n  boss round 14 at 0, -1 from -6 to 0", StringComparison.Ordinal)
            .Replace("  CUT\n", string.Empty, StringComparison.Ordinal).Replace("STEP", "face base to -6 with em10, 2 a pass, 0.3 clear of wall, 0.5 clear of boss", StringComparison.Ordinal));
        Assert.DoesNotContain(job.All, f => f.Code is "gouge" or "cannot-plan");
        Assert.Contains(job.Lines("A4").OfType<MoveLine>(), m => m is { Axis: Axis.X, Cutting: true } && m.To > m.From);
    }

    // The long side of a cut corner: metal lies outside what is cut away.
    [Fact]
    public void The_side_of_a_cut_outline_is_cut_from_its_open_side()
    {
        var job = new Whole(Job.Replace("in large vise, bar along jaws on parallels 14", "in large vise on rotary, bar along jaws on parallels 14", StringComparison.Ordinal)
            .Replace("zero x on left end of stock by finder 10\n  zero y on fixed jaw by indicator", "zero x, y on rotary centre", StringComparison.Ordinal)
            .Replace("CUT", "nick cut outline 32, -20; 40, -20; 40, 5 from -6 to 0", StringComparison.Ordinal).Replace("STEP", "side nick, 3-1, to -6 with em10, 2 a pass", StringComparison.Ordinal));
        Assert.DoesNotContain(job.All, f => f.Code is "gouge" or "cannot-plan" or "strike");
        Assert.DoesNotContain(job.All, f => f.Code == "leftover" && f.Message.Contains("nick", StringComparison.Ordinal));
    }
}
