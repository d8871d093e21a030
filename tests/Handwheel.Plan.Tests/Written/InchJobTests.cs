using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Reading;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Tests.Jobs;

namespace Handwheel.Plan.Tests.Written;

/// <summary>A short inch job on the examples' inch bench: what its sheet says of feeds, taps, gauges and last passes.</summary>
public sealed class InchJobTests
{
    private const string Job = """
        job   Foot
        unit  in
        metal steel, 1018
        shop  bench.handwheel
        drawing
          base   block 2 by 1 at 0, 0     from -1 to 0
          pivot  hole #7 at 0, 0 through, thread 1/4-20 UNC
          others +/-.010
          SIZE
        stock bar 1 wide, 1 high, 2.04 long
          x middle 0
        holding A in tool vise on rotary, bar along jaws on parallels 1/4
          zero x, y on rotary centre
          zero z on bar top by paper .002
          STEPS
        """;

    private static (JobPlan? Plan, IReadOnlyList<Finding> Read) Planned(string steps, string size = "", Func<string, string>? job = null, Func<string, string>? shop = null)
    {
        var text = Job.Replace("SIZE", size, StringComparison.Ordinal).Replace("STEPS", steps, StringComparison.Ordinal);
        var read = JobReader.Read("written.handwheel", job is null ? text : job(text), name => shop is null ? PlannedJob.Text(name) : shop(PlannedJob.Text(name)));
        return (read.Halted ? null : Planner.Plan(read.Value!, read.Shop!), read.Findings);
    }

    private static PlanStep Step(JobPlan plan, string id) => plan.Stages.SelectMany(s => s.Steps).Single(s => s.Step.Id == id);

    private const string Tap = "\nn7 drill #7, HSS, flute 2, out 2 1/2\ndF drill F, HSS, flute 2, out 2 1/2";

    // 1/4-20 goes on 1/20 in a turn: at 60 rpm 3 in/min (geometry of the screw).
    [Fact]
    public void A_tap_under_power_goes_on_by_its_pitch()
    {
        var (plan, read) = Planned("drill pivot through with no7\n  tap pivot through with tapq at 60 rpm", shop: s => s + Tap);
        Assert.Empty(read);
        var feed = Step(plan!, "A4").Workings.Single(w => w.Name == "feed of tapq");
        Assert.Equal("60 x 0.05", feed.PutIn);
        Assert.Equal(3, feed.Result, 9);
        Assert.Equal("in/min", feed.Unit);
        var perTurn = plan!.Shop.Mill!.Z.PerTurn;
        Assert.Equal(perTurn / 76.2 * 60, Step(plan, "A4").Lines.OfType<MoveLine>().Single(m => m.Cutting).Pace, 6);
    }

    [Fact]
    public void A_tap_by_hand_has_no_speed_and_no_feed()
    {
        var (plan, _) = Planned("drill pivot through with no7\n  tap pivot through with tapq", shop: s => s + Tap);
        var step = Step(plan!, "A4");
        Assert.Equal(0, step.Lines.OfType<CutterLine>().Single().Rpm);
        Assert.Equal(0, step.Lines.OfType<MoveLine>().Single(m => m.Cutting).Pace);
        Assert.DoesNotContain(step.Workings, w => w.Name.StartsWith("feed", StringComparison.Ordinal) || w.Unit == "rpm");
        Assert.Contains(step.Workings, w => w is { Name: "tapq goes on each turn", PutIn: "0.05" });
    }

    // #7 is 0.2010 in, F is 0.2570 in (ASME B94.11M).
    [Fact]
    public void Drills_are_called_by_number_and_letter()
    {
        var (plan, read) = Planned("drill pivot through with no7", shop: s => s + Tap);
        Assert.Empty(read);
        Assert.Equal(0.2010 * 25.4, plan!.Shop.Cutters["n7"].Across, 9);
        Assert.Equal(0.2570 * 25.4, plan.Shop.Cutters["dF"].Across, 9);
        Assert.Equal(0.2010 * 25.4, plan.Job.Drawing.Features.Single(f => f.Name == "pivot").Shape is Handwheel.Jobs.Drawings.RoundShape r ? r.Across.Nominal : 0, 9);
    }

    [Fact]
    public void A_tap_of_another_thread_is_told()
    {
        var (_, read) = Planned("tap pivot through with tap10", shop: s => s + Tap + "\ntap10 tap #10-32 UNF, flute 1, shank 0.19, out 2");
        Assert.Contains(read, f => f.Message == "tap10 (0.19 in across, pitch 1/32 in) does not cut the thread of 'pivot', 1/4-20 UNC: that is 1/4 in across, pitch 0.05 in.");
    }

    [Fact]
    public void A_tap_wider_than_its_thread_allows_the_hole_is_told()
    {
        var (_, read) = Planned("tap pivot through with tapq", job: t => t.Replace("hole #7 at 0, 0 through, thread 1/4-20 UNC", "hole 1/8 at 0, 0 through", StringComparison.Ordinal), shop: s => s + Tap);
        Assert.Contains(read, f => f.Message == "tapq (1/4 in across, pitch 0.05 in) does not fit the hole 'pivot' of 1/8 in.");
    }

    [Fact]
    public void Feeds_and_surface_speeds_are_in_inches_and_feet()
    {
        var (plan, _) = Planned("face to -.020 with em500");
        var step = Step(plan!, "A2");
        Assert.Matches("^12 x [0-9]+ ft/min / \\(pi x 0?\\.[0-9]+ in\\) = [0-9]+: [0-9.]+$", step.Workings.Single(w => w.Name == "speed of em500").PutIn);
        Assert.Equal("in/min", step.Workings.Single(w => w.Name == "feed of em500").Unit);
        Assert.DoesNotContain(step.Workings.SelectMany(w => new[] { w.PutIn, w.Unit }.Concat(w.Inputs.Select(i => i.Says))), t => t.Contains("m/min", StringComparison.Ordinal) || t.Contains("mm/min", StringComparison.Ordinal));
    }

    // The bench reads to half a thousandth. Both ends stand 1 from the centre, half a cutter and 10 thousandths off.
    [Fact]
    public void A_length_over_two_ends_has_its_table_and_expects_what_the_readout_leaves()
    {
        var (plan, _) = Planned("side base, left end, right end, to -.2 with em500, allow .010\n  measure base long, then last pass at full depth", "size base long 2.000 +/-.005");
        var strip = Step(plan!, "A4").Lines.OfType<MeasureLine>().Single();
        var cutter = plan!.Shop.Cutters["em500"].TrueAcross;
        var step = plan.Stages[0].Setup!.Axes.Y.Step;
        var exact = 25.4 + (cutter / 2) + 0.254;
        var stood = Math.Ceiling((exact / step) - 1e-9) * step;
        Assert.Equal(50.8 + (2 * 0.254) + (2 * (stood - exact)), strip.Expected, 9);
        Assert.Equal(Axis.Y, strip.Corrects);
        Assert.Equal(5, strip.Strip.Count);

        // What measures as expected is cranked to the edge and half the cutter; 0.002 in more is cut 0.001 in closer.
        var middle = strip.Strip[2];
        Assert.InRange(middle.CrankTo, 25.4 + (cutter / 2) - 1e-9, 25.4 + (cutter / 2) + step + 1e-9);
        Assert.Equal(-0.0254, strip.Strip[3].CrankTo - middle.CrankTo, 2);
    }

    // mic1 measures up to an inch, mic2 from one to two.
    [Theory]
    [InlineData("size base wide 1.002 +/-.001", "base wide", "micrometer mic2")]
    // A hole: an outside micrometer does not go in (common practice, no source).
    [InlineData("size pivot across .201 +/-.001", "pivot across", "an inside micrometer, gauge pins or blocks, or a caliper that takes 0.201 in (the shop tells of none)")]
    public void A_size_is_measured_with_what_takes_it(string size, string name, string with)
    {
        var (plan, read) = Planned("face to -.020 with em500\n  measure " + name, size, t => t.Replace("2 by 1 at", name == "base wide" ? "2 by 1.002 at" : "2 by 1 at", StringComparison.Ordinal).Replace("bar 1 wide", "bar 1.002 wide", StringComparison.Ordinal));
        Assert.DoesNotContain(read, f => f.Grade == Grade.Halt);
        Assert.Equal(with, Step(plan!, "A4").Lines.OfType<MeasureLine>().Single().With);
    }

    [Fact]
    public void A_shop_that_has_no_such_gauge_is_told_of()
    {
        var (plan, _) = Planned("face to -.020 with em500\n  measure base long", "size base long 2.040 +/-.005", t => t.Replace("2 by 1 at", "2.040 by 1 at", StringComparison.Ordinal), s => string.Join('\n', s.Split('\n').Where(l => !l.Contains("caliper", StringComparison.Ordinal))));
        Assert.Equal("a caliper or micrometer that takes 2.04 in (the shop tells of none)", Step(plan!, "A4").Lines.OfType<MeasureLine>().Single().With);
    }

    [Fact]
    public void Stock_and_parallels_are_told_in_inches()
    {
        var (_, read) = Planned("face to -.020 with em500", job: t => t.Replace("2.04 long", "1 3/8 long", StringComparison.Ordinal).Replace("parallels 1/4", "parallels 7/16", StringComparison.Ordinal));
        Assert.Contains(read, f => f.Message == "The part stands 0.3075 in out of its stock towards x minus.");
        Assert.Contains(read, f => f.Message == "The shop has no parallels 7/16." && !f.Mend.Contains("mm", StringComparison.Ordinal));
    }

    // On its back a block has its sides as it has them on its foot.
    [Fact]
    public void A_block_on_its_back_has_sides()
    {
        var (plan, read) = Planned("side base, left end, to .3 with em500, 0.1 a pass", job: t => t.Replace("in tool vise on rotary,", "in tool vise on rotary, back up,", StringComparison.Ordinal));
        Assert.DoesNotContain(read, f => f.Grade == Grade.Halt);
        Assert.DoesNotContain(plan!.Findings, f => f.Code == "cannot-plan");
        Assert.NotEmpty(Step(plan, "A3").Lines);
    }

    [Fact]
    public void A_step_that_cannot_be_planned_is_told_once()
    {
        var (plan, _) = Planned("zero x, y at pivot by indicator");
        Assert.Single(plan!.Findings, f => f.Code == "cannot-plan");
    }

    [Fact]
    public void The_upper_face_of_a_feature_called_top_is_told_so()
    {
        var (plan, _) = Planned("face to -.020 with em500\n  round top to -.2 with em500\n  drill pivot to -.5 with no7", job: t => t.Replace("pivot  hole", "top round .6 at 0, 0 from -1 to -.020\n  pivot hole", StringComparison.Ordinal).Replace("from -1 to 0", "from -1 to -.2", StringComparison.Ordinal), shop: s => s + Tap);
        var said = string.Join('\n', plan!.Stages[0].Steps.SelectMany(s => s.Lines).OfType<TouchOffLine>().Select(l => l.Says));
        Assert.DoesNotContain("top top", said, StringComparison.Ordinal);
        Assert.Contains("on the upper face of top", said, StringComparison.Ordinal);
    }
}
