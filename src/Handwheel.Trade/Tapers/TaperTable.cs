using System.Globalization;

namespace Handwheel.Trade.Tapers;

/// <summary>Morse, Jacobs, Brown &amp; Sharpe, Jarno, 7/24, R8 and pin tapers.</summary>
public static class TaperTable
{
    private const double No = double.NaN;

    private static readonly Basis MorseBasis = new("ASME B5.10 (five-decimal taper per foot); 'Dimensions of Standard Tapers'", Evidence.HandbookTable);
    private static readonly Basis TangBasis = new("ASME B5.10 Morse shank and socket table (nobody confirmed this value)", Evidence.Memory);
    private static readonly Basis SlotBasis = new("ASME B5.10 Morse socket table (published copy of dimensions K and L)", Evidence.HandbookTable);
    private static readonly Basis DrawbarBasis = new("drawbar threads as commonly made (nobody confirmed this value)", Evidence.Memory);
    private static readonly Basis R8Thread = new("R8 as commonly made: 16 deg 51 min, 7/16-20 (published machine taper reference)", Evidence.HandbookTable);
    private static readonly Basis Read = new("'Dimensions of Standard Tapers'", Evidence.HandbookTable);
    private static readonly Basis Steep = new("ISO 7388-1 / ASME B5.50 / ISO 297: 7/24, 3.5 in per foot", Evidence.StandardFormula);
    private static readonly Basis SteepLarge = new("DIN 2080-1: 7/24 (the gauge diameter is remembered)", Evidence.Memory);
    private static readonly Basis ColletBore = new("R8 collets as sold: bores to 3/4 in, a few makers to 7/8 in", Evidence.CommonPractice);
    private static readonly Basis OneInTwenty = new("ISO 296: metric tapers 1 in 20, named by the large diameter", Evidence.StandardFormula);
    private static readonly Basis JarnoRule = new("Jarno's rule: number/8 large, number/10 small, number/2 long, 0.6 in per foot", Evidence.StandardFormula);
    private static readonly Basis Collet = new("R8 collet and spindle taper as commonly made (angle and thread held against a reference table; diameters remembered)", Evidence.Memory);
    private static readonly Basis Short = new("DIN 238-1 drill-chuck tapers, on Morse tapers", Evidence.Memory);
    private static readonly Basis InchPin = new("ASME B18.8.2 taper pins, 1/4 in per foot", Evidence.HandbookTable);
    private static readonly Basis MetricPin = new("ISO 2339:1986 taper pins, 1 in 50 (nominal at the small end)", Evidence.HandbookTable);

    // Number, taper per foot, large, small, plug length.
    private static readonly (string Number, double PerFoot, double Large, double Small, double Length)[] Morse =
    [
        ("0", 0.62460, 0.3561, 0.252, 2), ("1", 0.59858, 0.475, 0.369, 2.125), ("2", 0.59941, 0.7, 0.572, 2.5625), ("3", 0.60235, 0.938, 0.778, 3.1875),
        ("4", 0.62326, 1.231, 1.02, 4.0625), ("4 1/2", 0.624, 1.5, 1.266, 4.5), ("5", 0.63151, 1.748, 1.475, 5.1875), ("6", 0.62565, 2.494, 2.116, 7.25),
        ("7", 0.624, 3.27, 2.75, 10),
    ];

    // Tang thickness, tang length, tang diameter, slot width, slot length, end of socket to slot, hole depth; drawbar threads inch and metric.
    private static readonly (double T, double Long, double Dia, double Slot, double SlotLong, double ToSlot, double Depth, string Inch, string Metric)[] MorseTangs =
    [
        (0.15625, 0.25, 0.235, 0.172, 0.5625, 1.9375, 2.03125, "none usual", ""),
        (0.203125, 0.375, 0.343, 0.218, 0.75, 2.0625, 2.15625, "1/4-20", "M6"),
        (0.25, 0.4375, 0.53125, 0.266, 0.875, 2.5, 2.609375, "3/8-16", "M10"),
        (0.3125, 0.5625, 0.71875, 0.328, 1.1875, 3.0625, 3.25, "1/2-13", "M12"),
        (0.46875, 0.625, 0.96875, 0.484, 1.25, 3.875, 4.125, "5/8-11", "M16"),
        (0.5625, 0.6875, 1.203125, 0.578, 1.375, 4.3125, 4.5625, "none usual", ""),
        (0.625, 0.75, 1.40625, 0.656, 1.5, 4.9375, 5.25, "3/4-10", "M20"),
        (0.75, 1.125, 2, 0.781, 1.75, 7, 7.328125, "1-8", "M24"),
        (1.125, 1.375, 2.625, 1.156, 2.625, 9.5, 10.078125, "none usual", ""),
    ];

    private static readonly (string Number, double PerFoot, double Large, double Small, double Length)[] Jacobs =
    [
        ("0", 0.5915, 0.25, 0.22844, 0.4375), ("1", 0.9251, 0.384, 0.33341, 0.65625), ("2", 0.9786, 0.559, 0.48764, 0.875),
        ("2 short", 0.9786, 0.5488, 0.48764, 0.75), ("3", 0.6390, 0.811, 0.7461, 1.21875), ("4", 0.6289, 1.124, 1.0372, 1.65625),
        ("5", 0.6201, 1.413, 1.31611, 1.875), ("6", 0.6229, 0.676, 0.62409, 1), ("33", 0.7619, 0.624, 0.56051, 1),
    ];

    private static readonly (string Number, double PerFoot, double Large, double Small, double Length)[] BrownAndSharpe =
    [
        ("1", 0.50200, 0.23922, 0.2, 0.9375), ("2", 0.50200, 0.29968, 0.25, 1.1875), ("3", 0.50200, 0.37525, 0.3125, 1.5), ("4", 0.50240, 0.42066, 0.35, 1.6875),
        ("5", 0.50160, 0.53882, 0.45, 2.125), ("6", 0.50329, 0.59961, 0.5, 2.375), ("7", 0.50147, 0.72015, 0.6, 2.875), ("8", 0.50100, 0.89873, 0.75, 3.5625),
        ("9", 0.50085, 1.07748, 0.90010, 4.25), ("10", 0.51612, 1.25970, 1.04465, 5), ("11", 0.50100, 1.49783, 1.24995, 5.9375), ("12", 0.49973, 1.79681, 1.5001, 7.125),
        ("13", 0.50020, 2.0731, 1.75005, 7.75), ("14", 0.5, 2.34375, 2, 8.25), ("15", 0.5, 2.61458, 2.25, 8.75), ("16", 0.5, 2.88542, 2.5, 9.25),
        ("17", 0.5, 3.15625, 2.75, 9.75), ("18", 0.5, 3.42708, 3, 10.25),
    ];

    private static readonly (string Number, double GaugeIn, string Inch, string Metric)[] SevenTwentyFour =
    [
        ("10", 0.625, "", ""), ("15", 0.75, "", ""), ("20", 0.875, "", ""), ("25", 1, "", ""), ("30", 1.25, "1/2-13", "M12"), ("35", 1.5, "1/2-13", "M12"),
        ("40", 1.75, "5/8-11", "M16"), ("45", 2.25, "3/4-10", "M20"), ("50", 2.75, "1-8", "M24"), ("55", 3.5, "1-8", "M24"), ("60", 4.25, "1 1/4-7", "M30"),
    ];

    // DIN 2080-1 lists these sizes; the diameters are remembered.
    private static readonly (string Number, double GaugeIn)[] LargeSevenTwentyFour = [("65", 5.25), ("70", 6.5), ("75", 8), ("80", 10)];

    private static readonly (string Number, double LargeIn)[] Pins =
    [
        ("7/0", 0.0625), ("6/0", 0.078), ("5/0", 0.094), ("4/0", 0.109), ("3/0", 0.125), ("2/0", 0.141), ("0", 0.156), ("1", 0.172), ("2", 0.193), ("3", 0.219),
        ("4", 0.25), ("5", 0.289), ("6", 0.341), ("7", 0.409), ("8", 0.492), ("9", 0.591), ("10", 0.706), ("11", 0.86), ("12", 1.032), ("13", 1.241), ("14", 1.521),
    ];

    private static readonly (string Number, double LargeMm, string Morse, double LengthMm)[] ChuckB =
    [
        ("10", 10.094, "1", 14.5), ("12", 12.065, "1", 18.5), ("16", 15.733, "2", 24), ("18", 17.78, "2", 32), ("22", 21.793, "3", 40.5), ("24", 23.825, "3", 50.5),
    ];

    /// <summary>Every taper.</summary>
    public static IReadOnlyList<Taper> All { get; } = [.. Build(), .. LargeSevenTwentyFour.Select(t => new Taper("7/24", t.Number, 3.5, t.GaugeIn, No, No, SteepLarge))];

    /// <summary>Finds a taper.</summary>
    /// <param name="family">Morse, Jacobs, Brown &amp; Sharpe, Jarno, 7/24, R8, taper pin, metric taper pin, B.</param>
    /// <param name="number">Its number.</param>
    /// <returns>The taper, or null.</returns>
    public static Taper? Find(string family, string number) =>
        All.FirstOrDefault(t => t.Family == family && string.Equals(t.Number, number, StringComparison.OrdinalIgnoreCase));

    private static IEnumerable<Taper> Build()
    {
        for (var i = 0; i < Morse.Length; i++)
        {
            var m = Morse[i];
            yield return new Taper("Morse", m.Number, m.PerFoot, m.Large, m.Small, m.Length, MorseBasis) { Details = Tang(MorseTangs[i]) };
        }

        foreach (var j in Jacobs)
        {
            yield return new Taper("Jacobs", j.Number, j.PerFoot, j.Large, j.Small, j.Length, Read);
        }

        foreach (var b in BrownAndSharpe)
        {
            yield return new Taper("Brown & Sharpe", b.Number, b.PerFoot, b.Large, b.Small, b.Length, Read);
        }

        for (var n = 2; n <= 20; n++)
        {
            yield return new Taper("Jarno", n.ToString(CultureInfo.InvariantCulture), 0.6, n / 8.0, n / 10.0, n / 2.0, JarnoRule);
        }

        foreach (var s in SevenTwentyFour)
        {
            TaperDetail[] bolt = s.Inch.Length == 0 ? [] : [new("drawbar thread", No, DrawbarBasis, $"{s.Inch} or {s.Metric}")];
            yield return new Taper("7/24", s.Number, 3.5, s.GaugeIn, No, No, Steep) { Details = bolt };
        }

        foreach (var mm in new[] { 4, 6, 80, 100, 120, 160, 200 })
        {
            yield return new Taper("metric", mm.ToString(CultureInfo.InvariantCulture), 0.6, mm / 25.4, No, No, OneInTwenty);
        }

        // 16 deg 51 min included.
        var perFoot = 24 * Math.Tan(16.85 * Math.PI / 360);
        yield return new Taper("R8", string.Empty, perFoot, 1.25, 0.9495, (1.25 - 0.9495) / perFoot * 12, Collet)
        {
            Details = [new("drawbar thread", No, R8Thread, "7/16-20 (some makers M12)"), new("straight shank", 0.9495, Collet), new("overall length", 4, Collet), new("greatest shank in its collet", 0.75, ColletBore)],
        };

        foreach (var b in ChuckB)
        {
            var morse = Array.Find(Morse, m => m.Number == b.Morse);
            var length = b.LengthMm / 25.4;
            yield return new Taper("B", b.Number, morse.PerFoot, b.LargeMm / 25.4, (b.LargeMm / 25.4) - (length * morse.PerFoot / 12), length, Short);
        }

        foreach (var p in Pins)
        {
            yield return new Taper("taper pin", p.Number, 0.25, p.LargeIn, No, No, InchPin);
        }

        foreach (var mm in new[] { 0.6, 0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 40, 50 })
        {
            yield return new Taper("metric taper pin", mm.ToString(CultureInfo.InvariantCulture), 0.24, No, mm / 25.4, No, MetricPin);
        }
    }

    private static TaperDetail[] Tang((double T, double Long, double Dia, double Slot, double SlotLong, double ToSlot, double Depth, string Inch, string Metric) t) =>
    [
        new("tang thickness", t.T, TangBasis), new("tang length", t.Long, TangBasis), new("tang diameter", t.Dia, TangBasis),
        new("drift slot width", t.Slot, TangBasis), new("drift slot length", t.SlotLong, t.SlotLong == 1.375 ? TangBasis : SlotBasis),
        new("socket face to drift slot", t.ToSlot, t.SlotLong == 1.375 ? TangBasis : SlotBasis), new("socket depth", t.Depth, TangBasis),
        new("drawbar thread", No, DrawbarBasis, t.Metric.Length == 0 ? t.Inch : $"{t.Inch} or {t.Metric}"),
    ];
}
