using Handwheel.Jobs.Moves;

namespace Handwheel.Plan.Tests.Jobs;

/// <summary>Readings of the four jobs against arithmetic done here from the drawings' own numbers: tangents, drill points, dividing, saws, finders.</summary>
public sealed class JobReadingsTests
{
    private const double In = 25.4;
    private static readonly PlannedJob Knob = new("clamp-knob.handwheel");
    private static readonly PlannedJob Quadrant = new("friction-quadrant.handwheel");
    private static readonly PlannedJob EndPlate = new("plain-dial.handwheel");
    private static readonly PlannedJob Clamp = new("tslot-clamp.handwheel");

    public static TheoryData<string> Jobs => ["clamp-knob.handwheel", "friction-quadrant.handwheel", "plain-dial.handwheel", "tslot-clamp.handwheel"];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_job_plans_without_a_finding(string name) => Assert.Empty(new PlannedJob(name).Plan.Findings);

    // Half the round at the middle of its limits and half the cutter, up to the readout's .0005 away from the metal that stays.
    [Fact]
    public void The_knob_is_turned_half_a_cutter_off()
    {
        Assert.Contains(Inch((1.5 + 0.499) / 2), Knob.Readings("A8", Axis.X, true).Select(x => Math.Round(x, 9)));
        Assert.Contains(Inch(((1.5 + 0.499) / 2) + 0.01), Knob.Readings("A7", Axis.X, true).Select(x => Math.Round(x, 9)));
        Assert.Contains(Inch((0.7475 + 0.499) / 2), Knob.Readings("A10", Axis.X, true).Select(x => Math.Round(x, 9)));
    }

    // Six places are 60 deg apart (360/n, dividing); the point at angle phi faces +X when the work is turned by -phi.
    [Fact]
    public void The_grips_are_indexed_by_sixties_clockwise()
    {
        Assert.Equal([300, 240, 180, 120, 60], Knob.Angles("A11"));
        Assert.Equal([0.875 * In], Knob.Readings("A11", Axis.X).Distinct());
    }

    // A 118 deg point is r / tan(59 deg) long (Machinery's Handbook, drill point, from memory); a no. 7 drill measures .201 in (ASME B94.11M, from memory).
    [Fact]
    public void The_tapping_hole_is_deep_enough_for_the_tap()
    {
        Assert.Equal(Inch(-1.15 - (0.201 / 2 / Math.Tan(59 * Math.PI / 180))), Knob.Depths("A5")[^1], 9);
        Assert.Contains(Inch(-0.9 - 0.2), Knob.Readings("A6", Axis.Z, true).Select(z => Math.Round(z, 9)));
    }

    // Underside - allowance - the saw; far edge - web - half the saw.
    [Fact]
    public void The_saw_parts_the_knob_and_leaves_its_web()
    {
        Assert.Contains(-Math.Round((0.875 + 0.02 + 0.0625) * In, 6), Knob.Readings("A12", Axis.Z).Select(z => Math.Round(z, 6)));
        Assert.Contains(Math.Round((0.75 - 0.06 - 2) * In, 6), Knob.Readings("A12", Axis.Y).Select(y => Math.Round(y, 6)));
    }

    [Fact]
    public void The_recess_is_cleared_a_hundredth_small_and_bored_to_the_middle_of_its_limits()
    {
        Assert.Contains(Math.Round(Down(((0.626 - 0.3745) / 2) - 0.01, 0.0005) * In, 9), Knob.Readings("B5", Axis.X, true).Select(x => Math.Round(x, 9)));

        // The recess stands at 0.6055 then: two light cuts alike, the last to the middle of .625 +.002 -0.
        var heads = Knob.Plan.Course.Stages.SelectMany(s => s.Steps).Single(s => s.Id == "B6").Events.OfType<HeadOpened>().Select(h => h.Across / In).ToArray();
        Assert.Equal(2, heads.Length);
        Assert.Equal(0.626, heads[1], 9);
        Assert.Equal((0.6055 + 0.626) / 2, heads[0], 0.0005);
    }

    // Outer tangent of two circles: acos((r1 - r2)/L) to the tangent points, asin of the same for the slope (plane geometry).
    [Fact]
    public void The_quadrants_arcs_end_at_their_tangent_points_within_a_dials_minute()
    {
        var touch = Math.Acos((11 - 4) / 20.0) * 180 / Math.PI;
        Near(360 - touch, Quadrant.Angles("A14").First(t => t != 0));
        Near(touch, Quadrant.Angles("A14", true)[0]);
        Near(touch, Quadrant.Angles("B3")[0]);
        Near(360 - touch, Quadrant.Angles("B3", true)[0]);
        var slope = Math.Asin((11 - 4) / 20.0) * 180 / Math.PI;
        Near(slope, Quadrant.Angles("A15")[0]);
        Near(360 - slope, Quadrant.Angles("A15")[1]);
        Assert.Equal([16, -16], Quadrant.Readings("A15", Axis.Y).Where(y => Math.Abs(y) is > 15.9 and < 16.1).Distinct());
    }

    // The slot from 100 to 200 deg of the part: 260 then 160 on the rim, clockwise, at (9 + 6)/2.
    [Fact]
    public void The_curved_slot_is_turned_clockwise_from_260_to_160()
    {
        Assert.Equal((260, 160), (Quadrant.Angles("A13")[0], Quadrant.Angles("A13", true)[0]));
        var turn = Quadrant.Readings("A13", Axis.T);
        Assert.Equal(-100, turn[1] - turn[0], 6);
        Assert.Equal(7.5, Quadrant.Readings("A13", Axis.X)[^1]);
    }

    [Fact]
    public void The_stop_hole_stands_at_300_degrees()
    {
        Assert.Contains(Math.Round(7.5 * Math.Cos(Math.PI / 3), 6), Quadrant.Readings("A8", Axis.X).Select(x => Math.Round(x, 6)));
        Assert.Contains(Quadrant.Readings("A8", Axis.Y), y => Math.Abs(y + (7.5 * Math.Sin(Math.PI / 3))) <= 0.0025 + 1e-9);
    }

    // 60/2 + 11.96/2 = 35.98 and 40/2 + 5.98 = 25.98, each to the dial's 0.05 with metal left: 36.00, 26.00.
    [Fact]
    public void Plain_dials_are_cranked_to_whole_divisions()
    {
        Assert.Equal([-36, 36], EndPlate.Readings("A7", Axis.X).Where(x => Math.Abs(x) is > 35.5 and < 36.4).Distinct().Order().Select(x => Math.Round(x, 6)));
        var all = EndPlate.Plan.Course.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Events).OfType<Move>().ToList();
        Assert.All(all, m => Assert.True(Whole(m.To.X, 0.05) && Whole(m.To.Y, 0.05) && Whole(m.To.Z, 0.025), FormattableString.Invariant($"move {m.Number}: {m.To}")));
    }

    // With slack in the screw a place is good only when it is come to from the side its zero was (common practice, no source): X and Y towards plus.
    [Fact]
    public void Plain_dials_are_come_to_towards_plus()
    {
        double x = double.NaN, y = double.NaN;
        int lastX = 1, lastY = 1;
        foreach (var one in EndPlate.Plan.Course.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Events))
        {
            (x, y) = one switch { TouchOff { Axis: Axis.X } t => (t.SetTo, y), TouchOff { Axis: Axis.Y } t => (x, t.SetTo), _ => (x, y) };
            if (one is not Move m)
            {
                continue;
            }

            if (m.Cutting && m.To.X == x && m.To.Y == y)
            {
                Assert.True(lastX >= 0 && lastY >= 0, FormattableString.Invariant($"move {m.Number} plunges at a place come to from plus"));
            }

            lastX = m.To.X == x ? lastX : Math.Sign(m.To.X - x);
            lastY = m.To.Y == y ? lastY : Math.Sign(m.To.Y - y);
            (x, y) = (m.To.X, m.To.Y);
        }
    }

    // A finder of 10 against a raw end at -2: its axis stands at -7. The nose at 30 deg: 40 sin 30 = 20 to face to, its corner 50 sin 30 = 25 to touch on.
    [Fact]
    public void The_clamp_is_found_by_half_the_finder_and_its_nose_by_the_sine()
    {
        Assert.Equal([-7], Clamp.Set("A1", Axis.X));
        Assert.Equal(20, Clamp.Depths("H4")[^1], 9);
        Assert.Equal([25.05], Clamp.Set("H3", Axis.Z).Select(z => Math.Round(z, 6)));
        Assert.Contains(Clamp.Set("H1", Axis.X), x => Math.Abs(x - ((50 * Math.Cos(Math.PI / 6)) + (15 * Math.Sin(Math.PI / 6)) + 5)) <= 0.0025 + 1e-6);
    }

    // Tongue 8 -0.05 -0.15 is aimed at 7.9: 7.9/2 + 15.96/2 = 11.93.
    [Fact]
    public void The_step_is_milled_from_both_sides_by_the_same_reading() =>
        Assert.Equal([-11.93, 11.93], Clamp.Readings("G5", Axis.Y).Select(y => Math.Round(y, 6)).Where(y => Math.Abs(y) < 12).Distinct().Order());

    // Tapping drill 5.0 for M6 (ISO 2306, from memory); the tap's lead of 4 and half a millimetre stand below the underside.
    [Fact]
    public void The_tap_goes_through_by_its_lead() => Assert.Contains(-15.5 - 4, Clamp.Readings("E9", Axis.Z, true));

    private static double Inch(double inches) => Math.Round(Math.Ceiling((inches / 0.0005) - 1e-6) * 0.0005 * In, 9);

    private static double Down(double value, double step) => Math.Floor((value / step) + 1e-6) * step;

    private static bool Whole(double value, double step) => Math.Abs((value / step) - Math.Round(value / step)) < 1e-6;

    private static void Near(double expected, double actual) => Assert.InRange(actual, expected - (1.0 / 60) - 1e-9, expected + (1.0 / 60) + 1e-9);
}
