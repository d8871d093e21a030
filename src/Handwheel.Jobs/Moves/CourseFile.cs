using System.Globalization;
using System.Text.Json;
using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves.Files;

namespace Handwheel.Jobs.Moves;

/// <summary>
/// A course as a file (JSON, RFC 8259): what <c>check --write-moves</c> writes and <c>check --moves</c> proves. Millimetres and degrees, holding frame,
/// before any printed flip. Numbers are written as the shortest text that reads back to the same bits.
/// </summary>
public static class CourseFile
{
    /// <summary>The greatest length of a moves file read, characters.</summary>
    public const int LongestText = 64 * 1024 * 1024;

    /// <summary>The course as text, the same bytes every time, ending in a line feed.</summary>
    /// <param name="course">The course; its numbers finite.</param>
    /// <returns>JSON.</returns>
    /// <exception cref="ArgumentException">A number of the course is not finite.</exception>
    public static string Write(Course course) =>
        JsonSerializer.Serialize(new CourseDocument(CourseDocument.FormatName, CourseDocument.CurrentVersion, course), CourseJson.Default.CourseDocument) + "\n";

    /// <summary>Reads a moves file. A person&#39;s mistake never throws.</summary>
    /// <param name="fileName">The file&#39;s name for findings, without folders.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The course, null where it could not be read, and what was found.</returns>
    public static (Course? Course, IReadOnlyList<Finding> Findings) Read(string fileName, string text)
    {
        if (text.Length > LongestText)
        {
            return Refused(fileName, text, 0, 0, string.Create(CultureInfo.InvariantCulture, $"it is {text.Length} characters long; a moves file has at most {LongestText}"));
        }

        try
        {
            var document = JsonSerializer.Deserialize(text, CourseJson.Default.CourseDocument);
            return document is null ? Refused(fileName, text, 0, 0, "nothing stands in it") : Checked(fileName, document);
        }
        catch (JsonException problem)
        {
            return Refused(fileName, text, problem.LineNumber ?? 0, problem.BytePositionInLine ?? 0, Told(problem));
        }
    }

    private static (Course? Course, IReadOnlyList<Finding> Findings) Checked(string fileName, CourseDocument document)
    {
        var top = new SourceSpan(fileName, 1, 1, 1);
        if (!string.Equals(document.Format, CourseDocument.FormatName, StringComparison.Ordinal))
        {
            return (null, [FindingCatalogue.MovesFileUnread(top, $"its format is \"{document.Format}\"; \"{CourseDocument.FormatName}\" was expected")]);
        }

        if (document.Version != CourseDocument.CurrentVersion)
        {
            return (null, [FindingCatalogue.MovesFileUnread(
                top,
                string.Create(CultureInfo.InvariantCulture, $"its version is {document.Version}; this program reads version {CourseDocument.CurrentVersion}"))]);
        }

        var course = CourseDefaults.Fill(document.Course);
        var findings = CourseRules.Check(top, course);
        return (findings.Count == 0 ? course : null, findings);
    }

    private static (Course? Course, IReadOnlyList<Finding> Findings) Refused(string fileName, string text, long line, long bytes, string why) =>
        (null, [FindingCatalogue.MovesFileUnread(new SourceSpan(fileName, (int)line + 1, Column(text, line, bytes), 1), why)]);

    private static string Told(JsonException problem)
    {
        var message = problem.Message;
        foreach (var marker in new[] { " Path: ", " LineNumber: " })
        {
            var at = message.IndexOf(marker, StringComparison.Ordinal);
            message = at >= 0 ? message[..at] : message;
        }

        message = message.TrimEnd('.', ' ');
        var quoted = message.IndexOf('\'', StringComparison.Ordinal);
        var last = message.LastIndexOf(": ", StringComparison.Ordinal);
        var plain = message switch
        {
            _ when message.Contains("could not be converted", StringComparison.Ordinal) => "what stands here is not what belongs in this place",
            _ when message.Contains("missing required properties", StringComparison.Ordinal) && last >= 0 => "missing here: " + message[(last + 2)..],
            _ when message.Contains("could not be mapped", StringComparison.Ordinal) && quoted >= 0 =>
                $"a moves file knows no {message[quoted..(message.IndexOf('\'', quoted + 1) + 1)]} here",
            _ => message,
        };
        return string.IsNullOrEmpty(problem.Path) ? plain : $"{plain} (at {problem.Path})";
    }

    private static int Column(string text, long line, long bytes)
    {
        var start = 0;
        for (var passed = 0L; passed < line; passed++)
        {
            var feed = text.IndexOf('\n', start);
            if (feed < 0)
            {
                break;
            }

            start = feed + 1;
        }

        var end = text.IndexOf('\n', start);
        var span = text.AsSpan(start, (end < 0 ? text.Length : end) - start);
        var column = 1;
        foreach (var rune in span.EnumerateRunes())
        {
            bytes -= rune.Utf8SequenceLength;
            if (bytes < 0)
            {
                break;
            }

            column++;
        }

        return column;
    }
}
