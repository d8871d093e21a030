namespace Handwheel.Cases.Tests.Written;

/// <summary>A chamfer that is cut and not drawn.</summary>
public sealed class UndrawnChamferTests
{
    private const string Job = """
        job   Block
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          body   block 50 by 24 at 25, 0    from -16 to 0
          others +/-0.1
        stock bar 24 wide, 16 high, 50 long
        holding A in large vise, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          chamfer body 0.5, far side, with ch8
        """;

    // A sharp edge is within its limits up to 0.1 a side: a chamfer of 0.5 is not (the drawing).
    [Fact]
    public void It_is_told_as_a_chamfer_the_drawing_does_not_have()
    {
        var finding = Assert.Single(new Whole(Job).All, f => f.Code == "gouge");
        Assert.StartsWith("ch8 chamfers an edge of the body that the drawing keeps", finding.Message, StringComparison.Ordinal);
        Assert.Contains("Draw it", finding.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Drawn_it_is_none() =>
        Assert.DoesNotContain(new Whole(Job.Replace("from -16 to 0", "from -16 to 0, chamfered 0.5", StringComparison.Ordinal).Replace("0.5, far side,", "0.5", StringComparison.Ordinal)).All, f => f.Code == "gouge");
}
