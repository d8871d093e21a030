using System.Globalization;
using System.Text;

namespace Handwheel.Trade.Drills;

/// <summary>Drills by name, and the drill nearest to a size.</summary>
/// <remarks>
/// Number and letter sizes: ASME B94.11M. Fractions: 1/64 in to 2 in by sixty-fourths. Metric: 0.30 to 3.00 by 0.05, to 13.0 by 0.1, to 25.0 by 0.5
/// (the steps of ISO 235 commonly stocked). A drilled hole comes out larger than its drill; see the caution with the answer.
/// </remarks>
public static class DrillTable
{
    private static readonly double[] NumbersIn =
    [
        0.2280, 0.2210, 0.2130, 0.2090, 0.2055, 0.2040, 0.2010, 0.1990, 0.1960, 0.1935, 0.1910, 0.1890, 0.1850, 0.1820, 0.1800, 0.1770,
        0.1730, 0.1695, 0.1660, 0.1610, 0.1590, 0.1570, 0.1540, 0.1520, 0.1495, 0.1470, 0.1440, 0.1405, 0.1360, 0.1285, 0.1200, 0.1160,
        0.1130, 0.1110, 0.1100, 0.1065, 0.1040, 0.1015, 0.0995, 0.0980, 0.0960, 0.0935, 0.0890, 0.0860, 0.0820, 0.0810, 0.0785, 0.0760,
        0.0730, 0.0700, 0.0670, 0.0635, 0.0595, 0.0550, 0.0520, 0.0465, 0.0430, 0.0420, 0.0410, 0.0400, 0.0390, 0.0380, 0.0370, 0.0360,
        0.0350, 0.0330, 0.0320, 0.0310, 0.0292, 0.0280, 0.0260, 0.0250, 0.0240, 0.0225, 0.0210, 0.0200, 0.0180, 0.0160, 0.0145, 0.0135,
        0.0130, 0.0125, 0.0120, 0.0115, 0.0110, 0.0105, 0.0100, 0.0095, 0.0091, 0.0087, 0.0083, 0.0079, 0.0075, 0.0071, 0.0067, 0.0063, 0.0059,
    ];

    private static readonly double[] LettersIn =
    [
        0.234, 0.238, 0.242, 0.246, 0.250, 0.257, 0.261, 0.266, 0.272, 0.277, 0.281, 0.290, 0.295,
        0.302, 0.316, 0.323, 0.332, 0.339, 0.348, 0.358, 0.368, 0.377, 0.386, 0.397, 0.404, 0.413,
    ];

    /// <summary>Every drill of the tables, by diameter, then family.</summary>
    public static IReadOnlyList<DrillSize> All { get; } = Build();

    /// <summary>The basis of number and letter sizes.</summary>
    public static Basis Basis { get; } = new("ASME B94.11M number, letter and fractional sizes; ISO 235 steps", Evidence.HandbookTable);

    private static readonly Basis Fine = new("ASME B94.11M number sizes under #80 (nobody confirmed this value)", Evidence.Memory);

    /// <summary>What a drill's size rests on.</summary>
    /// <param name="drill">The drill.</param>
    /// <returns>The table, or memory for #81 to #97.</returns>
    public static Basis BasisOf(DrillSize drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        return drill.Family == DrillFamily.Number && drill.DiameterMm < (0.0135 * 25.4) - 1e-9 ? Fine : Basis;
    }

    /// <summary>The diameter of a number drill.</summary>
    /// <param name="number">1 to 97.</param>
    /// <returns>The drill, or null.</returns>
    public static DrillSize? Number(int number) =>
        number is >= 1 and <= 97 ? new DrillSize("#" + Text(number), NumbersIn[number - 1] * 25.4, DrillFamily.Number) : null;

    /// <summary>The diameter of a letter drill.</summary>
    /// <param name="letter">A to Z, either case.</param>
    /// <returns>The drill, or null.</returns>
    public static DrillSize? Letter(char letter)
    {
        var at = char.ToUpperInvariant(letter) - 'A';
        return at is >= 0 and < 26 ? new DrillSize(((char)('A' + at)).ToString(), LettersIn[at] * 25.4, DrillFamily.Letter) : null;
    }

    /// <summary>Finds a drill by the name it is asked for.</summary>
    /// <param name="name"><c>#7</c>, <c>no 7</c>, <c>F</c>, <c>17/64</c>, <c>1 1/4</c>, <c>5.1 mm</c>.</param>
    /// <returns>The drill, or null where the name is none of these; a fraction or millimetre size that is not stocked is still given.</returns>
    public static DrillSize? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var text = name.Trim();
        if (text.Length == 1 && char.IsAsciiLetter(text[0]))
        {
            return Letter(text[0]);
        }

        var bare = text.StartsWith('#') ? text[1..]
            : text.StartsWith("no", StringComparison.OrdinalIgnoreCase) ? text[2..].TrimStart('.', ' ')
            : string.Empty;
        if (bare.Length > 0)
        {
            return int.TryParse(bare, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? Number(number) : null;
        }

        if (text.EndsWith("mm", StringComparison.OrdinalIgnoreCase))
        {
            return double.TryParse(text[..^2].TrimEnd(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm) && mm is > 0 and < 1000
                ? Metric(mm)
                : null;
        }

        return Fraction(text);
    }

    /// <summary>Drills around a size, nearest first.</summary>
    /// <param name="diameterMm">Wanted diameter, mm.</param>
    /// <param name="count">How many.</param>
    /// <param name="families">Families allowed; all where empty.</param>
    /// <returns>Up to <paramref name="count"/> drills of different sizes.</returns>
    public static IReadOnlyList<DrillSize> Nearest(double diameterMm, int count, params DrillFamily[] families) =>
        [.. All.Where(d => families is null || families.Length == 0 || families.Contains(d.Family))
            .OrderBy(d => Math.Round(Math.Abs(d.DiameterMm - diameterMm), 9)).ThenBy(d => d.DiameterMm).ThenBy(d => d.Family).Take(count)];

    private static DrillSize Metric(double mm) => new(Text(mm) + " mm", mm, DrillFamily.Metric);

    private static DrillSize? Fraction(string text)
    {
        var whole = 0;
        var parts = text.TrimEnd('"').Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length is 0 or > 2 || (parts.Length == 2 && !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out whole)))
        {
            return null;
        }

        var stroke = parts[^1].Split('/');
        return stroke.Length == 2
            && int.TryParse(stroke[0], NumberStyles.None, CultureInfo.InvariantCulture, out var over)
            && int.TryParse(stroke[1], NumberStyles.None, CultureInfo.InvariantCulture, out var under)
            && over > 0 && (under is 2 or 4 or 8 or 16 or 32 or 64) && whole < 100 && over < 6400
                ? new DrillSize(text.TrimEnd('"'), (whole + ((double)over / under)) * 25.4, DrillFamily.Fraction)
                : null;
    }

    private static DrillSize[] Build()
    {
        var all = new List<DrillSize>();
        for (var n = 1; n <= 97; n++)
        {
            all.Add(Number(n)!);
        }

        for (var c = 'A'; c <= 'Z'; c++)
        {
            all.Add(Letter(c)!);
        }

        for (var n = 1; n <= 128; n++)
        {
            all.Add(new DrillSize(SixtyFourths(n), n * 25.4 / 64, DrillFamily.Fraction));
        }

        for (var hundredths = 30; hundredths <= 2500; hundredths += hundredths < 300 ? 5 : hundredths < 1300 ? 10 : 50)
        {
            all.Add(Metric(hundredths / 100.0));
        }

        return [.. all.OrderBy(d => d.DiameterMm).ThenBy(d => d.Family)];
    }

    private static string SixtyFourths(int n)
    {
        var under = 64;
        var whole = n / 64;
        var over = n % 64;
        while (over > 0 && over % 2 == 0)
        {
            over /= 2;
            under /= 2;
        }

        var text = new StringBuilder();
        if (whole > 0)
        {
            text.Append(Text(whole));
        }

        if (over > 0)
        {
            text.Append(whole > 0 ? " " : string.Empty).Append(Text(over)).Append('/').Append(Text(under));
        }

        return text.ToString();
    }

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);
}
