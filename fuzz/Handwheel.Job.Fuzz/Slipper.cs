using System.Globalization;
using System.Text.RegularExpressions;

namespace Handwheel.Job.Fuzz;

// Changes a job as a person's slip does, so that it mostly still reads: a number, a line, a word.
internal sealed partial class Slipper(Random random, string document)
{
    private readonly string[] words = document.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal).ToArray();

    public string Next()
    {
        var lines = document.Split('\n').ToList();
        for (var changes = random.Next(1, 4); changes > 0; changes--)
        {
            var at = random.Next(lines.Count);
            var other = Math.Clamp(at + random.Next(-3, 4), 0, lines.Count - 1);
            switch (random.Next(10))
            {
                case 0: lines.RemoveAt(at); break;
                case 1: lines.Insert(other, lines[at]); break;
                case 2: (lines[at], lines[other]) = (lines[other], lines[at]); break;
                case 3: lines[at] = Word().Replace(lines[at], _ => words[random.Next(words.Length)], 1, random.Next(lines[at].Length + 1)); break;
                default: lines[at] = Number().Replace(lines[at], m => Slipped(m.Value), 1, random.Next(lines[at].Length + 1)); break;
            }
        }

        return string.Join('\n', lines);
    }

    private string Slipped(string number)
    {
        var value = double.Parse(number, CultureInfo.InvariantCulture);
        var slipped = random.Next(8) switch
        {
            0 => value * 10,
            1 => value / 10,
            2 => 2 * value,
            3 => value / 2,
            4 => value + random.Next(-3, 4),
            5 => value * (0.8 + (0.4 * random.NextDouble())),
            6 => 0,
            _ => value + 0.05,
        };
        return slipped.ToString("0.####", CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"(?<![\w.])\d+(?:\.\d+)?(?![\w.])", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Number();

    [GeneratedRegex(@"[a-z]+", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Word();
}
