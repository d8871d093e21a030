using Handwheel.Jobs.Findings;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Jobs;

/// <summary>The example jobs, cut as a machinist worked them out by hand: none halts, every stated size comes out.</summary>
public sealed class HandCourseTests(ITestOutputHelper output)
{
    [Fact]
    public void The_knob_cut_by_hand_worked_readings_proves() => Sound("clamp-knob.handwheel", KnobCourse.Build, "h1");

    [Fact]
    public void The_quadrant_cut_by_hand_worked_readings_proves() => Sound("friction-quadrant.handwheel", QuadrantCourse.Build, "h1");

    [Fact]
    public void The_end_plate_cut_on_plain_dials_proves() => Sound("plain-dial.handwheel", EndPlateCourse.Build, null);

    [Fact]
    public void The_clamp_cut_by_hand_worked_readings_proves() => Sound("tslot-clamp.handwheel", ClampCourse.Build, null);

    private void Sound(string name, Func<CourseBuilder, CourseBuilder> build, string? releaseAt)
    {
        var job = HandCourse.Read(name);
        var result = HandCourse.Prove(build(new CourseBuilder()), job, releaseAt, output);
        Assert.DoesNotContain(result.Findings, f => f.Grade == Grade.Halt);
        Assert.All(result.Sizes, s => Assert.True(s.Ok, s.Name));
    }
}
