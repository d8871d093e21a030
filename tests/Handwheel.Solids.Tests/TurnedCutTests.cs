using CsCheck;
using Handwheel.Draws;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Tests;

/// <summary>Turning cuts about a level axis against membership from the definition, and the degenerate ones by name.</summary>
public sealed class TurnedCutTests
{
    private static readonly CutterShape Mill = CutterShape.EndMill(10, 22, 10, 30);

    [Fact]
    public void Turning_cuts_of_cylinders_rings_and_balls_agree_with_the_definition() =>
        Gen.Int[0, int.MaxValue - 1].Hold(seed => Agrees(seed, exactKinds: true), times: 1_000);

    [Fact]
    public void Turning_cuts_in_chords_agree_with_the_definition_within_their_bound() =>
        Gen.Int[0, int.MaxValue - 1].Hold(seed => Agrees(seed, exactKinds: false), times: 150);

    [Fact]
    public void A_full_turn_under_a_flat_end_turns_a_round()
    {
        // End 6 above the axis: the floor is a round of radius 6 as wide as the cutter, the shoulders are planes.
        var piece = Turned(new(0, 0, 6), 2 * Math.PI);
        foreach (var angle in (double[])[0, 0.3, 1.7, 3, 5])
        {
            var line = new Line3(default, new(0, Math.Cos(angle), Math.Sin(angle)));
            Assert.Equal([(-6.0, 6.0)], Ends(piece.Sound(line)));
            Assert.Equal([(-6.0, 6.0)], Ends(piece.Sound(line with { Origin = new(4.999, 0, 0) })));
            Assert.Equal([(-15.0, 15.0)], Ends(piece.Sound(new(new(5.001, 0, 0), Vector3.UnitZ))));
        }

        Assert.Equal([(-20.0, -5.0), (5.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, 6.001))));
    }

    [Fact]
    public void A_line_grazing_a_turned_floor_or_shoulder_keeps_its_metal()
    {
        var piece = Turned(new(0, 0, 6), 2 * Math.PI);
        Assert.Equal([(-20.0, 20.0)], Ends(piece.Sound(Line3.AlongX(0, 6))));
        Assert.Equal([(-20.0, 20.0)], Ends(piece.Sound(Line3.AlongX(6, 0))));
        Assert.Empty(piece.Sound(new(new(0, 0, 6), Vector3.UnitY)));
        Assert.Equal([(-15.0, 15.0)], Ends(piece.Sound(new(new(5, 0, 0), Vector3.UnitZ))));
    }

    [Fact]
    public void A_turn_of_nothing_is_a_standing_cutter_or_a_straight_cut()
    {
        var stood = new SweptCut(Mill, CutterPath.At(new(1, 2, 3)));
        var none = TurnedCut.AboutX(Mill, new(1, 2, 3), new(0, 5, -4), 0);
        var slid = new SweptCut(Mill, CutterPath.Straight(new(1, 2, 3), new(1, 6, 3)));
        var fed = TurnedCut.AboutY(Mill, new(1, 2, 3), new(0, 5, -4), 0, feed: 4);
        foreach (var line in (Line3[])[Line3.AlongX(2.5, 4), Line3.AlongY(3, 4), Line3.AlongZ(-2, 3), new(new(0, 1, 5), new Vector3(1, 2, 0.5).ToUnit())])
        {
            Assert.Equal(Ends(stood.Sound(line)), Ends(none.Sound(line)));
            Assert.Equal(Ends(slid.Sound(line)), Ends(fed.Sound(line)));
        }

        // And a turn of hardly anything is hardly more.
        Assert.Equal(Ends(stood.Sound(Line3.AlongX(2.5, 4))), Ends(TurnedCut.AboutX(Mill, new(1, 2, 3), new(0, 5, -4), 1e-13).Sound(Line3.AlongX(2.5, 4))));
    }

    [Fact]
    public void An_axis_through_the_cutter_leaves_no_core()
    {
        // From 2 below the axis to 20 above: in the middle plane the farthest corner is sqrt(5^2 + 20^2) away.
        var cut = TurnedCut.AboutX(Mill, new(0, 0, -2), default, 2 * Math.PI);
        Assert.Equal([(-Math.Round(Math.Sqrt(425), 9), Math.Round(Math.Sqrt(425), 9))], Ends(cut.Sound(Line3.AlongZ(0, 0))));
        Assert.Equal([(-5.0, 5.0)], Ends(cut.Sound(Line3.AlongX(0, 0))));
    }

    [Fact]
    public void A_line_along_the_axis_is_met_only_by_a_cutter_that_reaches_it()
    {
        Assert.Empty(TurnedCut.AboutX(Mill, new(3, 1, 0.001), default, 3).Sound(Line3.AlongX(0, 0)));
        var reaches = TurnedCut.AboutX(Mill, new(3, 3, -1), default, 3);
        Assert.Equal([(-1.0, 7.0)], Ends(reaches.Sound(Line3.AlongX(0, 0))));
    }

    [Fact]
    public void A_cutter_beside_the_axis_sweeps_a_shorter_floor_and_its_rim_a_curved_one()
    {
        // 3 aside: the floor is level with the axis only within sqrt(25 - 9) = 4 of the middle; beyond, the rim's nearest place is
        // 3 - sqrt(25 - x^2) aside of the axis: at x = 4.8 it is 1.6.
        var cut = TurnedCut.AboutX(Mill, new(0, 3, 6), default, 2 * Math.PI);
        Assert.Equal(6, cut.Sound(Line3.AlongZ(3.9, 0))[1].From, 1e-12);
        Assert.Equal(Math.Sqrt(36 + (1.6 * 1.6)), cut.Sound(Line3.AlongZ(4.8, 0))[1].From, 1e-12);
    }

    [Fact]
    public void Two_turns_that_share_a_border_leave_no_skin()
    {
        var piece = new Workpiece(new Round(default, 15, -20, 20));
        var upright = Pose.TurnAboutY(Math.PI / 2);
        foreach (var from in (double[])[0, 1, 2])
        {
            // Each turn begins where the last one ended.
            var pose = Pose.TurnAboutX(from).Then(upright);
            piece = piece.After(TurnedCut.AboutX(Mill, new(0, 0, 6), default, 1, toPart: pose));
        }

        foreach (var angle in (double[])[1, 2])
        {
            var (s, c) = Math.SinCos(angle + (Math.PI / 2));
            var there = upright.Apply(new Point3(0, 12 * c, 12 * s));
            Assert.DoesNotContain(piece.Sound(new(there, upright.ApplyDirection(Vector3.UnitX))), m => Math.Abs(m.Middle) < 4.9);
        }
    }

    [Fact]
    public void A_turn_fed_along_the_axis_says_how_far_it_may_be_off()
    {
        var still = TurnedCut.AboutX(Mill, new(0, 0, 6), default, 1);
        var fed = TurnedCut.AboutX(Mill, new(0, 0, 6), default, 1, feed: 2, chord: 0.01);
        Assert.Equal(0, still.ChordBound);
        Assert.InRange(fed.ChordBound, 0.005, 0.01);
        Assert.InRange(TurnedCut.AboutX(CutterShape.Drill(6, 2, 20, 6, 40), new(0, 0, 6), default, 1, chord: 0.01).ChordBound, 0.001, 0.01);
        Assert.Equal(0, TurnedCut.AboutX(CutterShape.BallNose(6, 10, 6, 40), new(0, 0, 6), default, 1).ChordBound);
    }

    [Fact]
    public void Absurd_sizes_are_cut_in_a_bounded_number_of_layers_and_the_bound_says_so()
    {
        // Found by fuzzing: a cone of a thousand kilometres fed as far asked for more layers than memory holds.
        var cone = CutterShape.Of([ProfilePiece.Straight(0, 0, 1e9, 5e8)]);
        var cut = TurnedCut.AboutX(cone, new(0, 0, 6), default, 1, feed: 1e9);
        Assert.InRange(cut.ChordBound, 1e3, 1e9);
        Assert.NotEmpty(cut.Sound(Line3.AlongZ(0, 0)));
        var inward = CutterShape.Of([ProfilePiece.Round(2e8, 0, 1e8, 0, 1e8, bulges: false)]);
        Assert.InRange(new SweptCut(inward, CutterPath.Straight(default, new(3, 0, 1))).ChordBound, 1e-5, 1);
    }

    [Fact]
    public void Every_ray_of_a_grid_is_a_sounding_of_a_turned_piece_whatever_the_threads()
    {
        var bar = new Placed(new Round(default, 15, -20, 20), Pose.TurnAboutY(Math.PI / 2));
        List<ISolid> cuts =
        [
            TurnedCut.AboutX(Mill, new(1.3, 2.1, 9), default, 4), TurnedCut.AboutX(CutterShape.BallNose(6, 10, 6, 30), new(-9, 0, 11), default, -3, feed: 2, chord: 0.05),
        ];
        var piece = cuts.Aggregate(new Workpiece(bar), (w, c) => w.After(c));
        var (one, many) = (new RayGrid(bar, 40, threads: 1), new RayGrid(bar, 40, threads: 4));
        one.CutAll(cuts);
        many.CutAll(cuts);
        Assert.Equal(one.ToBytes(), many.ToBytes());
        for (var i = 0; i < 40; i++)
        {
            for (var j = 0; j < 40; j++)
            {
                var exact = piece.Sound(Line3.AlongZ(one.Xs[i], one.Ys[j]));
                var ray = (i * 40) + j;
                Assert.Equal(exact.Count, one.AlongZ.CountOf(ray));
                for (var k = 0; k < exact.Count; k++)
                {
                    Assert.Equal(exact[k].From, one.AlongZ.IntervalOf(ray, k).Lo, 1e-9);
                    Assert.Equal(exact[k].To, one.AlongZ.IntervalOf(ray, k).Hi, 1e-9);
                }
            }
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e300)]
    public void Absurd_turns_are_refused_by_name(double bad)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TurnedCut.AboutX(Mill, new(0, 0, 6), default, bad));
        Assert.Throws<ArgumentOutOfRangeException>(() => TurnedCut.AboutX(Mill, new(0, 0, 6), default, 1, feed: bad));
        Assert.Throws<ArgumentOutOfRangeException>(() => TurnedCut.AboutY(Mill, new(bad, 0, 6), default, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => TurnedCut.AboutX(Mill, new(0, 0, 6), default, 1, chord: 0));
    }

    private static Workpiece Turned(Point3 at, double turn)
    {
        // A bar of radius 15 lying along X.
        var bar = new Placed(new Round(default, 15, -20, 20), Pose.TurnAboutY(Math.PI / 2));
        return new Workpiece(bar).After(TurnedCut.AboutX(Mill, at, default, turn));
    }

    private static (double, double)[] Ends(Spans spans) => [.. spans.Select(s => (Math.Round(s.From, 9), Math.Round(s.To, 9)))];

    private static void Agrees(int seed, bool exactKinds)
    {
        if (TurnCheck.Fault(seed, exactKinds) is { } fault)
        {
            Assert.Fail(fault);
        }
    }
}
