using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;

namespace Handwheel.Plan.Tests.Jobs;

/// <summary>The rows as a hand works them: which way, how far, from where.</summary>
public sealed class HandworkedRowsTests
{
    private static readonly PlannedJob Crank = new("crank.handwheel");

    // A handwheel's clockwise turn makes the reading shown grow or fall; a readout that counts the other way shows the frame's growth as a fall, so the hand turns the other way.
    [Fact]
    public void A_readout_that_counts_the_other_way_is_cranked_the_other_way()
    {
        var other = new PlannedJob("crank.handwheel", t => t.Replace("readout x, y, z by 0.005", "readout x by 0.005, counts the other way\n  readout y, z by 0.005", StringComparison.Ordinal));
        Assert.True(other.Plan.Shop.Mill!.X.CountsOtherWay);
        Assert.NotEmpty(Moves(Crank, "A8", Axis.X));
        Assert.Equal(Moves(Crank, "A8", Axis.X).Select(m => !m.CrankClockwise), Moves(other, "A8", Axis.X).Select(m => m.CrankClockwise));
        Assert.Equal(Moves(Crank, "A8", Axis.Y).Select(m => m.CrankClockwise), Moves(other, "A8", Axis.Y).Select(m => m.CrankClockwise));
    }

    private static IReadOnlyList<MoveLine> Moves(PlannedJob job, string step, Axis axis) => [.. job.Lines(step).OfType<MoveLine>().Where(m => m.Axis == axis)];
}
