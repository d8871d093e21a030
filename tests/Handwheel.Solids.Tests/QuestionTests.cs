using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Tests;

/// <summary>Answers that plane and solid geometry give in closed form.</summary>
public sealed class QuestionTests
{
    private static readonly Block Bar = new(new(-20, -10, -12), new(20, 10, 0));
    private static readonly CutterShape Mill = CutterShape.EndMill(10, 22, 10, 30);

    [Fact]
    public void Depth_of_a_gouge_is_refined_off_the_rays()
    {
        // A boss of radius 5 milled with the cutter 0.0123 too near its axis: depth 0.0123 all round.
        var least = new Round(default, 5, -8, 0);
        var piece = new Workpiece(Bar).After(new SweptCut(Mill, CutterPath.Arc(default, new(10 - 0.0123, 0, -8), 7)));
        var gouge = Gouge.Deepest(piece, least, 0.25);
        Assert.NotNull(gouge);
        Assert.Equal(0.0123, gouge.Depth, 1e-6);
        Assert.Equal(0, gouge.Cut);
    }

    [Fact]
    public void Depth_of_an_oblique_gouge_is_found_between_the_rays()
    {
        // A ball of radius 3 sunk 0.5 into a floor: deepest under its centre, wherever the rays are.
        var least = new Block(new(-19, -9, -12), new(19, 9, -2));
        var piece = new Workpiece(Bar).After(new SweptCut(CutterShape.BallNose(6, 10, 6, 30), CutterPath.At(new(1.2345, 0.777, -2.5))));
        var gouge = Gouge.Deepest(piece, least, 0.5);
        Assert.NotNull(gouge);
        Assert.Equal(0.5, gouge.Depth, 1e-6);
    }

    [Fact]
    public void No_gouge_where_the_cut_lies_on_the_line()
    {
        var least = new Round(default, 5, -8, 0);
        var piece = new Workpiece(Bar).After(new SweptCut(Mill, CutterPath.Arc(default, new(10, 0, -8), 7)));
        Assert.Null(Gouge.Deepest(piece, least, 0.25));
    }

    [Fact]
    public void Leftover_is_measured_out_from_most_metal()
    {
        var most = new Block(new(-20, -10, -12), new(20, 10, -1));
        var piece = new Workpiece(Bar).After(new SweptCut(Mill, CutterPath.Straight(new(-30, 0, -0.7), new(30, 0, -0.7))));
        var left = Leftover.Deepest(piece, most, 0.5);
        Assert.NotNull(left);
        Assert.Equal(1, left.Depth, 1e-6);
        Assert.Null(Leftover.Deepest(new Workpiece(most), most, 0.5));
    }

    [Fact]
    public void A_saw_that_leaves_a_web_keeps_one_piece_and_through_makes_two()
    {
        var saw = CutterShape.Saw(40, 1, 10, 15, 0, 0);
        var web = new Workpiece(Bar).After(new SweptCut(saw, CutterPath.Straight(new(-60, -21, -6), new(60, -21, -6))));
        Point3 top = new(0, 0, -2), bottom = new(0, 0, -10);
        Assert.Equal(Joined.One, Pieces.Decide(web, top, bottom, 0.5, 0.05));
        var through = web.After(new SweptCut(saw, CutterPath.Straight(new(-60, -8, -6), new(60, -8, -6))));
        Assert.Equal(Joined.Apart, Pieces.Decide(through, top, bottom, 0.5, 0.05));
        Assert.Equal((1, Joined.Apart), Pieces.PartingCut(through, top, bottom, 0.5, 0.05));
    }

    [Fact]
    public void The_web_of_a_saw_cut_has_its_closed_form_thickness()
    {
        // Saw of radius 20 with its axis at Y -27.7, travelling along X: it reaches Y -7.7, the bar's far side is at 10; made thin by a groove on the far side to Y -7.4.
        var saw = CutterShape.Saw(40, 1, 10, 15, 0, 0);
        var piece = new Workpiece(Bar)
            .After(new SweptCut(saw, CutterPath.Straight(new(-60, -27.7, -6), new(60, -27.7, -6))))
            .After(new SweptCut(saw, CutterPath.Straight(new(-60, 12.6, -6), new(60, 12.6, -6))));
        var web = Thinnest.In(piece, new Box3(new(-5, -9, -5.9), new(5, -6, -5.1)));
        Assert.NotNull(web);
        Assert.Equal(0.3, web.Thickness, 1e-6);
        Assert.NotEqual(web.FromSurface.Owner, web.ToSurface.Owner);
    }

    [Fact]
    public void Conventional_has_the_metal_on_the_left()
    {
        // Seen from above the spindle turns clockwise; feed along +X past an edge on the left (Y above): conventional.
        var cut = new SweptCut(Mill, CutterPath.Straight(new(-30, -14, -4), new(30, -14, -4)));
        var engagement = Engagement.Along(Bar, cut);
        var middle = engagement.Stations[4];
        Assert.True(middle.Left > 0.1);
        Assert.Equal(0, middle.Right);
        Assert.Equal(4, middle.Depth, 1e-6);
        Assert.Equal(1, middle.Width, 0.1);
        Assert.False(engagement.EntersSolid);
    }

    [Fact]
    public void A_slot_has_metal_on_both_sides_and_a_plunge_enters_solid()
    {
        var slot = Engagement.Along(Bar, new SweptCut(Mill, CutterPath.Straight(new(-30, 0, -4), new(10, 0, -4))));
        Assert.Equal(1, slot.Stations[6].Left);
        Assert.Equal(1, slot.Stations[6].Right);
        Assert.Equal(10, slot.Stations[6].Width, 0.01);
        Assert.True(Engagement.Along(Bar, new SweptCut(Mill, CutterPath.Straight(new(0, 0, 5), new(0, 0, -4)))).EntersSolid);
        Assert.True(Engagement.Along(Bar, new SweptCut(Mill, CutterPath.Straight(new(0, 0, -4), new(10, 0, -4)))).EntersSolid);
    }

    [Fact]
    public void Strike_certifies_a_clearance_or_finds_an_overlap()
    {
        var jaw = new Block(new(-20, 10, -30), new(20, 20, -5));
        var mover = new SweptCut(Mill, CutterPath.Straight(new(-30, 0, -4.5), new(30, 0, -4.5)), null, whole: true);
        var clear = Strike.Check(mover, jaw);
        Assert.Equal(StrikeVerdict.Clear, clear.Verdict);
        Assert.InRange(clear.Clearance, 0.95, 1);
        var close = Strike.Check(new SweptCut(Mill, CutterPath.Straight(new(-30, 4.9, -6), new(30, 4.9, -6)), null, whole: true), jaw);
        Assert.Equal(StrikeVerdict.Clear, close.Verdict);
        Assert.InRange(close.Clearance, 0.08, 0.1);
        var hit = Strike.Check(new SweptCut(Mill, CutterPath.Straight(new(-30, 5.2, -6), new(30, 5.2, -6)), null, whole: true), jaw);
        Assert.Equal(StrikeVerdict.Strikes, hit.Verdict);
        Assert.InRange(hit.Depth, 0.1, 0.2 + 1e-9);
    }

    [Fact]
    public void Removed_volume_is_that_of_the_formula()
    {
        var hole = new SweptCut(CutterShape.EndMill(6, 20, 6, 30), CutterPath.Straight(new(0, 0, 5), new(0, 0, -5)));
        var (volume, _) = Removed.By(new Workpiece(Bar), hole);
        Assert.InRange(volume, Math.PI * 9 * 5 * 0.999, Math.PI * 9 * 5 * 1.001);
    }

    [Fact]
    public void The_underside_of_a_round_nosed_ring_is_its_nose()
    {
        // Tooth from radius 4 to 8, nose 1.5, the body of radius 3 from 6 up.
        var fly = CutterShape.FlyCutter(16, 8, 6, 6, 10, noseRadius: 1.5);
        Assert.Equal(0, ToolUnderside.At(fly, 6, cuttingOnly: false), 1e-12);
        Assert.Equal(1.5 - Math.Sqrt(1.25), ToolUnderside.At(fly, 4.5, cuttingOnly: false), 1e-12);
        Assert.Equal(1.5 - Math.Sqrt(1.25), ToolUnderside.At(fly, 7.5, cuttingOnly: false), 1e-12);
        Assert.Equal(6, ToolUnderside.At(fly, 2, cuttingOnly: false), 1e-12);
        Assert.Equal(double.PositiveInfinity, ToolUnderside.At(fly, 3.9, cuttingOnly: false));
        Assert.Equal(double.PositiveInfinity, ToolUnderside.At(fly, 2, cuttingOnly: true));
    }

    [Fact]
    public void Touching_from_above_and_from_the_side()
    {
        Assert.Equal(0, Touch.HighestUnder(Mill, 22, 0, Bar)!.Value, 1e-9);
        Assert.Null(Touch.HighestUnder(Mill, 40, 0, Bar));
        Assert.Equal(25.0 - 5, Touch.Sideways(Mill, new(-45, 0, -5), Vector3.UnitX, Bar)!.Value, 1e-6);

        // A flat cutter on a ball of radius 4 whose top stands at 4, 3 beside its axis: the top is under it.
        var ball = new RevolvedSolid([ProfilePiece.Round(0, 0, 4, -4, 4)]);
        Assert.Equal(4, Touch.HighestUnder(Mill, 3, 0, ball)!.Value, 1e-6);

        // 7 beside: touches at the rim, 2 from the ball's axis: sqrt(16 - 4).
        Assert.Equal(Math.Sqrt(12), Touch.HighestUnder(Mill, 7, 0, ball)!.Value, 1e-6);
    }
}
