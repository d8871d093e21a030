using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

public sealed class ExampleJobsTests
{
    [Theory]
    [InlineData("crank.handwheel", 3)]
    [InlineData("clamp-knob.handwheel", 4)]
    [InlineData("tslot-clamp.handwheel", 11)]
    [InlineData("friction-quadrant.handwheel", 3)]
    [InlineData("plain-dial.handwheel", 4)]
    public void Every_example_reads_without_a_finding(string name, int stages)
    {
        var read = JobReader.Read(name, Examples.Text(name), Examples.Open);
        Assert.Equal(string.Empty, Reads.Said(read));
        Assert.True(read.Value!.Stages.Count >= stages, name);
    }
}
