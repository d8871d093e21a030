namespace Handwheel.Cases.Tests.Written;

/// <summary>A short part on the end of a long bar in the indexer: what is made stands out of the chuck, whichever half of the bar is in it.</summary>
public sealed class IndexerTests
{
    private const string Job = """
        job   Capped nut
        unit  mm
        metal brass, free-cutting
        shop  home.handwheel
        drawing
          head    hexagon 15 across flats at 0, 0    from -12 to 0, seen from right
          collar  round 20 at 0, 0                   from -18 to -12, seen from right
          others  +/-0.2
        stock round 20, 60 long, along x
          x to 0.5
          z top 10
        holding A in indexer, jaws at -26
          zero y on indexer centre
          zero x on right end of stock by finder
          zero z on stock top by paper
          flats head with em10, 1.5 a pass
        """;

    // The bar runs from -59.5 to 0.5, its middle at -29.5: the face at -26 is right of that, but the nut lies right of the face.
    [Fact]
    public void The_chuck_holds_the_bar_and_not_the_part()
    {
        var job = new Whole(Job);
        Assert.Contains("its chuck at the left", string.Join(' ', job.Plan!.Stages[0].HowSet), StringComparison.Ordinal);
        Assert.DoesNotContain(job.All, f => f.Code is "strike" or "gouge");

        // The flank of em10 stops at the collar: half of it before -12.
        Assert.Contains(job.Lines("A4").OfType<Handwheel.Plan.Lines.MoveLine>(), m => m.Axis == Handwheel.Jobs.Moves.Axis.X && Math.Abs(m.To + 12 - 5) < 1e-9);
    }

    // A flange on the free end too: there is no way in.
    [Fact]
    public void Flats_between_two_collars_have_no_open_end() =>
        Assert.Contains(new Whole(Job.Replace("  collar  round 20", "  nose    round 20 at 0, 0                   from 0 to 4, seen from right\n  collar  round 20", StringComparison.Ordinal).Replace("x to 0.5", "x to 4", StringComparison.Ordinal)).All, f => f.Code == "cannot-plan" && f.Message.StartsWith("'head' has no open end", StringComparison.Ordinal));

    // The drill's point goes below a bottom drawn flat, 5/2 / tan 59 deg = 1.50 deep: the mend says how it is drawn.
    [Fact]
    public void A_point_under_a_flat_bottom_says_how_it_is_drawn()
    {
        var job = new Whole("""
            job   Block
            unit  mm
            metal aluminium 6061
            shop  home.handwheel
            drawing
              body   block 50 by 24 at 25, 0    from -16 to 0
              fix    hole 5 at 25, 0            8 deep from 0
              others +/-0.1
            stock bar 24 wide, 16 high, 50 long
              x from 0
            holding A in large vise, bar along jaws on parallels 25
              zero x on left end of stock by finder 10
              zero y on fixed jaw by indicator
              zero z on bar top by paper 0.05
              spot fix
              drill fix to -8 with d5
            """);
        var gouge = Assert.Single(job.All, f => f.Code == "gouge");
        Assert.Contains("point 118", gouge.Mend, StringComparison.Ordinal);
        Assert.InRange(gouge.Amount!.Value, 1, 1.5 - 0.1);
    }
}
