namespace Handwheel.Trade.Fits;

/// <summary>The rows behind the inch fits, thousandths of an inch.</summary>
/// <remarks>
/// A class is a hole grade and a shaft's position and grade, as in the American-British-Canadian system that B4.1 follows; where the printed table
/// departs from that build-up, the printed limits are carried.
/// </remarks>
internal static class InchFitTable
{
    private const double No = double.NaN;

    private static readonly double[] Ends = [0.12, 0.24, 0.40, 0.71, 1.19, 1.97, 3.15, 4.73, 7.09, 9.85, 12.41, 15.75, 19.69];

    private static readonly double[] FineEnds =
    [
        0.12, 0.24, 0.40, 0.56, 0.71, 0.95, 1.19, 1.58, 1.97, 2.56, 3.15, 3.94, 4.73, 5.52, 6.30, 7.09, 7.88, 8.86, 9.85, 11.03, 12.41, 13.98, 15.75, 17.72, 19.69,
    ];

    // Grades 4 to 13.
    private static readonly double[][] Grades =
    [
        [0.15, 0.15, 0.15, 0.2, 0.25, 0.3, 0.3, 0.4, 0.5, 0.6, 0.6, 0.7, 0.8],
        [0.2, 0.2, 0.25, 0.3, 0.4, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.0],
        [0.25, 0.3, 0.4, 0.4, 0.5, 0.6, 0.7, 0.9, 1.0, 1.2, 1.2, 1.4, 1.6],
        [0.4, 0.5, 0.6, 0.7, 0.8, 1.0, 1.2, 1.4, 1.6, 1.8, 2.0, 2.2, 2.5],
        [0.6, 0.7, 0.9, 1.0, 1.2, 1.6, 1.8, 2.2, 2.5, 2.8, 3.0, 3.5, 4.0],
        [1.0, 1.2, 1.4, 1.6, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 6.0, 6.0],
        [1.6, 1.8, 2.2, 2.8, 3.5, 4.0, 4.5, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0],
        [2.5, 3.0, 3.5, 4.0, 5.0, 6.0, 7.0, 9.0, 10.0, 12.0, 12.0, 14.0, 16.0],
        [4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 22, 25],
        [6, 7, 9, 10, 12, 16, 18, 22, 25, 28, 30, 35, 40],
    ];

    private static readonly double[] Zero = new double[13];
    private static readonly double[] RunningG = [0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.4, 0.5, 0.6, 0.6, 0.8, 1.0, 1.2];
    private static readonly double[] RunningF = [0.3, 0.4, 0.5, 0.6, 0.8, 1.0, 1.2, 1.4, 1.6, 2.0, 2.5, 3.0, 4.0];
    private static readonly double[] RunningE = [0.6, 0.8, 1.0, 1.2, 1.6, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0, 6.0, 8.0];
    private static readonly double[] RunningD = [1.0, 1.2, 1.6, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 10.0, 12.0];
    private static readonly double[] PositionC = [2.5, 2.8, 3.0, 3.5, 4.5, 5.0, 6.0, 7.0, 8.0, 10.0, 12.0, 14.0, 16.0];
    private static readonly double[] LooseNine = [4.0, 4.5, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 12.0, 15.0, 18.0, 22.0, 25.0];
    private static readonly double[] LocateG = [0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.4, 0.5, 0.6, 0.6, 0.7, 0.7, 0.8];
    private static readonly double[] LocateF = [0.3, 0.4, 0.5, 0.6, 0.8, 1.0, 1.2, 1.4, 1.6, 2.0, 2.2, 2.5, 2.8];
    private static readonly double[] LocateE = [0.6, 0.8, 1.0, 1.2, 1.6, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 5.0];
    private static readonly double[] LocateD = [1.0, 1.2, 1.6, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.0, 7.0, 8.0, 9.0];
    private static readonly double[] LocateTen = [4, 4.5, 5, 6, 7, 8, 10, 11, 12, 16, 20, 22, 25];
    private static readonly double[] LocateEleven = [5, 6, 7, 8, 10, 12, 14, 16, 18, 22, 28, 30, 35];

    // Clearance classes: hole grade, allowance row, shaft grade.
    private static readonly Dictionary<string, (int Hole, double[] Allowance, int Shaft)> Clear = new(StringComparer.Ordinal)
    {
        ["RC1"] = (5, RunningG, 4), ["RC2"] = (6, RunningG, 5), ["RC3"] = (7, RunningF, 6), ["RC4"] = (8, RunningF, 7), ["RC5"] = (8, RunningE, 7),
        ["RC6"] = (9, RunningE, 8), ["RC7"] = (9, RunningD, 8), ["RC8"] = (10, PositionC, 9), ["RC9"] = (11, LooseNine, 10),
        ["LC1"] = (6, Zero, 5), ["LC2"] = (7, Zero, 6), ["LC3"] = (8, Zero, 7), ["LC4"] = (10, Zero, 9), ["LC5"] = (7, LocateG, 6),
        ["LC6"] = (9, LocateF, 8), ["LC7"] = (10, LocateE, 9), ["LC8"] = (10, LocateD, 9), ["LC9"] = (11, PositionC, 10),
        ["LC10"] = (12, LocateTen, 12), ["LC11"] = (13, LocateEleven, 13),
    };

    // Transition and interference classes: hole grade, shaft upper row, shaft lower row.
    private static readonly Dictionary<string, (int Hole, double[] Upper, double[] Lower)> Tight = new(StringComparer.Ordinal)
    {
        ["LT1"] = (7, [0.12, 0.15, 0.2, 0.2, 0.25, 0.3, 0.3, 0.4, 0.5, 0.6, 0.6, 0.7, 0.8], [-0.12, -0.15, -0.2, -0.2, -0.25, -0.3, -0.3, -0.4, -0.5, -0.6, -0.6, -0.7, -0.8]),
        ["LT2"] = (8, [0.2, 0.25, 0.3, 0.35, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.0, 1.2], [-0.2, -0.25, -0.3, -0.35, -0.4, -0.5, -0.6, -0.7, -0.8, -0.9, -1.0, -1.0, -1.2]),
        ["LT3"] = (7, [No, No, 0.5, 0.5, 0.6, 0.7, 0.8, 1.0, 1.1, 1.4, 1.4, 1.6, 1.8], [No, No, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.2, 0.2, 0.2, 0.2]),
        ["LT4"] = (8, [No, No, 0.7, 0.8, 0.9, 1.1, 1.3, 1.5, 1.7, 2.0, 2.2, 2.4, 2.7], [No, No, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.2, 0.2, 0.2, 0.2]),
        ["LT5"] = (7, [0.5, 0.6, 0.8, 0.9, 1.1, 1.3, 1.5, 1.9, 2.2, 2.6, 2.6, 3.0, 3.4], [0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 1.0, 1.2, 1.4, 1.4, 1.6, 1.8]),
        ["LT6"] = (7, [0.65, 0.8, 1.0, 1.2, 1.4, 1.7, 2.0, 2.4, 2.8, 3.2, 3.4, 3.8, 4.3], [0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 1.0, 1.2, 1.4, 1.4, 1.6, 1.8]),
        ["LN1"] = (6, [0.45, 0.5, 0.65, 0.8, 1.0, 1.1, 1.3, 1.6, 1.9, 2.2, 2.3, 2.6, 2.8], [0.25, 0.3, 0.4, 0.4, 0.5, 0.6, 0.8, 1.0, 1.2, 1.4, 1.4, 1.6, 1.8]),
        ["LN2"] = (7, [0.65, 0.8, 1.0, 1.1, 1.3, 1.6, 2.1, 2.5, 2.8, 3.2, 3.4, 3.9, 4.4], [0.4, 0.5, 0.6, 0.7, 0.8, 1.0, 1.4, 1.6, 1.8, 2.0, 2.2, 2.5, 2.8]),
        ["LN3"] = (7, [0.75, 0.9, 1.2, 1.4, 1.7, 2.0, 2.3, 2.9, 3.5, 4.2, 4.7, 5.9, 6.6], [0.5, 0.6, 0.8, 1.0, 1.2, 1.4, 1.6, 2.0, 2.5, 3.0, 3.5, 4.5, 5.0]),
    };

    // Force classes on the fine bands: hole grade, shaft upper row, shaft lower row.
    private static readonly Dictionary<string, (int Hole, double[] Upper, double[] Lower)> Force = new(StringComparer.Ordinal)
    {
        ["FN1"] = (6,
            [0.5, 0.6, 0.75, 0.8, 0.9, 1.1, 1.2, 1.3, 1.4, 1.8, 1.9, 2.4, 2.6, 2.9, 3.2, 3.5, 3.8, 4.3, 4.3, 4.9, 4.9, 5.5, 6.1, 7.0, 7.0],
            [0.3, 0.4, 0.5, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.3, 1.4, 1.8, 2.0, 2.2, 2.5, 2.8, 3.0, 3.5, 3.5, 4.0, 4.0, 4.5, 5.0, 6.0, 6.0]),
        ["FN2"] = (7,
            [0.85, 1.0, 1.4, 1.6, 1.6, 1.9, 1.9, 2.4, 2.4, 2.7, 2.9, 3.7, 3.9, 4.5, 5.0, 5.5, 6.2, 6.2, 7.2, 7.2, 8.2, 9.4, 9.4, 10.6, 11.6],
            [0.6, 0.7, 1.0, 1.2, 1.2, 1.4, 1.4, 1.8, 1.8, 2.0, 2.2, 2.8, 3.0, 3.5, 4.0, 4.5, 5.0, 5.0, 6.0, 6.0, 7.0, 8.0, 8.0, 9.0, 10.0]),
        ["FN3"] = (7,
            [No, No, No, No, No, No, 2.1, 2.6, 2.8, 3.2, 3.7, 4.4, 4.9, 6.0, 6.0, 7.0, 8.2, 8.2, 9.2, 10.2, 10.2, 11.4, 13.4, 13.6, 15.6],
            [No, No, No, No, No, No, 1.6, 2.0, 2.2, 2.5, 3.0, 3.5, 4.0, 5.0, 5.0, 6.0, 7.0, 7.0, 8.0, 9.0, 9.0, 10.0, 12.0, 12.0, 14.0]),
        ["FN4"] = (7,
            [0.95, 1.2, 1.6, 1.8, 1.8, 2.1, 2.3, 3.1, 3.4, 4.2, 4.7, 5.9, 6.9, 8.0, 8.0, 9.0, 10.2, 11.2, 13.2, 13.2, 15.2, 17.4, 19.4, 21.6, 23.6],
            [0.7, 0.9, 1.2, 1.4, 1.4, 1.6, 1.8, 2.5, 2.8, 3.5, 4.0, 5.0, 6.0, 7.0, 7.0, 8.0, 9.0, 10.0, 12.0, 12.0, 14.0, 16.0, 18.0, 20.0, 22.0]),
        ["FN5"] = (8,
            [1.3, 1.7, 2.0, 2.3, 2.5, 3.0, 3.3, 4.0, 5.0, 6.2, 7.2, 8.4, 9.4, 11.6, 13.6, 13.6, 15.8, 17.8, 17.8, 20.0, 22.0, 24.2, 27.2, 30.5, 32.5],
            [0.9, 1.2, 1.4, 1.6, 1.8, 2.2, 2.5, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 10.0, 12.0, 12.0, 14.0, 16.0, 16.0, 18.0, 20.0, 22.0, 25.0, 28.0, 30.0]),
    };

    /// <summary>Hole tolerance and shaft limits of a class.</summary>
    /// <param name="name">Class, e.g. RC4.</param>
    /// <param name="nominalIn">Nominal size, in.</param>
    /// <returns>Hole upper limit (its lower is 0), shaft upper and lower, thousandths of an inch; NaN where the table is blank.</returns>
    internal static (double Hole, double ShaftUpper, double ShaftLower) Thousandths(string name, double nominalIn)
    {
        var band = Array.FindIndex(Ends, e => nominalIn <= e);
        if (Clear.TryGetValue(name, out var clear))
        {
            // The one place where the printed shaft departs from its grade: RC9, 0.12 to 0.24.
            var tolerance = name == "RC9" && band == 1 ? 1.5 : Grades[clear.Shaft - 4][band];
            return (Grades[clear.Hole - 4][band], 0 - clear.Allowance[band], -(clear.Allowance[band] + tolerance));
        }

        if (Tight.TryGetValue(name, out var tight))
        {
            return (Grades[tight.Hole - 4][band], tight.Upper[band], tight.Lower[band]);
        }

        var force = Force[name];
        var fine = Array.FindIndex(FineEnds, e => nominalIn <= e);
        return (Grades[force.Hole - 4][band], force.Upper[fine], force.Lower[fine]);
    }
}
