namespace Handwheel.Jobs.Reading;

/// <summary>The nearest known word to a mistyped one.</summary>
internal static class Nearest
{
    private const int LongestWord = 40;

    // Edit distance with neighbouring letters exchanged as one edit (Damerau 1964, restricted), at most a third of the word; ties go to the first in order.
    public static string? To(string word, IEnumerable<string> known)
    {
        if (word.Length is 0 or > LongestWord)
        {
            return null;
        }

        var lower = word.ToLowerInvariant();
        var most = Math.Max(1, (lower.Length + 1) / 3);
        string? best = null;
        foreach (var candidate in known.Where(k => k.Length <= LongestWord).Order(StringComparer.Ordinal))
        {
            var distance = Distance(lower, candidate.ToLowerInvariant());
            if (distance <= most)
            {
                best = candidate;
                most = distance - 1;
            }
        }

        return best;
    }

    // The words as a sentence, cut where there are many.
    public static string Listed(string heading, IEnumerable<string> known)
    {
        var words = known.Order(StringComparer.Ordinal).Take(13).ToList();
        return words.Count switch
        {
            0 => $"{heading}: none yet.",
            13 => $"{heading}: {string.Join(", ", words.Take(12))} and more.",
            _ => $"{heading}: {string.Join(", ", words)}.",
        };
    }

    private static int Distance(string a, string b)
    {
        var before = new int[b.Length + 1];
        var last = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var row = new int[b.Length + 1];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var same = a[i - 1] == b[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(last[j] + 1, row[j - 1] + 1), last[j - 1] + same);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, last) = (last, row);
        }

        return last[b.Length];
    }
}
