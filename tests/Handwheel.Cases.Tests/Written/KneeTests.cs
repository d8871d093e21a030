using Handwheel.Plan.Lines;

namespace Handwheel.Cases.Tests.Written;

/// <summary>A mill whose depths are made by the knee: nothing on the sheet speaks of depths by the quill. (Common practice, no source.)</summary>
public sealed class KneeTests
{
    private const string Job = """
        job   Block
        unit  mm
        metal aluminium 6061
        shop  home.handwheel
        drawing
          body   block 50 by 24 at 25, 0    from -16 to 0
          boss   round 16 at 25, 0          from 0 to 4
          others +/-0.1
        stock bar 24 wide, 20 high, 50 long
          x from 0
          z top 4
        holding A in large vise, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on bar top by paper 0.05
          face to 4 with em16
          face body to 0 with em10, 1 a pass, 0.3 clear of boss
          measure body high
        """;

    [Theory]
    [InlineData("quill 100", "the knee (where there is one) locked", "quill right up")]
    [InlineData("knee 300", "the quill locked: the depth is the knee's", "table well down")]
    public void The_sheet_says_what_makes_the_depth(string made, string locked, string room)
    {
        var job = new Whole(Job, shop => shop.Replace("quill 100", made, StringComparison.Ordinal));
        var steps = job.Plan!.Stages.SelectMany(s => s.Steps).ToList();
        Assert.Contains(locked, steps.SelectMany(s => s.Lines).OfType<TouchOffLine>().First(t => t.TouchOff.Axis == Handwheel.Jobs.Moves.Axis.Z).Says, StringComparison.Ordinal);
        Assert.Contains(room, steps.SelectMany(s => s.Lines).OfType<MeasureLine>().Single().Remark, StringComparison.Ordinal);
    }
}
