using System.Net;
using System.Text;
using System.Text.RegularExpressions;

namespace Handwheel.Sheets.Tests;

/// <summary>What a reader of the sheet reads, line by line, without style, faces and shapes.</summary>
internal static partial class SheetExtract
{
    public static string Of(string html)
    {
        var text = Style().Replace(html, string.Empty);
        text = Pieces().Replace(text, "\n");
        text = Spaced().Replace(text, " ");
        text = Tag().Replace(text, string.Empty);
        text = WebUtility.HtmlDecode(text);
        var lines = text.Split('\n').Select(l => Blank().Replace(l, " ").Trim()).Where(l => l.Length > 0);
        return new StringBuilder().AppendJoin('\n', lines).Append('\n').ToString();
    }

    [GeneratedRegex("<style>.*?</style>", RegexOptions.Singleline, 2000)]
    private static partial Regex Style();

    [GeneratedRegex("<(?:div class=\"pc\"|header|footer|section|/section|div class=\"(?:mv|ca|dr)|svg role)[^<>]*>", RegexOptions.None, 2000)]
    private static partial Regex Pieces();

    [GeneratedRegex("</(?:span|text|h1|h2|h3|p|td|th|small|b|div)>", RegexOptions.None, 2000)]
    private static partial Regex Spaced();

    [GeneratedRegex("<[^<>]*>", RegexOptions.None, 2000)]
    private static partial Regex Tag();

    [GeneratedRegex("[ \\t\\r\\u00a0]+", RegexOptions.None, 2000)]
    private static partial Regex Blank();
}
