using CsCheck;
using Handwheel.Draws;
using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

/// <summary>A line that is read without a halt is in the job: what a person typed is never left out without a word.</summary>
public sealed class NothingLostTests
{
    private static readonly string[] Heads = ["job", "unit", "metal", "shop", "make", "drawing", "design", "stock", "holding", "by"];

    private static readonly string[] Texts = [.. LanguageReferenceTests.WholeTexts, Reads.Crank, Examples.Text("friction-quadrant.handwheel"), Examples.Text("tslot-clamp.handwheel"), Examples.Text("clamp-knob.handwheel")];

    // A word or more left out of a line, or put elsewhere in it.
    private static readonly Gen<(int Text, int Line, int Token, int Many, int Put)> Slips = Gen.Select(Gen.Int[0, 10_000], Gen.Int[0, 10_000], Gen.Int[0, 40], Gen.Int[1, 4], Gen.Int[-40, 40]);

    [Fact]
    public void Each_line_of_a_shop_read_without_a_halt_is_in_the_shop()
    {
        var sound = ShopReader.Read("shop.handwheel", Examples.Text("home.handwheel")).Value!;
        List<int> named = [.. sound.Cutters.Values.Select(c => c.Where.Line), .. sound.Holders.Values.Select(h => h.Where.Line)];
        Slips.Hold(
            slip =>
            {
                var lines = Examples.Text("home.handwheel").Split('\n').ToList();
                var at = named[slip.Line % named.Count];
                lines[at - 1] = Slipped(lines[at - 1], slip);
                var read = ShopReader.Read("shop.handwheel", string.Join('\n', lines));
                Assert.True(read.Halted || read.Value!.Cutters.Values.Any(c => c.Where.Line == at) || read.Value!.Holders.Values.Any(h => h.Where.Line == at), lines[at - 1]);
            },
            times: 2000);
    }

    [Fact]
    public void Each_line_read_without_a_halt_is_in_the_job() => Slips.Hold(
        slip =>
        {
            var lines = Texts[slip.Text % Texts.Length].Split('\n').ToList();
            var bodies = Enumerable.Range(0, lines.Count).Where(i => Words(lines[i]).Count > 2 && !Heads.Contains(Words(lines[i])[0], StringComparer.Ordinal)).ToList();
            var at = bodies[slip.Line % bodies.Count];
            lines[at] = Slipped(lines[at], slip);
            var text = string.Join('\n', lines);
            var read = Reads.Job(text);
            if (!read.Halted)
            {
                var lost = Typed(text).Except(Kept(read.Value!)).Select(n => text.Split('\n')[n - 1]).ToList();
                Assert.True(lost.Count == 0, $"{string.Join('\n', lost)}\n in\n{text}");
            }
        },
        times: 4000);

    // Limits that are those of 'others' say nothing new.
    [Fact]
    public void No_number_is_read_and_left_unused()
    {
        foreach (var text in Texts.Where(t => !Reads.Job(t).Halted))
        {
            var facts = Facts.Of(Reads.Job(text).Value!);
            var lines = text.Split('\n');
            for (var i = 0; i < lines.Length; i++)
            {
                var words = Words(lines[i]);
                for (var k = 1; k < words.Count; k++)
                {
                    if (!words[k].Any(char.IsAsciiDigit) || words[k] == "+/-0.1")
                    {
                        continue;
                    }

                    var read = Reads.Job(string.Join('\n', lines.Select((l, n) => n != i ? l : "  " + string.Join(' ', words.Where((_, w) => w != k)))));
                    Assert.True(read.Halted || Facts.Of(read.Value!) != facts, $"'{words[k]}' in '{lines[i]}'");
                }
            }
        }
    }

    private static string Slipped(string line, (int Text, int Line, int Token, int Many, int Put) slip)
    {
        var words = Words(line);
        var first = 1 + (slip.Token % (words.Count - 1));
        var taken = words.GetRange(first, Math.Min(slip.Many, words.Count - first));
        words.RemoveRange(first, taken.Count);
        if (slip.Put >= 0)
        {
            words.InsertRange(1 + (slip.Put % words.Count), taken);
        }

        return "  " + string.Join(' ', words);
    }

    private static List<string> Words(string line)
    {
        var comment = line.IndexOf("--", StringComparison.Ordinal);
        return [.. (comment < 0 ? line : line[..comment]).Split([' ', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries)];
    }

    // The first lines of what stands below drawing, design, holding and by hand, but for others.
    private static SortedSet<int> Typed(string text)
    {
        var typed = new SortedSet<int>();
        var section = string.Empty;
        foreach (var statement in Sections.Statements(new SourceText("job.handwheel", text), new FindingBag()))
        {
            var word = statement.Tokens[0].Text.ToLowerInvariant();
            if (Heads.Contains(word, StringComparer.Ordinal))
            {
                section = word;
            }
            else if (section is "drawing" or "design" or "holding" or "by" && word != "others")
            {
                typed.Add(statement.Where.Line);
            }
        }

        return typed;
    }

    private static SortedSet<int> Kept(Job job) =>
    [
        .. job.Drawing.Features.Select(f => f.Where.Line),
        .. job.Drawing.Sizes.Select(s => s.Where.Line),
        .. job.Drawing.Designs.Select(d => d.Where.Line),
        .. job.Stages.SelectMany(s => s.Steps).Select(s => s.Where.Line),
    ];
}
