using System.Collections.Concurrent;
using CsCheck;
using Handwheel.Draws;

namespace Handwheel.Solids.Tests;

/// <summary>What the tests draw is drawn alike each time, and one that does not hold is told.</summary>
public sealed class DrawnTests
{
    [Fact]
    public void The_same_values_are_drawn_each_time()
    {
        static int[] Values()
        {
            var values = new ConcurrentBag<int>();
            Gen.Int[0, 1_000_000].Hold(values.Add, times: 200);
            return [.. values.Order()];
        }

        var first = Values();
        Assert.Equal(!Drawn.Anew, first.SequenceEqual(Values()));
        Assert.True(first.Distinct().Count() > 190);
    }

    [Fact]
    public void A_draw_that_does_not_hold_is_told()
    {
        var told = Assert.ThrowsAny<Exception>(() => Gen.Int[0, 9].Hold(value => Assert.True(value < 9), times: 400));
        Assert.Contains("9", told.Message, StringComparison.Ordinal);
    }
}
