using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Tests.Crank;

/// <summary>What the proof says of a spindle that runs, or stands, when it should not (common practice, no source).</summary>
public sealed class SpindleTests
{
    // The saw comes back the way it was fed: X 2 to -61 at the same height and Y, along the web it has just left.
    [Fact]
    public void A_saw_drawn_back_through_its_kerf_is_cautioned_unless_it_is_stopped()
    {
        Assert.DoesNotContain(Proved(CrankCourse.Sound()), f => f.Code == "direction" && f.Step == "B4");
        var back = CrankCourse.Sound().Each("B4", e => e is Move { To: { X: 2, Z: -13.1, Y: -80 } } m ? m with { To = m.To with { X = -61, Y = -27.8 } } : e);
        var found = Assert.Single(Proved(back), f => f.Code == "direction");
        Assert.Equal((Grade.Caution, "B4"), (found.Grade, found.Step));
        Assert.Contains("its own kerf", found.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Proved(After(back, "B4", m => m.Cutting, new Spindle(0))), f => f.Code == "direction");
    }

    [Fact]
    public void A_cutter_pushed_in_with_the_spindle_stopped_halts()
    {
        var found = Assert.Single(Proved(CrankCourse.Sound().Before("A12", new Spindle(0))), f => f.Grade == Grade.Halt);
        Assert.Equal(("spindle", "A12"), (found.Code, found.Step));
        Assert.True(found.Amount > 0.1, found.Message);
        Assert.DoesNotContain(Proved(CrankCourse.Sound().Before("A12", new Spindle(900))), f => f.Grade == Grade.Halt && f.Step == "A12");
    }

    [Theory]
    [InlineData("A10", "hub across is measured")]
    [InlineData("h1", "hands are at the work (press)")]
    [InlineData("A8", "em10 is put in")]
    public void Hands_at_the_work_while_it_turns_halt(string step, string doing)
    {
        var course = step == "A10" ? CrankCourse.Sound().Before(step, new Measured("hub across", 10.38, true)) : CrankCourse.Sound();
        var found = Assert.Single(Proved(course.Before(step, new Spindle(900))), f => f.Grade == Grade.Halt);
        Assert.Equal(("spindle", step), (found.Code, found.Step));
        Assert.StartsWith(doing, found.Message, StringComparison.OrdinalIgnoreCase);
    }

    private static IReadOnlyList<Finding> Proved(Course course) => Prover.Prove(course, CrankCourse.Job.Drawing, CrankCourse.Job.Stock, CrankCourse.Shop).Findings;

    private static Course After(Course course, string step, Func<Move, bool> which, CourseEvent added) => course with
    {
        Stages = [.. course.Stages.Select(s => s with
        {
            Steps = [.. s.Steps.Select(p => p.Id != step ? p : p with { Events = [.. p.Events.SelectMany(e => e is Move m && which(m) ? [e, added] : new[] { e })] })],
        })],
    };
}
