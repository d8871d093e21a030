using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Tests;

/// <summary>Depths of gouge and leftover at faces, edges and corners that plane and solid geometry give in closed form.</summary>
public sealed class DepthTests
{
    private static readonly Pose Askew = Pose.TurnAboutX(0.4).Then(Pose.TurnAboutY(-0.7)).Then(Pose.TurnAboutZ(1.1)).Then(Pose.Translation(new(1, 2, 3)));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Leftover_over_a_corner_is_the_diagonal_of_its_three_skins(bool askew)
    {
        // A block larger by 0.3, 0.4 and 1.2 at one corner: the corner stands sqrt(0.09 + 0.16 + 1.44) = 1.3 from the block wanted.
        var pose = askew ? Askew : Pose.Identity;
        var most = new Placed(new Block(new(-10, -8, -6), new(10, 8, 6)), pose);
        var piece = new Workpiece(new Placed(new Block(new(-10, -8, -6), new(10.3, 8.4, 7.2)), pose));
        var left = Leftover.Deepest(piece, most, 0.5);
        Assert.NotNull(left);
        Assert.Equal(1.3, left.Depth, 1e-6);
        Assert.Equal(0, left.Place.DistanceTo(pose.Apply(new Point3(10, 8, 6))), 1e-6);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Leftover_along_an_edge_is_the_diagonal_of_its_two_skins(bool askew)
    {
        var pose = askew ? Askew : Pose.Identity;
        var most = new Placed(new Block(new(-10, -8, -6), new(10, 8, 6)), pose);
        var piece = new Workpiece(new Placed(new Block(new(-10, -8, -6), new(10.3, 8.4, 6)), pose));
        var left = Leftover.Deepest(piece, most, 0.5);
        Assert.NotNull(left);
        Assert.Equal(0.5, left.Depth, 1e-6);
    }

    [Fact]
    public void Leftover_round_the_edge_of_a_cylinder_is_measured_to_its_rim()
    {
        // A round of radius 8 and 20 high where one of 7.6 and 19.7 is wanted: rim to rim sqrt(0.16 + 0.09).
        var left = Leftover.Deepest(new Workpiece(new Round(default, 8, 0, 20)), new Round(default, 7.6, 0, 19.7), 0.5);
        Assert.NotNull(left);
        Assert.Equal(0.5, left.Depth, 1e-6);
    }

    [Fact]
    public void Leftover_in_an_inner_corner_is_measured_to_the_nearer_wall()
    {
        // A step wanted with a square inner corner, a cutter of radius 5 leaves a fillet: its middle is 5 (sqrt(2) - 1) from the corner, but the
        // farthest place of the leftover from both walls is where the round leaves them equal: 5 (1 - sqrt(1/2)) from each.
        var bar = new Block(new(-20, -20, -10), new(20, 20, 0));
        var most = new Difference(bar, new Block(new(0, 0, -4), new(21, 21, 1)));
        var mill = CutterShape.EndMill(10, 22, 10, 30);
        var piece = new Workpiece(bar)
            .After(new SweptCut(mill, CutterPath.Straight(new(5, 30, -4), new(5, 5, -4))))
            .After(new SweptCut(mill, CutterPath.Straight(new(5, 5, -4), new(30, 5, -4))));
        for (var y = 9; y < 30; y += 4)
        {
            piece = piece.After(new SweptCut(mill, CutterPath.Straight(new(8, y, -4), new(30, y, -4))));
        }

        var left = Leftover.Deepest(piece, most, 0.4);
        Assert.NotNull(left);
        Assert.Equal(5 * (1 - Math.Sqrt(0.5)), left.Depth, 1e-6);
    }

    [Fact]
    public void Leftover_in_a_slot_never_cut_is_half_its_width()
    {
        // A slot 3 wide and 6 deep left solid: its middle line on top is 1.5 from both walls.
        var bar = new Block(new(-20, -10, -10), new(20, 10, 0));
        var most = new Difference(bar, new Block(new(-21, -1.5, -6), new(21, 1.5, 1)));
        var left = Leftover.Deepest(new Workpiece(bar), most, 0.4);
        Assert.NotNull(left);
        Assert.Equal(1.5, left.Depth, 1e-6);
    }

    [Fact]
    public void Gouge_at_an_inner_edge_of_the_part_is_measured_to_the_edge()
    {
        // The part is an L whose inner edge runs along X at (0, 0); a round hole of radius 0.5 drilled along X through (y, z) = (-0.3, -0.4) reaches 1
        // from that edge, straight away from it, and farther from both faces.
        var bar = new Block(new(-10, -10, -10), new(10, 10, 10));
        var least = new Difference(bar, new Block(new(-11, 0, 0), new(11, 11, 11)));
        var hole = new SweptCut(CutterShape.EndMill(1, 60, 1, 61), CutterPath.At(new(0.4, -0.3, -30)), Pose.TurnAboutY(Math.PI / 2));
        var gouge = Gouge.Deepest(new Workpiece(least).After(hole), least, 0.2);
        Assert.NotNull(gouge);
        Assert.Equal(1, gouge.Depth, 1e-6);
        Assert.Equal(0, Math.Abs(gouge.Place.Y) + Math.Abs(gouge.Place.Z), 1e-5);
    }

    [Fact]
    public void Gouge_across_an_outer_corner_is_measured_to_the_nearest_face()
    {
        // A corner notched by a square 2 by 3 and 4 deep: its inner corner is 2 from the nearest face.
        var block = new Block(new(-10, -10, -10), new(0, 0, 0));
        var notch = new Block(new(-2, -3, -4), new(1, 1, 1));
        var gouge = Gouge.Deepest(new Workpiece(block).After(notch), block, 0.3);
        Assert.NotNull(gouge);
        Assert.Equal(2, gouge.Depth, 1e-6);
    }

    [Fact]
    public void Depth_over_a_ball_does_not_depend_on_where_the_rays_lie()
    {
        // A round bar over a ball: its end's rim is the farthest, sqrt(3^2 + 5^2) - 4 from the ball of radius 4.
        var most = new RevolvedSolid([ProfilePiece.Round(0, 0, 4, -4, 4)]);
        var piece = new Workpiece(new Round(default, 3, -1, 5));
        foreach (var spacing in (double[])[0.3, 0.37, 0.5])
        {
            var left = Leftover.Deepest(piece, most, spacing);
            Assert.NotNull(left);
            Assert.Equal(Math.Sqrt(34) - 4, left.Depth, 1e-6);
        }
    }
}
