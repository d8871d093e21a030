using System.Text.RegularExpressions;

namespace Handwheel.Trade.Asking;

/// <summary>Sections as they are written: <c>50x10</c>, <c>15x3</c>, <c>100x50x40</c>.</summary>
internal static partial class Sections
{
    /// <summary>Sets the sizes of a section apart, where the question is of a bar, a strip or a block; a thread's or a key's x stays.</summary>
    /// <param name="text">A question.</param>
    /// <returns>The question, with blanks in place of the x.</returns>
    internal static string Apart(string text) => text.Length <= TokenReader.Longest && Of().IsMatch(text) ? Times().Replace(text, " ") : text;

    /// <summary>Writes "number 8 screw" as #8 and sets a size and its zone apart, as in 7h6.</summary>
    /// <param name="text">A question.</param>
    /// <returns>The question.</returns>
    internal static string Spelled(string text) =>
        text.Length > TokenReader.Longest ? text : Zone().Replace(Numbered().Replace(text, "#${n}"), "${size} ${zone}");

    [GeneratedRegex("\\b(?:number|no\\.?) ?(?<n>1[0-2]|[0-9])(?= (?:screw|bolt|machine|socket|cap|flat|pan|button|tap|stud|nut|clearance)s?\\b)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Numbered();

    // A zone of ISO 286 written onto its size; not x, which stands for times, nor e, which may be a power of ten.
    [GeneratedRegex("(?<=^| )(?<size>[0-9]+\\.?[0-9]*)(?<zone>(?:[a-df-hjkmnpr-vyz]|[A-DF-HJKMNPR-VYZ]|cd|CD|ef|EF|fg|FG|js|JS|za|zb|zc|ZA|ZB|ZC)(?:1[0-8]|[1-9])(?:/[a-zA-Z]{1,2}[0-9]{1,2})?)(?= |$)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Zone();

    [GeneratedRegex("\\b(?:weighs?|weight|heavy|flat|bar|block|beam|strip|cantilever|plate|web|section)\\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Of();

    // Not after a letter, as in M8x1 or Tr20x4.
    [GeneratedRegex("(?<=(?:^|[ x×*])[0-9]*\\.?[0-9]+)(?:x|×|[*])(?=\\.?[0-9])", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Times();
}
