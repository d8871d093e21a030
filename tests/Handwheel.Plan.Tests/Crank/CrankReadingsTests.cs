using Handwheel.Jobs.Moves;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Tests.Jobs;

namespace Handwheel.Plan.Tests.Crank;

/// <summary>The winch crank&#39;s readings against plane geometry worked out here from the drawing&#39;s numbers alone.</summary>
public sealed class CrankReadingsTests
{
    private static readonly JobPlan Plan = new PlannedJob("crank.handwheel").Plan;

    private static IEnumerable<SheetLine> Flat(IEnumerable<SheetLine> lines) => lines.SelectMany(l => l is PassBracket b ? [b, .. Flat(b.Lines)] : (IEnumerable<SheetLine>)[l]);

    private static double[] Readings(string step, Axis axis, bool? cutting = null) => [.. Flat(Plan.Stages.SelectMany(s => s.Steps).Single(s => s.Step.Id == step).Lines)
        .OfType<MoveLine>().Where(m => m.Axis == axis && (cutting is null || m.Cutting == cutting)).Select(m => m.To)];

    private static double[] Depths(string step) => [.. Flat(Plan.Stages.SelectMany(s => s.Steps).Single(s => s.Step.Id == step).Lines).OfType<PassBracket>().SelectMany(b => b.Depths)];

    // Up to the readout's 0.005, away from the hub.
    private static double Up(double value) => Math.Ceiling((value / 0.005) - 1e-6) * 0.005;

    [Fact]
    public void Plans_without_a_finding() => Assert.Empty(Plan.Findings);

    // Plane geometry: two circles of radius 9.975/2 and 10/2 that stay 0.3 apart, at y = 3.
    [Fact]
    public void Faces_the_arm_up_to_where_the_cutter_stays_clear_of_the_hub() =>
        Assert.Equal(Up(Math.Sqrt(Math.Pow((9.975 / 2) + 5 + 0.3, 2) - 9)), Readings("A8", Axis.X, true)[0], 9);

    [Fact]
    public void Faces_the_far_row_first() => Assert.Equal([3.0, -3.0], Readings("A8", Axis.Y).Where(y => Math.Abs(y) == 3));

    // Half the hub aimed at the middle of its limits, half the cutter, what is left a side.
    [Fact]
    public void Turns_the_hub_large_and_then_to_size()
    {
        Assert.Equal(Up((9.975 / 2) + 5 + 0.2), Readings("A9", Axis.X, true)[0], 9);
        Assert.Equal(Up((9.975 / 2) + 5), Readings("A10", Axis.X, true)[0], 9);
        Assert.Equal(8, Depths("A9").Length);
    }

    // The angle at which the outer tangent of two circles touches them: acos((r1 - r2) / apart), plane geometry.
    [Fact]
    public void Ends_the_hubs_arc_where_the_flanks_touch()
    {
        var touch = Math.Acos(((9.975 / 2) - 4) / 28) * 180 / Math.PI;
        var turns = Readings("A11", Axis.T, true);
        Assert.Equal(touch, ((turns[0] % 360) + 360) % 360, 0.5 / 60 + 1e-9);
    }

    [Fact]
    public void Turns_each_flank_parallel_and_stands_half_a_cutter_off()
    {
        var slope = Math.Asin(((9.975 / 2) - 4) / 28) * 180 / Math.PI;
        Assert.Contains(Readings("A12", Axis.T), t => Math.Abs(Math.Abs(t % 360) - slope) < (0.5 / 60) + 1e-9 || Math.Abs(360 - Math.Abs(t % 360) - slope) < (0.5 / 60) + 1e-9);
        Assert.Equal([Up((9.975 / 2) + 5), -Up((9.975 / 2) + 5)], Readings("A12", Axis.Y, true).Distinct());
        Assert.Equal([0, Up(Math.Sqrt((28 * 28) - Math.Pow((9.975 / 2) - 4, 2)))], Readings("A12", Axis.X, true).Distinct().Select(x => Math.Round(x, 6)));
    }

    // A 118 deg point is r / tan(59 deg) long: Machinery's Handbook, drill point.
    [Fact]
    public void Drills_to_full_diameter_and_adds_the_point()
    {
        Assert.Equal(Up(-12.5 - (2 / Math.Tan(59 * Math.PI / 180))), Depths("A5")[^1], 9);
        Assert.Equal(Up(-14.5 - (1.45 / Math.Tan(59 * Math.PI / 180))), Depths("A6")[^1], 9);
    }

    // Underside - allow - blade; flank - web - half the saw.
    [Fact]
    public void Sets_the_saw_by_its_lower_face_and_leaves_the_web()
    {
        Assert.Contains(Readings("B4", Axis.Z), z => Math.Abs(z - (-12 - 0.1 - 1.0)) < 1e-9);
        Assert.Contains(Readings("B4", Axis.Y), y => Math.Abs(y - (4 - 0.3 - 31.5)) < 1e-9);
    }

    [Fact]
    public void Lines_and_course_tell_the_same_moves()
    {
        foreach (var (stage, course) in Plan.Stages.Zip(Plan.Course.Stages))
        {
            foreach (var (step, facts) in stage.Steps.Zip(course.Steps))
            {
                var numbers = Flat(step.Lines).Select(l => l switch { MoveLine m => m.Number, PassBracket b => b.Number, _ => 0 }).Where(n => n > 0).Distinct().Order();
                Assert.Equal(facts.Events.OfType<Move>().Select(m => m.Number).Distinct().Order(), numbers);
            }
        }
    }

    // The cutter stands at the rounded reading, so the boss is that much larger: 2 x 10.190 - 10.
    [Fact]
    public void Expects_what_the_rounded_reading_leaves()
    {
        var measure = Flat(Plan.Stages.SelectMany(s => s.Steps).Single(s => s.Step.Id == "A10").Lines).OfType<MeasureLine>().Single();
        Assert.Equal((2 * 10.190) - 10, measure.Expected, 9);
        Assert.Contains(measure.Strip, p => Math.Abs(p.Measures - 10.380) < 1e-9 && Math.Abs(p.CrankTo - 9.990) < 1e-9);
    }
}
