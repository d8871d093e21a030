using System.Globalization;
using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Reading;

/// <summary>A document as lines, with places counted in text elements as a person sees them. Immutable to its users.</summary>
public sealed class SourceText
{
    private readonly string[] lines;
    private int[]? starts;
    private int startsOf = -1;

    /// <summary>Splits a text at every kind of line ending; a byte order mark is left out.</summary>
    /// <param name="fileName">The name findings carry, folders taken off.</param>
    /// <param name="text">The text.</param>
    public SourceText(string fileName, string text)
    {
        ArgumentNullException.ThrowIfNull(fileName);
        ArgumentNullException.ThrowIfNull(text);
        FileName = fileName[(fileName.LastIndexOfAny(['/', '\\']) + 1)..];
        Cut = text.Length > ReadingLimits.Characters;
        var kept = Cut ? text[..ReadingLimits.Characters] : text;
        lines = kept.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n', ReadingLimits.Lines + 1);
        if (lines.Length > ReadingLimits.Lines)
        {
            Cut = Cut || lines[^1].Length > 0;
            lines = lines[..ReadingLimits.Lines];
        }
    }

    /// <summary>The file's name without folders.</summary>
    public string FileName { get; }

    /// <summary>The lines without their endings.</summary>
    public IReadOnlyList<string> Lines => lines;

    /// <summary>Whether the text was longer than the reader takes, so that its end is missing.</summary>
    public bool Cut { get; }

    /// <summary>The text of a line.</summary>
    /// <param name="line">The line, from 1.</param>
    /// <returns>Its text; empty past the end.</returns>
    public string LineAt(int line) => line >= 1 && line <= lines.Length ? lines[line - 1] : string.Empty;

    internal SourceSpan Span(int line, int start, int length)
    {
        var column = ElementAt(line, start);
        var end = ElementAt(line, start + Math.Max(length, 0));
        return new SourceSpan(FileName, line, column + 1, Math.Max(end - column, 1));
    }

    private int ElementAt(int line, int offset)
    {
        var text = LineAt(line);
        if (startsOf != line)
        {
            starts = Plain(text) ? null : StringInfo.ParseCombiningCharacters(text);
            startsOf = line;
        }

        if (starts is null)
        {
            return offset;
        }

        if (offset >= text.Length)
        {
            return starts.Length;
        }

        var found = Array.BinarySearch(starts, offset);
        return found >= 0 ? found : ~found - 1;
    }

    private static bool Plain(string text) => text.AsSpan().IndexOfAnyExceptInRange('\u0001', '\u02FF') < 0;
}
