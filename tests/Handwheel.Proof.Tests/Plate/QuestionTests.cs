using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Plate;

/// <summary>Each question asked of the guide plate, sound and spoiled (common practice, no source, where no other is named).</summary>
public sealed class QuestionTests(ITestOutputHelper output)
{
    [Fact]
    public void The_plate_is_sound()
    {
        var result = Seen(PlateCourse.Begin().Slot().Hole().Prove());
        Assert.DoesNotContain(result.Findings, f => f.Grade == Grade.Halt);

        // The key runs out at both ends: it has no length, and that is said.
        Assert.Equal(["size"], result.Findings.Where(f => f.Code is not ("direction" or "lock")).Select(f => f.Code));
        Assert.Contains(result.Findings, f => f is { Code: "size", Grade: Grade.Note } && f.Message.StartsWith("key long: it cannot be measured", StringComparison.Ordinal));
        Assert.All(result.Sizes, s => Assert.True(s.Ok, s.Name));
        Assert.Null(result.Release.Step);
    }

    [Fact]
    public void A_wrong_half_of_the_finder_displaces_the_slot()
    {
        var b = new CourseBuilder().Holding("A", PlateCourse.Setup());
        b.Step("A1", "zero").Touch(PlateCourse.Side(Axis.X, -25, 1)).Touch(PlateCourse.Side(Axis.Y, -14, 1)).Slot();
        var result = Seen(b.Prove());
        Assert.Contains(result.Findings, f => f is { Code: "zero", Grade: Grade.Caution, Amount: -1 });
        Assert.Contains(result.Findings, f => f is { Code: "gouge", Step: "A3" } && Math.Abs(f.Amount!.Value - 0.94) < 1e-6);
    }

    [Fact]
    public void An_axis_never_touched_off_is_told()
    {
        var b = new CourseBuilder().Holding("A", PlateCourse.Setup());
        b.Step("A1", "zero").Touch(PlateCourse.Side(Axis.X, -25, 1)).Slot();
        Assert.Contains(Seen(b.Prove()).Findings, f => f is { Code: "zero", Grade: Grade.Halt, Step: "A3" } && f.Message.Contains("y was not touched off", StringComparison.Ordinal));
    }

    [Fact]
    public void A_surface_that_is_not_there_is_a_lost_reference()
    {
        var b = PlateCourse.Begin().Slot();
        b.Step("A6", "touch beside the work").In("d4").TouchZ("d4", 60, 0, 0.05, "faced top").Free(z: 5);
        Assert.Contains(Seen(b.Prove()).Findings, f => f is { Code: "lost-reference", Grade: Grade.Halt, Step: "A6" });
    }

    [Fact]
    public void A_finder_level_with_the_top_meets_nothing()
    {
        // The plate is faced to 0: a finder down to 0 has no side before it, down to -0.05 it has.
        CourseBuilder Found(double at)
        {
            var b = PlateCourse.Begin();
            b.Step("A6", "find the left end again").Touch(PlateCourse.Side(Axis.X, -25, 1, at));
            return b;
        }

        Assert.Contains(Seen(Found(0).Prove()).Findings, f => f is { Code: "lost-reference", Grade: Grade.Halt, Step: "A6" });
        Assert.DoesNotContain(Found(-0.05).Prove().Findings, f => f.Code == "lost-reference");
    }

    [Fact]
    public void A_cutter_without_a_centre_edge_is_not_plunged()
    {
        var b = PlateCourse.Begin();
        b.Step("A3", "plunge").In("em16").TouchZ("em16", 0, 0, 0.05).Free(x: 10, y: 0, z: 5).Cut(z: -1).Free(z: 5);
        Assert.Contains(Seen(b.Prove()).Findings, f => f is { Code: "plunge", Grade: Grade.Halt, Step: "A3" });
    }

    [Fact]
    public void A_drill_across_an_edge_halts_and_unspotted_is_a_caution()
    {
        Assert.Contains(Seen(PlateCourse.Begin().Slot().Hole(3, spotted: false).Prove()).Findings, f => f is { Code: "plunge", Grade: Grade.Halt, Step: "A5" });
        Assert.Contains(Seen(PlateCourse.Begin().Slot().Hole(0, spotted: false).Prove()).Findings, f => f is { Code: "plunge", Grade: Grade.Caution, Step: "A5" });
    }

    [Fact]
    public void A_shank_rubbing_the_wall_is_a_reach()
    {
        var shop = With("em6", c => c with { Flute = 2, Shank = 5.98 });
        Assert.Contains(Seen(PlateCourse.Begin().Slot().Prove(shop: shop)).Findings, f => f is { Code: "reach", Grade: Grade.Halt, Step: "A3" });
    }

    [Fact]
    public void A_shank_thicker_than_its_cutter_strikes_metal()
    {
        var shop = With("em6", c => c with { Flute = 2, Shank = 8 });
        Assert.Contains(Seen(PlateCourse.Begin().Slot().Prove(shop: shop)).Findings, f => f is { Code: "strike", Grade: Grade.Halt, Step: "A3" } && f.Message.Contains("shank", StringComparison.Ordinal));
    }

    [Fact]
    public void A_jaw_too_high_is_struck()
    {
        var b = PlateCourse.Begin(jaws: 0.3).Slot();
        Assert.Contains(Seen(b.Prove()).Findings, f => f is { Code: "strike", Step: "A2" } && f.Message.Contains("jaw", StringComparison.Ordinal));
    }

    [Fact]
    public void A_free_move_through_metal_is_a_strike()
    {
        var b = PlateCourse.Begin();
        b.Step("A3", "slot").In("em6").TouchZ("em6", 10, 0, 0.05).Free(x: 30, y: 0, z: -2).Free(x: -30).Free(z: 5);
        Assert.Contains(Seen(b.Prove()).Findings, f => f is { Code: "strike", Grade: Grade.Halt, Step: "A3" } && f.Message.Contains("meant to go free", StringComparison.Ordinal));
    }

    [Fact]
    public void Jaws_that_bear_on_little_or_nothing_are_told()
    {
        Assert.Contains(Seen(PlateCourse.Begin(jaws: -9).Prove()).Findings, f => f is { Code: "grip", Grade: Grade.Caution });
        Assert.Contains(Seen(PlateCourse.Begin(gap: 1).Prove()).Findings, f => f is { Code: "grip", Grade: Grade.Halt });
    }

    [Fact]
    public void An_axis_left_free_is_noted()
    {
        var course = PlateCourse.Begin().Slot().Build(null).Each("A3", e => e is Move m ? m with { Locked = [] } : e);
        Assert.Contains(Seen(course.Proved()).Findings, f => f is { Code: "lock", Grade: Grade.Note, Step: "A3" } && f.Message.StartsWith("y ", StringComparison.Ordinal));
        Assert.DoesNotContain(PlateCourse.Begin().Slot().Prove().Findings, f => f.Code == "lock");
    }

    [Fact]
    public void A_cutter_changed_inside_the_work_knocks()
    {
        var course = PlateCourse.Begin().Slot().Hole().Build(null);
        var last = course.Stages[0].Steps[2].Events[^1];
        Assert.Contains(Seen(course.Each("A3", e => ReferenceEquals(e, last) ? ((Move)e) with { To = ((Move)e).To with { X = 0, Z = -4 } } : e).Proved()).Findings, f => f.Code == "knock");
    }

    [Fact]
    public void Measuring_after_the_last_pass_is_unmeasured()
    {
        var job = PlateCourse.Job();
        var size = job.Drawing.Sizes.First(s => s.Name.StartsWith("key wide", StringComparison.Ordinal));
        Course Measured(bool late) => PlateCourse.Begin().Slot().Build(null) is var c && late
            ? c.Each("A3", e => e) with { Stages = [c.Stages[0] with { Steps = [.. c.Stages[0].Steps, new CourseStep { Id = "A9", Text = "measure", Events = [new Measured(size.Name, 6, Corrects: false)] }] }] }
            : c with { Stages = [c.Stages[0] with { Steps = [c.Stages[0].Steps[0], new CourseStep { Id = "A9", Text = "measure", Events = [new Measured(size.Name, 6, Corrects: true)] }, .. c.Stages[0].Steps.Skip(1)] }] };
        Assert.Contains(Seen(Measured(late: true).Proved(job)).Findings, f => f is { Code: "unmeasured", Step: "A9" });
        Assert.DoesNotContain(Measured(late: false).Proved(job).Findings, f => f.Code == "unmeasured");
    }

    [Fact]
    public void A_thin_wall_beside_a_cut_is_told()
    {
        var job = PlateCourse.Job(6.5);
        Assert.Contains(Seen(PlateCourse.Begin().Slot(6.5).Prove(job)).Findings, f => f is { Code: "wall", Step: "A3" } && Math.Abs(f.Amount!.Value - 0.51) < 0.01);
    }

    [Fact]
    public void A_drill_is_not_fed_sideways()
    {
        var b = PlateCourse.Begin();
        b.Step("A3", "slot").In("d4").TouchZ("d4", 10, 0, 0.05).Free(x: 30, y: 0, z: 5).Free(z: -3).Cut(x: -30).Free(z: 5);
        Assert.Contains(Seen(b.Prove()).Findings, f => f is { Code: "on-hand", Grade: Grade.Halt, Step: "A3" });
    }

    [Fact]
    public void A_finder_the_shop_does_not_have_is_told()
    {
        var shop = PlateCourse.Shop with { Gauges = new SortedDictionary<string, Gauge>(StringComparer.Ordinal) };
        Assert.Contains(Seen(PlateCourse.Begin().Prove(shop: shop)).Findings, f => f is { Code: "on-hand", Grade: Grade.Caution });
    }

    [Fact]
    public void A_face_cut_and_not_deburred_is_a_burr_to_the_next_holding()
    {
        var b = PlateCourse.Begin().Slot();
        b.Holding("B", PlateCourse.Setup() with { Up = "underside", PartOrigin = new Place3(0, 0, -10), Fixtures =
        [
            new FixtureFacts { Name = "clamp", Holds = true, Least = new Place3(-15, -2.97, -30), Most = new Place3(-5, 2.97, -6) },
        ] });
        b.Step("B1", "look").Free(z: 20);
        Assert.Contains(Seen(b.Prove()).Findings, f => f is { Code: "burr", Step: "B1" });
    }

    [Fact]
    public void A_side_cut_and_not_deburred_is_a_burr_to_the_finder()
    {
        CourseBuilder Touched(CourseBuilder b)
        {
            b.Step("A7", "find the left end again").Touch(PlateCourse.Side(Axis.X, -25, 1));
            return b;
        }

        var cut = PlateCourse.Begin();
        cut.Step("A6", "side the left end").In("em16").TouchZ("em16", 0, 0, 0.05).Free(x: -27.88, y: 20, z: 5).Free(z: -6).Cut(y: -20).Free(z: 5);
        Assert.Contains(Seen(Touched(cut).Prove()).Findings, f => f is { Code: "burr", Grade: Grade.Caution, Step: "A7" } && f.Message.Contains("em16 cut it in A6", StringComparison.Ordinal));
        Assert.DoesNotContain(Touched(PlateCourse.Begin()).Prove().Findings, f => f.Code == "burr");
    }

    [Fact]
    public void A_move_among_work_by_hand_cannot_be_followed()
    {
        var b = PlateCourse.Begin();
        b.Holding("by hand", null).Step("h1", "move").Free(z: 3);
        Assert.Contains(Seen(b.Prove()).Findings, f => f is { Code: "follow", Grade: Grade.Halt, Step: "h1" });
    }

    [Fact]
    public void A_square_pressed_to_a_floor_has_no_room_for_its_chips()
    {
        var course = CrankCourse.Sound().Moves("A5", r => r with { Z = r.Z == -13.7 ? -6.2 : r.Z }).Each("h2", _ => null);
        Assert.Contains(Seen(Prover.Prove(course, CrankCourse.Job.Drawing, CrankCourse.Job.Stock, CrankCourse.Shop)).Findings, f => f is { Code: "order", Step: "h1" });
    }

    [Fact]
    public void A_hole_drilled_after_its_wall_is_gone_runs_off()
    {
        // The key, cut first, has its side at y 3: a hole at 4.6 has half its wall there; at 8 all of it.
        Assert.Contains(Seen(PlateCourse.Begin().Slot().Hole(4.6, spotted: false).Prove()).Findings, f => f is { Code: "order", Grade: Grade.Caution, Step: "A5" } && f.Message.Contains("wall", StringComparison.Ordinal));
        Assert.DoesNotContain(PlateCourse.Begin().Slot().Hole(8, spotted: false).Prove().Findings, f => f.Code == "order");
        Assert.DoesNotContain(PlateCourse.Begin().Hole(4.6, spotted: false).Slot().Prove().Findings, f => f.Code == "order");
    }

    [Fact]
    public void A_drill_into_a_finished_hole_leaves_its_burr_there()
    {
        // A reamed hole from the left end, 5 below the top; a hole drilled from the top breaks into it, or was there before it.
        CourseBuilder Reamed(CourseBuilder b)
        {
            b.Holding("B", PlateCourse.Setup() with { Up = "left", PartOrigin = new Place3(0, 0, -20), Fixtures = [] });
            b.Step("B1", "zero").Touch(PlateCourse.Side(Axis.X, -15, 1)).Touch(PlateCourse.Side(Axis.Y, -15, 1));
            b.Step("B2", "drill, ream").In("d4.8").TouchZ("d4.8", -5, 5, 0.05).Free(x: -5, y: 0, z: 5).Cut(z: -42).Free(z: 5);
            return b.Step("B3", "ream").In("r5").TouchZ("r5", -5, 6, 0.05).Free(x: -5, y: 0, z: 5).Cut(z: -42).Free(z: 5);
        }

        CourseBuilder Across(CourseBuilder b)
        {
            b.Holding("C", PlateCourse.Setup());
            b.Step("C1", "zero").Touch(PlateCourse.Side(Axis.X, -25, 1)).Touch(PlateCourse.Side(Axis.Y, -15, 1));
            return b.Step("C2", "drill across").In("d4").TouchZ("d4", 15, 8, 0.05).Free(x: 10, y: 0, z: 5).Cut(z: -11.7).Free(z: 5);
        }

        Assert.Contains(Seen(Across(Reamed(PlateCourse.Begin())).Prove()).Findings, f => f is { Code: "order", Grade: Grade.Caution, Step: "C2" } && f.Message.Contains("r5 has finished in B3", StringComparison.Ordinal));
        Assert.DoesNotContain(Reamed(Across(PlateCourse.Begin())).Prove().Findings, f => f.Code == "order");
    }

    [Fact]
    public void A_vise_swung_into_the_column_is_a_strike()
    {
        var shop = CrankCourse.Shop with { Mill = CrankCourse.Shop.Mill! with { Throat = 40 } };
        Assert.Contains(Seen(Prover.Prove(CrankCourse.Sound(), CrankCourse.Job.Drawing, CrankCourse.Job.Stock, shop)).Findings, f => f.Code == "strike" && f.Message.Contains("column", StringComparison.Ordinal));
    }

    private static Shop With(string name, Func<Cutter, Cutter> change)
    {
        var cutters = new SortedDictionary<string, Cutter>(StringComparer.Ordinal);
        foreach (var (key, cutter) in PlateCourse.Shop.Cutters)
        {
            cutters.Add(key, key == name ? change(cutter) : cutter);
        }

        return PlateCourse.Shop with { Cutters = cutters };
    }

    private ProofResult Seen(ProofResult result)
    {
        foreach (var f in result.Findings)
        {
            output.WriteLine(FormattableString.Invariant($"{f.Grade} {f.Code} {f.Step} {f.Move}: {f.Message} | {f.Mend} {f.Amount}"));
        }

        foreach (var s in result.Sizes)
        {
            output.WriteLine(FormattableString.Invariant($"{s.Name}: {s.Least} {s.Greatest} in {s.Lower} {s.Upper} {s.Ok}"));
        }

        return result;
    }
}
