using System.Text.RegularExpressions;

namespace Handwheel.Plan.Tests.Jobs;

/// <summary>A drill is fed no faster than what the quill pushes.</summary>
public sealed partial class QuillFeedTests
{
    private static readonly PlannedJob Clamp = new("tslot-clamp.handwheel");

    // Thrust from the solid, kc f D/2 sin(half the point) with kc = kc1.1 (f/2 sin of it)^-mc (Kienzle), worked out here: the shop's quill pushes 500 N.
    [Theory]
    [InlineData("d5", 5, 59)]
    [InlineData("d6.6", 6.6, 59)]
    [InlineData("sd6", 6, 45)]
    public void The_push_a_drill_asks_is_what_the_quill_gives(string name, double across, double half)
    {
        var feed = Clamp.Plan.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Workings).First(w => w.Name == $"feed of {name}");
        var (chip, teeth) = (feed.Inputs[1].Value, feed.Inputs[2].Value);
        var sine = Math.Sin(half * Math.PI / 180);
        var metal = Handwheel.Trade.Metals.MetalTable.Find("free-cutting steel")!;
        var thrust = metal.Kc11 * Math.Pow(chip * sine, -metal.Mc) * (chip * teeth) * across / 2 * sine;
        Assert.InRange(thrust, 400, 500.5);
        Assert.True(chip < 0.01 * across);
        Assert.Matches(Push(), feed.Inputs[1].Says);
    }

    [GeneratedRegex("from the solid in .* and the quill pushes 500 N", RegexOptions.None, 1000)]
    private static partial Regex Push();
}
