using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Tests;

/// <summary>Every degenerate case by name. Stock is closed, cuts are open.</summary>
public sealed class DegenerateTests
{
    private static readonly Block Bar = new(new(-20, -10, -12), new(20, 10, 0));
    private static readonly CutterShape Mill = CutterShape.EndMill(10, 22, 10, 30);

    private static Workpiece Cut(params CutterPath[] paths) =>
        paths.Aggregate(new Workpiece(Bar), (w, p) => w.After(new SweptCut(Mill, p)));

    private static (double, double)[] Ends(Spans spans) => [.. spans.Select(s => (Math.Round(s.From, 9), Math.Round(s.To, 9)))];

    [Fact]
    public void Tangent_line_along_the_flank_of_a_cut_keeps_its_metal()
    {
        var piece = Cut(CutterPath.Straight(new(-30, 0, -4), new(30, 0, -4)));
        Assert.Equal([(-20.0, 20.0)], Ends(piece.Sound(Line3.AlongX(5, -2))));
        Assert.Empty(piece.Sound(Line3.AlongX(4.999999, -2)));
    }

    [Fact]
    public void A_cut_that_only_touches_the_bar_removes_nothing()
    {
        var piece = Cut(CutterPath.Straight(new(-30, -15, -4), new(30, -15, -4)), CutterPath.Straight(new(-30, 0, 0), new(30, 0, 0)));
        Assert.Equal([(-10.0, 10.0)], Ends(piece.Sound(Line3.AlongY(0, -2))));
        Assert.Equal([(-20.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, 0))));
        Assert.True(piece.Contains(new(0, -10, -2)));
    }

    [Fact]
    public void A_line_grazing_a_floor_keeps_the_metal_of_the_floor()
    {
        var piece = Cut(CutterPath.Straight(new(-30, 0, -4), new(30, 0, -4)));
        Assert.Equal([(-20.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, -4))));
        Assert.Equal([(-10.0, -5.0), (5.0, 10.0)], Ends(piece.Sound(Line3.AlongY(0, -3.9999))));
    }

    [Fact]
    public void Coincident_faces_of_two_passes_leave_no_skin()
    {
        // Side by side passes that share the plane Y 0, and a second pass on the very same path.
        var piece = Cut(
            CutterPath.Straight(new(-30, 5, -4), new(30, 5, -4)), CutterPath.Straight(new(-30, -5, -4), new(30, -5, -4)), CutterPath.Straight(new(-30, 5, -4), new(30, 5, -4)));
        Assert.Empty(piece.Sound(Line3.AlongY(0, -2)));
        Assert.Equal([(-12.0, -4.0)], Ends(piece.Sound(Line3.AlongZ(0, 3))));
    }

    [Fact]
    public void Metal_and_gaps_thinner_than_a_millionth_are_dropped_when_read()
    {
        var skin = Cut(CutterPath.Straight(new(-30, 5.0000002, -4), new(30, 5.0000002, -4)), CutterPath.Straight(new(-30, -5.0000002, -4), new(30, -5.0000002, -4)));
        Assert.Empty(skin.Sound(Line3.AlongY(0, -2)));
        var kept = Cut(CutterPath.Straight(new(-30, 5.000002, -4), new(30, 5.000002, -4)), CutterPath.Straight(new(-30, -5.000002, -4), new(30, -5.000002, -4)));
        Assert.Single(kept.Sound(Line3.AlongY(0, -2)));
    }

    [Fact]
    public void A_move_of_no_length_is_a_standing_cutter()
    {
        Assert.Equal(PathKind.Place, CutterPath.Straight(new(1, 2, 3), new(1, 2, 3)).Kind);
        Assert.Equal(PathKind.Place, CutterPath.Arc(new(1, 2), new(1, 2, 3), 1).Kind);
        Assert.Equal(PathKind.Place, CutterPath.Arc(default, new(1, 2, 3), 0).Kind);
        var piece = Cut(CutterPath.Straight(new(0, 0, -4), new(0, 0, -4)));
        Assert.Equal([(-20.0, -5.0), (5.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, -2))));
    }

    [Fact]
    public void A_move_of_hardly_any_length_is_hardly_more()
    {
        var piece = Cut(CutterPath.Straight(new(0, 0, -4), new(1e-13, 1e-14, -4)));
        Assert.Equal([(-20.0, -5.0), (5.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, -2))));
        var slanted = Cut(CutterPath.Straight(new(0, 0, -4), new(1e-12, 0, -4 + 1e-12)));
        Assert.Equal([(-20.0, -5.0), (5.0, 20.0)], Ends(slanted.Sound(Line3.AlongX(0, -2))));
    }

    [Theory]
    [InlineData(2 * Math.PI)]
    [InlineData(-2 * Math.PI)]
    [InlineData(7.5)]
    public void A_full_circle_closes_its_ring(double sweep)
    {
        var piece = Cut(CutterPath.Arc(default, new(9.99, 0, -8), sweep));
        Assert.Equal([(-20.0, -14.99), (-4.99, 4.99), (14.99, 20.0)], Ends(piece.Sound(Line3.AlongX(0, -2))));
        Assert.Equal([(-12.0, -8.0)], Ends(piece.Sound(Line3.AlongZ(7, 7))));
        Assert.Equal([(-12.0, 0.0)], Ends(piece.Sound(Line3.AlongZ(0, 0))));
    }

    [Fact]
    public void Half_a_turn_is_half_a_ring()
    {
        var piece = Cut(CutterPath.Arc(default, new(10, 0, -8), Math.PI));
        Assert.Equal([(-12.0, -8.0)], Ends(piece.Sound(Line3.AlongZ(0, 9))));
        Assert.Equal([(-12.0, 0.0)], Ends(piece.Sound(Line3.AlongZ(0, -9))));
    }

    [Fact]
    public void An_arc_smaller_than_the_cutter_leaves_no_core()
    {
        var piece = Cut(CutterPath.Arc(default, new(5, 0, -8), 7));
        Assert.DoesNotContain(piece.Sound(Line3.AlongX(0, -2)), s => s.From > -9 && s.To < 9);
        var core = Cut(CutterPath.Arc(default, new(5.001, 0, -8), 7));
        Assert.Equal(0.002, core.Sound(Line3.AlongX(0, -2)).Single(s => s.From > -9 && s.To < 9).Length, 1e-9);
    }

    [Fact]
    public void A_cutter_as_wide_as_the_bar_cuts_it_through()
    {
        var wide = new Workpiece(Bar).After(new SweptCut(CutterShape.EndMill(20, 22, 20, 30), CutterPath.At(new(0, 0, -13))));
        Assert.Empty(wide.Sound(Line3.AlongY(0, -2)));
        Assert.Equal([(-20.0, 20.0)], Ends(wide.Sound(Line3.AlongX(10, -2))));
    }

    [Fact]
    public void A_cutter_as_wide_as_the_slot_leaves_its_walls()
    {
        var slotted = new Difference(Bar, new Block(new(-21, -5, -6), new(21, 5, 1)));
        var piece = new Workpiece(slotted).After(new SweptCut(Mill, CutterPath.Straight(new(-30, 0, -6), new(30, 0, -6))));
        Assert.Equal([(-10.0, -5.0), (5.0, 10.0)], Ends(piece.Sound(Line3.AlongY(0, -3))));
        Assert.Equal([(-20.0, 20.0)], Ends(piece.Sound(Line3.AlongX(5, -3))));
        Assert.Equal([(-20.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, -6))));
        Assert.Null(Handwheel.Solids.Questions.Gouge.Deepest(piece, slotted, 0.5));
    }

    [Fact]
    public void Huge_and_tiny_coordinates_keep_their_digits()
    {
        var far = new Block(new(1e6, -10, -12), new(1e6 + 40, 10, 0));
        var piece = new Workpiece(far).After(new SweptCut(Mill, CutterPath.Straight(new(1e6 + 20, -30, -4), new(1e6 + 20, 30, -4))));
        var ends = Ends(piece.Sound(Line3.AlongX(0, -2)));
        Assert.Equal(1e6 + 15, ends[0].Item2, 1e-9);
        var tiny = new Workpiece(new Block(new(-0.01, -0.01, -0.01), new(0.01, 0.01, 0)))
            .After(new SweptCut(CutterShape.EndMill(0.002, 0.1, 0.002, 0.2), CutterPath.At(new(0, 0, -0.005))));
        Assert.Equal(0.001, tiny.Sound(Line3.AlongX(0, -0.002))[1].From, 1e-15);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e300)]
    public void Absurd_numbers_are_refused_by_name(double bad)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CutterPath.At(new(bad, 0, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CutterPath.Arc(default, new(1, 0, 0), bad));
        Assert.Throws<ArgumentOutOfRangeException>(() => CutterShape.EndMill(bad, 1, 1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Outline.Circle(default, bad));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Block(default, new(bad, 1, 1)));
    }

    [Fact]
    public void A_plunge_with_an_undercutting_cutter_leaves_its_greatest_radius_all_the_way()
    {
        var tee = CutterShape.TSlot(12, 3, 6, 10, 6, 30);
        var piece = new Workpiece(Bar).After(new SweptCut(tee, CutterPath.Straight(new(0, 0, 2), new(0, 0, -6))));
        Assert.Equal([(-20.0, -6.0), (6.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, -1))));
        var slid = new Workpiece(Bar).After(new SweptCut(tee, CutterPath.Straight(new(-40, 0, -6), new(40, 0, -6))));
        Assert.Equal([(-10.0, 10.0)], Ends(slid.Sound(Line3.AlongY(0, -1))));
        Assert.Equal([(-10.0, -6.0), (6.0, 10.0)], Ends(slid.Sound(Line3.AlongY(0, -5))));
    }

    [Fact]
    public void A_cup_wheel_standing_leaves_its_core()
    {
        var wheel = CutterShape.CupWheel(16, 10, 4, 4);
        var piece = new Workpiece(Bar).After(new SweptCut(wheel, CutterPath.At(new(0, 0, -3))));
        Assert.Equal([(-20.0, -8.0), (-5.0, 5.0), (8.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, -1))));

        // A line that grazes the core in the middle of the ring is cut all the same.
        Assert.Equal([(-20.0, Math.Round(-Math.Sqrt(39), 9)), (Math.Round(Math.Sqrt(39), 9), 20.0)], Ends(piece.Sound(Line3.AlongX(5, -1))));
        var moved = new Workpiece(Bar).After(new SweptCut(wheel, CutterPath.Straight(new(-2, 0, -3), new(2, 0, -3))));

        // Greatest distance to the path under 5: between X -3 and 3.
        Assert.Equal([(-20.0, -10.0), (-3.0, 3.0), (10.0, 20.0)], Ends(moved.Sound(Line3.AlongX(0, -1))));
    }

    [Fact]
    public void A_round_nosed_tooth_leaves_a_rounded_groove()
    {
        // A tooth from radius 4 to 8 with a nose of radius 1.5: flat between 5.5 and 6.5, rounded on both sides.
        var fly = CutterShape.FlyCutter(16, 8, 6, 6, 10, noseRadius: 1.5);
        var piece = new Workpiece(Bar).After(new SweptCut(fly, CutterPath.At(new(0, 0, -3))));
        Assert.Equal(-3, piece.Sound(Line3.AlongZ(6, 0))[^1].To, 1e-12);
        foreach (var (x, aside) in (ReadOnlySpan<(double, double)>)[(7.5, 1.0), (4.5, 1.0), (4.2, 1.3)])
        {
            Assert.Equal(-3 + 1.5 - Math.Sqrt((1.5 * 1.5) - (aside * aside)), piece.Sound(Line3.AlongZ(x, 0))[^1].To, 1e-12);
        }

        Assert.Equal([(-20.0, -8.0), (-4.0, 4.0), (8.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, -1.5))));
        Assert.Throws<ArgumentOutOfRangeException>(() => CutterShape.FlyCutter(16, 12, 6, 6, 10, noseRadius: 1.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => ProfilePiece.Straight(0, 2, 1, 2).HollowRound(1, 0.5, 1.2, bulges: true));
    }

    [Fact]
    public void A_line_grazing_a_hollow_round_of_an_outline_is_judged_beside_the_touch()
    {
        // A broach whose upper side is hollowed by a round of radius 5 about (0, 6): the line Y 1 grazes it at X 0, the middle of its way through.
        var outline = Outline.FromPieces(
        [
            OutlinePiece.Straight(new(-8, -4), new(8, -4)), OutlinePiece.Straight(new(8, -4), new(8, 6)), OutlinePiece.Straight(new(8, 6), new(5, 6)),
            OutlinePiece.Arc(new(0, 6), 5, 0, -Math.PI), OutlinePiece.Straight(new(-5, 6), new(-8, 6)), OutlinePiece.Straight(new(-8, 6), new(-8, -4)),
        ]);
        var piece = new Workpiece(Bar).After(new BroachCut(outline, -20, 20));
        Assert.Equal([(-20.0, -8.0), (8.0, 20.0)], Ends(piece.Sound(Line3.AlongX(1, -2))));
    }

    [Fact]
    public void The_surface_that_ends_an_interval_is_named_with_its_normal()
    {
        var piece = Cut(CutterPath.Straight(new(-30, 0, -4), new(30, 0, -4)), CutterPath.Arc(default, new(9.99, 0, -8), 7));
        var span = piece.Sound(Line3.AlongX(0, -6))[1];
        Assert.Equal(1, span.FromSurface.Cut);
        var n = piece.NormalAt(span.FromSurface, new(span.From, 0, -6));
        Assert.Equal(-1, n.X, 1e-9);
        var floor = piece.Sound(Line3.AlongZ(0, 0))[0];
        Assert.Equal(0, floor.ToSurface.Cut);
        Assert.Equal(new Vector3(0, 0, 1), piece.NormalAt(floor.ToSurface, new(0, 0, -4)));
        Assert.True(floor.FromSurface.IsStock);
    }
}
