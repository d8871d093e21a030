using Handwheel.Jobs.Moves;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Tests.Moves;

/// <summary>Placements against the definitions of the frames.</summary>
public sealed class PosesTests
{
    private static AxisFacts Axis => new(null, null, true, 0.005, 0);

    private static SetupFacts Setup(string up, double turn = 0, double tiltX = 0, double tiltY = 0, RotaryFacts? rotary = null) => new()
    {
        Up = up,
        Turn = turn,
        TiltX = tiltX,
        TiltY = tiltY,
        PartOrigin = new(1, 2, 3),
        Rotary = rotary,
        Fixtures = [],
        Axes = new(Axis, Axis, Axis, Axis),
    };

    [Theory]
    [InlineData("top", 0, 0, 1)]
    [InlineData("underside", 0, 0, -1)]
    [InlineData("front", 0, -1, 0)]
    [InlineData("back", 0, 1, 0)]
    [InlineData("right", 1, 0, 0)]
    [InlineData("left", -1, 0, 0)]
    public void The_side_named_looks_up(string up, double x, double y, double z)
    {
        Assert.Equal(Vector3.UnitZ, Poses.Of(Setup(up)).ApplyDirection(new(x, y, z)) + default(Vector3));
        Assert.Equal(new Point3(1, 2, 3), Poses.Of(Setup(up)).Apply(default));
    }

    [Fact]
    public void Turned_over_keeps_x_and_sends_y_to_minus_y() =>
        Assert.Equal(new Point3(6, -4, -4), Poses.Of(Setup("underside")).Apply(new(5, 6, 7)));

    [Theory]
    [InlineData(90, 0, 1)]
    [InlineData(180, -1, 0)]
    [InlineData(270, 0, -1)]
    [InlineData(-90, 0, -1)]
    [InlineData(450, 0, 1)]
    public void Quarter_turns_are_exact_and_counterclockwise_from_above(double turn, double x, double y)
    {
        var to = Poses.Of(Setup("top", turn)).ApplyDirection(Vector3.UnitX);
        Assert.Equal(x, to.X);
        Assert.Equal(y, to.Y);
    }

    [Fact]
    public void Tilts_follow_the_turn_about_the_holdings_axes()
    {
        // Turned 90 deg about Z part X lies along Y; tilted 30 deg about X it rises: (0, cos 30, sin 30).
        var to = Poses.Of(Setup("top", 90, tiltX: 30)).ApplyDirection(Vector3.UnitX);
        Assert.Equal(0, to.X, 1e-15);
        Assert.Equal(Math.Sqrt(3) / 2, to.Y, 1e-15);
        Assert.Equal(0.5, to.Z, 1e-15);
        var down = Poses.Of(Setup("top", tiltY: 90)).ApplyDirection(Vector3.UnitX);
        Assert.Equal(-1, down.Z);
    }

    [Fact]
    public void The_rotary_turns_the_work_about_its_own_axis()
    {
        // p -> C + R(theta)(p - C), counterclockwise from above.
        var setup = Setup("top", rotary: new(10, 0, -50, false, 1, 0, 1.0 / 60));
        var p = Poses.At(setup, 90).Apply(new(11, -2, 0));
        Assert.Equal(new Point3(10, 2, 3), p);
    }

    [Fact]
    public void The_indexer_turns_the_work_about_an_axis_along_x()
    {
        var setup = Setup("top", rotary: new(0, 2, 3, true, 1, 0, 1));
        var p = Poses.At(setup, 90).Apply(new(0, 5, 0));
        Assert.Equal(new Point3(1, 2, 8), p);
    }

    [Fact]
    public void A_fixture_is_a_block_or_a_round_and_turns_with_the_rotary()
    {
        var setup = Setup("top", rotary: new(0, 0, -50, false, 1, 0, 1));
        var jaw = new FixtureFacts { Name = "fixed jaw", Turns = true, Least = new(-20, 7, -30), Most = new(20, 19, -19) };
        Assert.True(FixtureSolids.Of(jaw)!.Contains(new(0, 8, -20)));
        Assert.True(FixtureSolids.At(jaw, setup, 90)!.Contains(new(-8, 0, -20)));
        Assert.False(FixtureSolids.At(jaw, setup, 90)!.Contains(new(0, 8, -20)));
        Assert.True(FixtureSolids.InPart(jaw, setup)!.Contains(new(-1, 6, -23)));
        var table = new FixtureFacts { Name = "rotary", Least = new(0, 0, -50), Most = new(0, 0, -40), Across = 160 };
        Assert.True(FixtureSolids.Of(table)!.Contains(new(79, 0, -45)));
        Assert.False(FixtureSolids.Of(table)!.Contains(new(60, 60, -45)));
        Assert.Null(FixtureSolids.Of(table with { Most = new(0, 0, -60) }));
    }
}
