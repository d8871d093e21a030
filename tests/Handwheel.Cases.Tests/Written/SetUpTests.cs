namespace Handwheel.Cases.Tests.Written;

/// <summary>What is told of the set-up is the metal as it is then; what does not fit is a finding.</summary>
public sealed class SetUpTests
{
    private const string Job = """
        job   Ends
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          body    block 50 by 24 at 25, 0         from -16 to 0
          others  +/-0.1
        stock bar 24 wide, 18 high, 51 long
          z top 1
        holding A in large vise, underside up, bar along jaws on parallels 20
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          face to 16 with em16, 0.5 a pass
        holding B in large vise, bar along jaws on parallels 20
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          face to 0 with em16, 0.5 a pass
        holding C in large vise, right end up, on parallels 6
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          face to 50 with em16, 0.5 a pass
        """;

    // By hand: the bar was 18 high, from -17 to 1, and is faced on both sides to 16, from -16 to 0: stood on end, so far apart its ends lie.
    [Fact]
    public void Ends_are_told_as_they_lie_now()
    {
        var said = string.Join('\n', new Whole(Job).Plan!.Stages.Select(s => string.Join(' ', s.HowSet)));
        Assert.Contains("the work's ends at X 0.000 and +16.000", said, StringComparison.Ordinal);
        Assert.DoesNotContain("+17.000", said, StringComparison.Ordinal);
    }

    // Common practice, no source: what is larger than a chuck takes does not go in.
    [Fact]
    public void Work_too_large_for_the_indexer_is_a_finding()
    {
        var job = new Whole("""
            job   Bar
            unit  mm
            metal aluminium 6061
            shop  home.handwheel
            drawing
              body    block 80 by 40 at 40, 0  from -40 to 0
              others  +/-0.1
            stock bar 40 wide, 40 high, 80 long
            holding A in indexer, jaws at 20
              zero y on indexer centre
            """);
        Assert.Contains(job.All, f => f is { Code: "jaws" } && f.Message.Contains("it does not go in", StringComparison.Ordinal));
    }

    // A block cut away that is open at both ends is a pocket's work, as the language reference says.
    [Fact]
    public void A_slot_of_a_block_is_sent_to_the_step_that_fits()
    {
        var job = new Whole(Job.Replace("  others", "  groove cut block 50 by 10 at 25, 0 from -2 to 0\n  others", StringComparison.Ordinal)
            .Replace("face to 0 with em16, 0.5 a pass\n", "face to 0 with em16, 0.5 a pass\n  slot groove to -2 with em6, 1 a pass\n", StringComparison.Ordinal));
        var finding = Assert.Single(job.All, f => f.Code == "cannot-plan");
        Assert.Contains("'pocket groove ...'", finding.Mend, StringComparison.Ordinal);
    }

    // By hand: of a round of 40, 60 long, a disc of 30 is turned and sawn off 4.3 thick: its near side lies 15 from its middle, not 20; the jaws close on 30.
    [Fact]
    public void A_disc_sawn_off_a_long_round_is_told_as_it_is_now()
    {
        var job = new Whole("""
            job   Disc
            unit  mm
            metal aluminium 6061
            shop  home.handwheel
            drawing
              disc    round 30 at 0, 0         from -4 to 0
              others  +/-0.1
            stock round 40, 60 long, along z
              z top 1
            holding A in three chuck on rotary
              zero x, y on rotary centre
              zero z on bar top by paper 0.05
              face to 0 with em16, 0.5 a pass
              round disc to -5 with em16, 1 a pass
            by hand
              saw underside to the line, allow 0.3
              break all edges 0.2
            holding B in large vise on table, underside up, jaws along y, soft jaws, on parallels 25
              zero x on fixed jaw by indicator
              zero y on middle of stock by finder 10
            """);
        var said = string.Join('\n', job.Plan!.Stages.Select(s => string.Join(' ', s.HowSet)));
        Assert.Contains("the fixed jaw's face stands at X +15.000 from the zero, the work's near side at Y -15.000.", said, StringComparison.Ordinal);
        Assert.Contains("The jaws press on 30.000 mm of metal", said.Replace("30 mm", "30.000 mm", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
