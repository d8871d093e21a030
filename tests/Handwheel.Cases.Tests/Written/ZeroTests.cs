using Handwheel.Jobs.Findings;

namespace Handwheel.Cases.Tests.Written;

/// <summary>Zeros that rest on nothing: a rotary's centre nobody found, a boss that is not cut yet, a Z that is not told.</summary>
public sealed class ZeroTests
{
    private const string Bar = """
        job   Foot
        unit  mm
        metal steel, free-cutting
        shop  home.handwheel
        drawing
          base   block 40 by 20 at 20, 10     from -20 to -5
          boss   round 12 at 25, 10           from -5 to 0
          others +/-0.2
        stock bar 20 wide, 20 high, 41 long
          x from -0.5
          y from 0
        holding A in small vise on rotary, bar along jaws on parallels 10
          ZEROS
          zero z on bar top by paper 0.05
          STEPS
        """;

    private static Whole Job(string zeros, string steps) =>
        new(Bar.Replace("ZEROS", zeros, StringComparison.Ordinal).Replace("STEPS", steps, StringComparison.Ordinal));

    [Fact]
    public void A_turned_cut_without_a_found_centre_is_a_halt_that_says_how_to_find_it()
    {
        var job = Job("zero x on left end of stock by finder 10\n  zero y on fixed jaw by indicator", "side base, left end, right end, to -20 with em10, 1 a pass");
        var zero = job.All.Single(f => f is { Code: "zero", Grade: Grade.Halt });
        Assert.Equal("The work is turned here and the rotary's centre was not found in this holding: where its axis stands on X and Y is not known, so every cut after a turn lands somewhere else.", zero.Message);
        Assert.Contains("zero x, y on rotary centre", zero.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void With_the_centre_found_it_is_none() =>
        Assert.DoesNotContain(Job("zero x, y on rotary centre", "side base, left end, right end, to -20 with em10, 1 a pass").All, f => f is { Code: "zero", Grade: Grade.Halt });

    // Nothing turns: the rotary is a table, and sides are enough.
    [Fact]
    public void Unturned_work_needs_no_centre() =>
        Assert.DoesNotContain(Job("zero x on left end of stock by finder 10\n  zero y on fixed jaw by indicator", "face to -0.2 with em10").All, f => f.Code == "zero");

    // The boss stands 25.5 right of the stock's left end and 10 from its near side: a finder of 10 meets them at -25.5 - 5 and -10 - 5.
    [Fact]
    public void A_boss_not_cut_yet_is_brought_over_the_centre_by_the_stock()
    {
        var job = Job("zero x, y at boss on rotary centre", "round boss to -5 with em10, 1 a pass");
        Assert.Contains(job.All, f => f is { Code: "zero", Grade: Grade.Caution } && f.Message.StartsWith("The boss is not cut yet: no indicator finds it.", StringComparison.Ordinal));
        Assert.Contains("the stock's left end is met at X -30.500 and its near side at Y -15.000", job.Said("A1"), StringComparison.Ordinal);
        Assert.DoesNotContain("swept", job.Said("A1"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_hole_that_is_drilled_is_pinned()
    {
        var job = new Whole(Bar.Replace("boss   round 12 at 25, 10           from -5 to 0", "eye hole 4 at 25, 10 through", StringComparison.Ordinal).Replace("from -20 to -5", "from -20 to 0", StringComparison.Ordinal)
            .Replace("ZEROS", "zero x, y on rotary centre", StringComparison.Ordinal).Replace("STEPS", "spot eye\n  drill eye through with d4\nholding B in small vise on rotary, bar along jaws on parallels 10\n  zero x, y at eye on rotary centre\n  zero z on bar top by paper 0.05\n  face to -0.1 with em10", StringComparison.Ordinal));
        Assert.DoesNotContain(job.All, f => f.Code == "zero");
        Assert.Contains("a close pin of 4 mm in it", job.Said("B1"), StringComparison.Ordinal);
    }

    [Fact]
    public void On_the_table_it_cannot_be_found()
    {
        var job = Job("zero x, y at boss by indicator", "face to -0.2 with em10");
        var halt = Assert.Single(job.All, f => f.Code == "cannot-plan");
        Assert.Equal("The boss is not cut yet: nothing of it stands to be found.", halt.Message);
        Assert.Contains("zero x on left end of stock by finder", halt.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_zero_of_z_is_a_halt_and_no_paper_is_made_up()
    {
        var job = new Whole(Bar.Replace("ZEROS", "zero x, y on rotary centre", StringComparison.Ordinal).Replace("zero z on bar top by paper 0.05\n", string.Empty, StringComparison.Ordinal).Replace("STEPS", "face to -0.2 with em10", StringComparison.Ordinal));
        var halt = Assert.Single(job.All, f => f is { Code: "zero", Grade: Grade.Halt });
        Assert.Equal("The reading of z rests on nothing here: no 'zero z' stands before it in this holding, so on what and with what paper its cutters are touched off is not told.", halt.Message);
    }

    [Fact]
    public void A_plunge_upwards_is_told()
    {
        var job = Job("zero x, y on rotary centre", "move z to 5\n  move x to -30, y to 0\n  plunge z to 8 with em10");
        Assert.Contains(job.All, f => f.Code == "cannot-plan" && f.Message.StartsWith("This plunge goes up: the cutter stands at Z", StringComparison.Ordinal));
    }

    [Fact]
    public void A_cut_through_the_air_is_a_note_once_in_a_row()
    {
        var job = Job("zero x, y on rotary centre", "move x to -40, y to 0 with em10\n  plunge z to -0.2 with em10\n  cut y to 20 with em10\n  cut y to 0 with em10\n  cut x to 60 with em10\n  cut y to 20 with em10");
        Assert.Equal(["A5", "A8"], job.All.Where(f => f.Code == "cuts-nothing").Select(f => f.Step));
    }
}
