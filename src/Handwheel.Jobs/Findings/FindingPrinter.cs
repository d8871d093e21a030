using System.Globalization;
using System.Text;
using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Findings;

/// <summary>Prints a finding: place, grade and code; the line with the place marked; what is wrong and what would mend it.</summary>
public static class FindingPrinter
{
    private const int MostShown = 160;

    /// <summary>The finding as lines, ending in a line feed.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="lineOf">The text of a line of a document, by file name and line from 1; null where it is not known.</param>
    /// <returns><c>file:line:column  grade  code</c>, the line, its mark, sentences, mend.</returns>
    public static string Print(Finding finding, Func<string, int, string?> lineOf)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(lineOf);
        var text = new StringBuilder();
        if (finding.Where is { } where)
        {
            text.Append(CultureInfo.InvariantCulture, $"{where}  ");
        }

        text.Append(CultureInfo.InvariantCulture, $"{GradeText(finding.Grade)}  {finding.Code}\n");
        if (finding.Where is { } place && lineOf(place.File, place.Line) is { } line)
        {
            Mark(text, line, place);
        }

        text.Append("  ").Append(finding.Message).Append('\n');
        if (finding.Mend.Length > 0)
        {
            text.Append("  ").Append(finding.Mend).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>A grade as a word.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns><c>halt</c>, <c>caution</c> or <c>note</c>.</returns>
    public static string GradeText(Grade grade) => grade switch
    {
        Grade.Halt => "halt",
        Grade.Caution => "caution",
        _ => "note",
    };

    // The line without its indent, cut to what a screen shows around the place, tabs and control signs as spaces; then carets under the place.
    private static void Mark(StringBuilder text, string line, SourceSpan place)
    {
        var elements = new StringInfo(line);
        var count = elements.LengthInTextElements;
        var indent = line.Length - line.TrimStart().Length;
        var from = Math.Min(indent, place.Column - 1);
        var end = place.Column - 1 + place.Length;
        if (end - from > MostShown)
        {
            from = Math.Max(from, place.Column - 1 - (MostShown / 2));
        }

        var length = Math.Min(MostShown, count - from);
        var shown = length > 0 ? elements.SubstringByTextElements(from, length) : string.Empty;
        text.Append("  ").Append(string.Concat(shown.Select(c => char.IsControl(c) ? ' ' : c)).TrimEnd()).Append('\n');
        var carets = Math.Max(1, Math.Min(place.Length, MostShown - (place.Column - 1 - from)));
        text.Append(' ', 2 + place.Column - 1 - from).Append('^', carets).Append('\n');
    }
}
