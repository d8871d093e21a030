using System.Reflection;
using System.Text.RegularExpressions;
using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Tests.Readers;

// Every code of reading has its page, and the page's spoiled case gives it while the sound one gives nothing.
public sealed partial class FindingPageTests
{
    private static string Folder => Path.Combine(Examples.Folder, "docs", "findings");

    public static TheoryData<string> Codes => [.. Made().Select(f => f.Code).Distinct().Order(StringComparer.Ordinal)];

    [Fact]
    public void Codes_belong_to_one_method_each()
    {
        var codes = Made().Select(f => f.Code).ToList();
        Assert.Equal(codes.Distinct().Count(), codes.Count);
        Assert.All(codes, c => Assert.Matches("^[a-z]+(-[a-z]+)?$", c));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Code_has_a_page_that_is_true(string code)
    {
        // Made of a moves file; its page stands with the proof's.
        if (code == "moves-file")
        {
            return;
        }

        var page = File.ReadAllText(Path.Combine(Folder, code + ".md"));
        Assert.StartsWith("# " + code + "\n", page, StringComparison.Ordinal);
        var line = LineOf().Match(page);
        if (!line.Success)
        {
            Assert.Contains(code, new[] { "not-text", "too-much" });
            return;
        }

        var starts = line.Groups["line"].Value;
        var spoiled = Reads.Job(Reads.With(starts, Case("spoiled", page)));
        Assert.True(spoiled.Findings.Any(f => f.Code == code), Reads.Said(spoiled));
        Assert.Equal(string.Empty, Reads.Said(Reads.Job(Reads.With(starts, Case("sound", page)))));
    }

    private static string Case(string kind, string page) => Regex.Match(page, "```handwheel " + kind + "\n(?<text>.*?)\n```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["text"].Value;

    // Each method of the reading catalogue called with plain values.
    private static IEnumerable<Finding> Made()
    {
        foreach (var method in typeof(FindingCatalogue).GetMethods(BindingFlags.Public | BindingFlags.Static)
            .Where(m => m.ReturnType == typeof(Finding) && m.GetParameters() is [{ ParameterType: var first, Name: "where" }, ..] && first == typeof(SourceSpan)))
        {
            var values = method.GetParameters().Select(p => p.ParameterType == typeof(SourceSpan) ? new SourceSpan("f", 1, 1, 1) : p.ParameterType == typeof(double) ? 1.0 : (object?)"x").ToArray();
            yield return (Finding)method.Invoke(null, values)!;
        }
    }

    [GeneratedRegex("<!-- line: (?<line>.*?) -->", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex LineOf();
}
