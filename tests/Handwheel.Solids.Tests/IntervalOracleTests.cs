using System.Collections.Concurrent;
using CsCheck;
using Handwheel.Draws;

namespace Handwheel.Solids.Tests;

/// <summary>Soundings proved over whole stretches by interval arithmetic, which shares no code with the engine.</summary>
public sealed class IntervalOracleTests(ITestOutputHelper output)
{
    [Fact]
    public void Level_cuts_are_right_at_every_place() => Hold(seed => IntervalCheck.Level(seed, ring: false), 40_000, open: 1e-9);

    [Fact]
    public void Rings_on_small_paths_are_right_at_every_place() => Hold(seed => IntervalCheck.Level(seed, ring: true), 10_000, open: 1e-9);

    [Fact]
    public void Slanted_cuts_are_right_at_every_place() => Hold(IntervalCheck.Slanted, 400, open: 1e-4);

    [Fact]
    public void Turning_cuts_are_right_at_every_place() => Hold(IntervalCheck.Turning, 100, open: 1e-4);

    [Fact]
    public void A_cut_a_hair_off_is_noticed()
    {
        // Moved by 1e-7 mm along each axis; a line that misses the cut, or slides along it, notices nothing.
        var noticed = Enumerable.Range(0, 400).Count(seed => IntervalCheck.Level(seed, ring: true, off: 1e-7).Fault is not null);
        Assert.InRange(noticed, 200, 400);
    }

    private void Hold(Func<int, (string? Fault, double Open)> check, int times, double open)
    {
        var left = new ConcurrentBag<double>();
        Gen.Int[0, int.MaxValue - 1].Hold(
            seed =>
            {
                var found = check(seed);
                Assert.Null(found.Fault);
                Assert.InRange(found.Open, 0, open);
                left.Add(found.Open);
            },
            times);
        output.WriteLine(FormattableString.Invariant($"{left.Count(o => o > 0)} of {times} not settled to the last; at most {left.Max():R} mm left open"));
    }
}
