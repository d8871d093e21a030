namespace Handwheel.Cases.Tests;

/// <summary>Small sound jobs, one for each way of working that the examples leave out: each reads and plans without a finding, and proves without a halt, every size within its limits.</summary>
public sealed class SoundJobsTests(ITestOutputHelper output)
{
    private static readonly string Folder = Path.Combine(Courses.Root, "tests", "Handwheel.Cases.Tests", "cases", "sound");

    public static TheoryData<string> Jobs => [.. Directory.EnumerateFiles(Folder, "*.handwheel").Where(f => File.ReadAllText(f).StartsWith("job", StringComparison.Ordinal)).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_job_reads_plans_and_proves(string name) =>
        Assert.DoesNotContain(WholeJob.Sound(Folder, name, output).Findings, f => f.Code == "direction");
}
