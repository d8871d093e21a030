using System.Globalization;
using Handwheel.Trade.Fits;

namespace Handwheel.Trade.Tests;

/// <summary>Printed limits of ANSI/ASME B4.1-1967, thousandths of an inch: hole upper (its lower is 0), shaft upper, shaft lower.</summary>
public sealed class InchFitTableTests
{
    // Running and sliding: "Appendix B, Limits and Fits" (a college's copy), RC1 to RC4.
    private const string Running = """
        0.12 RC1 0.2 -0.1 -0.25 RC2 0.25 -0.1 -0.3 RC3 0.4 -0.3 -0.55 RC4 0.6 -0.3 -0.7
        0.24 RC1 0.2 -0.15 -0.3 RC2 0.3 -0.15 -0.35 RC3 0.5 -0.4 -0.7 RC4 0.7 -0.4 -0.9
        0.4 RC1 0.25 -0.2 -0.35 RC2 0.4 -0.2 -0.45 RC3 0.6 -0.5 -0.9 RC4 0.9 -0.5 -1.1
        0.71 RC1 0.3 -0.25 -0.45 RC2 0.4 -0.25 -0.55 RC3 0.7 -0.6 -1.0 RC4 1.0 -0.6 -1.3
        1.19 RC1 0.4 -0.3 -0.55 RC2 0.5 -0.3 -0.7 RC3 0.8 -0.8 -1.3 RC4 1.2 -0.8 -1.6
        1.97 RC1 0.4 -0.4 -0.7 RC2 0.6 -0.4 -0.8 RC3 1.0 -1.0 -1.6 RC4 1.6 -1.0 -2.0
        3.15 RC1 0.5 -0.4 -0.7 RC2 0.7 -0.4 -0.9 RC3 1.2 -1.2 -1.9 RC4 1.8 -1.2 -2.4
        4.73 RC1 0.6 -0.5 -0.9 RC2 0.9 -0.5 -1.1 RC3 1.4 -1.4 -2.3 RC4 2.2 -1.4 -2.8
        7.09 RC1 0.7 -0.6 -1.1 RC2 1.0 -0.6 -1.3 RC3 1.6 -1.6 -2.6 RC4 2.5 -1.6 -3.2
        9.85 RC1 0.8 -0.6 -1.2 RC2 1.2 -0.6 -1.4 RC3 1.8 -2.0 -3.2 RC4 2.8 -2.0 -3.8
        """;

    // Locational clearance: cobanengineering.com, Table LC6 to LC11 (it prints LC8's greatest shaft under 0.12 in as the class's least clearance).
    private const string Locational = """
        0.12 LC6 1.0 -0.3 -0.9 LC7 1.6 -0.6 -1.6 LC8 1.6 -1.0 -2.0 LC9 2.5 -2.5 -4.1 LC10 4 -4 -8 LC11 6 -5 -11
        0.24 LC6 1.2 -0.4 -1.1 LC7 1.8 -0.8 -2.0 LC8 1.8 -1.2 -2.4 LC9 3.0 -2.8 -4.6 LC10 5 -4.5 -9.5 LC11 7 -6 -13
        0.4 LC6 1.4 -0.5 -1.4 LC7 2.2 -1.0 -2.4 LC8 2.2 -1.6 -3.0 LC9 3.5 -3.0 -5.2 LC10 6 -5 -11 LC11 9 -7 -16
        0.71 LC6 1.6 -0.6 -1.6 LC7 2.8 -1.2 -2.8 LC8 2.8 -2.0 -3.6 LC9 4.0 -3.5 -6.3 LC10 7 -6 -13 LC11 10 -8 -18
        1.19 LC6 2.0 -0.8 -2.0 LC7 3.5 -1.6 -3.6 LC8 3.5 -2.5 -4.5 LC9 5.0 -4.5 -8.0 LC10 8 -7 -15 LC11 12 -10 -22
        """;

    // Force: Machinery's Handbook 27th ed. Table 11 (to 3.15 in).
    private const string Force = """
        0.12 FN1 0.25 0.5 0.3 FN2 0.4 0.85 0.6 FN4 0.4 0.95 0.7 FN5 0.6 1.3 0.9
        0.24 FN1 0.3 0.6 0.4 FN2 0.5 1.0 0.7 FN4 0.5 1.2 0.9 FN5 0.7 1.7 1.2
        0.4 FN1 0.4 0.75 0.5 FN2 0.6 1.4 1.0 FN4 0.6 1.6 1.2 FN5 0.9 2.0 1.4
        0.56 FN1 0.4 0.8 0.5 FN2 0.7 1.6 1.2 FN4 0.7 1.8 1.4 FN5 1.0 2.3 1.6
        0.71 FN1 0.4 0.9 0.6 FN2 0.7 1.6 1.2 FN4 0.7 1.8 1.4 FN5 1.0 2.5 1.8
        0.95 FN1 0.5 1.1 0.7 FN2 0.8 1.9 1.4 FN4 0.8 2.1 1.6 FN5 1.2 3.0 2.2
        1.19 FN1 0.5 1.2 0.8 FN2 0.8 1.9 1.4 FN3 0.8 2.1 1.6 FN4 0.8 2.3 1.8 FN5 1.2 3.3 2.5
        1.58 FN1 0.6 1.3 0.9 FN2 1.0 2.4 1.8 FN3 1.0 2.6 2.0 FN4 1.0 3.1 2.5 FN5 1.6 4.0 3.0
        1.97 FN1 0.6 1.4 1.0 FN2 1.0 2.4 1.8 FN3 1.0 2.8 2.2 FN4 1.0 3.4 2.8 FN5 1.6 5.0 4.0
        2.56 FN1 0.7 1.8 1.3 FN2 1.2 2.7 2.0 FN3 1.2 3.2 2.5 FN4 1.2 4.2 3.5 FN5 1.8 6.2 5.0
        3.15 FN1 0.7 1.9 1.4 FN2 1.2 2.9 2.2 FN3 1.2 3.7 3.0 FN4 1.2 4.7 4.0 FN5 1.8 7.2 6.0
        """;

    // Force, least and greatest interference: Machinery's Handbook 31st ed. p. 730.
    private const string Interference = """
        5.52 FN1 1.2 2.9 FN2 1.9 4.5 FN3 3.4 6.0 FN4 5.4 8.0 FN5 7.5 11.6
        6.3 FN1 1.5 3.2 FN2 2.4 5.0 FN3 3.4 6.0 FN4 5.4 8.0 FN5 9.5 13.6
        7.09 FN1 1.8 3.5 FN2 2.9 5.5 FN3 4.4 7.0 FN4 6.4 9.0 FN5 9.5 13.6
        7.88 FN1 1.8 3.8 FN2 3.2 6.2 FN3 5.2 8.2 FN4 7.2 10.2 FN5 11.2 15.8
        8.86 FN1 2.3 4.3 FN2 3.2 6.2 FN3 5.2 8.2 FN4 8.2 11.2 FN5 13.2 17.8
        9.85 FN1 2.3 4.3 FN2 4.2 7.2 FN3 6.2 9.2 FN4 10.2 13.2 FN5 13.2 17.8
        """;

    // Transition: greatest interference and greatest clearance, Machinery's Handbook 31st ed. Table 10.
    private const string Transition = """
        0.12 LT1 0.12 0.52 LT2 0.2 0.8 LT5 0.5 0.15 LT6 0.65 0.15
        0.24 LT1 0.15 0.65 LT2 0.25 0.95 LT5 0.6 0.2 LT6 0.8 0.2
        0.4 LT1 0.2 0.8 LT2 0.3 1.2 LT3 0.5 0.5 LT4 0.7 0.8 LT5 0.8 0.2 LT6 1.0 0.2
        0.71 LT1 0.2 0.9 LT2 0.35 1.35 LT3 0.5 0.6 LT4 0.8 0.9 LT5 0.9 0.2 LT6 1.2 0.2
        1.19 LT1 0.25 1.05 LT2 0.4 1.6 LT3 0.6 0.7 LT4 0.9 1.1 LT5 1.1 0.2 LT6 1.4 0.2
        1.97 LT1 0.3 1.3 LT2 0.5 2.1 LT3 0.7 0.9 LT4 1.1 1.5 LT5 1.3 0.3 LT6 1.7 0.3
        3.15 LT1 0.3 1.5 LT2 0.6 2.4 LT3 0.8 1.1 LT4 1.3 1.7 LT5 1.5 0.4 LT6 2.0 0.4
        """;

    [Theory]
    [InlineData(Running)]
    [InlineData(Locational)]
    [InlineData(Force)]
    public void Limits_are_as_printed(string table)
    {
        foreach (var (size, name, v) in Rows(table, 3))
        {
            Assert.True(InchFits.TryOf(size, name, out var fit, out var reason), reason);
            double[] limits = [fit.Hole.UpperMm, fit.Shaft.UpperMm, fit.Shaft.LowerMm];
            Assert.Equal(v, limits.Select(l => Math.Round(l / 0.0254, 6)));
            Assert.Equal(0, fit.Hole.LowerMm, 1e-12);
        }
    }

    [Theory]
    [InlineData(Interference, true)]
    [InlineData(Transition, false)]
    public void Interferences_are_as_printed(string table, bool leastFirst)
    {
        foreach (var (size, name, v) in Rows(table, 2))
        {
            Assert.True(InchFits.TryOf(size, name, out var fit, out var reason), reason);
            var (most, least) = (-fit.LeastClearanceMm / 0.0254, fit.GreatestClearanceMm / 0.0254);
            Assert.True(Math.Abs((leastFirst ? v[1] : v[0]) - most) < 1e-6 && Math.Abs((leastFirst ? -v[0] : v[1]) - least) < 1e-6, $"{name} to {size.ToString(CultureInfo.InvariantCulture)}: {most.ToString(CultureInfo.InvariantCulture)}, {least.ToString(CultureInfo.InvariantCulture)}");
        }
    }

    private static IEnumerable<(double Size, string Name, double[] Values)> Rows(string table, int width)
    {
        foreach (var line in table.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var cells = line.Split(' ');
            for (var i = 1; i < cells.Length; i += width + 1)
            {
                yield return (double.Parse(cells[0], CultureInfo.InvariantCulture), cells[i], [.. cells[(i + 1)..(i + 1 + width)].Select(c => double.Parse(c, CultureInfo.InvariantCulture))]);
            }
        }
    }
}
