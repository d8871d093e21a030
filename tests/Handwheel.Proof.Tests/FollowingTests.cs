using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Proof.Tests.Plate;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;

namespace Handwheel.Proof.Tests;

/// <summary>The machine's state, touch-offs and sweeps, each against what a machinist knows (common practice, no source).</summary>
public sealed class FollowingTests
{
    private static readonly AxisFacts Readout = new(null, null, Readout: true, 0.005, 0.15);
    private static readonly AxisFacts Dial = Readout with { Readout = false };

    [Fact]
    public void A_readout_shows_the_true_place_from_either_side()
    {
        var x = new AxisState(Axis.X);
        x.Zero(0, 0, 1);
        x.CrankTo(10, Readout);
        x.CrankTo(5, Readout);
        Assert.Equal(5, x.True);
    }

    [Theory]
    [InlineData(1, 0.15)]
    [InlineData(-1, 0)]
    public void A_dial_reached_from_the_other_side_than_its_zero_is_off_by_the_backlash(int zeroSide, double late)
    {
        var x = new AxisState(Axis.X);
        x.Zero(0, 0, zeroSide);
        x.CrankTo(10, Dial);
        x.CrankTo(5, Dial);
        Assert.Equal(5 + late, x.True, 12);
        x.CrankTo(7, Dial);
        Assert.Equal(7 - (zeroSide < 0 ? 0.15 : 0), x.True, 12);
    }

    [Fact]
    public void A_wrong_value_set_displaces_what_follows()
    {
        var x = new AxisState(Axis.X);
        x.Zero(-25, -24, 1);
        x.CrankTo(10, Readout);
        Assert.Equal(9, x.True);
        Assert.Equal(-1, x.Offset);
    }

    [Fact]
    public void A_new_cutter_ends_the_zero_of_z_alone()
    {
        var machine = new MachineState();
        machine[Axis.X].Zero(0, 0, 0);
        machine[Axis.Z].Zero(0, 0, -1);
        machine.NewCutter();
        Assert.True(machine[Axis.X].Zeroed);
        Assert.False(machine[Axis.Z].Zeroed);
    }

    [Fact]
    public void A_new_holding_keeps_only_what_is_carried()
    {
        var machine = new MachineState();
        machine[Axis.X].Zero(1, 0, 0);
        machine[Axis.Y].Zero(1, 0, 0);
        machine.NewHolding(["y"]);
        Assert.False(machine[Axis.X].Zeroed);
        Assert.True(machine[Axis.Y].Zeroed);
        Assert.Equal(1, machine[Axis.Y].Offset);
    }

    [Fact]
    public void Half_the_finder_and_the_face_give_the_axis()
    {
        var setup = PlateCourse.Setup();
        var found = TouchingOff.Find(PlateCourse.Side(Axis.X, -25, 1), new TrueReading(0, 5, -2, 0), setup, new HoldingFrame(setup), Block(), null);
        Assert.Equal(-25, found.True!.Value, 9);
        Assert.Equal(-20, found.Surface!.Value, 9);
        found = TouchingOff.Find(PlateCourse.Side(Axis.X, 25, -1), new TrueReading(0, 5, -2, 0), setup, new HoldingFrame(setup), Block(), null);
        Assert.Equal(25, found.True!.Value, 9);
    }

    [Fact]
    public void Paper_stands_between_cutter_and_metal()
    {
        var setup = PlateCourse.Setup();
        var touch = new TouchOff { Axis = Axis.Z, On = "metal", Surface = "top", At = default, With = "em10", Paper = 0.05, SetTo = 0.05 };
        var found = TouchingOff.Find(touch, default, setup, new HoldingFrame(setup), Block(), null);
        Assert.Equal(0.05, found.True!.Value, 9);
        Assert.Null(TouchingOff.Find(touch, new TrueReading(90, 0, 0, 0), setup, new HoldingFrame(setup), Block(), null).True);
    }

    [Fact]
    public void The_axis_of_a_hole_is_found_where_the_hole_is()
    {
        var setup = PlateCourse.Setup();
        var bored = new Difference(Block(), new Prism(Outline.Circle(new Point2(3.2, -1.1), 4), -20, 5));
        foreach (var (axis, place) in new[] { (Axis.X, 3.2), (Axis.Y, -1.1) })
        {
            var touch = new TouchOff { Axis = axis, On = "axis", Surface = "bore", At = new Place3(3, -1, 0), With = "indicator", SetTo = place };
            Assert.Equal(place, TouchingOff.Find(touch, new TrueReading(3, -1, 0, 0), setup, new HoldingFrame(setup), bored, null).True!.Value, 9);
        }
    }

    [Fact]
    public void Turning_the_work_takes_the_cutter_round_it_the_other_way()
    {
        var setup = PlateCourse.Setup() with { Rotary = new RotaryFacts(1, 2, -50, Lies: false, 1, 0, 0.01) };
        var leg = Assert.Single(Sweeping.Legs(new HoldingFrame(setup), new TrueReading(11, 2, 0, 0), new TrueReading(11, 2, 0, 90), cutting: true));
        Assert.Equal(PathKind.Arc, leg.Path.Kind);
        Assert.Equal(0, leg.Path.To.DistanceTo(new Point3(1, -8, 0)), 9);
        Assert.Equal(-Math.PI / 2, leg.Path.Sweep, 12);
    }

    [Fact]
    public void A_free_move_lifts_first_and_comes_down_last()
    {
        var legs = Sweeping.Legs(new HoldingFrame(PlateCourse.Setup()), new TrueReading(0, 0, -4, 0), new TrueReading(10, 0, 5, 0), cutting: false);
        Assert.Equal([5.0, 5.0], legs.Select(l => l.To.Z));
        legs = Sweeping.Legs(new HoldingFrame(PlateCourse.Setup()), new TrueReading(0, 0, 5, 0), new TrueReading(10, 0, -4, 0), cutting: false);
        Assert.Equal([5.0, -4.0], legs.Select(l => l.To.Z));
    }

    [Theory]
    [InlineData("top", 0, 0, 1)]
    [InlineData("underside", 0, 0, -1)]
    [InlineData("front", 0, -1, 0)]
    [InlineData("back", 0, 1, 0)]
    [InlineData("right", 1, 0, 0)]
    [InlineData("left", -1, 0, 0)]
    public void The_side_up_looks_at_the_spindle(string up, double x, double y, double z)
    {
        var looks = new HoldingFrame(PlateCourse.Setup() with { Up = up }).PartToWork.ApplyDirection(new Vector3(x, y, z));
        Assert.Equal(1, looks.Z, 12);
    }

    private static Block Block() => new(new Point3(-20, -10, -10), new Point3(20, 10, 0));
}
