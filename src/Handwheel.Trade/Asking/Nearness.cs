namespace Handwheel.Trade.Asking;

/// <summary>How near two words are.</summary>
internal static class Nearness
{
    /// <summary>Known words nearest to one that is not known.</summary>
    /// <param name="word">Word, lower case.</param>
    /// <param name="known">Known words.</param>
    /// <param name="count">Most to give.</param>
    /// <returns>Nearest first; none where nothing is near.</returns>
    internal static IReadOnlyList<string> Nearest(string word, IEnumerable<string> known, int count) =>
    [
        .. known.Distinct(StringComparer.Ordinal).Select(k => (Word: k, Steps: Steps(word, k)))
            .Where(k => k.Steps <= Math.Max(1, Math.Min(word.Length, k.Word.Length) / 3) || (word.Length >= 4 && k.Word.StartsWith(word, StringComparison.Ordinal)))
            .OrderBy(k => k.Steps).ThenBy(k => k.Word, StringComparer.Ordinal).Take(count).Select(k => k.Word),
    ];

    /// <summary>Slips between two words.</summary>
    /// <param name="a">One word.</param>
    /// <param name="b">The other.</param>
    /// <returns>Letters put in, left out, changed or swapped; 99 where far.</returns>
    internal static int Steps(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 3 || a.Length > 40)
        {
            return 99;
        }

        var rows = new int[a.Length + 1][];
        for (var i = 0; i <= a.Length; i++)
        {
            rows[i] = new int[b.Length + 1];
            rows[i][0] = i;
        }

        for (var j = 0; j <= b.Length; j++)
        {
            rows[0][j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = rows[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                rows[i][j] = Math.Min(change, Math.Min(rows[i - 1][j], rows[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    rows[i][j] = Math.Min(rows[i][j], rows[i - 2][j - 2] + 1);
                }
            }
        }

        return rows[a.Length][b.Length];
    }
}
