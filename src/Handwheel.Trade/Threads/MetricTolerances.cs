namespace Handwheel.Trade.Threads;

/// <summary>Tolerances and fundamental deviations of metric threads, micrometres.</summary>
/// <remarks>
/// ISO 965-1. Grade 6 values are carried as the standard's table (its R40 rounding was smoothed by hand and does not follow from the formula);
/// other grades stand four R40 steps away each, as in the standard (0.63, 0.8, 1, 1.25, 1.6, 2). Where the table has no entry the formula is used:
/// Td2(6) = 90 P^0.4 d^0.1, Td(6) = 180 P^(2/3) - 3.15/sqrt(P), TD1(6) = 433 P - 190 P^1.22 (P under 1) or 230 P^0.7, rounded to R40.
/// </remarks>
internal static class MetricTolerances
{
    private static readonly double[] R40 =
    [
        1.00, 1.06, 1.12, 1.18, 1.25, 1.32, 1.40, 1.50, 1.60, 1.70, 1.80, 1.90, 2.00, 2.12, 2.24, 2.36, 2.50, 2.65, 2.80, 3.00,
        3.15, 3.35, 3.55, 3.75, 4.00, 4.25, 4.50, 4.75, 5.00, 5.30, 5.60, 6.00, 6.30, 6.70, 7.10, 7.50, 8.00, 8.50, 9.00, 9.50,
    ];

    private static readonly double[] BandEnds = [1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355];

    // Per band: pitch, Td2 of grade 6.
    private static readonly double[][] Pitch6 =
    [
        [0.2, 48, 0.25, 53, 0.3, 56],
        [0.2, 50, 0.25, 56, 0.35, 63, 0.4, 67, 0.45, 71],
        [0.35, 67, 0.5, 75, 0.6, 85, 0.7, 90, 0.75, 90, 0.8, 95],
        [0.75, 100, 1, 112, 1.25, 118, 1.5, 132],
        [1, 118, 1.25, 132, 1.5, 140, 1.75, 150, 2, 160, 2.5, 170],
        [1, 125, 1.5, 150, 2, 170, 3, 200, 3.5, 212, 4, 224, 4.5, 236],
        [1.5, 160, 2, 180, 3, 212, 4, 236, 5, 250, 5.5, 265, 6, 280],
        [2, 190, 3, 224, 4, 250, 6, 300, 8, 335],
        [3, 250, 4, 280, 6, 315, 8, 355],
    ];

    // Pitch: Td(6), TD1(6), es e, es f, es g (NaN where not given).
    private static readonly (double Pitch, double Major, double Minor, double E, double F, double G)[] ByPitch =
    [
        (0.2, 56, 60, No, No, 17), (0.25, 67, 71, No, No, 18), (0.3, 75, 85, No, No, 18), (0.35, 85, 100, No, 34, 19), (0.4, 95, 112, No, 34, 19),
        (0.45, 100, 125, No, 35, 20), (0.5, 106, 140, 50, 36, 20), (0.6, 125, 160, 53, 36, 21), (0.7, 140, 180, 56, 38, 22), (0.75, 140, 190, 56, 38, 22),
        (0.8, 150, 200, 60, 38, 24), (1, 180, 236, 60, 40, 26), (1.25, 212, 265, 63, 42, 28), (1.5, 236, 300, 67, 45, 32), (1.75, 265, 335, 71, 48, 34),
        (2, 280, 375, 71, 52, 38), (2.5, 335, 450, 80, 58, 42), (3, 375, 500, 85, 63, 48), (3.5, 425, 560, 90, 70, 53), (4, 475, 600, 95, 75, 60),
        (4.5, 500, 670, 100, 80, 63), (5, 530, 710, 106, 85, 71), (5.5, 560, 750, 112, 90, 75), (6, 600, 800, 118, 95, 80), (8, 710, 1000, 140, 118, 100),
    ];

    private const double No = double.NaN;

    /// <summary>Tolerance of the screw's pitch diameter, grades 3 to 9.</summary>
    /// <param name="grade">Grade.</param>
    /// <param name="diameter">Nominal diameter, mm.</param>
    /// <param name="pitch">Pitch, mm.</param>
    /// <returns>Micrometres, or NaN.</returns>
    internal static double PitchExternal(int grade, double diameter, double pitch) =>
        grade is < 3 or > 9 ? No : Step(PitchSix(diameter, pitch), 4 * (grade - 6));

    /// <summary>Tolerance of the nut's pitch diameter, grades 4 to 8: five R40 steps (1.32) over the screw's.</summary>
    /// <param name="grade">Grade.</param>
    /// <param name="diameter">Nominal diameter, mm.</param>
    /// <param name="pitch">Pitch, mm.</param>
    /// <returns>Micrometres, or NaN.</returns>
    internal static double PitchInternal(int grade, double diameter, double pitch) =>
        grade is < 4 or > 8 ? No : Step(PitchSix(diameter, pitch), (4 * (grade - 6)) + 5);

    /// <summary>Whether the standard's tables have this diameter and pitch.</summary>
    /// <param name="diameter">Nominal diameter, mm.</param>
    /// <param name="pitch">Pitch, mm.</param>
    /// <returns>True where no formula is needed.</returns>
    internal static bool Tabulates(double diameter, double pitch)
    {
        var band = Array.FindIndex(BandEnds, end => diameter <= end);
        return band >= 0 && Row(pitch) is not null && Pitch6[band].Where((_, i) => i % 2 == 0).Any(p => Math.Abs(p - pitch) < 1e-9);
    }

    /// <summary>Tolerance of the screw's major diameter, grades 4, 6, 8.</summary>
    /// <param name="grade">Grade.</param>
    /// <param name="pitch">Pitch, mm.</param>
    /// <returns>Micrometres, or NaN.</returns>
    internal static double Major(int grade, double pitch)
    {
        var six = Row(pitch)?.Major ?? Rounded((180 * Math.Pow(pitch, 2.0 / 3)) - (3.15 / Math.Sqrt(pitch)));
        return grade switch { 4 => Step(six, -8), 6 => six, 8 => pitch < 0.8 ? No : Step(six, 8), _ => No };
    }

    /// <summary>Tolerance of the nut's minor diameter, grades 4 to 8.</summary>
    /// <param name="grade">Grade.</param>
    /// <param name="pitch">Pitch, mm.</param>
    /// <returns>Micrometres, or NaN.</returns>
    internal static double Minor(int grade, double pitch)
    {
        var six = Row(pitch)?.Minor ?? Rounded(pitch < 1 ? (433 * pitch) - (190 * Math.Pow(pitch, 1.22)) : 230 * Math.Pow(pitch, 0.7));
        return grade is < 4 or > 8 ? No : Step(six, 4 * (grade - 6));
    }

    /// <summary>Fundamental deviation as a positive number.</summary>
    /// <param name="position">e, f, g, h, G or H.</param>
    /// <param name="pitch">Pitch, mm.</param>
    /// <returns>Micrometres, or NaN.</returns>
    internal static double Allowance(char position, double pitch)
    {
        var row = Row(pitch);
        return char.ToLowerInvariant(position) switch
        {
            'h' => 0,
            'g' => row?.G ?? Math.Round(15 + (11 * pitch)),
            'f' => row?.F ?? Math.Round(30 + (11 * pitch)),
            'e' => row?.E ?? Math.Round(50 + (11 * pitch)),
            _ => No,
        };
    }

    private static (double Pitch, double Major, double Minor, double E, double F, double G)? Row(double pitch)
    {
        foreach (var row in ByPitch)
        {
            if (Math.Abs(row.Pitch - pitch) < 1e-9)
            {
                return row;
            }
        }

        return null;
    }

    private static double PitchSix(double diameter, double pitch)
    {
        var band = Array.FindIndex(BandEnds, end => diameter <= end);
        if (band < 0)
        {
            return No;
        }

        var row = Pitch6[band];
        for (var i = 0; i < row.Length; i += 2)
        {
            if (Math.Abs(row[i] - pitch) < 1e-9)
            {
                return row[i + 1];
            }
        }

        var mean = Math.Sqrt((band == 0 ? 0.99 : BandEnds[band - 1]) * BandEnds[band]);
        return Rounded(90 * Math.Pow(pitch, 0.4) * Math.Pow(mean, 0.1));
    }

    private static double Step(double value, int steps)
    {
        if (double.IsNaN(value))
        {
            return No;
        }

        var decade = Math.Floor(Math.Log10(value) + 1e-9);
        var at = NearestR40(value / Math.Pow(10, decade)) + steps + (40 * (int)decade);
        return Whole(R40[((at % 40) + 40) % 40] * Math.Pow(10, Math.Floor(at / 40.0)));
    }

    private static double Rounded(double value)
    {
        var decade = Math.Floor(Math.Log10(value) + 1e-9);
        var at = NearestR40(value / Math.Pow(10, decade));
        return Whole((at == 40 ? 10 : R40[at]) * Math.Pow(10, decade));
    }

    private static int NearestR40(double mantissa)
    {
        var at = (int)Math.Round(40 * Math.Log10(mantissa));
        return Math.Clamp(at, 0, 40);
    }

    private static double Whole(double value) => Math.Round(Math.Round(value, 6), MidpointRounding.ToEven);
}
