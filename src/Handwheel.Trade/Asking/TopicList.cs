using System.Globalization;

namespace Handwheel.Trade.Asking;

/// <summary>Every topic, in the order in which a tie is settled.</summary>
internal static class TopicList
{
    /// <summary>The topics.</summary>
    internal static IReadOnlyList<Topic> All { get; } =
        [.. ThreadTopics.All, .. ShapeTopics.All, .. FitTopics.All, .. CuttingTopics.All, .. JointTopics.All, .. StrengthTopics.All, .. MoreGeometryTopics.All];

    /// <summary>Words with weights, from a line: <c>tap:4 drill:2</c>.</summary>
    /// <param name="line">The line; a word without a number weighs 2.</param>
    /// <returns>Words.</returns>
    internal static Dictionary<string, int> Words(string line)
    {
        var words = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var part in line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var cut = part.LastIndexOf(':');
            words[cut < 0 ? part : part[..cut]] = cut < 0 ? 2 : int.Parse(part.AsSpan(cut + 1), CultureInfo.InvariantCulture);
        }

        return words;
    }
}
