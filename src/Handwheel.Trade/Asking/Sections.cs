using System.Text.RegularExpressions;

namespace Handwheel.Trade.Asking;

/// <summary>Sections as they are written: <c>50x10</c>, <c>15x3</c>, <c>100x50x40</c>.</summary>
internal static partial class Sections
{
    /// <summary>Sets the sizes of a section apart, where the question is of a bar, a strip or a block; a thread's or a key's x stays.</summary>
    /// <param name="text">A question.</param>
    /// <returns>The question, with blanks in place of the x.</returns>
    internal static string Apart(string text) => text.Length <= TokenReader.Longest && Of().IsMatch(text) ? Times().Replace(text, " ") : text;

    [GeneratedRegex("\\b(?:weighs?|weight|heavy|flat|bar|block|beam|strip|cantilever|plate|web|section)\\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Of();

    // Not after a letter, as in M8x1 or Tr20x4.
    [GeneratedRegex("(?<=(?:^|[ x×*])[0-9]*\\.?[0-9]+)(?:x|×|[*])(?=\\.?[0-9])", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Times();
}
