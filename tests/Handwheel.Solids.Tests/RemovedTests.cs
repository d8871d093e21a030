using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Tests;

/// <summary>Volumes removed against the closed forms of solid geometry, to 0.1 %.</summary>
public sealed class RemovedTests
{
    private static readonly Block Bar = new(new(-30, -25, -12), new(30, 25, 0));

    [Fact]
    public void A_drilled_point_is_a_cone() // pi r^2 h / 3, Euclid XII.10.
    {
        var drill = CutterShape.Drill(12, Math.PI / 2, 20, 12, 30);
        Is(Math.PI * 36 * 6 / 3, Bar, new SweptCut(drill, CutterPath.At(new(1, 2, -6))));
    }

    [Fact]
    public void A_ball_sunk_is_a_cap() // pi h^2 (3 R - h) / 3, Archimedes, On the Sphere and Cylinder.
        => Is(Math.PI * 4 * (15 - 2) / 3, Bar, new SweptCut(CutterShape.BallNose(10, 12, 10, 30), CutterPath.At(new(0.3, 0.7, -2))));

    [Fact]
    public void A_hole_across_a_round_of_its_own_size_is_two_crossing_cylinders() // 16 r^3 / 3, Archimedes, The Method; Steinmetz.
    {
        var hole = new SweptCut(CutterShape.EndMill(8, 40, 8, 50), CutterPath.At(new(0, 0, -20)), Pose.TurnAboutY(Math.PI / 2));
        Is(16 * 64 / 3.0, new Round(default, 4, -15, 15), hole);
    }

    [Fact]
    public void A_ball_taken_round_a_circle_to_its_middle_is_half_a_torus() // 2 pi^2 R r^2 whole: Pappus.
        => Is(Math.PI * Math.PI * 15 * 9, Bar, new SweptCut(CutterShape.BallNose(6, 10, 6, 30), CutterPath.Arc(new(0.5, -0.5), new(15.5, -0.5, -3), 7)));

    [Fact]
    public void A_slot_is_a_rectangle_and_two_half_rounds()
        => Is(((10 * 17) + (Math.PI * 25)) * 4, Bar, new SweptCut(CutterShape.EndMill(10, 22, 10, 30), CutterPath.Straight(new(-8.5, 1, -4), new(8.5, 1, -4))));

    [Fact]
    public void A_cup_wheel_sunk_is_a_ring()
        => Is(Math.PI * (64 - 25) * 3, Bar, new SweptCut(CutterShape.CupWheel(16, 10, 4, 4), CutterPath.At(new(0.2, 0, -3))));

    [Fact]
    public void A_dovetail_groove_is_a_trapezium_drawn_out()
    {
        // Widest 12 at the floor, 60 degree flanks, 4 high, right through 50 of bar.
        var cutter = CutterShape.Dovetail(12, Math.PI / 3, 4, 6, 30);
        Is((12 - (4 / Math.Tan(Math.PI / 3))) * 4 * 50, Bar, new SweptCut(cutter, CutterPath.Straight(new(0, -40, -4), new(0, 40, -4))));
    }

    [Fact]
    public void A_full_turn_under_a_flat_end_is_a_ring_turned()
    {
        var bar = new Placed(new Round(default, 15, -20, 20), Pose.TurnAboutY(Math.PI / 2));
        Is(Math.PI * (225 - 36) * 10, bar, TurnedCut.AboutX(CutterShape.EndMill(10, 22, 10, 30), new(1, 0, 6), default, 2 * Math.PI));
    }

    [Fact]
    public void A_broached_keyway_is_a_prism()
        => Is(6 * 4 * 12, Bar, new BroachCut(Outline.Rectangle(new(0, 0), 6, 4, 0), -13, 1, 0.3));

    private static void Is(double expected, ISolid metal, ISolid cut)
    {
        var (volume, uncertain) = Removed.By(metal, cut);
        Assert.InRange(volume, expected * 0.999, expected * 1.001);
        Assert.InRange(uncertain, 0, expected * 0.001);
    }
}
