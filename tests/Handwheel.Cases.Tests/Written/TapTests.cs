namespace Handwheel.Cases.Tests.Written;

/// <summary>A tap in its hole, told in its own words.</summary>
public sealed class TapTests
{
    private const string Job = """
        job   Tapped
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          body   block 50 by 24 at 25, 0    from -30 to 0
          tail   hole 5 at 25, 0            12 deep from 0, thread M6, point 118
          others +/-0.1
        stock bar 24 wide, 30 high, 50 long
        holding A in large vise, bar along jaws on parallels 20
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          spot tail
          DRILL
          tap tail to DEEP with tap6
        """;

    private static Whole With(string drill, string deep) =>
        new(Job.Replace("DRILL", drill, StringComparison.Ordinal).Replace("DEEP", deep, StringComparison.Ordinal));

    // The tap's lead is 4: full thread to 7 puts its end at 11, above the floor at 12; to 10 at 14, 2 below it less what the drill's cone gives (plane geometry).
    [Fact]
    public void One_that_reaches_the_floor_is_told_so()
    {
        Assert.Empty(With("drill tail to -12 with d5", "-7").Halts);
        var finding = Assert.Single(With("drill tail to -12 with d5", "-10").All, f => f.Code == "strike");
        Assert.StartsWith("tap6 reaches the floor of its hole", finding.Message, StringComparison.Ordinal);
        Assert.Contains("4.000 mm ahead of the full thread", finding.Message, StringComparison.Ordinal);
        Assert.InRange(finding.Amount!.Value, 1.9, 2.0);
    }

    // The core of M6 is 6 - 1.0825 = 4.9175 across (ISO 724): it does not go into a hole of 2.9.
    [Fact]
    public void One_too_big_for_its_hole_is_told_so()
    {
        var finding = Assert.Single(With("drill tail to -12 with d2.9", "-7").All, f => f.Code == "strike");
        Assert.StartsWith("tap6 does not go into its hole: its core is 4.918 mm across", finding.Message, StringComparison.Ordinal);
    }

    // Common practice, no source: a tap makes no hole.
    [Fact]
    public void One_without_a_hole_is_told_so()
    {
        var finding = Assert.Single(With(string.Empty, "-7").All, f => f is { Code: "plunge" or "strike", Grade: Jobs.Findings.Grade.Halt });
        Assert.StartsWith("tap6 finds no hole here", finding.Message, StringComparison.Ordinal);
    }
}
