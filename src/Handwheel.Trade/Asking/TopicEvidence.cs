namespace Handwheel.Trade.Asking;

/// <summary>How firm what a topic rests on is, and whether its answers are estimates of strength.</summary>
/// <remarks>The tables of topics in the README and in docs/reference.md print these lines; a test holds them against the evidence the answers give.</remarks>
internal static class TopicEvidence
{
    /// <summary>What every estimate of strength, force or grip says, and to whom it defers.</summary>
    internal const string Estimate =
        "Strength, force and grip are estimates: the machine's manual, the maker's data and local codes come first, and a licensed engineer for anything that lifts, holds pressure or carries people.";

    private static readonly Dictionary<string, string> Lines = new(StringComparer.Ordinal)
    {
        ["tap drill"] = "formula; drills table; limits formula or table; D - P common practice",
        ["clearance"] = "table; shop drills common practice",
        ["wires"] = "formula; metric limits table",
        ["strip"] = "formula; strengths of screws table, of metals from memory",
        ["screw"] = "table; from memory: counterbores over M10 and inch, inch set screws, sharp edges of inch machine screws",
        ["thread"] = "formula; metric limits table",
        ["drill"] = "table; #81 to #97 from memory",
        ["rollers"] = "formula; named tapers as under taper",
        ["taper"] = "table (Morse, Jacobs, Brown and Sharpe, pins), formula (Jarno, 7/24, metric, holding), from memory: tangs, most drawbars, R8 diameters, B chuck tapers, 7/24 over 60; common practice: bore of an R8 collet",
        ["divide"] = "formula",
        ["bolt circle"] = "formula",
        ["press"] = "formula; strengths from memory",
        ["fit"] = "table; from memory: j8, cd ef fg over 10 mm, IT1 to IT4 over 1000 mm, LC5 to LC11 over 1.97 in, FN from 3.94 to 4.73 in",
        ["general"] = "table",
        ["key"] = "formula (B17.1), table (DIN 6885-1, DIN 6888, Woodruff heights), from memory: Woodruff depths in inches, DIN 6888 over 4 mm wide",
        ["speed"] = "table where read, else common practice; rpm formula; feeds common practice",
        ["force"] = "formula; constants table for common steels, grey iron and aluminium, else from memory",
        ["cutter"] = "formula; breaking strengths from memory",
        ["push"] = "formula; constants table for common steels, grey iron and aluminium, else from memory; friction common practice",
        ["clamp"] = "formula; friction common practice",
        ["heat"] = "table",
        ["metal"] = "from memory; table: density and modulus of common metals, cutting constants of common steels, iron and aluminium, some speeds; other speeds common practice",
        ["bolt"] = "table and formula",
        ["friction"] = "table (three dry pairs), else from memory; common practice in the shop",
        ["wedge"] = "formula",
        ["web"] = "formula; strengths from memory",
        ["buckle"] = "formula; strengths from memory",
        ["punch"] = "formula; strengths from memory",
    };

    private static readonly HashSet<string> Estimated = new(StringComparer.Ordinal)
    {
        "strip", "taper", "press", "force", "cutter", "push", "clamp", "metal", "bolt", "friction", "wedge", "web", "buckle", "punch",
    };

    /// <summary>The evidence of a topic in a line; plane geometry is formula.</summary>
    /// <param name="topic">Name of the topic.</param>
    /// <returns>Words.</returns>
    internal static string Of(string topic) => Lines.GetValueOrDefault(topic, "formula");

    /// <summary>Whether a topic's answers are estimates that defer to others.</summary>
    /// <param name="topic">Name of the topic.</param>
    /// <returns>True for strength, force and grip.</returns>
    internal static bool IsEstimate(string topic) => Estimated.Contains(topic);
}
