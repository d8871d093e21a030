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
}
