using System.Diagnostics;
using System.Text;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

// What is no job at all: a finding, in bounded time and memory.
public sealed class BadInputTests
{
    public static TheoryData<string, string, string> Bad
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            void Add(string name, string text, string code) => data.Add(name, text, code);
            Add("empty", string.Empty, "missing");
            Add("only a mark", "\uFEFF", "missing");
            Add("only comments", "-- nothing\n-- here", "missing");
            Add("binary", "\0\u0001\u0002\uFFFD", "not-text");
            Add("one word", "hello", "unknown-word");
            Add("truncated", Reads.Crank[..700], "missing");
            Add("truncated in a line", Reads.Crank[..(Reads.Crank.IndexOf("from the bar", StringComparison.Ordinal) + 4)], "not-understood");
            Add("one long line", new string('a', 100_000), "too-much");
            Add("brackets in one line", Reads.With("face to 0", "  face to " + new string('(', 100_000)), "too-much");
            Add("brackets kept short", Reads.With("face to 0", "  face to " + new string('(', 1_900)), "too-much");
            Add("signs", Reads.With("face to 0", "  face to (" + string.Concat(Enumerable.Repeat("- ", 900)) + "1)"), "too-much");
            Add("brackets a line each", "drawing\n" + string.Concat(Enumerable.Repeat("(\n", 100_000)), "too-much");
            Add("circle of features", "drawing\n" + string.Concat(Enumerable.Range(0, 5_000).Select(i => FormattableString.Invariant($"f{i} round (f{i + 1}) at 0, 0 from 0 to 1\n"))) + "f5000 round (f0) at 0, 0 from 0 to 1\n", "circular");
            Add("same feature", "drawing\n" + string.Concat(Enumerable.Repeat("hub round 1 at 0, 0 from 0 to 1\n", 5_000)), "said-twice");
            Add("a shop for a job", Examples.Text("home.handwheel"), "not-understood");
            Add("no shop named", Reads.With("shop", string.Empty), "missing");
            Add("no unit", Reads.With("unit", string.Empty), "unit-missing");
            Add("no drawing", Reads.With("drawing", string.Empty), "unknown-word");
            Add("only a drawing", "drawing\nhub round 10 at 0, 0 from 0 to 1", "missing");
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Bad))]
    public void Gives_a_finding(string name, string text, string code)
    {
        var watch = Stopwatch.StartNew();
        var read = Reads.Job(text);
        Assert.True(read.Findings.Any(f => f.Code == code && f.Grade == Grade.Halt), $"{name}: {Reads.Said(read)}");
        Assert.True(read.Findings.Count <= ReadingLimits.Findings, name);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(5), $"{name} took {watch.Elapsed}");
        Assert.All(read.Findings, f => Assert.True(f.Where is { Line: >= 1, Column: >= 1, Length: >= 1 } && f.Mend.Length > 0 && f.Message.Length < 600, name));
    }

    [Theory]
    [InlineData("10 MB of letters", 0)]
    [InlineData("10 MB of steps", 1)]
    [InlineData("10 MB of brackets", 2)]
    [InlineData("100 000 sound steps", 3)]
    [InlineData("10 MB of sound features", 4)]
    [InlineData("10 MB of names in wide script", 5)]
    public void Ten_megabytes_stay_bounded(string name, int kind)
    {
        var line = kind switch { 0 => new string('x', 1_000) + "\n", 1 => "  drill nothing through with d4\n", 2 => new string('(', 1_000) + "\n", 3 => "  drill pilot through with d4\n", 5 => new string('\u6E2C', 300) + " e\u0301\n", _ => string.Empty };
        var text = new StringBuilder(Reads.Crank[..Reads.Crank.IndexOf("by hand", StringComparison.Ordinal)]);
        for (var i = 0; text.Length < 10_000_000 && (kind != 3 || i < 100_000); i++)
        {
            text.Append(kind == 4 ? FormattableString.Invariant($"p{i} cut round 1 at {i % 100}, {i / 100} through\n") : line);
        }

        var all = kind == 4 ? "drawing\n" + text : text.ToString();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var watch = Stopwatch.StartNew();
        var read = Reads.Job(all);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(10), $"{name} took {watch.Elapsed}");
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 1_500_000_000, name + " allocated too much");
        Assert.True(read.Halted, name);
        Assert.True(read.Findings.Count <= ReadingLimits.Findings);
        Assert.Equal(read.Findings.Count == ReadingLimits.Findings, read.Findings[^1].Message.Contains("reading stopped", StringComparison.Ordinal));
        Assert.True(kind is 3 || read.Findings.Count == ReadingLimits.Findings, name);
        TestContext.Current.SendDiagnosticMessage("{0}: {1} ms, {2} MB", name, watch.ElapsedMilliseconds, (GC.GetAllocatedBytesForCurrentThread() - before) / 1_000_000);
    }

    [Fact]
    public void Line_endings_may_be_mixed()
    {
        var lines = Reads.Crank.Split('\n');
        var mixed = string.Concat(lines.Select((l, i) => l + (i % 3 == 0 ? "\r\n" : i % 3 == 1 ? "\n" : "\r")));
        Assert.Equal(string.Empty, Reads.Said(Reads.Job("\uFEFF" + mixed.Replace("  ", "\t", StringComparison.Ordinal))));
    }

    [Fact]
    public void Names_in_any_script_read()
    {
        var job = Reads.Sound(Reads.Crank.Replace("hub", "\u8F6E\u6BC2", StringComparison.Ordinal).Replace("eye", "\u0433\u043B\u0430\u0437 \u043E\u0434\u0438\u043D", StringComparison.Ordinal).Replace("pilot", "vorbohr\u00FCng", StringComparison.Ordinal));
        Assert.Equal("\u0433\u043B\u0430\u0437 \u043E\u0434\u0438\u043D", job.Drawing.Features[1].Name);
    }
}
