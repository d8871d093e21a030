namespace Handwheel.Proof.Following;

/// <summary>The name on hand that is nearest to one that is not.</summary>
internal static class NearestName
{
    /// <summary>The nearest name, by the fewest letters changed, put in or left out (V. I. Levenshtein, 1966).</summary>
    /// <param name="name">The name wanted.</param>
    /// <param name="names">Names on hand.</param>
    /// <returns>The nearest; null where none is near.</returns>
    public static string? Of(string name, IEnumerable<string> names)
    {
        string? best = null;
        var least = Math.Max(2, name.Length / 2) + 1;
        foreach (var candidate in names.Order(StringComparer.Ordinal))
        {
            var steps = Steps(name, candidate);
            if (steps < least)
            {
                (best, least) = (candidate, steps);
            }
        }

        return best;
    }

    private static int Steps(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), diagonal + (a[i - 1] == b[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[b.Length];
    }
}
