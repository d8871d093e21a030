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

    // Each page of reading shows its sound and its spoiled lines, drawn from the page itself and marked where the reader marks them.
    // With HANDWHEEL_DRAW_PAGES set the pictures are written anew.
    [Theory]
    [MemberData(nameof(Codes))]
    public void Code_has_a_picture_drawn_from_its_page(string code)
    {
        if (code == "moves-file")
        {
            return;
        }

        var page = File.ReadAllText(Path.Combine(Folder, code + ".md"));
        Assert.Contains($"({code}.svg)", page, StringComparison.Ordinal);
        var drawn = Picture(code, page);
        var file = Path.Combine(Folder, code + ".svg");
        if (Environment.GetEnvironmentVariable("HANDWHEEL_DRAW_PAGES") is not null)
        {
            File.WriteAllText(file, drawn);
        }

        Assert.Equal(drawn, File.ReadAllText(file));
        var said = System.Xml.Linq.XDocument.Parse(drawn).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value).ToList();
        Assert.Contains("sound", said);
        Assert.Contains("spoiled", said);
    }

    private static string Picture(string code, string page)
    {
        var line = LineOf().Match(page);
        if (line.Success)
        {
            var spoiled = Case("spoiled", page);
            return FindingPictures.Of(code, Case("sound", page), spoiled, Reads.Job(Reads.With(line.Groups["line"].Value, spoiled)));
        }

        // Spoiled by what no page can show as lines: a byte that is no character, more than is taken on.
        const string sound = "  face to 0 with em10";
        var text = code == "not-text" ? sound + "\0" : "  face to " + new string('(', 45) + "0" + new string(')', 45) + " with em10";
        var read = Reads.Job(Reads.With("face to 0", text));
        var finding = read.Findings.First(f => f.Code == code);
        var shown = text.Replace("\0", "\uFFFD", StringComparison.Ordinal);
        return FindingPictures.Of(code, [sound], [shown], 0, finding.Where!.Value.Column, Math.Min(finding.Where.Value.Length, shown.Length));
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
