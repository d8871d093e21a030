using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Tests.Readers;

/// <summary>Cuts that miss the metal, and stock a little under size.</summary>
public sealed class CutChecksTests
{
    private const string Plate = """
        job   Plate
        unit  mm
        metal brass, free-cutting
        shop  home.handwheel
        drawing
          base  block 50 by 24 at 25, 0   from -16 to 0
          {0}
          others +/-0.1
        stock bar 24 wide, 16 high, 50 long
          measured {1} wide
          x from 0
        holding A in large vise, bar along jaws on parallels 20
          zero x on left end of stock by finder 10
        """;

    // A sign or a place that slipped: what is drawn there cuts nothing. The last two only touch.
    [Theory]
    [InlineData("pin hole 5 at 25, 40, through")]
    [InlineData("pin hole 5 at 25, 0, 4 deep from 10")]
    [InlineData("pin cut block 10 by 10 at 25, 0 from 1 to 4")]
    [InlineData("pin cut slot 20 by 6 at -25, 0 from -4 to 0, along x")]
    [InlineData("pin cut round 6 at 25, 5 from -40 to -20, seen from front")]
    [InlineData("pin hole 5 at -10, 0, row of 3, 5 apart along y, through")]
    [InlineData("pin cut block 10 by 10 at 55, 0 from -4 to 0")]
    [InlineData("pin hole 5 at 25, 14.5, through")]
    public void A_cut_that_misses_the_metal_is_a_halt(string cut)
    {
        var read = Reads.Job(Written(cut, "24"));
        var finding = Assert.Single(read.Findings);
        Assert.Equal((Grade.Halt, "not-there", 7), (finding.Grade, finding.Code, finding.Where?.Line));
        Assert.Equal("'pin' cuts nothing: no metal is drawn where it lies.", finding.Message);
    }

    [Theory]
    [InlineData("pin hole 5 at 25, 14.49, through")]
    [InlineData("pin cut block 10 by 10 at 54.99, 0 from -4 to 0")]
    [InlineData("pin cut cone 1 to 3 at 25, 0 from -1 to 0")]
    [InlineData("pin cut round 1 at 25, -15.99 from 5 to 20, seen from front")]
    public void A_cut_that_just_meets_it_is_none(string cut) => Assert.Empty(Reads.Job(Written(cut.Replace("-15.99 from 5", "-8 from 11.99", StringComparison.Ordinal), "24")).Findings);

    [Fact]
    public void A_place_of_a_repeat_that_misses_is_a_caution()
    {
        var finding = Assert.Single(Reads.Job(Written("pin hole 4 at 30, 0, row of 4, 10 apart along x, through", "24")).Findings);
        Assert.Equal((Grade.Caution, "'pin' at place 4 of 4 cuts nothing: no metal is drawn where it lies."), (finding.Grade, finding.Message));
    }

    // A counterbore at a cross hole that is seen from the right would lie somewhere in the air above.
    [Theory]
    [InlineData("pin hole 5 at 0, -8, through, seen from right\n  head counterbore 8 at pin, 3 deep from 50", "Write 'seen from right' here too")]
    [InlineData("pin hole 5 at 25, 0, through\n  head counterbore 8 at pin, 3 deep from -12, seen from front", "leave 'seen from front' out")]
    public void A_feature_at_another_is_seen_as_it_is(string cuts, string mend)
    {
        var finding = Assert.Single(Reads.Job(Written(cuts, "24")).Findings);
        Assert.Equal("contradiction", finding.Code);
        Assert.Contains(mend, finding.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cut_needs_metal_above_it()
    {
        var read = Reads.Job(Written("x", "24").Replace("base  block", "base  cut block", StringComparison.Ordinal).Replace("  x\n", "  top block 5 by 5 at 0, 0 from 0 to 3\n", StringComparison.Ordinal));
        Assert.Contains(read.Findings, f => f is { Code: "not-there", Message: "'base' is cut before any metal is drawn." });
    }

    // 24 +/-0.1 may be 23.9, and either side may stand 0.1 aside: what is short of that holds no part at all. (23.88 is told by the proof, as a size.)
    [Theory]
    [InlineData("23.96", false)]
    [InlineData("23.9", false)]
    [InlineData("23.68", true)]
    public void Stock_within_the_limits_is_enough(string measured, bool isShort) =>
        Assert.Equal(isShort, Reads.Job(Written("pin hole 5 at 25, 0, through", measured)).Findings.Any(f => f.Code == "stock-short"));

    private static string Written(string cut, string measured) => Plate.Replace("{0}", cut, StringComparison.Ordinal).Replace("{1}", measured, StringComparison.Ordinal);

    // 23.96 lies within 24 +/-0.1 (the drawing's limits), whatever else there is to say; 23.68 does not, wherever it stands.
    [Theory]
    [InlineData("23.96", false)]
    [InlineData("23.68", true)]
    public void Stock_within_the_limits_is_enough_beside_a_caution(string wide, bool isShort)
    {
        var read = Reads.Job(Written("pin hole 4 at 30, 0, row of 4, 10 apart along x, through", wide));
        Assert.Contains(read.Findings, f => f is { Grade: Grade.Caution, Code: "not-there" });
        Assert.Equal(isShort, read.Findings.Any(f => f.Code == "stock-short"));
    }
}
