namespace Handwheel.Sheets.Pictures;

/// <summary>Sets labels apart along a line so that none lies on another, each as near to where it wants to be as it can.</summary>
internal static class Spread
{
    /// <summary>Places for labels.</summary>
    /// <param name="wanted">Where the middle of each wants to be.</param>
    /// <param name="sizes">How much room each takes.</param>
    /// <param name="low">The least end allowed.</param>
    /// <param name="high">The greatest end allowed.</param>
    /// <returns>The middle of each, in the order given; they run past <paramref name="high"/> only where there is no room.</returns>
    public static double[] Along(IReadOnlyList<double> wanted, IReadOnlyList<double> sizes, double low, double high)
    {
        var order = Enumerable.Range(0, wanted.Count).OrderBy(i => wanted[i]).ThenBy(i => i).ToArray();
        var at = new double[wanted.Count];
        // Groups that touch are moved together to the mean of what their members want.
        var groups = new List<(double Middle, double Size, double Sum, List<int> Members)>();
        foreach (var i in order)
        {
            groups.Add((Clamp(wanted[i], sizes[i], low, high), sizes[i], wanted[i], [i]));
            while (groups.Count > 1 && Touch(groups[^2], groups[^1]))
            {
                var (a, b) = (groups[^2], groups[^1]);
                groups.RemoveRange(groups.Count - 2, 2);
                a.Members.AddRange(b.Members);
                var size = a.Size + b.Size;
                var sum = a.Sum + b.Sum;
                groups.Add((Clamp(sum / a.Members.Count, size, low, high), size, sum, a.Members));
            }
        }

        foreach (var (middle, size, _, members) in groups)
        {
            var edge = middle - (size / 2);
            foreach (var i in members)
            {
                at[i] = edge + (sizes[i] / 2);
                edge += sizes[i];
            }
        }

        return at;
    }

    private static bool Touch((double Middle, double Size, double Sum, List<int> Members) a, (double Middle, double Size, double Sum, List<int> Members) b) =>
        a.Middle + (a.Size / 2) > b.Middle - (b.Size / 2) + 1e-9;

    private static double Clamp(double middle, double size, double low, double high) =>
        Math.Max(low + (size / 2), Math.Min(middle, high - (size / 2)));
}
