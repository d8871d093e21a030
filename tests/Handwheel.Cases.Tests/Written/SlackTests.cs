using Handwheel.Jobs.Moves;

namespace Handwheel.Cases.Tests.Written;

/// <summary>One cut on a dial with 0.6 of slack, its zero found coming from minus, gone towards minus: worked out by hand. (Common practice, no source: the dial turns through the slack before the table moves.)</summary>
public sealed class SlackTests
{
    private const string Job = """
        job   Keyed block
        unit  mm
        metal brass, free-cutting
        shop  home.handwheel
        drawing
          body   block 60 by 24 at 30, 0    from -16 to 0
          key    cut slot 26 by 5.98 at 30, 0   from -2 to 0, along x
          others +/-0.2
        stock bar 24 wide, 16 high, 60 long
          x from 0
        holding A in large vise, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          STEPS
        """;

    private static Whole Cut(string steps) => new(
        Job.Replace("STEPS", steps, StringComparison.Ordinal),
        shop => string.Join('\n', shop.Split('\n').Where(l => !l.TrimStart().StartsWith("readout", StringComparison.Ordinal))).Replace("backlash 0.15", "backlash 0.6", StringComparison.Ordinal));

    // Typed, it is cranked as typed: from X 40.01 back to 20, where the dial says 20 and the table has gone 0.6 less.
    [Fact]
    public void Typed_it_stops_short_by_the_slack()
    {
        var job = Cut("move x to 30, y to 0 with em6\n  move x to 40\n  plunge z to -2 with em6\n  cut x to 20 with em6");
        var cut = job.Plan!.Course.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Events).OfType<Move>().Last();
        Assert.Equal(20, cut.To.X, 9);
        var size = job.Proof!.Sizes.Single(s => s.Name == "key long");
        Assert.Equal(40 - 20.6 + 5.98, size.Greatest!.Value, 3);
        Assert.False(size.Ok);
    }

    [Fact]
    public void A_dial_of_which_no_slack_is_told_is_asked_about() =>
        Assert.Contains(new Whole(Job.Replace("STEPS", "slot key with em6, 0.5 a pass", StringComparison.Ordinal), shop => string.Join('\n', shop.Split('\n').Where(l => !l.TrimStart().StartsWith("readout", StringComparison.Ordinal))).Replace(", backlash 0.15", string.Empty, StringComparison.Ordinal)).Read, f => f.Code == "missing" && f.Message == "The slack of the dial of x is missing.");

    // Planned, the slack is reckoned in: whichever way its passes go, the slot is as long as drawn, to half a division of 0.05 at each end.
    [Fact]
    public void Planned_it_is_as_long_as_drawn()
    {
        var job = Cut("slot key with em6, 0.5 a pass");
        Assert.DoesNotContain(job.All, f => f.Code is "size" or "gouge" or "leftover");
        Assert.Equal(26, job.Proof!.Sizes.Single(s => s.Name == "key long").Greatest!.Value, 0.05);
    }
}
