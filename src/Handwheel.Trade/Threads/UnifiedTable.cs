using System.Globalization;

namespace Handwheel.Trade.Threads;

/// <summary>The Unified series: coarse, fine, extra fine and constant pitch, number and inch sizes.</summary>
/// <remarks>Source: ASME B1.1 Table 1 (standard series). A number size n is 0.060 + 0.013 n inch.</remarks>
public static class UnifiedTable
{
    private static readonly string[] Coarse =
    [
        "#1-64", "#2-56", "#3-48", "#4-40", "#5-40", "#6-32", "#8-32", "#10-24", "#12-24", "1/4-20", "5/16-18", "3/8-16", "7/16-14", "1/2-13", "9/16-12",
        "5/8-11", "3/4-10", "7/8-9", "1-8", "1 1/8-7", "1 1/4-7", "1 3/8-6", "1 1/2-6", "1 3/4-5", "2-4.5", "2 1/4-4.5", "2 1/2-4", "2 3/4-4", "3-4",
        "3 1/4-4", "3 1/2-4", "3 3/4-4", "4-4",
    ];

    private static readonly string[] Fine =
    [
        "#0-80", "#1-72", "#2-64", "#3-56", "#4-48", "#5-44", "#6-40", "#8-36", "#10-32", "#12-28", "1/4-28", "5/16-24", "3/8-24", "7/16-20", "1/2-20",
        "9/16-18", "5/8-18", "3/4-16", "7/8-14", "1-12", "1 1/8-12", "1 1/4-12", "1 3/8-12", "1 1/2-12",
    ];

    private static readonly string[] ExtraFine =
    [
        "#12-32", "1/4-32", "5/16-32", "3/8-32", "7/16-28", "1/2-28", "9/16-24", "5/8-24", "11/16-24", "3/4-20", "13/16-20", "7/8-20", "15/16-20", "1-20",
        "1 1/16-18", "1 1/8-18", "1 3/16-18", "1 1/4-18", "1 5/16-18", "1 3/8-18", "1 7/16-18", "1 1/2-18", "1 9/16-18", "1 5/8-18", "1 11/16-18",
    ];

    private static readonly double[] ConstantPitches = [4, 6, 8, 12, 16, 20, 28, 32];

    /// <summary>Every thread of the coarse, fine and extra fine series.</summary>
    public static IReadOnlyList<UnifiedThread> All { get; } =
        [.. Coarse.Select(t => Read(t, "UNC")).Concat(Fine.Select(t => Read(t, "UNF"))).Concat(ExtraFine.Select(t => Read(t, "UNEF")))];

    /// <summary>The diameter a Unified size name stands for.</summary>
    /// <param name="size"><c>#10</c>, <c>1/4</c>, <c>1 1/8</c>, <c>0.25</c>.</param>
    /// <returns>Inches, or NaN where it is no size from #0 to 6 in.</returns>
    public static double MajorOf(string size)
    {
        ArgumentNullException.ThrowIfNull(size);
        var text = size.Trim().TrimEnd('"');
        if (text.StartsWith('#'))
        {
            return int.TryParse(text[1..], NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is >= 0 and <= 14 ? Math.Round(0.06 + (0.013 * n), 3) : double.NaN;
        }

        var sum = 0.0;
        foreach (var part in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var stroke = part.Split('/');
            if (stroke.Length > 2 || !double.TryParse(stroke[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var over))
            {
                return double.NaN;
            }

            var under = 1.0;
            if (stroke.Length == 2 && (!double.TryParse(stroke[1], NumberStyles.None, CultureInfo.InvariantCulture, out under) || under == 0))
            {
                return double.NaN;
            }

            sum += over / under;
        }

        return sum is > 0 and <= 6 ? sum : double.NaN;
    }

    /// <summary>The thread of a size and pitch.</summary>
    /// <param name="size">Size name.</param>
    /// <param name="tpi">Threads per inch, 1 to 200.</param>
    /// <returns>The thread with its series (UN where the pitch is a constant-pitch one, else UNS), or null where the size is none.</returns>
    public static UnifiedThread? Of(string size, double tpi)
    {
        var major = MajorOf(size);
        if (double.IsNaN(major) || tpi is not (>= 1 and <= 200) || major - (1.2 / tpi) <= 0)
        {
            return null;
        }

        var known = All.FirstOrDefault(t => Math.Abs(t.MajorIn - major) < 1e-6 && Math.Abs(t.Tpi - tpi) < 1e-9);
        return known ?? new UnifiedThread(size.Trim().TrimEnd('"'), major, tpi, ConstantPitches.Contains(tpi) && major >= 0.25 ? "UN" : "UNS");
    }

    /// <summary>The thread of a size in a series.</summary>
    /// <param name="size">Size name.</param>
    /// <param name="series">UNC, UNF or UNEF.</param>
    /// <returns>The thread, or null where the series has no such size.</returns>
    public static UnifiedThread? InSeries(string size, string series)
    {
        var major = MajorOf(size);
        return All.FirstOrDefault(t => Math.Abs(t.MajorIn - major) < 1e-6 && t.Series == series);
    }

    private static UnifiedThread Read(string text, string series)
    {
        var cut = text.LastIndexOf('-');
        var size = text[..cut];
        return new UnifiedThread(size, MajorOf(size), double.Parse(text[(cut + 1)..], CultureInfo.InvariantCulture), series);
    }
}
