using Handwheel.Trade.Asking;

namespace Handwheel.Trade.Tests;

/// <summary>The README and the page of sources list what can be asked, in the code's own words.</summary>
public sealed class ReferencePageTests
{
    [Theory]
    [InlineData("README.md")]
    [InlineData("docs/reference.md")]
    public void The_table_of_topics_is_the_codes_own_list(string page)
    {
        var lines = File.ReadAllLines(Path.Combine(Root(), page));
        var head = Array.IndexOf(lines, TopicLine.Head.Split('\n')[0]);
        Assert.True(head >= 0, $"{page} has no table of topics");
        Assert.Equal(Asker.Topics.Select(t => t.Row), lines.Skip(head + 2).TakeWhile(l => l.StartsWith('|')));
    }

    internal static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Handwheel.slnx")))
        {
            folder = folder.Parent;
        }

        return folder!.FullName;
    }
}
