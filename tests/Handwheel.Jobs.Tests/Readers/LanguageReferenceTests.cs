using System.Text.RegularExpressions;
using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

// Every example of docs/language.md reads, and reads as the same job when tidied.
public sealed partial class LanguageReferenceTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Examples.Folder, "docs", "language.md"));

    public static TheoryData<string, string> Snippets
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (Match match in Fence().Matches(Page))
            {
                data.Add(match.Groups["kind"].Value, match.Groups["text"].Value);
            }

            return data;
        }
    }

    /// <summary>Each example that is sound, as a job of its own.</summary>
    internal static IEnumerable<string> WholeTexts => Snippets.Select(s => s.Data).Where(s => s.Item1 != "shop" && !s.Item1.StartsWith("finding ", StringComparison.Ordinal)).Select(s => Whole(s.Item1, s.Item2));

    private static string Sample => Snippets.First(s => s.Data.Item1 == "sample").Data.Item2;

    private const string Head = "job t\nunit mm\nmetal steel\nshop home.handwheel\n";
    private const string Wide = "stock bar 300 wide, 100 high, 400 long\n  x from -200\n  z top 50\n";
    private const string Held = "holding A in step clamps\n  zero x on middle of stock\n";

    [Fact]
    public void There_are_examples() => Assert.True(Snippets.Count > 25);

    [Theory]
    [MemberData(nameof(Snippets))]
    public void Example_reads(string kind, string text)
    {
        if (kind == "shop")
        {
            var shop = ShopReader.Read("shop.handwheel", text);
            Assert.Equal(string.Empty, Reads.Said(shop));
            return;
        }

        var read = Reads.Job(Whole(kind, text));
        if (kind.StartsWith("finding ", StringComparison.Ordinal))
        {
            Assert.Equal(kind["finding ".Length..], Assert.Single(read.Findings).Code);
            return;
        }

        Assert.True(read.Findings.Count == 0, Whole(kind, text) + Reads.Said(read));
    }

    private static string Whole(string kind, string text) => kind switch
    {
        "whole" => text,
        "drawing" or "sample" => Head + "drawing\n" + text + (text.Contains("others", StringComparison.Ordinal) ? string.Empty : "  others +/-0.1\n") + Wide + Held,
        "stock" => Head + "drawing\n  dot round 6 at 10, 0 from -3 to -1\n  others +/-0.1\n" + text + Held,
        "holding" => Head + "drawing\n  dot round 6 at 10, 0 from -3 to -1\n  others +/-0.1\nstock bar 14 wide, 30 high, 48 long\n  x from -9\n  z top 0.5\n" + text + "  zero x on middle of stock\n",
        "design" => Head + "drawing\n" + Sample + "  others +/-0.1\ndesign\n" + text + Wide + Held,
        "hand" => Head + "drawing\n" + Sample + "  others +/-0.1\n" + Wide + Held + "by hand\n" + text,
        _ => Head + "drawing\n" + Sample + "  others +/-0.1\n" + Wide + "holding A in step clamps\n" + text,
    };

    [GeneratedRegex("^```handwheel (?<kind>[^\n]+)\n(?<text>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Fence();
}
