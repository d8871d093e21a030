using Handwheel.Jobs.Findings;

namespace Handwheel.Cases.Tests.Written;

/// <summary>The reading a mend tells is cranked to, and the finding goes.</summary>
public sealed class UndersideTests
{
    private const string Job = """
        job   Rail
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          head    block 40 by 16 at 0, 0         from -4 to 0
          stem    block 40 by 10 at 0, 0         from -10 to -4
          foot    block 40 by 16 at 0, 0         from -16 to -10
          others  +/-0.1
        stock bar 16 wide, 16 high, 40 long
          x from -20
          z top 0
        holding A in large vise, on parallels 20
          zero x on middle of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          move z to 10 with ts12
          move x to -40, y to -11.25
          move z to -9
          cut x to 40 with ts12
        """;

    // A T-slot cutter 6 thick that stands at Z -9 reaches up to -3, a millimetre into the head, whose underside is at -4: it is to stand at -4 - 6 = -10.
    [Fact]
    public void A_cutter_too_high_under_a_head_is_told_where_to_stand()
    {
        static Whole Cut(string job) => new(job, shop => shop + "\nts12  T-slot cutter 12.5 by 6, neck 6\n");
        var gouge = Assert.Single(Cut(Job).All, f => f.Code == "gouge");
        Assert.Equal(Grade.Halt, gouge.Grade);
        Assert.Contains("Z -10.000 or lower (-4.000 - 6.000)", gouge.Mend, StringComparison.Ordinal);
        Assert.DoesNotContain(Cut(Job.Replace("move z to -9", "move z to -10", StringComparison.Ordinal)).All, f => f.Code == "gouge");
    }

    // An end mill has no upper face that cuts: beside the stem it is never told to stand a whole flute lower.
    [Fact]
    public void An_end_mill_is_not_sent_a_flute_lower()
    {
        var all = new Whole(Job.Replace("with ts12", "with em10", StringComparison.Ordinal).Replace("y to -11.25", "y to -9", StringComparison.Ordinal)).All.ToList();
        Assert.Contains(all, f => f.Code == "gouge");
        Assert.DoesNotContain(all, f => f.Mend.Contains("or lower (", StringComparison.Ordinal));
    }
}
