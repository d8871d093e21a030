using System.Globalization;

namespace Handwheel.Trade.Screws;

/// <summary>Heads of screws and their pockets.</summary>
/// <remarks>
/// Metric: ISO 4762 with DIN 974-1 counterbores, ISO 10642 and ISO 7046 with 90 degree countersinks, ISO 7380-1 buttons, ISO 7045 pan heads, DIN 913 set
/// screws, ISO 4017 hexagons. Inch: ASME B18.3 (socket, button, 82 degree flat socket, set screws), B18.6.3 (82 degree flat machine screws), B18.2.1 hexagons.
/// Heads were held against makers' copies of those tables; the sharp-edged diameter of a metric flat head is d + 2k (90 degrees). What nobody confirmed says so.
/// </remarks>
public static class ScrewTable
{
    private const double No = double.NaN;
    private static readonly Basis Iso4032 = new("ISO 4032:2001 hexagon nuts, style 1, greatest sizes (published copies)", Evidence.HandbookTable);
    private static readonly Basis B1822 = new("ASME B18.2.2 hex and machine screw nuts (published copies)", Evidence.HandbookTable);
    private static readonly Basis Iso4762 = new("ISO 4762 / DIN 912 (two makers' tables)", Evidence.HandbookTable);
    private static readonly Basis Din974 = new("DIN 974-1 series 1 (to M10 a published counterbore table)", Evidence.HandbookTable);
    private static readonly Basis Din974More = new("DIN 974-1 series 1 (nobody confirmed this value)", Evidence.Memory);
    private static readonly Basis Iso10642 = new("ISO 10642 (sharp-edged head d + 2k; two published tables)", Evidence.HandbookTable);
    private static readonly Basis Iso7046 = new("ISO 7046 / ISO 2009 (sharp-edged head d + 2k, k from two makers' tables)", Evidence.HandbookTable);
    private static readonly Basis Iso7380 = new("ISO 7380-1 (a maker's table)", Evidence.HandbookTable);
    private static readonly Basis Iso7045 = new("ISO 7045 (a maker's table)", Evidence.HandbookTable);
    private static readonly Basis Din913 = new("DIN 913 / ISO 4026 set screws (a maker's table)", Evidence.HandbookTable);
    private static readonly Basis Iso4017 = new("ISO 4017 / ISO 272 (a published chart)", Evidence.HandbookTable);
    private static readonly Basis M22Hex = new("ISO 4017 (nobody confirmed this value; older DIN 933 has 32 mm)", Evidence.Memory);
    private static readonly Basis B183 = new("ASME B18.3 (published copy of its Table 1)", Evidence.HandbookTable);
    private static readonly Basis B183Bore = new("counterbores for ASME B18.3 screws (nobody confirmed this value)", Evidence.Memory);
    private static readonly Basis B183Flat = new("ASME B18.3 flat head socket, sharp edge (published copy)", Evidence.HandbookTable);
    private static readonly Basis B183Button = new("ASME B18.3 button head (published copy)", Evidence.HandbookTable);
    private static readonly Basis B183Set = new("ASME B18.3 set screws (nobody confirmed this value)", Evidence.Memory);
    private static readonly Basis B1863 = new("ASME B18.6.3-1972 flat head, sharp edge (nobody confirmed this value; later heads are up to 6 % smaller)", Evidence.Memory);
    private static readonly Basis B1821 = new("ASME B18.2.1 hex cap screw (two makers' tables)", Evidence.HandbookTable);

    // Size, head, height, key.
    private static readonly double[][] MetricButton =
        [[3, 5.7, 1.65, 2], [4, 7.6, 2.2, 2.5], [5, 9.5, 2.75, 3], [6, 10.5, 3.3, 4], [8, 14, 4.4, 5], [10, 17.5, 5.5, 6], [12, 21, 6.6, 8], [16, 28, 8.8, 10]];

    // Size, head, height.
    private static readonly double[][] MetricPan =
        [[1.6, 3.2, 1.3], [2, 4, 1.6], [2.5, 5, 2.1], [3, 5.6, 2.4], [3.5, 7, 2.6], [4, 8, 3.1], [5, 9.5, 3.7], [6, 12, 4.6], [8, 16, 6], [10, 20, 7.5]];

    // Size, key.
    private static readonly double[][] MetricSet =
        [[2, 0.9], [2.5, 1.3], [3, 1.5], [4, 2], [5, 2.5], [6, 3], [8, 4], [10, 5], [12, 6], [14, 6], [16, 8], [20, 10], [24, 12]];

    private static readonly (string Size, double Head, double Height, double Key)[] InchButton =
    [
        ("#0", 0.114, 0.032, 0.035), ("#1", 0.139, 0.039, 0.05), ("#2", 0.164, 0.046, 0.05), ("#3", 0.188, 0.052, 0.0625), ("#4", 0.213, 0.059, 0.0625),
        ("#5", 0.238, 0.066, 0.078125), ("#6", 0.262, 0.073, 0.078125), ("#8", 0.312, 0.087, 0.09375), ("#10", 0.361, 0.101, 0.125), ("1/4", 0.437, 0.132, 0.15625),
        ("5/16", 0.547, 0.166, 0.1875), ("3/8", 0.656, 0.199, 0.21875), ("7/16", 0.765, 0.231, 0.25), ("1/2", 0.875, 0.265, 0.3125), ("5/8", 1, 0.331, 0.375), ("3/4", 1.125, 0.375, 0.4375),
    ];

    private static readonly (string Size, double Key)[] InchSet =
    [
        ("#0", 0.028), ("#2", 0.035), ("#4", 0.05), ("#5", 0.0625), ("#6", 0.0625), ("#8", 0.078125), ("#10", 0.09375), ("1/4", 0.125), ("5/16", 0.15625), ("3/8", 0.1875),
        ("7/16", 0.21875), ("1/2", 0.25), ("5/8", 0.3125), ("3/4", 0.375), ("7/8", 0.5), ("1", 0.5625),
    ];

    // Size, head, height, key, counterbore.
    private static readonly double[][] MetricSocket =
    [
        [1.6, 3, 1.6, 1.5, 3.5], [2, 3.8, 2, 1.5, 4.4], [2.5, 4.5, 2.5, 2, 5.5], [3, 5.5, 3, 2.5, 6.5], [4, 7, 4, 3, 8], [5, 8.5, 5, 4, 10], [6, 10, 6, 5, 11],
        [8, 13, 8, 6, 15], [10, 16, 10, 8, 18], [12, 18, 12, 10, 20], [14, 21, 14, 12, 24], [16, 24, 16, 14, 26], [18, 27, 18, 14, 30], [20, 30, 20, 17, 33],
        [22, 33, 22, 17, 36], [24, 36, 24, 19, 40], [30, 45, 30, 22, 50], [36, 54, 36, 27, 58],
    ];

    // Size, sharp-edged head, key.
    private static readonly double[][] MetricFlatSocket =
        [[3, 6.72, 2], [4, 8.96, 2.5], [5, 11.2, 3], [6, 13.44, 4], [8, 17.92, 5], [10, 22.4, 6], [12, 26.88, 8], [14, 30.8, 10], [16, 33.6, 10], [20, 40.32, 12]];

    private static readonly double[][] MetricFlat =
        [[1.6, 3.6], [2, 4.4], [2.5, 5.5], [3, 6.3], [3.5, 8.2], [4, 9.4], [5, 10.4], [6, 12.6], [8, 17.3], [10, 20]];

    // Size, flats, height.
    private static readonly double[][] MetricHex =
    [
        [3, 5.5, 2], [4, 7, 2.8], [5, 8, 3.5], [6, 10, 4], [8, 13, 5.3], [10, 16, 6.4], [12, 18, 7.5], [14, 21, 8.8], [16, 24, 10], [18, 27, 11.5], [20, 30, 12.5],
        [22, 34, 14], [24, 36, 15], [27, 41, 17], [30, 46, 18.7], [36, 55, 22.5],
    ];

    // Size, head, height, key, counterbore; inches.
    private static readonly (string Size, double Head, double Height, double Key, double Bore)[] InchSocket =
    [
        ("#0", 0.096, 0.060, 0.050, 0.125), ("#1", 0.118, 0.073, 0.0625, 0.15625), ("#2", 0.140, 0.086, 0.078125, 0.1875), ("#3", 0.161, 0.099, 0.078125, 0.21875),
        ("#4", 0.183, 0.112, 0.09375, 0.21875), ("#5", 0.205, 0.125, 0.09375, 0.25), ("#6", 0.226, 0.138, 0.109375, 0.28125), ("#8", 0.270, 0.164, 0.140625, 0.3125),
        ("#10", 0.312, 0.190, 0.15625, 0.375), ("1/4", 0.375, 0.250, 0.1875, 0.4375), ("5/16", 0.469, 0.312, 0.25, 0.53125), ("3/8", 0.562, 0.375, 0.3125, 0.625),
        ("7/16", 0.656, 0.438, 0.375, 0.71875), ("1/2", 0.750, 0.500, 0.375, 0.8125), ("5/8", 0.938, 0.625, 0.5, 1), ("3/4", 1.125, 0.750, 0.625, 1.1875),
        ("7/8", 1.312, 0.875, 0.75, 1.375), ("1", 1.5, 1, 0.75, 1.625),
    ];

    private static readonly (string Size, double Head, double Key)[] InchFlatSocket =
    [
        ("#0", 0.138, 0.035), ("#1", 0.168, 0.050), ("#2", 0.197, 0.050), ("#3", 0.226, 0.0625), ("#4", 0.255, 0.0625), ("#5", 0.281, 0.078125), ("#6", 0.307, 0.078125),
        ("#8", 0.359, 0.09375), ("#10", 0.411, 0.125), ("1/4", 0.531, 0.15625), ("5/16", 0.656, 0.1875), ("3/8", 0.781, 0.21875), ("7/16", 0.844, 0.25),
        ("1/2", 0.938, 0.3125), ("5/8", 1.188, 0.375), ("3/4", 1.438, 0.5),
    ];

    private static readonly (string Size, double Head)[] InchFlat =
    [
        ("#0", 0.119), ("#1", 0.146), ("#2", 0.172), ("#3", 0.199), ("#4", 0.225), ("#5", 0.252), ("#6", 0.279), ("#8", 0.332), ("#10", 0.385), ("#12", 0.438),
        ("1/4", 0.507), ("5/16", 0.635), ("3/8", 0.762), ("7/16", 0.812), ("1/2", 0.875),
    ];

    private static readonly (string Size, double Flats, double Height)[] InchHex =
    [
        ("1/4", 0.4375, 0.163), ("5/16", 0.5, 0.211), ("3/8", 0.5625, 0.243), ("7/16", 0.625, 0.291), ("1/2", 0.75, 0.323), ("9/16", 0.8125, 0.371), ("5/8", 0.9375, 0.403),
        ("3/4", 1.125, 0.483), ("7/8", 1.3125, 0.563), ("1", 1.5, 0.627),
    ];

    // Size, flats, thickness: ISO 4032 style 1, greatest sizes.
    private static readonly double[][] MetricNut =
    [
        [1.6, 3.2, 1.3], [2, 4, 1.6], [2.5, 5, 2], [3, 5.5, 2.4], [3.5, 6, 2.8], [4, 7, 3.2], [5, 8, 4.7], [6, 10, 5.2], [8, 13, 6.8], [10, 16, 8.4], [12, 18, 10.8],
        [14, 21, 12.8], [16, 24, 14.8], [18, 27, 15.8], [20, 30, 18], [22, 34, 19.4], [24, 36, 21.5], [27, 41, 23.8], [30, 46, 25.6], [33, 50, 28.7], [36, 55, 31],
    ];

    // Size, flats, thickness in sixty-fourths of an inch: B18.2.2 hex nuts, basic; the number sizes are machine screw nuts.
    private static readonly (string Size, double Flats, double Thick)[] InchNut =
    [
        ("1/4", 28, 14), ("5/16", 32, 17), ("3/8", 36, 21), ("7/16", 44, 24), ("1/2", 48, 28), ("9/16", 56, 31), ("5/8", 60, 35), ("3/4", 72, 41), ("7/8", 84, 48),
        ("1", 96, 55), ("1 1/8", 108, 62), ("1 1/4", 120, 68), ("1 3/8", 132, 75), ("1 1/2", 144, 82),
    ];

    // Size, flats, greatest thickness, inches.
    private static readonly (string Size, double Flats, double Thick)[] ScrewNut =
    [
        ("#0", 0.15625, 0.05), ("#1", 0.15625, 0.05), ("#2", 0.1875, 0.066), ("#3", 0.1875, 0.066), ("#4", 0.25, 0.098), ("#5", 0.3125, 0.114), ("#6", 0.3125, 0.114),
        ("#8", 0.34375, 0.13), ("#10", 0.375, 0.13), ("#12", 0.4375, 0.161),
    ];

    /// <summary>Every head.</summary>
    public static IReadOnlyList<ScrewHead> All { get; } = [.. Metric(), .. Imperial()];

    /// <summary>The heads of a size.</summary>
    /// <param name="size">M5, #10, 1/4.</param>
    /// <returns>Heads, none where the size is not in the tables.</returns>
    public static IReadOnlyList<ScrewHead> Of(string size) => [.. All.Where(h => string.Equals(h.Size, size, StringComparison.OrdinalIgnoreCase))];

    private static IEnumerable<ScrewHead> Metric()
    {
        foreach (var r in MetricSocket)
        {
            var over = r[0] < 8 ? 0.4 : r[0] <= 20 ? 0.6 : 0.8;
            yield return new ScrewHead(Name(r[0]), "socket head cap", r[1], r[2], r[3], r[4], r[2] + over, No, Iso4762) { PocketBasis = r[0] <= 10 ? Din974 : Din974More };
        }

        foreach (var r in MetricFlatSocket)
        {
            yield return new ScrewHead(Name(r[0]), "flat socket", r[1], No, r[2], r[1], No, 90, Iso10642);
        }

        foreach (var r in MetricFlat)
        {
            yield return new ScrewHead(Name(r[0]), "flat slotted or crosshead", r[1], No, No, r[1], No, 90, Iso7046);
        }

        foreach (var r in MetricButton)
        {
            yield return new ScrewHead(Name(r[0]), "button socket", r[1], r[2], r[3], No, No, No, Iso7380);
        }

        foreach (var r in MetricPan)
        {
            yield return new ScrewHead(Name(r[0]), "pan crosshead", r[1], r[2], No, No, No, No, Iso7045);
        }

        foreach (var r in MetricSet)
        {
            yield return new ScrewHead(Name(r[0]), "set screw", No, No, r[1], No, No, No, Din913);
        }

        foreach (var r in MetricHex)
        {
            yield return new ScrewHead(Name(r[0]), "hexagon", r[1], r[2], r[1], No, No, No, r[0] == 22 ? M22Hex : Iso4017);
        }

        foreach (var r in MetricNut)
        {
            yield return new ScrewHead(Name(r[0]), "hexagon nut", r[1], r[2], r[1], No, No, No, Iso4032);
        }
    }

    private static IEnumerable<ScrewHead> Imperial()
    {
        foreach (var r in InchSocket)
        {
            yield return new ScrewHead(r.Size, "socket head cap", Mm(r.Head), Mm(r.Height), Mm(r.Key), Mm(r.Bore), Mm(r.Height), No, B183) { PocketBasis = B183Bore };
        }

        foreach (var r in InchFlatSocket)
        {
            yield return new ScrewHead(r.Size, "flat socket", Mm(r.Head), No, Mm(r.Key), Mm(r.Head), No, 82, B183Flat);
        }

        foreach (var r in InchFlat)
        {
            yield return new ScrewHead(r.Size, "flat slotted or crosshead", Mm(r.Head), No, No, Mm(r.Head), No, 82, B1863);
        }

        foreach (var r in InchButton)
        {
            yield return new ScrewHead(r.Size, "button socket", Mm(r.Head), Mm(r.Height), Mm(r.Key), No, No, No, B183Button);
        }

        foreach (var r in InchSet)
        {
            yield return new ScrewHead(r.Size, "set screw", No, No, Mm(r.Key), No, No, No, B183Set);
        }

        foreach (var r in InchHex)
        {
            yield return new ScrewHead(r.Size, "hexagon", Mm(r.Flats), Mm(r.Height), Mm(r.Flats), No, No, No, B1821);
        }

        foreach (var r in InchNut)
        {
            yield return new ScrewHead(r.Size, "hexagon nut", Mm(r.Flats / 64), Mm(r.Thick / 64), Mm(r.Flats / 64), No, No, No, B1822);
        }

        foreach (var r in ScrewNut)
        {
            yield return new ScrewHead(r.Size, "hexagon nut", Mm(r.Flats), Mm(r.Thick), Mm(r.Flats), No, No, No, B1822);
        }
    }

    private static string Name(double size) => "M" + size.ToString(CultureInfo.InvariantCulture);

    private static double Mm(double inches) => inches * 25.4;
}
