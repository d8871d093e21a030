using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

internal static class Reads
{
    public static string Crank => Examples.Text("crank.handwheel");

    public static Read<Job> Job(string text) => JobReader.Read("job.handwheel", text, Examples.Open);

    // The crank with one line (told by its start) exchanged for others.
    public static string With(string starts, params string[] lines)
    {
        var all = Crank.Split('\n').ToList();
        var at = all.FindIndex(l => l.TrimStart().StartsWith(starts, StringComparison.Ordinal));
        Assert.True(at >= 0, starts);
        all.RemoveAt(at);
        all.InsertRange(at, lines);
        return string.Join('\n', all);
    }

    public static string Said<T>(Read<T> read)
        where T : class =>
        string.Concat(read.Findings.Select(f => FindingPrinter.Print(f, (file, line) => read.Sources.FirstOrDefault(s => s.FileName == file)?.LineAt(line))));

    public static Job Sound(string text)
    {
        var read = Job(text);
        Assert.Equal(string.Empty, Said(read));
        return read.Value!;
    }

    // The one finding of a text, as code and the text its place marks.
    public static Finding Only(string text, string code, string marked)
    {
        var read = Job(text);
        var finding = Assert.Single(read.Findings);
        Assert.True(finding.Code == code, Said(read));
        Assert.Equal(marked, Marked(read, finding));
        return finding;
    }

    public static string Marked<T>(Read<T> read, Finding finding)
        where T : class
    {
        var where = finding.Where!.Value;
        var line = read.Sources.First(s => s.FileName == where.File).LineAt(where.Line);
        return where.Column - 1 >= line.Length ? string.Empty : line.Substring(where.Column - 1, Math.Min(where.Length, line.Length - where.Column + 1));
    }
}
