using Handwheel.Jobs.Findings;

namespace Handwheel.Cases.Tests.Written;

/// <summary>A face sawn by hand is rough: 0.5 mm off its line and uneven (common practice, no source).</summary>
public sealed class SawnTests
{
    private const string Job = """
        job   Disc
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          disc    round 30 at 0, 0         from -12 to 0
          groove  cut block 30 by 8 at 0, 0 from -2 to 0
          others  +/-0.1
        stock round 40, 60 long, along z
          z top 1
        holding A in three chuck on rotary
          zero x, y on rotary centre
          zero z on bar top by paper 0.05
          face to 0 with em16, 0.5 a pass
          round disc to -13 with em16, 1 a pass
        by hand
          saw underside to the line, allow 0.3
          break all edges 0.2
        NEXT
        """;

    private const string Over = """
        holding B in large vise on table, underside up, jaws along y, soft jaws, on parallels 25
          zero x on fixed jaw by indicator
          zero y on middle of stock by finder 10
          zero z on disc underside by paper 0.05
          face to 12 with em16, 0.5 a pass
        """;

    private const string Groove = """
        holding G in large vise on table, jaws along y, soft jaws, on parallels 25
          zero x on fixed jaw by indicator
          zero y on middle of stock by finder 10
          zero z on disc top by paper 0.05
          pocket groove to -2 with em6, 1 a pass
        """;

    // Turned over, Z is found on the sawn face itself: all heights are off with it. Groove first, the work stands on the sawn face. Faced before, neither.
    [Theory]
    [InlineData(Over, "zero", "is touched where it was sawn by hand in h1")]
    [InlineData(Groove, "grip", "stands on the face that was sawn by hand in h1")]
    public void It_is_told_where_work_rests_on_it(string next, string code, string said)
    {
        var found = Assert.Single(new Whole(Job.Replace("NEXT", next, StringComparison.Ordinal)).All, f => f.Message.Contains("sawn by hand", StringComparison.Ordinal));
        Assert.Equal((Grade.Caution, code), (found.Grade, found.Code));
        Assert.Contains(said, found.Message, StringComparison.Ordinal);
        Assert.Contains("0.500 mm", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_rough_only_until_it_is_faced()
    {
        var all = new Whole(Job.Replace("NEXT", Over + "\nby hand\n  break all edges 0.2\n" + Groove, StringComparison.Ordinal)).All.Where(f => f.Message.Contains("sawn by hand", StringComparison.Ordinal));
        Assert.Equal("zero", Assert.Single(all).Code);
    }
}
