using System.Xml.Linq;

namespace Handwheel.Quantities.Tests;

/// <summary>Project references run one way, as docs/architecture.md draws them.</summary>
public sealed class ProjectArrowsTests
{
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Quantities"] = [],
        ["Solids"] = ["Quantities"],
        ["Trade"] = ["Quantities"],
        ["Jobs"] = ["Quantities", "Solids", "Trade"],
        ["Plan"] = ["Jobs", "Quantities", "Solids", "Trade"],
        ["Proof"] = ["Jobs", "Quantities", "Solids", "Trade"],
        ["Sheets"] = ["Jobs", "Plan", "Proof", "Quantities", "Solids"],
        ["Cli"] = ["Jobs", "Plan", "Proof", "Quantities", "Sheets", "Solids", "Trade"],
    };

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Handwheel.slnx")))
        {
            folder = folder.Parent;
        }

        return folder!.FullName;
    }

    [Fact]
    public void Every_project_references_only_what_stands_above_it()
    {
        var found = new SortedDictionary<string, string[]>(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Root(), "src"), "*.csproj", SearchOption.AllDirectories))
        {
            var name = Path.GetFileNameWithoutExtension(file)["Handwheel.".Length..];
            found[name] = [.. XDocument.Load(file).Descendants("ProjectReference")
                .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))["Handwheel.".Length..])
                .Order(StringComparer.Ordinal)];
        }

        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), found.Keys);
        foreach (var (name, references) in found)
        {
            Assert.All(references, r => Assert.Contains(r, Allowed[name]));
        }
    }
}
