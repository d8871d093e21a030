using System.Globalization;
using Handwheel.Trade.Geometry;

namespace Handwheel.Trade.Keys;

/// <summary>Parallel and Woodruff keys.</summary>
/// <remarks>ASME B17.1 (inch parallel keys; S = D - Y - H/2, T = D - Y + H/2 + 0.005), ASME B17.2 (Woodruff: depth = least height - W/2, 0 to + 0.005 in), DIN 6885-1 / ISO 773 (metric), DIN 6888 (metric Woodruff).</remarks>
public static class KeyTable
{
    private static readonly Basis Inch = new("ASME B17.1 Tables 1, 2; Machinery's Handbook 31st ed. p. 2552", Evidence.StandardFormula);
    private static readonly Basis Metric = new("DIN 6885-1 / ISO 773 (held against two makers' copies of the table)", Evidence.HandbookTable);
    private static readonly Basis Woodruff = new("ASME B17.2 (Machinery's Handbook 31st ed. p. 2557: heights)", Evidence.HandbookTable);
    private static readonly Basis WideDisc = new("DIN 6888 (nobody confirmed this value)", Evidence.Memory);
    private static readonly Basis Disc = new("DIN 6888:1956 Series A (to 4 mm wide held against a copy)", Evidence.HandbookTable);

    // Shafts over the row before, up to; width, square height, flat height; inches.
    private static readonly double[][] InchRows =
    [
        [0.4375, 0.09375, 0.09375, double.NaN], [0.5625, 0.125, 0.125, 0.09375], [0.875, 0.1875, 0.1875, 0.125], [1.25, 0.25, 0.25, 0.1875],
        [1.375, 0.3125, 0.3125, 0.25], [1.75, 0.375, 0.375, 0.25], [2.25, 0.5, 0.5, 0.375], [2.75, 0.625, 0.625, 0.4375], [3.25, 0.75, 0.75, 0.5],
        [3.75, 0.875, 0.875, 0.625], [4.5, 1, 1, 0.75], [5.5, 1.25, 1.25, 0.875], [6.5, 1.5, 1.5, 1],
    ];

    // Up to; width, height, t1, t2; millimetres, over 6.
    private static readonly double[][] MetricRows =
    [
        [8, 2, 2, 1.2, 1], [10, 3, 3, 1.8, 1.4], [12, 4, 4, 2.5, 1.8], [17, 5, 5, 3, 2.3], [22, 6, 6, 3.5, 2.8], [30, 8, 7, 4, 3.3], [38, 10, 8, 5, 3.3],
        [44, 12, 8, 5, 3.3], [50, 14, 9, 5.5, 3.8], [58, 16, 10, 6, 4.3], [65, 18, 11, 7, 4.4], [75, 20, 12, 7.5, 4.9], [85, 22, 14, 9, 5.4],
        [95, 25, 14, 9, 5.4], [110, 28, 16, 10, 6.4], [130, 32, 18, 11, 7.4], [150, 36, 20, 12, 8.4], [170, 40, 22, 13, 9.4], [200, 45, 25, 15, 10.4],
        [230, 50, 28, 17, 11.4], [260, 56, 32, 20, 12.4], [290, 63, 32, 20, 12.4], [330, 70, 36, 22, 14.4], [380, 80, 40, 25, 15.4], [440, 90, 45, 28, 17.4],
        [500, 100, 50, 31, 19.5],
    ];

    // Cutter diameter in eighths, key height in inches (halves of an eighth are 5/16).
    private static readonly (double Eighths, double Height)[] WoodruffHeights =
    [
        (2, 0.109), (2.5, 0.140), (3, 0.172), (4, 0.203), (5, 0.25), (6, 0.313), (7, 0.375), (8, 0.438), (9, 0.484), (10, 0.547), (11, 0.594), (12, 0.641),
    ];

    private static readonly string[] WoodruffNumbers =
    [
        "202", "202.5", "302.5", "203", "303", "403", "204", "304", "404", "305", "405", "505", "605", "406", "506", "606", "806", "507", "607", "707", "807",
        "608", "708", "808", "1008", "1208", "609", "709", "809", "1009", "610", "710", "810", "1010", "1210", "811", "1011", "1211", "812", "1012", "1212",
    ];

    // Width, height, diameter, t1; millimetres.
    private static readonly double[][] Discs =
    [
        [1, 1.4, 4, 1], [1.5, 2.6, 7, 2], [2, 2.6, 7, 1.8], [2, 3.7, 10, 2.9], [2.5, 3.7, 10, 2.7], [3, 3.7, 10, 2.5], [3, 5, 13, 3.8], [3, 6.5, 16, 5.3],
        [4, 5, 13, 3.5], [4, 6.5, 16, 5], [4, 7.5, 19, 6], [5, 6.5, 16, 4.5], [5, 7.5, 19, 5.5], [5, 9, 22, 7], [6, 9, 22, 6.5], [6, 10, 25, 7.5], [8, 11, 28, 8], [10, 13, 32, 10],
    ];

    /// <summary>What the depth of an inch Woodruff keyseat rests on; its heights are read, its rule is remembered.</summary>
    public static Basis WoodruffDepthBasis { get; } = new("ASME B17.2: least height - W/2 (the rule remembered; nobody confirmed it)", Evidence.Memory);

    /// <summary>Every Woodruff key.</summary>
    public static IReadOnlyList<WoodruffKey> WoodruffKeys { get; } =
    [
        .. WoodruffNumbers.Select(ReadWoodruff),
        .. Discs.Select(d => new WoodruffKey(string.Create(CultureInfo.InvariantCulture, $"{d[0]}x{d[1]}"), d[0], d[2], d[1], d[3], d[0] > 4 ? WideDisc : Disc)),
    ];

    /// <summary>The inch key of a shaft.</summary>
    /// <param name="shaftIn">Shaft diameter, in, over 5/16 to 6 1/2.</param>
    /// <param name="square">Square, else flat (rectangular).</param>
    /// <returns>The key, or null where the standard gives none.</returns>
    public static KeySize? OfInch(double shaftIn, bool square = true)
    {
        var row = shaftIn > 0.3125 ? Array.Find(InchRows, r => shaftIn <= r[0]) : null;
        return row is null || (!square && double.IsNaN(row[3])) ? null : InchKey(shaftIn, row[1], square ? row[2] : row[3]);
    }

    /// <summary>An inch key of a given width and height in a shaft.</summary>
    /// <param name="shaftIn">Shaft diameter, in.</param>
    /// <param name="widthIn">Width, in, less than the shaft.</param>
    /// <param name="heightIn">Height, in.</param>
    /// <returns>The key with its S and T.</returns>
    public static KeySize InchKey(double shaftIn, double widthIn, double heightIn)
    {
        var arc = Shapes.KeyseatArc(shaftIn, widthIn);
        return new KeySize(
            widthIn * 25.4,
            heightIn * 25.4,
            heightIn / 2 * 25.4,
            ((heightIn / 2) + 0.005) * 25.4,
            (shaftIn - arc - (heightIn / 2)) * 25.4,
            (shaftIn - arc + (heightIn / 2) + 0.005) * 25.4,
            Inch);
    }

    /// <summary>The metric key of a shaft.</summary>
    /// <param name="shaftMm">Shaft diameter, mm, over 6 to 500.</param>
    /// <returns>The key, or null.</returns>
    public static KeySize? OfMetric(double shaftMm)
    {
        var row = shaftMm > 6 ? Array.Find(MetricRows, r => shaftMm <= r[0]) : null;
        return row is null ? null : new KeySize(row[1], row[2], row[3], row[4], shaftMm - row[3], shaftMm + row[4], Metric);
    }

    private static WoodruffKey ReadWoodruff(string number)
    {
        var value = double.Parse(number, CultureInfo.InvariantCulture);
        var width = Math.Floor(value / 100) / 32;
        var eighths = value % 100;
        var height = Array.Find(WoodruffHeights, h => Math.Abs(h.Eighths - eighths) < 1e-9).Height;
        
        // The keyseat is dimensioned from the least height, 0.005 in under the greatest: 404 gives 0.1355 in.
        return new WoodruffKey(number, width * 25.4, eighths / 8 * 25.4, height * 25.4, (height - 0.005 - (width / 2)) * 25.4, Woodruff);
    }
}
