using System.Reflection;
using System.Xml.Linq;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;

namespace Handwheel.Proof.Tests;

/// <summary>Every code the proof gives has a page with a picture of a sound and a spoiled case, and every finding a mend and a rule.</summary>
public sealed class FindingPageTests
{
    private static readonly string Folder = Path.Combine(Root(), "docs", "findings");

    public static TheoryData<string> Codes => [.. Made().Select(f => f.Code).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Code_has_a_page_and_a_picture(string code)
    {
        var page = File.ReadAllText(Path.Combine(Folder, code + ".md"));
        Assert.StartsWith("# " + code + "\n", page, StringComparison.Ordinal);
        Assert.Contains("**To mend it.**", page, StringComparison.Ordinal);
        if (code != "stock-short")
        {
            Assert.Contains($"({code}.svg)", page, StringComparison.Ordinal);
            var picture = XDocument.Load(Path.Combine(Folder, code + ".svg"));
            var said = picture.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value).ToList();
            Assert.Contains("sound", said);
            Assert.Contains("spoiled", said);
        }
    }

    [Fact]
    public void Every_finding_says_its_mend_and_its_rule()
    {
        Assert.All(Made(), f =>
        {
            Assert.Matches("^[a-z]+(-[a-z]+)*$", f.Code);
            Assert.True(f.Mend.Length > 10, f.Code);
            Assert.False(string.IsNullOrEmpty(f.Rule), f.Code);
            Assert.EndsWith(".", f.Message, StringComparison.Ordinal);
        });
        Assert.True(Made().Select(f => f.Code).Distinct(StringComparer.Ordinal).Count() >= 23);
    }

    private static IEnumerable<Finding> Made()
    {
        foreach (var method in typeof(FindingCatalogue).GetMethods(BindingFlags.Public | BindingFlags.Static)
            .Where(m => m.ReturnType == typeof(Finding) && m.GetParameters() is [{ ParameterType: var first }, ..] && first == typeof(FindingPlace)))
        {
            yield return (Finding)method.Invoke(null, [.. method.GetParameters().Select(Plain)])!;
        }
    }

    private static object? Plain(ParameterInfo p) => p.ParameterType switch
    {
        var t when t == typeof(FindingPlace) => new FindingPlace("A1", null, 3),
        var t when t == typeof(LengthUnit) => LengthUnit.Millimetre,
        var t when t == typeof(Grade) => Grade.Halt,
        var t when t == typeof(bool) => false,
        var t when t == typeof(double) || t == typeof(double?) => 1.0,
        _ when p.Name == "mend" => "Do it in the other order.",
        _ => "thing",
    };

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Handwheel.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
