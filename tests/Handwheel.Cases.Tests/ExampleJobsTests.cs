namespace Handwheel.Cases.Tests;

/// <summary>Every job of the examples, whole: it reads and plans without a finding, and its moves prove without a halt, every size within its limits.</summary>
public sealed class ExampleJobsTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("crank.handwheel", "h3")]
    [InlineData("clamp-knob.handwheel", "h1")]
    [InlineData("friction-quadrant.handwheel", "h1")]
    [InlineData("plain-dial.handwheel", null)]
    [InlineData("tslot-clamp.handwheel", null)]
    public void A_job_reads_plans_and_proves(string name, string? release) =>
        Assert.Equal(release, WholeJob.Sound(Path.Combine(Courses.Root, "examples"), name, output).Release.Step);
}
