namespace Handwheel.Cases.Tests.Written;

/// <summary>A height with limits on one side is cut to their middle, whichever of its faces is raw, and however it is typed.</summary>
public sealed class HeightTests
{
    private const string Job = """
        job   Block
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          body   block 50 by 24 at 25, 0    from -16 to 0
          size   body high  LIMITS
          others +/-0.1
        stock bar 24 wide, HIGH high, 50 long
          x from 0
          z top 1
        holding A in large vise, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          face to 0 with em16, 0.5 a pass
        """;

    private const string Under = """

        holding B in large vise, underside up, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          face to 16 with em16, 0.5 a pass
        """;

    // By hand: the middle of 16 +0 -0.1 is 15.95, of 16 +0.2 -0 16.1; the readout counts 0.005.
    [Theory]
    [InlineData("16 +0 -0.1", 15.95, false)]
    [InlineData("16 +0.2 -0", 16.1, false)]
    [InlineData("16 +/-0.05", 16, false)]
    [InlineData("16 +0 -0.1", 15.95, true)]
    [InlineData("16 +0.2 -0", 16.1, true)]
    [InlineData("16 +/-0.05", 16, true)]
    public void It_comes_to_the_middle_of_its_limits(string limits, double middle, bool bothFaces)
    {
        var job = new Whole(Job.Replace("LIMITS", limits, StringComparison.Ordinal).Replace("HIGH", bothFaces ? "18" : "17", StringComparison.Ordinal) + (bothFaces ? Under : string.Empty));
        Assert.Empty(job.Halts);
        var size = job.Proof!.Sizes.Single(s => s.Name == "body high");
        Assert.InRange(size.Least!.Value, middle - 0.0051, middle + 0.0051);
        Assert.InRange(size.Greatest!.Value, middle - 0.0051, middle + 0.0051);
    }

    // By hand: the underside is aimed at -15.95, and a groove 2 deep in it ends at -13.95.
    [Theory]
    [InlineData("groove cut block 50 by 10 at 25, 0 from -16 to -14\n  size groove deep 2 +/-0.05", "pocket groove to 14 with em6, 1 a pass")]
    [InlineData("groove cut block 50 by 10 at 25, 0 from -16 to -14", "pocket groove to 14 with em6, 1 a pass")]
    public void A_groove_goes_with_the_face_it_opens_in(string drawn, string step)
    {
        var text = (Job.Replace("  others +/-0.1", $"  {drawn}\n  others +/-0.1", StringComparison.Ordinal) + Under)
            .Replace("LIMITS", "16 +0 -0.1", StringComparison.Ordinal).Replace("HIGH", "18", StringComparison.Ordinal);
        var job = new Whole($"{text}\n  {step}");
        Assert.Empty(job.Halts);
        var size = job.Proof!.Sizes.Single(s => s.Name == "groove deep");
        Assert.InRange(size.Least!.Value, 1.99, 2.01);
        Assert.InRange(size.Greatest!.Value, 1.99, 2.01);
    }
}
