using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;

namespace Handwheel.Plan.Tests.Jobs;

/// <summary>Readings of the small sound jobs, worked out here from plane geometry (no source but that, where none is named).</summary>
public sealed class SoundJobsReadingsTests
{
    private static readonly PlannedJob Cap = Sound("lamp-cap");
    private static readonly PlannedJob Block = Sound("stop-block");
    private static readonly PlannedJob Plug = Sound("socket-plug");
    private static readonly PlannedJob Strip = Sound("spacer-strip");
    private static readonly PlannedJob Pin = Sound("cross-pin");

    // A 90-degree cone, tip 1 across, half a millimetre below the chamfer's lower edge: radius there 1/2 + 0.5; boss aimed 17.975.
    [Fact]
    public void A_chamfer_round_a_boss_stands_off_by_the_cones_radius_where_it_ends()
    {
        Assert.Equal([-0.8 - 0.5], Cap.Readings("A9", Axis.Z, false).Where(z => z < 0));
        Assert.Equal([Math.Ceiling(((17.975 / 2) + 0.5 + 0.5) / 0.005) * 0.005], Cap.Readings("A9", Axis.X, true), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    // Inside the same cone stands at R less that radius; the work is turned the other way, so that metal lies to the left of the feed.
    [Fact]
    public void A_rim_wider_than_the_cutter_is_chamfered_round_the_inside()
    {
        Assert.Equal(5 - 1.0, Cap.Readings("A10", Axis.X, true).Single(), 9);
        var turn = Cap.Lines("A10").OfType<MoveLine>().Single(m => m.Axis == Axis.T);
        Assert.Equal(360, turn.To - turn.From, 6);
    }

    [Fact]
    public void All_four_edges_of_a_block_are_chamfered_past_their_ends_with_metal_to_the_left()
    {
        var cuts = Block.Lines("A10").OfType<MoveLine>().Where(m => m.Cutting).ToList();
        Assert.Equal([Axis.X, Axis.Y, Axis.X, Axis.Y], cuts.Select(m => m.Axis));
        Assert.Equal([-1, -1, 1, 1], cuts.Select(m => Math.Sign(m.To - m.From)));
    }

    // A hexagon from a rectangle across its flats: three pushes, the work a sixth of a turn on between them.
    [Fact]
    public void A_hexagon_is_pushed_three_times_from_a_rectangle()
    {
        Assert.Equal([-6, -6, -6], Plug.Readings("A8", Axis.Z, true));
        Assert.Equal([300, 240], Plug.Angles("A8", false).Where(t => t != 0));
        Assert.Equal(1, Block.Readings("A9", Axis.Z, true).Count(z => z == -5));
    }

    // From the left end the saw is fed along Y, away from the machinist's side: metal to the left of the feed; its middle stands the web and half itself short of the right end.
    [Fact]
    public void A_saw_from_the_left_end_is_fed_along_y_towards_minus()
    {
        var cuts = Strip.Lines("A8").OfType<MoveLine>().Where(m => m.Cutting).ToList();
        Assert.True(cuts.Count >= 2);
        Assert.All(cuts, cut => Assert.Equal((Axis.Y, -1), (cut.Axis, Math.Sign(cut.To - cut.From))));
        Assert.Contains(20 - 0.5 - (63.0 / 2), Strip.Readings("A8", Axis.X));
    }

    // 60 degrees on a 40 to 1 worm: 6 2/3 turns, 6 turns and 10 holes of 15 (Machinery's Handbook, simple indexing).
    [Fact]
    public void Flats_are_indexed_by_turns_and_holes_of_a_plate()
    {
        var turns = Pin.Lines("A4").OfType<MoveLine>().Where(m => m.Axis == Axis.T).ToList();
        Assert.Equal([60, 120, 180, 240, 300], turns.Select(t => Math.Round(t.To, 6)));
        Assert.All(turns, t => Assert.Equal("index crank 6 turns and 10 holes of the 15 circle", t.Remark));
    }

    // A hole seen from the front opens at part Y minus: the work is turned a quarter back, three quarters on.
    [Fact]
    public void A_cross_hole_is_turned_up_before_it_is_worked()
    {
        Assert.Equal(270, Pin.Readings("A9", Axis.T).Single() % 360, 6);
        Assert.Equal([-24], Pin.Readings("A9", Axis.X).Where(x => Math.Abs(x + 24) < 0.01).Distinct());
    }

    // Before the boss is cut its place is only the bar's faced top.
    [Fact]
    public void A_touch_off_names_the_boss_only_once_it_stands()
    {
        string Surface(string step) => Cap.Lines(step).OfType<TouchOffLine>().Single(t => t.TouchOff.Axis == Axis.Z).TouchOff.Surface;
        Assert.Equal("bar's faced top", Surface("A4"));
        Assert.Equal("boss top", Surface("A9"));
    }

    private static PlannedJob Sound(string name) => new(name + ".handwheel", folder: Path.Combine("tests", "Handwheel.Cases.Tests", "cases", "sound"));
}
