using System.Globalization;
using System.Text;
using Handwheel.Jobs.Reading;

namespace Handwheel.Jobs.Tests.Readers;

// The picture of a page: its sound and its spoiled lines as typed, the spoiled one with the place that the reader really marks.
internal static class FindingPictures
{
    private const double Wide = 4.82;
    private const int Row = 12;

    public static string Of(string code, string sound, string spoiled, Read<Job> read)
    {
        var lines = spoiled.Split('\n');
        var finding = read.Findings.First(f => f.Code == code);
        var where = finding.Where!.Value;
        var source = read.Sources.First(s => s.FileName == where.File);
        var marked = Array.FindIndex(lines, l => l == source.LineAt(where.Line));
        if (marked < 0)
        {
            // Marked elsewhere: that line is shown too.
            lines = [.. lines, source.LineAt(where.Line)];
            marked = lines.Length - 1;
        }

        return Of(code, sound.Split('\n'), lines, marked, where.Column, where.Length);
    }

    public static string Of(string code, string[] sound, string[] spoiled, int marked, int column, int length)
    {
        var wide = Math.Max(300, (int)(Wide * sound.Concat(spoiled).Max(l => l.Length)) + 24);
        var high = 20 + (Row * sound.Length) + 26 + (Row * spoiled.Length) + 4;
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {wide} {high}\" width=\"{2 * wide}\" height=\"{2 * high}\" role=\"img\" aria-label=\"{code}: sound above, spoiled below\">\n");
        svg.Append(CultureInfo.InvariantCulture, $"<rect width=\"{wide}\" height=\"{high}\" fill=\"#fff\"/>\n");
        Text(svg, 8, 11, 8, "#222", "sound", false);
        var y = 20;
        foreach (var line in sound)
        {
            Text(svg, 12, y + 4, 8, "#222", line, true);
            y += Row;
        }

        svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"8\" y1=\"{y}\" x2=\"{wide - 8}\" y2=\"{y}\" stroke=\"#999\"/>\n");
        Text(svg, 8, y + 12, 8, "#b3261e", "spoiled", false);
        y += 22;
        for (var i = 0; i < spoiled.Length; i++, y += Row)
        {
            if (i == marked)
            {
                var (x, w) = (12 + (Wide * (column - 1)), Wide * Math.Max(1, Math.Min(length, spoiled[i].Length - column + 1)));
                svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{x:0.##}\" y=\"{y - 5}\" width=\"{w:0.##}\" height=\"11\" fill=\"#f6d5d2\"/>\n<path d=\"M{x:0.##} {y + 7} h{w:0.##}\" stroke=\"#b3261e\" stroke-width=\"1.2\"/>\n");
            }

            Text(svg, 12, y + 4, 8, "#222", spoiled[i], true);
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Text(StringBuilder svg, double x, double y, double size, string fill, string said, bool typed) =>
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x}\" y=\"{y}\" font-size=\"{size}\" fill=\"{fill}\" font-family=\"{(typed ? "monospace" : "sans-serif")}\"{(typed ? FormattableString.Invariant($" textLength=\"{Wide * Math.Max(1, said.Length):0.##}\"") : string.Empty)} xml:space=\"preserve\">{System.Security.SecurityElement.Escape(said)}</text>\n");
}
