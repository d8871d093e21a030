namespace Handwheel.Cases.Tests.Written;

/// <summary>What cannot be worked out is said, not done otherwise in silence.</summary>
public sealed class RefusedTests
{
    [Theory]
    [InlineData("zero z on parallels by block 10 with em16, set to 4", "bore pin with bar8")]
    [InlineData("zero z on bar top by paper 0.05, set to 2", "bore pin with bar8")]
    public void It_is_a_finding(string zero, string bore)
    {
        var job = new Whole($"""
            job   Block
            unit  mm
            metal aluminium 6061
            shop  home.handwheel
            drawing
              body   block 50 by 24 at 25, 0    from -16 to 0
              pin    hole 12 at 25, 0           through
              others +/-0.1
            stock bar 24 wide, 16 high, 50 long
              x from 0
            holding A in large vise, bar along jaws on parallels 25
              zero x on left end of stock by finder 10
              zero y on fixed jaw by indicator
              {zero}
              drill pin through with d6.8
              {bore}
            """);
        Assert.Contains(job.All, f => f.Code == "cannot-plan");
    }
}
