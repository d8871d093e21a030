using Handwheel.Trade.Drills;
using Handwheel.Trade.Fits;
using Handwheel.Trade.Indexing;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Keys;
using Handwheel.Trade.Metals;
using Handwheel.Trade.Tapers;
using Handwheel.Trade.Threads;

namespace Handwheel.Trade.Tests;

/// <summary>Whole tables against other tables, sums and formulas of their sources.</summary>
public sealed class TableTests
{
    private static readonly double[] Sizes = [0.1, 0.2, 0.3, 0.5, 1, 1.5, 2.5, 4, 6, 8, 11, 14, 18];

    // The clearance columns that the B4.1 tables print beside the limits (Machinery's Handbook 31st ed. Tables 8a, 8b, read; LC from memory).
    [Theory]
    [InlineData("RC1", new[] { 0.45, 0.5, 0.6, 0.75, 0.95, 1.1, 1.2, 1.5, 1.8, 2.0, 2.3, 2.7, 3.0 })]
    [InlineData("RC2", new[] { 0.55, 0.65, 0.85, 0.95, 1.2, 1.4, 1.6, 2.0, 2.3, 2.6, 2.9, 3.4, 3.8 })]
    [InlineData("RC3", new[] { 0.95, 1.2, 1.5, 1.7, 2.1, 2.6, 3.1, 3.7, 4.2, 5.0, 5.7, 6.6, 8.1 })]
    [InlineData("RC4", new[] { 1.3, 1.6, 2.0, 2.3, 2.8, 3.6, 4.2, 5.0, 5.7, 6.6, 7.5, 8.7, 10.5 })]
    [InlineData("RC6", new[] { 2.2, 2.7, 3.3, 3.8, 4.8, 6.1, 7.3, 8.7, 10.0, 11.3, 13.0, 15.5, 18.0 })]
    [InlineData("RC9", new[] { 8.1, 9.0, 10.7, 12.8, 15.5, 18.0, 20.5, 24.0, 28.0, 34.0, 38.0, 45.0, 51.0 })]
    [InlineData("LC6", new[] { 1.9, 2.3, 2.8, 3.2, 4.0, 5.1, 6.0, 7.1, 8.1, 9.3, 10.2, 12.0, 12.8 })]
    [InlineData("LC7", new[] { 3.2, 3.8, 4.6, 5.6, 7.1, 8.5, 10.0, 11.5, 13.5, 15.5, 17.5, 20.0, 21.0 })]
    [InlineData("LC9", new[] { 6.6, 7.6, 8.7, 10.3, 13.0, 15.0, 17.5, 21.0, 24.0, 29.0, 32.0, 37.0, 42.0 })]
    [InlineData("LC10", new[] { 12.0, 14.5, 17.0, 20.0, 23.0, 28.0, 34.0, 39.0, 44.0, 52.0, 60.0, 66.0, 75.0 })]
    [InlineData("LC11", new[] { 17.0, 20.0, 25.0, 28.0, 34.0, 44.0, 50.0, 60.0, 68.0, 78.0, 88.0, 100.0, 115.0 })]
    public void Greatest_clearances_are_those_printed_beside_the_limits(string name, double[] printed)
    {
        for (var i = 0; i < Sizes.Length; i++)
        {
            Assert.True(InchFits.TryOf(Sizes[i], name, out var fit, out _));
            Assert.Equal(printed[i], fit.GreatestClearanceMm / 0.0254, 1e-9);
        }
    }

    // FN table, greatest interference as printed (27th ed. Table 11, read to 3.15 in); a shaft's tolerance is a grade of the same table.
    [Theory]
    [InlineData("FN1", new[] { 0.5, 0.6, 0.75, 0.8, 0.9, 1.1, 1.2, 1.3, 1.4, 1.8, 1.9 })]
    [InlineData("FN2", new[] { 0.85, 1.0, 1.4, 1.6, 1.6, 1.9, 1.9, 2.4, 2.4, 2.7, 2.9 })]
    [InlineData("FN4", new[] { 0.95, 1.2, 1.6, 1.8, 1.8, 2.1, 2.3, 3.1, 3.4, 4.2, 4.7 })]
    [InlineData("FN5", new[] { 1.3, 1.7, 2.0, 2.3, 2.5, 3.0, 3.3, 4.0, 5.0, 6.2, 7.2 })]
    public void Greatest_interferences_are_those_printed(string name, double[] printed)
    {
        double[] sizes = [0.1, 0.2, 0.3, 0.5, 0.6, 0.8, 1, 1.4, 1.8, 2.2, 3];
        for (var i = 0; i < sizes.Length; i++)
        {
            Assert.True(InchFits.TryOf(sizes[i], name, out var fit, out _));
            Assert.Equal(printed[i], -fit.LeastClearanceMm / 0.0254, 1e-9);
            Assert.Equal(FitKind.Interference, fit.Kind);
        }
    }

    [Fact]
    public void Every_inch_class_is_given_through_its_range_and_keeps_its_kind()
    {
        foreach (var name in InchFits.Classes)
        {
            foreach (var size in Sizes)
            {
                if (!InchFits.TryOf(size, name, out var fit, out var reason))
                {
                    Assert.True(name is "LT3" or "LT4" or "FN3", reason);
                    continue;
                }

                Assert.True(fit.Hole.ToleranceMm > 0 && fit.Shaft.ToleranceMm > 0, name);
                Assert.True(name[..2] switch { "RC" or "LC" => fit.Kind == FitKind.Clearance, "FN" or "LN" => fit.GreatestClearanceMm <= 0.0002, _ => true }, $"{name} at {size.ToString(System.Globalization.CultureInfo.InvariantCulture)}");
            }
        }
    }

    // ISO 965-1 tables (limit charts of ASME B1.13M), from memory, in mm.
    [Theory]
    [InlineData(8, 1.25, "6g", 7.972, 7.76, 7.16, 7.042)]
    [InlineData(12, 1.75, "6g", 11.966, 11.701, 10.829, 10.679)]
    [InlineData(16, 2, "6g", 15.962, 15.682, 14.663, 14.503)]
    [InlineData(20, 2.5, "6g", 19.958, 19.623, 18.334, 18.164)]
    [InlineData(8, 1, "6g", 7.974, 7.794, 7.324, 7.212)]
    [InlineData(6, 1, "4h", 6, 5.888, 5.35, 5.279)]
    public void Metric_screw_limits_are_the_charts(double d, double p, string name, double majorMax, double majorMin, double pitchMax, double pitchMin)
    {
        var l = new MetricThread(d, p).Limits(name);
        Assert.Equal([majorMax, majorMin, pitchMax, pitchMin], [l.MajorMax, l.MajorMin, l.PitchMax, l.PitchMin]);
    }

    [Theory]
    [InlineData(8, 1.25, "6H", 6.912, 6.647, 7.348, 7.188)]
    [InlineData(12, 1.75, "6H", 10.441, 10.106, 11.063, 10.863)]
    [InlineData(16, 2, "6H", 14.21, 13.835, 14.913, 14.701)]
    [InlineData(20, 2.5, "6H", 17.744, 17.294, 18.6, 18.376)]
    public void Metric_nut_limits_are_the_charts(double d, double p, string name, double minorMax, double minorMin, double pitchMax, double pitchMin)
    {
        var l = new MetricThread(d, p).Limits(name);
        Assert.Equal([minorMax, minorMin, pitchMax, pitchMin], [l.MinorMax, l.MinorMin, l.PitchMax, l.PitchMin]);
    }

    // ASME B1.1 limits table, from memory: class 3 and class 1, minor diameters as B1.30 rounds them.
    [Fact]
    public void Unified_classes_one_and_three_are_the_tables()
    {
        var quarter = UnifiedTable.InSeries("1/4", "UNC")!;
        Assert.Equal((0.25, 0.2419, 0.2175, 0.2147), Screw(quarter.Limits("3A")));
        Assert.Equal((0.2489, 0.2367, 0.2164, 0.2108), Screw(quarter.Limits("1A")));
        Assert.Equal((0.2067, 0.196, 0.2211, 0.2175), Nut(quarter.Limits("3B")));
        Assert.Equal((0.207, 0.196, 0.2248, 0.2175), Nut(quarter.Limits("1B")));
        var half = UnifiedTable.InSeries("1/2", "UNC")!;
        Assert.Equal((0.4284, 0.417, 0.4548, 0.45), Nut(half.Limits("3B")));
        Assert.Equal((0.164, 0.156, 0.1736, 0.1697), Nut(UnifiedTable.InSeries("#10", "UNF")!.Limits("2B")));
    }

    [Fact]
    public void Tables_run_the_way_they_must()
    {
        for (var n = 2; n <= 97; n++)
        {
            Assert.True(DrillTable.Number(n)!.DiameterMm < DrillTable.Number(n - 1)!.DiameterMm);
        }

        for (var c = 'B'; c <= 'Z'; c++)
        {
            Assert.True(DrillTable.Letter(c)!.DiameterMm > DrillTable.Letter((char)(c - 1))!.DiameterMm);
        }

        foreach (var taper in TaperTable.All.Where(t => !double.IsNaN(t.SmallIn) && !double.IsNaN(t.LargeIn)))
        {
            // The printed ends, length and taper per foot agree within what the printing rounds.
            Assert.Equal(taper.LargeIn, taper.SmallIn + (taper.LengthIn * taper.PerFootIn / 12), 0.0006);
        }

        foreach (var key in KeyTable.WoodruffKeys)
        {
            Assert.InRange(key.ShaftDepth, 0.3 * key.Height, key.Height);
            Assert.True(key.Height < key.Diameter);
        }
    }

    [Fact]
    public void Every_metal_has_speeds_and_sane_figures_and_one_meaning_a_name()
    {
        foreach (var metal in MetalTable.All)
        {
            foreach (var operation in Enum.GetValues<Operation>())
            {
                foreach (var cutter in Enum.GetValues<CutterMaterial>())
                {
                    var (range, basis) = SpeedTable.Of(metal, operation, cutter);
                    Assert.True(range.LowMPerMin > 0 && range.HighMPerMin >= range.LowMPerMin && range.HighMPerMin < 1000, metal.Name);
                    Assert.NotEmpty(basis.Source);
                }
            }

            Assert.InRange(metal.Density, 900, 20000);
            Assert.InRange(metal.Mc, 0.1, 0.4);
            Assert.Same(metal, MetalTable.Find(metal.Name));
        }

        var names = MetalTable.All.SelectMany(m => m.AlsoCalled.Select(MetalTable.Key).Distinct().Select(k => (k, m))).GroupBy(p => p.k).Where(g => g.Count() > 1).Select(g => g.Key);
        Assert.Empty(names);
    }

    // Compound and differential indexing multiply out to the ratio (plain arithmetic).
    [Fact]
    public void Harder_indexing_multiplies_out()
    {
        var plates = PlateSet.ThreePlates;
        var found = 0;
        for (var n = 51; n <= 200; n++)
        {
            if (Divider.Compound(40, n, plates.Plates) is { } c)
            {
                var turns = ((double)c.FirstSpaces / c.FirstCircle) + ((double)c.SecondSpaces / c.SecondCircle);
                Assert.Equal(40.0 * c.Rounds / n, turns, 1e-12);
                found++;
            }

            if (!Divider.Simple(40, n, plates.Circles).Possible && Divider.Differential(40, n, plates.Circles) is { } d)
            {
                var gears = d.Drivers.Aggregate(1.0, (a, b) => a * b) / d.Driven.Aggregate(1.0, (a, b) => a * b);
                Assert.Equal(40.0 * Math.Abs(d.NearDivisions - n) / d.NearDivisions, gears, 1e-12);
                found++;
            }
        }

        Assert.True(found > 100);
    }

    // Shigley 9th ed. Eq. 3-57: same material, solid shaft: p = E delta / (2 d) (1 - d^2/D^2).
    [Fact]
    public void A_press_fit_of_one_material_is_the_textbooks()
    {
        var fit = PressFits.Solve(20, 0.03, 40, 0, 205_000, 205_000, 0.29, 0.29, 25, 0.12);
        Assert.Equal(205_000 * 0.03 / 40 * (1 - 0.25), fit.PressureMPa, 1e-9);
        Assert.Equal(fit.PressureMPa * 5 / 3, fit.HubHoopMPa, 1e-9);
    }

    private static (double, double, double, double) Screw(ThreadLimits l) => (l.MajorMax, l.MajorMin, l.PitchMax, l.PitchMin);

    private static (double, double, double, double) Nut(ThreadLimits l) => (l.MinorMax, l.MinorMin, l.PitchMax, l.PitchMin);
}
