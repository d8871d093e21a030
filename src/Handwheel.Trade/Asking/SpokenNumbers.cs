using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Handwheel.Trade.Asking;

/// <summary>Numbers as they are spoken: <c>seventy two</c>, <c>forty to one</c>, <c>1 in 20</c>, <c>5 mill</c>.</summary>
internal static partial class SpokenNumbers
{
    private static readonly string[] Units =
        ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"];

    private static readonly string[] Tens = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    /// <summary>Writes spoken numbers as figures.</summary>
    /// <param name="text">A question, spaced out.</param>
    /// <returns>The question with figures; "one" alone stays a word.</returns>
    internal static string Write(string text)
    {
        var words = HalfShape().Replace(text, "1/2 ").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var written = new StringBuilder();
        for (var i = 0; i < words.Length; i++)
        {
            var tens = Array.IndexOf(Tens, words[i].ToLowerInvariant());
            var unit = Array.IndexOf(Units, words[i].ToLowerInvariant());
            if (tens >= 0)
            {
                var more = i + 1 < words.Length ? Array.IndexOf(Units, words[i + 1].ToLowerInvariant()) : -1;
                var value = (20 + (10 * tens)) + (more is >= 1 and <= 9 ? more : 0);
                i += more is >= 1 and <= 9 ? 1 : 0;
                written.Append(value.ToString(CultureInfo.InvariantCulture));
            }
            else
            {
                var counts = i + 1 < words.Length && words[i + 1].ToLowerInvariant() is "wire" or "wires"; // "three wires" is a method, not a size
                written.Append(unit >= 2 && !counts ? unit.ToString(CultureInfo.InvariantCulture) : words[i]);
            }

            written.Append(' ');
        }

        var plain = RatioShape().Replace(written.ToString(), "${n}:1");
        return Taper().IsMatch(plain) ? OneInShape().Replace(plain, "1:${n}") : plain;
    }

    /// <summary>Whether "mill" after a number means millimetres, not a cutter or thousandths.</summary>
    /// <param name="word">mill, mills or mil.</param>
    /// <param name="next">The word after it, lower case.</param>
    /// <returns>True before the name of something that has a size.</returns>
    internal static bool IsMillimetre(string word, string next) =>
        next is "thread" or "threads" or "tap" or "taps" or "bolt" or "bolts" or "screw" or "screws" or "stud" or "hole" or "holes" or "shaft" or "bore" or "pin" or "drill" or "bit" or "bar" or "round"
            or "thick" or "wide" or "long" or "deep" or "plate" or "key" or "stock" or "end" or "endmill" or "slotdrill" or "reamer" or "rod" or "square" or "hex" or "dowel" or "sheet"
        || (word == "mills" && next.Length == 0);

    // "half thirteen" is a thread.
    [GeneratedRegex("\\bhalf[ -](?=(?:13|20|28|thirteen|twenty|unc|unf|coarse|fine)\\b)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex HalfShape();

    [GeneratedRegex("\\b(?<n>[1-9][0-9]*) to (?:one|1)\\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex RatioShape();

    [GeneratedRegex("\\btapers?\\b|\\btapered\\b|\\bcone\\b|\\bslope\\b|\\bset ?over\\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Taper();

    [GeneratedRegex("\\b1 in (?<n>[1-9][0-9]*)(?= |$)(?! in\\b| to\\b)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex OneInShape();
}
