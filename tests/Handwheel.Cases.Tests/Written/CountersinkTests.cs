using Handwheel.Plan.Lines;

namespace Handwheel.Cases.Tests.Written;

/// <summary>A countersink, drawn as one and cut into the hole just drilled.</summary>
public sealed class CountersinkTests
{
    private const string Job = """
        job   Sunk
        unit  mm
        metal brass
        shop  home.handwheel
        drawing
          base   block 50 by 30 at 0, 0 from -12 to 0
          pivot  hole 5 at 10, 5 through
          sunk   countersink 8 by 90 deg at pivot down from 0
          others +/-0.2
        stock bar 30 wide, 12 high, 50 long
          x middle 0
        holding A in large vise, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on base top by paper .05
          spot pivot
          drill pivot through with d5
          countersink pivot to 8 across with cs10
        """;

    // A 90 deg cutter with a flat tip of 1 is 8 across at the face when its tip is (8 - 1)/2 = 3.5 below it (plane geometry).
    [Fact]
    public void It_is_touched_off_beside_the_hole_and_comes_out_to_size()
    {
        var job = new Whole(Job);
        Assert.Empty(job.Halts);
        Assert.DoesNotContain(job.All, f => f.Code is "zero" or "lost-reference");
        var touch = job.Lines("A6").OfType<TouchOffLine>().Single().TouchOff;
        Assert.True(Math.Sqrt(((touch.At.X - 10) * (touch.At.X - 10)) + ((touch.At.Y - 5) * (touch.At.Y - 5))) > 2.5 + 0.5);
        Assert.Equal(-3.5, job.Lines("A6").OfType<MoveLine>().Single(m => m.Cutting).To, 9);
        var sunk = job.Proof!.Sizes.Single(s => s.Name == "sunk across");
        Assert.True(sunk.Ok);
        Assert.Equal(8, sunk.Least!.Value, 6);
        Assert.DoesNotContain(job.Proof.Sizes, s => s.Name is "sunk deep" or "sunk across bottom");
    }

    // 0.3 too deep makes it 0.6 too wide: 8.6.
    [Fact]
    public void One_cut_too_deep_is_told_by_what_it_measures()
    {
        var job = new Whole(Job.Replace("countersink pivot to 8 across", "countersink pivot to 8.6 across", StringComparison.Ordinal));
        Assert.Contains(job.All, f => f.Message.StartsWith("sunk across: it comes to 8.600 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Its_size_is_named_as_the_table_names_it() =>
        Assert.Empty(new Whole(Job.Replace("  others +/-0.2", "  size sunk across 8 +/-0.1\n  others +/-0.2", StringComparison.Ordinal)).Halts);

    // The hole's side is measured where the hole is; its upper rim belongs to the cone over it, wherever a level falls.
    [Theory]
    [InlineData("pivot  hole 5 at 10, 5 through\n  sunk cut cone 5 to 8 at pivot from -1.5 to 0")]
    [InlineData("boss  round 12 at 10, 5 from -12 to 0\n  pivot hole 5 at boss through\n  sunk cut cone 5 to 8 at pivot from -1.5 to 0")]
    public void A_through_hole_under_a_cone_measures_as_drilled(string drawn)
    {
        var job = new Whole(Job.Replace("pivot  hole 5 at 10, 5 through\n  sunk   countersink 8 by 90 deg at pivot down from 0", drawn, StringComparison.Ordinal));
        Assert.Empty(job.Halts);
        Assert.Equal(5, job.Proof!.Sizes.Single(s => s.Name == "pivot across").Greatest!.Value, 6);
    }
}
