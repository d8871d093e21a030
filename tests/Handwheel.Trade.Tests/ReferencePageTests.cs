using Handwheel.Trade.Asking;

namespace Handwheel.Trade.Tests;

/// <summary>The page of sources lists what can be asked.</summary>
public sealed class ReferencePageTests
{
    [Fact]
    public void Every_topic_stands_on_the_page_with_its_source_and_example()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Handwheel.slnx")))
        {
            folder = folder.Parent;
        }

        var page = File.ReadAllText(Path.Combine(folder!.FullName, "docs", "reference.md"));
        foreach (var topic in Asker.Topics)
        {
            Assert.Contains($"| {topic.Name} | {topic.About} | {topic.Sources} |", page, StringComparison.Ordinal);
            Assert.Contains($"`ask {topic.Example}`", page, StringComparison.Ordinal);
        }
    }
}
