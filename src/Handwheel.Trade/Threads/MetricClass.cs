namespace Handwheel.Trade.Threads;

/// <summary>A metric thread class taken apart: grade of the pitch diameter, grade of the crest, position.</summary>
/// <param name="PitchGrade">Grade of the pitch diameter, 3 to 9.</param>
/// <param name="CrestGrade">Grade of the major (screw) or minor (nut) diameter.</param>
/// <param name="Position">e, f, g, h, G or H.</param>
internal readonly record struct MetricClass(int PitchGrade, int CrestGrade, char Position)
{
    /// <summary>Whether it is a screw's.</summary>
    internal bool External => char.IsLower(Position);

    /// <summary>Reads a class.</summary>
    /// <param name="text">6g, 6H, 5g6g.</param>
    /// <param name="read">The class.</param>
    /// <returns>Whether it is one.</returns>
    internal static bool TryRead(string? text, out MetricClass read)
    {
        read = default;
        if (text is null || (text.Length != 2 && text.Length != 4) || !Pair(text[..2]) || (text.Length == 4 && (!Pair(text[2..]) || text[1] != text[3])))
        {
            return false;
        }

        read = new MetricClass(text[0] - '0', text[^2] - '0', text[1]);
        return true;
    }

    private static bool Pair(string pair) => pair[0] is >= '3' and <= '9' && "efghGH".Contains(pair[1], StringComparison.Ordinal);
}
