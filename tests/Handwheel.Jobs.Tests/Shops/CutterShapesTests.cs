using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Shops;
using Handwheel.Solids.Cutters;

namespace Handwheel.Jobs.Tests.Shops;

/// <summary>A shop&#39;s cutters as solids against what a drawer of cutters says.</summary>
public sealed class CutterShapesTests
{
    private static SourceSpan Here => new("home.handwheel", 1, 1, 1);

    private static Mill Mill => new()
    {
        Name = "mill",
        X = Axis,
        Y = Axis,
        Z = Axis,
        Speeds = [900],
        NoseAcross = 50,
        Where = Here,
    };

    private static MachineAxis Axis => new() { Travel = 400, PerTurn = 5, Divisions = 100 };

    private static Cutter Cutter(CutterKind kind, double across) => new() { Name = "c", Kind = kind, Across = across, TrueAcross = across, Where = Here };

    [Fact]
    public void An_end_mill_is_flutes_then_shank_then_the_spindles_nose()
    {
        var shape = CutterShapes.Of(Cutter(CutterKind.EndMill, 10) with { TrueAcross = 9.98, Flute = 22, Shank = 10, Out = 30, CutsToCentre = true }, Mill);
        Assert.Equal(4.99, shape.RadiusAt(0.1));
        Assert.Equal(CutterPart.Shank, shape.PieceAt(25)!.Part);
        Assert.Equal(5, shape.RadiusAt(25));
        Assert.Equal(25, shape.RadiusAt(30.1));
        Assert.Equal(CutterPart.Nose, shape.PieceAt(31)!.Part);
        Assert.True(shape.CutsToCentre);
    }

    [Fact]
    public void A_boring_bar_turns_at_the_diameter_its_head_is_set_to()
    {
        var bar = Cutter(CutterKind.BoringBar, 8) with { Out = 40 };
        var shape = CutterShapes.Of(CutterShapes.SetTo(bar, 14), null);
        Assert.Equal((7, 3), (shape.RadiusAt(0.5), shape.PieceAt(0.5)!.InnerAt(0.5)));
        Assert.Equal(2.8, shape.RadiusAt(20), 1e-12);
        Assert.Equal(bar, CutterShapes.SetTo(bar, 0));
        var mill = Cutter(CutterKind.EndMill, 8);
        Assert.Equal(mill, CutterShapes.SetTo(mill, 14));
    }

    [Fact]
    public void A_holder_stands_between_cutter_and_nose()
    {
        var shape = CutterShapes.Of(Cutter(CutterKind.EndMill, 6) with { Flute = 13, Shank = 6, Out = 20, HolderAcross = 32, HolderLong = 40 }, Mill);
        Assert.Equal(16, shape.RadiusAt(40));
        Assert.Equal(25, shape.RadiusAt(61));
    }

    [Fact]
    public void A_saws_screw_stands_below_it_and_its_arbor_above()
    {
        var shape = CutterShapes.Of(Cutter(CutterKind.Saw, 63) with { Thick = 1, Arbor = 16, ScrewBelow = 4, Out = 40 }, Mill);
        Assert.Equal(-4, shape.LowestPoint);
        Assert.Equal(8, shape.RadiusAt(-2));
        Assert.Equal(CutterPart.Screw, shape.PieceAt(-2)!.Part);
        Assert.Equal(31.5, shape.RadiusAt(0.5));
        Assert.Equal(8, shape.RadiusAt(20));
        Assert.Equal(25, shape.RadiusAt(41));
        var capped = CutterShapes.Of(Cutter(CutterKind.Saw, 63) with { Thick = 1, Arbor = 16, ScrewBelow = 4, ScrewAcross = 22, Out = 40 }, null);
        Assert.Equal(11, capped.RadiusAt(-2));
        Assert.Equal(40, capped.HighestPoint);
    }

    [Fact]
    public void A_drills_point_is_half_its_diameter_over_the_tangent_of_half_its_angle()
    {
        var shape = CutterShapes.Of(Cutter(CutterKind.Drill, 4) with { Flute = 40, Out = 50, PointAngle = 118 * Math.PI / 180 }, null);

        // 2 / tan 59 deg = 1.2017 (plane trigonometry).
        Assert.Equal(1.2017, shape.Pieces[0].Z1, 5e-5);
        Assert.Equal(2, shape.RadiusAt(10));
        Assert.Equal(0, shape.RadiusAt(0));
    }

    [Fact]
    public void A_reamers_lead_is_smaller_at_its_end()
    {
        var shape = CutterShapes.Of(Cutter(CutterKind.Reamer, 3) with { Lead = 1, Flute = 30, Out = 40 }, null);
        Assert.Equal(1.5, shape.RadiusAt(1));
        Assert.True(shape.RadiusAt(0) < 1.45);
        Assert.False(shape.CutsToCentre);
    }

    [Fact]
    public void A_tap_removes_nothing()
    {
        // M6 x 1: core 6 - 1.0825 = 4.917 (ISO 724).
        var shape = CutterShapes.Of(Cutter(CutterKind.Tap, 6) with { Pitch = 1, Flute = 15, Out = 40 }, null);
        Assert.DoesNotContain(shape.Pieces, p => p.Cuts);
        Assert.Equal(4.917 / 2, shape.RadiusAt(1), 5e-4);
    }

    [Theory]
    [InlineData(CutterKind.EndMill)]
    [InlineData(CutterKind.Ball)]
    [InlineData(CutterKind.BullNose)]
    [InlineData(CutterKind.Drill)]
    [InlineData(CutterKind.SpottingDrill)]
    [InlineData(CutterKind.CentreDrill)]
    [InlineData(CutterKind.Reamer)]
    [InlineData(CutterKind.Counterbore)]
    [InlineData(CutterKind.Countersink)]
    [InlineData(CutterKind.Chamfer)]
    [InlineData(CutterKind.Dovetail)]
    [InlineData(CutterKind.Saw)]
    [InlineData(CutterKind.TSlot)]
    [InlineData(CutterKind.Woodruff)]
    [InlineData(CutterKind.BoringBar)]
    [InlineData(CutterKind.FlyCutter)]
    [InlineData(CutterKind.Tap)]
    public void Every_kind_has_a_shape_though_the_shop_says_only_its_diameter(CutterKind kind)
    {
        var shape = CutterShapes.Of(Cutter(kind, 12) with { CornerRadius = 1 }, Mill);
        Assert.True(shape.HighestPoint > CutterShapes.NoseLong);
        Assert.True(kind == CutterKind.Tap || Math.Abs(shape.GreatestRadius - 6) < 1e-12);
    }

    [Fact]
    public void A_broach_is_a_prism_not_a_solid_of_revolution()
    {
        var sq4 = Cutter(CutterKind.Broach, 4) with { Sides = 4 };
        Assert.Throws<ArgumentException>(() => CutterShapes.Of(sq4, Mill));
        Assert.False(CutterShapes.Turns(sq4));
        Assert.Equal(16, CutterShapes.BroachOutline(sq4, default, 0).Area, 1e-12);
        Assert.Equal(20, CutterShapes.BroachOutline(sq4 with { OtherSide = 5 }, new(3, 3), 0.3).Area, 1e-12);
        Assert.Throws<ArgumentException>(() => CutterShapes.BroachOutline(Cutter(CutterKind.Drill, 4), default, 0));
    }
}
