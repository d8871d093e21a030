using Handwheel.Trade.Cutting;
using Handwheel.Trade.Drills;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Keys;
using Handwheel.Trade.Metals;
using Handwheel.Trade.Tapers;
using Handwheel.Trade.Threads;

namespace Handwheel.Trade.Tests;

/// <summary>Tables that were read in public copies while the evidence flags were set, and outside worked examples of the mechanics.</summary>
public sealed class ReadTablesTests
{
    // A chuck maker's manual (RN 1391, Table 2): specific cutting force, kN/mm^2, at feeds of 0.16, 0.25, 0.4, 0.63, 1.0, 1.6 mm and a lead of 45 degrees.
    [Theory]
    [InlineData("E295", new[] { 3.5, 3.1, 2.75, 2.45, 2.15, 1.95 })]
    [InlineData("E335", new[] { 3.05, 2.8, 2.6, 2.4, 2.2, 2.05 })]
    [InlineData("42CrMo4", new[] { 4.35, 3.9, 3.45, 3.1, 2.75, 2.45 })]
    [InlineData("16MnCr5", new[] { 3.75, 3.3, 2.95, 2.6, 2.3, 2.05 })]
    [InlineData("cast steel", new[] { 2.3, 2.1, 1.95, 1.8, 1.7, 1.6 })]
    [InlineData("grey cast iron", new[] { 2.05, 1.8, 1.6, 1.45, 1.3, 1.15 })]
    public void Kienzle_gives_a_published_table(string name, double[] printed)
    {
        double[] feeds = [0.16, 0.25, 0.4, 0.63, 1.0, 1.6];
        var metal = MetalTable.Find(name)!;
        for (var i = 0; i < feeds.Length; i++)
        {
            var kc = Kienzle.Specific(metal.Kc11, metal.Mc, feeds[i] * Math.Sin(Math.PI / 4)) / 1000;
            Assert.InRange(kc / printed[i], 0.94, 1.06);
        }
    }

    // Shigley Table A-5, lb/in^3; Hibbeler's inside back cover, kg/m^3 for the last three.
    [Theory]
    [InlineData("6061", 0.098)]
    [InlineData("beryllium copper", 0.297)]
    [InlineData("mild steel", 0.282)]
    [InlineData("copper", 0.322)]
    [InlineData("magnesium", 0.065)]
    [InlineData("nickel silver", 0.316)]
    [InlineData("304", 0.2840)]
    [InlineData("Ti-6Al-4V", 0.1600)]
    [InlineData("2024", 0.1008)]
    public void Densities_are_the_textbooks_within_three_percent(string name, double poundsPerCubicInch) =>
        Assert.InRange(MetalTable.Find(name)!.Density / 27679.9 / poundsPerCubicInch, 0.97, 1.03);

    // ASTM A574 Table 2 and SAE J429: proof load, lbf, by stress area.
    [Theory]
    [InlineData("A574", "1/4", "UNC", 4450)]
    [InlineData("A574", "5/16", "UNC", 7350)]
    [InlineData("A574", "1/2", "UNC", 19850)]
    [InlineData("A574", "5/8", "UNC", 30500)]
    [InlineData("grade 5", "1/4", "UNC", 2700)]
    [InlineData("grade 5", "1/2", "UNC", 12050)]
    [InlineData("grade 8", "3/8", "UNF", 10550)]
    [InlineData("grade 8", "1/2", "UNC", 17050)]
    public void Proof_loads_are_the_standards(string grade, string size, string series, double printed)
    {
        var thread = UnifiedTable.InSeries(size, series)!;
        var load = BoltGrades.Find(grade, thread.MajorIn * 25.4)!.ProofMPa / 0.006894757 * thread.Basics.StressArea;
        Assert.InRange(load / printed, 0.99, 1.01);
    }

    // Colvin and Juthe, The Working of Steel: temper colours of five sources, Fahrenheit; each colour must lie inside what they print.
    [Theory]
    [InlineData("pale yellow", 420, 446)]
    [InlineData("straw", 440, 470)]
    [InlineData("brown", 490, 520)]
    [InlineData("purple", 510, 540)]
    [InlineData("blue", 550, 590)]
    public void Temper_colours_lie_within_the_sources(string colour, double low, double high) =>
        Assert.InRange((Heat.Colours.Single(c => c.Colour == colour).Celsius * 1.8) + 32, low - 5, high + 5);

    // ISO 273, fine, medium, coarse; DIN 6885-1 rows; ASME B18.3 and ISO 4762 heads; ISO 7046: sharp edge d + 2k; all from published copies.
    [Theory]
    [InlineData(2.5, 2.7, 2.9, 3.1)]
    [InlineData(4, 4.3, 4.5, 4.8)]
    [InlineData(8, 8.4, 9, 10)]
    [InlineData(16, 17, 17.5, 18.5)]
    [InlineData(30, 31, 33, 35)]
    [InlineData(42, 43, 45, 48)]
    [InlineData(64, 66, 70, 74)]
    public void Clearance_holes_are_the_standards(double d, double fine, double medium, double coarse) => Assert.Equal((fine, medium, coarse), ClearanceHoles.OfMetric(d));

    [Theory]
    [InlineData(7, 2, 2, 1.2, 1)]
    [InlineData(25, 8, 7, 4, 3.3)]
    [InlineData(38, 10, 8, 5, 3.3)]
    [InlineData(60, 18, 11, 7, 4.4)]
    [InlineData(100, 28, 16, 10, 6.4)]
    [InlineData(240, 56, 32, 20, 12.4)]
    [InlineData(500, 100, 50, 31, 19.5)]
    public void Metric_keys_are_the_standards(double shaft, double width, double height, double t1, double t2)
    {
        var key = KeyTable.OfMetric(shaft)!;
        Assert.Equal([width, height, t1, t2], [key.Width, key.Height, key.ShaftDepth, key.HubDepth]);
    }

    // ASME B17.2: keyseat depth B, from the least key height (height less 0.005 in) less half the width.
    [Theory]
    [InlineData("202", 0.0728)]
    [InlineData("404", 0.1355)]
    [InlineData("606", 0.2143)]
    [InlineData("808", 0.3080)]
    [InlineData("1012", 0.4798)]
    public void Woodruff_keyseats_follow_the_rule(string name, double depthIn) =>
        Assert.Equal(depthIn, KeyTable.WoodruffKeys.Single(k => k.Name == name).ShaftDepth / 25.4, 6e-5);

    // Shigley's Mechanical Engineering Design, Example 7-6 (figures remembered): 4200 lbf in on a 1 7/16 in shaft is 5850 lbf; a 3/8 in square key of
    // 37.5 ksi in shear and 65 ksi yield at a factor of 2.8 must be 1.16 in long for shear, 1.34 in for crushing.
    [Fact]
    public void A_key_carries_what_the_textbook_says()
    {
        var force = KeyStrength.ForceN(4200, 1.4375);
        Assert.InRange(force, 5830, 5860);
        Assert.InRange(KeyStrength.ShearMPa(force, 0.375, 1.16) * 2.8 / 37_500, 0.99, 1.01);
        Assert.InRange(KeyStrength.BearingMPa(force, 0.375, 1.34) * 2.8 / 65_000, 0.99, 1.01);
    }

    // Torque over radius and two keys: plain statics.
    [Fact]
    public void Drive_keys_carry_what_friction_leaves()
    {
        Assert.InRange(TaperHolding.KeyForceN(100_000, 81_111, 22.225, 2), 424, 426);
        Assert.Equal(0, TaperHolding.KeyForceN(50_000, 81_111, 22.225, 2));
    }

    // Morse dimensions K and L, inch socket table; taper pins; Jacobs large ends: published copies.
    [Theory]
    [InlineData("Morse", "1", 0.475, 0.369)]
    [InlineData("Morse", "4", 1.231, 1.02)]
    [InlineData("Morse", "5", 1.748, 1.475)]
    [InlineData("Jacobs", "2", 0.5590, 0.4876)]
    [InlineData("Jacobs", "33", 0.6240, 0.5605)]
    [InlineData("Brown & Sharpe", "7", 0.7201, 0.6)]
    public void Tapers_end_as_printed(string family, string number, double large, double small)
    {
        var taper = TaperTable.Find(family, number)!;
        Assert.Equal([large, small], [taper.LargeIn, taper.SmallIn], (a, b) => Math.Abs(a - b) < 6e-4);
    }

    [Theory]
    [InlineData("#1", 0.2280)]
    [InlineData("#43", 0.0890)]
    [InlineData("#80", 0.0135)]
    [InlineData("#97", 0.0059)]
    [InlineData("Z", 0.4130)]
    [InlineData("Q", 0.3320)]
    public void Drills_are_the_charts(string name, double inches) => Assert.Equal(inches, DrillTable.Find(name)!.DiameterIn, 1e-9);

    // Machinery's Handbook 31st ed. p. 1743, Table 3a of B18.2.8: the metric drill nearest to each close drill; and a supplier's list of the same standard.
    [Theory]
    [InlineData(0.060, 1.7), InlineData(0.073, 2.05), InlineData(0.086, 2.4), InlineData(0.099, 2.7), InlineData(0.112, 3), InlineData(0.125, 3.6)]
    [InlineData(0.138, 3.9), InlineData(0.164, 4.6), InlineData(0.190, 5.2), InlineData(0.250, 6.7), InlineData(0.3125, 8.3), InlineData(0.375, 9.9)]
    [InlineData(0.4375, 11.5), InlineData(0.5, 13.5), InlineData(0.625, 16.75), InlineData(0.75, 20), InlineData(0.875, 23), InlineData(1, 26)]
    [InlineData(1.125, 29.5), InlineData(1.25, 32.5), InlineData(1.375, 36.5), InlineData(1.5, 39.5)]
    public void Close_drills_are_the_twins_of_the_metric_ones(double majorIn, double metricMm)
    {
        var name = Handwheel.Trade.Threads.ClearanceHoles.OfInch(majorIn)!.Value.Close;
        Assert.InRange(Mm(name) - metricMm, -0.2, 0.2);

        static double Mm(string drill) => drill.Contains(' ', StringComparison.Ordinal)
            ? 25.4 + Mm(drill.Split(' ')[1])
            : Handwheel.Trade.Drills.DrillTable.All.First(d => d.Name == drill).DiameterMm;
    }

    // The same standard as a supplier prints it (jandesupply.com, clearance holes): close, inches.
    [Theory]
    [InlineData(0.164, 0.180), InlineData(0.190, 0.206), InlineData(0.25, 0.266), InlineData(0.3125, 0.328), InlineData(0.375, 0.391)]
    [InlineData(0.4375, 0.453), InlineData(0.5, 0.531), InlineData(0.625, 0.656), InlineData(0.75, 0.781), InlineData(0.875, 0.906)]
    public void Close_drills_are_those_a_supplier_prints(double majorIn, double holeIn) =>
        Assert.Equal(holeIn, Handwheel.Trade.Drills.DrillTable.All.First(d => d.Name == Handwheel.Trade.Threads.ClearanceHoles.OfInch(majorIn)!.Value.Close).DiameterMm / 25.4, 6e-4);

    // ISO 4032:2001 (published copy) and ASME B18.2.2 (published copies): flats and thickness.
    [Theory]
    [InlineData("M3", 5.5, 2.4), InlineData("M6", 10, 5.2), InlineData("M10", 16, 8.4), InlineData("M16", 24, 14.8), InlineData("M24", 36, 21.5), InlineData("M36", 55, 31)]
    [InlineData("#8", 8.731, 3.302), InlineData("#10", 9.525, 3.302), InlineData("1/4", 11.1125, 5.556), InlineData("1/2", 19.05, 11.1125), InlineData("1", 38.1, 21.828)]
    public void Nuts_have_the_sizes_printed(string size, double flats, double thick)
    {
        var nut = Handwheel.Trade.Screws.ScrewTable.Of(size).Single(h => h.Kind == "hexagon nut");
        Assert.Equal(flats, nut.HeadDiameter, 2e-3);
        Assert.Equal(thick, nut.HeadHeight, 2e-3);
    }

    // B1.1 table of limits, 1-14 UNS 2A: pitch diameter 0.9519 to 0.9463 (from memory: once NF, on one diameter of engagement).
    [Fact]
    public void The_thread_that_was_a_fine_one_kept_its_tolerance()
    {
        var thread = new Handwheel.Trade.Threads.UnifiedThread("1", 1, 14, "UNS");
        var limits = thread.Limits("2A");
        Assert.Equal(0.9519, limits.PitchMax, 1e-6);
        Assert.Equal(0.9463, limits.PitchMin, 1e-6);
        Assert.Equal(Evidence.Memory, thread.OwnLimitsBasis.Evidence);
    }
}
