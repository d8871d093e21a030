using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;
using Handwheel.Sheets.Pages;
using Handwheel.Sheets.Tests.Fixtures;

namespace Handwheel.Sheets.Tests;

public sealed class TurnsTextTests
{
    // By hand: 0.04 of a turn on a dial of 100 divisions is 4 divisions; nobody turns a crank 0.0 turns.
    [Theory]
    [InlineData(0.04, "4 div")]
    [InlineData(0.005, "0.5 div")]
    [InlineData(0.0001, "under 0.05 turn")]
    [InlineData(0.4, "0.4 turns")]
    [InlineData(1, "1.0 turn")]
    public void A_little_is_told_by_the_dial(double turns, string said)
    {
        var plan = CrankPlan.Plan();
        var any = plan.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Lines).OfType<MoveLine>().First(m => m.Axis == Axis.X);
        Assert.Equal(100, plan.Shop.Mill!.X.Divisions);
        Assert.Equal(said, new TurnsText(null, plan.Shop).Of(any with { Turns = turns }));
    }
}
