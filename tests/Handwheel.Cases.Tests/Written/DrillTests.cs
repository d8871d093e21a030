namespace Handwheel.Cases.Tests.Written;

/// <summary>Drilling between jaws.</summary>
public sealed class DrillTests
{
    // The jaws stand 11.98 from the hole's axis, the drill is 2.5 in radius and the spindle's nose stays 47 above the jaws: nothing comes near anything.
    [Fact]
    public void A_drill_amid_the_jaws_passes_nothing()
    {
        var job = new Whole("""
            job   Block
            unit  mm
            metal aluminium 6061
            shop  home.handwheel
            drawing
              body   block 50 by 24 at 25, 0    from -16 to 0
              fix    hole 5 at 25, 0            through
              others +/-0.1
            stock bar 24 wide, 16 high, 50 long
              measured 23.96 wide
              x from 0
            holding A in large vise, bar along jaws on parallels 25
              zero x on left end of stock by finder 10
              zero y on fixed jaw by indicator
              zero z on bar top by paper 0.05
              spot fix
              drill fix through with d5
            """);
        Assert.Empty(job.Halts);
        Assert.DoesNotContain(job.All, f => f.Code == "strike");
    }

    private const string Ledge = """
        job   Block
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          body   block 50 by 24 at 25, 0    from -16 to 0
          ledge  cut block 50 by 6 at 25, -9  from -16 to -8
          fix    hole 5 at 25, -6           through
          others +/-0.1
        stock bar 24 wide, 16 high, 50 long
          x from 0
        holding A in large vise, underside up, bar along jaws on parallels 20
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          pocket ledge to 8 with em10, 2 a pass
        by hand
          break all edges 0.2
        holding B in large vise, SIDE, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          spot fix
          drill fix through with d5, peck 3
        """;

    // It leaves the work half over a ledge: guided by eight of its own hole, that is no start across an edge. (Common practice, no source.)
    [Fact]
    public void How_a_drill_leaves_the_work_is_no_start() =>
        Assert.DoesNotContain(new Whole(Ledge.Replace(", SIDE", string.Empty, StringComparison.Ordinal)).All, f => f.Code == "plunge");

    // From the other side it does start there.
    [Fact]
    public void Half_over_the_ledge_it_starts_across_an_edge() =>
        Assert.Contains(new Whole(Ledge.Replace(", SIDE", ", underside up", StringComparison.Ordinal).Replace("  spot fix\n", string.Empty, StringComparison.Ordinal)).All, f => f is { Code: "plunge", Grade: Handwheel.Jobs.Findings.Grade.Halt } && f.Message.Contains("across an edge", StringComparison.Ordinal));
}
