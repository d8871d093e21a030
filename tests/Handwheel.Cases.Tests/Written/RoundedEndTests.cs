using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;

namespace Handwheel.Cases.Tests.Written;

/// <summary>A lever's rounded end, drawn in each way it can be, turned on the rotary about the hole in its middle.</summary>
public sealed class RoundedEndTests
{
    private const string Job = """
        job   Lever
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          BODY
          pin    hole 5 at 0, 0              through
          others +/-0.1
        stock bar 16 wide, 10 high, 60 long
          x from -50
          z top 0
        holding A in small vise on rotary, bar along jaws on parallels 10, middle of jaws at -30
          zero x, y at pin on rotary centre
          zero z on bar top by paper 0.05
          STEP
        """;

    private static Whole Cut(string body, string step) => new(Job.Replace("BODY", body, StringComparison.Ordinal).Replace("STEP", step, StringComparison.Ordinal));

    // Half of 16 and half of em10: X 13. The end runs from straight down to straight up, so theta from 90 back to -90; clockwise outside is conventional.
    [Theory]
    [InlineData("arm outline -50, -8; 0, -8; arc about 0, 0 to 0, 8; -50, 8  from -10 to 0", "round pin end of arm to -10 with em10, 1 a pass")]
    [InlineData("arm block 50 by 16 at -25, 0  from -10 to 0\n  nose round 16 at 0, 0  from -10 to 0", "round nose end of arm to -10 with em10, 1 a pass")]
    [InlineData("arm slot 50 by 16 at -17, 0  from -10 to 0", "round pin end of arm to -10 with em10, 1 a pass")]
    public void It_is_turned_from_side_to_side(string body, string step)
    {
        var job = Cut(body, step);
        Assert.DoesNotContain(job.All, f => f.Code is "gouge" or "cannot-plan" or "direction" or "strike");
        var moves = job.Lines("A3").OfType<MoveLine>().ToList();
        Assert.Contains(moves, m => m.Axis == Axis.X && m.Cutting && Math.Abs(m.To - 13) < 1e-9);
        var turn = Assert.Single(moves, m => m.Axis == Axis.T && m.Cutting);
        Assert.Equal(180, Math.Abs(turn.To - turn.From), 1e-6);
        Assert.Equal(0, Math.Cos(turn.To * Math.PI / 180), 1e-6);

        // The finished end keeps its radius: the proof measures 16 across where the drawing has a round.
        Assert.All(job.Proof!.Sizes.Where(s => s.Name == "nose across"), s => Assert.Equal(16, s.Greatest!.Value, 1e-3));
    }

    // A round of 10 before an arm of 16: em10 has its centre 10 off the middle and stays 5 off the arm's corner at 0, 8: 100 + 64 - 160 sin a = 25.
    [Fact]
    public void A_shoulder_is_kept_clear_of()
    {
        var job = Cut("arm block 50 by 16 at -25, 0  from -10 to 0\n  nose round 10 at 0, 0  from -10 to 0", "round nose end of arm to -10 with em10, 1 a pass");
        Assert.DoesNotContain(job.All, f => f.Code is "gouge" or "cannot-plan");
        var turn = Assert.Single(job.Lines("A3").OfType<MoveLine>(), m => m.Axis == Axis.T && m.Cutting);
        Assert.Equal(2 * Math.Asin(139.0 / 160) * 180 / Math.PI, Math.Abs(turn.To - turn.From), 2.0 / 60);
    }

    [Fact]
    public void A_whole_turn_into_the_arm_is_refused()
    {
        var job = Cut("arm block 50 by 16 at -25, 0  from -10 to 0\n  nose round 16 at 0, 0  from -10 to 0", "round nose to -10 with em10, 1 a pass");
        var finding = Assert.Single(job.All, f => f.Code == "cannot-plan");
        Assert.Equal("'arm' stands in the way of a whole turn round 'nose' at this height.", finding.Message);
        Assert.Contains("'round nose end of arm to ...'", finding.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void An_end_with_no_arc_about_it_is_refused()
    {
        var job = Cut("arm block 60 by 16 at -20, 0  from -10 to 0", "round pin end of arm to -10 with em10, 1 a pass");
        Assert.Contains(job.All, f => f.Code == "cannot-plan" && f.Message == "No rounded end of 'arm' lies about 'pin'.");
    }

    // ch8: 90 deg, tip 1. Leg 0.5, the tip 0.125 or more below: its centre stands outside the 8 of the end, the turn is the same half.
    [Fact]
    public void Its_edge_is_chamfered_about_the_same_hole()
    {
        var job = Cut("arm outline -50, -8; 0, -8; arc about 0, 0 to 0, 8; -50, 8  from -10 to 0", "round pin end of arm to -10 with em10, 1 a pass\n  chamfer pin end of arm 0.5 with ch8");
        Assert.DoesNotContain(job.All, f => f.Code is "cannot-plan");
        var turn = Assert.Single(job.Lines("A4").OfType<MoveLine>(), m => m.Axis == Axis.T && m.Cutting);
        Assert.Equal(180, Math.Abs(turn.To - turn.From), 1e-6);
    }

    // A corner of a pocket drawn sharp: em6's radius stays in it, (sqrt(2) - 1) of 2.99 high less the limits' part, and the finding says what to do.
    [Fact]
    public void Metal_in_a_sharp_corner_says_so()
    {
        var job = Cut("arm block 60 by 16 at -20, 0  from -10 to 0\n  seat cut block 20 by 10 at -20, 0  from -4 to 0", "drill pin through with d5\n  pocket seat to -4 with em6, 1 a pass");
        var corner = Assert.Single(job.All, f => f.Code == "leftover" && f.Mend.Contains("a corner of the seat", StringComparison.Ordinal));
        Assert.InRange(corner.Amount!.Value, 0.7, (Math.Sqrt(2) - 1) * 2.99);
    }
}
