using Handwheel.Trade.Fits;

namespace Handwheel.Trade.Tests;

public sealed class Iso286Tests
{
    // ISO 286-2 tables, from memory, micrometres; hole P7, N9, K7, M6 exercise the rule with delta.
    [Theory]
    [InlineData(25, "H8", 33, 0)]
    [InlineData(10, "g6", -5, -14)]
    [InlineData(20, "P7", -14, -35)]
    [InlineData(20, "N9", 0, -52)]
    [InlineData(20, "N7", -7, -28)]
    [InlineData(20, "K7", 6, -15)]
    [InlineData(300, "M6", -9, -41)]
    [InlineData(8, "D10", 98, 40)]
    [InlineData(50, "js9", 31, -31)]
    [InlineData(2, "K7", 0, -10)]
    [InlineData(2, "N9", -4, -29)]
    [InlineData(100, "s6", 93, 71)]
    [InlineData(160, "u6", 215, 190)]
    [InlineData(60, "J7", 18, -12)]
    [InlineData(60, "j6", 12, -7)]
    [InlineData(6, "p9", 42, 12)]
    [InlineData(1000, "H7", 90, 0)]
    [InlineData(30, "k8", 33, 0)]
    public void Limits_are_the_standards(double size, string zone, double upper, double lower)
    {
        var limits = Iso286.Limits(size, zone);
        Assert.Equal(upper, limits.UpperMm * 1000, 1e-9);
        Assert.Equal(lower, limits.LowerMm * 1000, 1e-9);
    }

    // ISO 286-1: IT6 = 10 i and so on, i = 0.45 D^(1/3) + 0.001 D, D the geometric mean of the band; the table stays within its rounding.
    // Up to 3 mm the standard rounds up by as much as a sixth.
    [Fact]
    public void Grades_follow_the_tolerance_unit_within_the_standards_rounding()
    {
        double[] ends = [0, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];
        double[] factors = [7, 10, 16, 25, 40, 64, 100, 160, 250, 400, 640, 1000, 1600, 2500];
        for (var band = 1; band < ends.Length; band++)
        {
            var d = Math.Sqrt(Math.Max(1, ends[band - 1]) * ends[band]);
            var unit = (0.45 * Math.Cbrt(d)) + (0.001 * d);
            for (var grade = 5; grade <= 18; grade++)
            {
                var expected = factors[grade - 5] * unit;
                var most = band == 1 ? 1.17 : 1.07;
                Assert.InRange(Iso286.GradeMm(ends[band], grade) * 1000, (expected * 0.93) - 0.5, (expected * most) + 0.5);
            }
        }
    }

    [Theory]
    [InlineData(25, "H19")]
    [InlineData(25, "q6")]
    [InlineData(25, "H")]
    [InlineData(25, "7")]
    [InlineData(25, "")]
    [InlineData(0, "H7")]
    [InlineData(-3, "H7")]
    [InlineData(4000, "H7")]
    [InlineData(double.NaN, "H7")]
    [InlineData(double.PositiveInfinity, "H7")]
    [InlineData(10, "t6")]
    [InlineData(600, "a9")]
    [InlineData(10, "j9")]
    [InlineData(10, "H07")]
    public void What_the_standard_does_not_give_is_refused_with_a_reason(double size, string zone)
    {
        Assert.False(Iso286.TryLimits(size, zone, out _, out var reason));
        Assert.NotEmpty(reason);
    }

    [Fact]
    public void Every_zone_given_spans_its_grade_and_shaft_mirrors_hole_to_h()
    {
        string[] mirrored = ["a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h"];
        foreach (var size in new[] { 2.0, 5, 8, 12, 20, 40, 65, 100, 150, 200, 300, 380, 450 })
        {
            for (var grade = 1; grade <= 18; grade++)
            {
                foreach (var letter in mirrored)
                {
                    if (!Iso286.TryLimits(size, letter + grade, out var shaft, out _))
                    {
                        continue;
                    }

                    var hole = Iso286.Limits(size, letter.ToUpperInvariant() + grade);
                    Assert.Equal(Iso286.GradeMm(size, grade), shaft.ToleranceMm, 1e-12);
                    Assert.Equal(-shaft.UpperMm, hole.LowerMm, 1e-12);
                    Assert.Equal(-shaft.LowerMm, hole.UpperMm, 1e-12);
                }
            }
        }
    }

    // ISO 286-1 4.3: H7/p6 and P7/h6 give the same interference, since delta makes up for the grades.
    [Theory]
    [InlineData("n")]
    [InlineData("p")]
    [InlineData("r")]
    [InlineData("s")]
    [InlineData("u")]
    public void Hole_basis_and_shaft_basis_interference_fits_agree(string letter)
    {
        foreach (var size in new[] { 5.0, 8, 12, 20, 40, 65, 100, 150, 200, 300, 380, 450 })
        {
            var hole = Iso286.Of(size, $"H7/{letter}6");
            var shaft = Iso286.Of(size, $"{letter.ToUpperInvariant()}7/h6");
            Assert.Equal(hole.LeastClearanceMm, shaft.LeastClearanceMm, 1e-12);
            Assert.Equal(hole.GreatestClearanceMm, shaft.GreatestClearanceMm, 1e-12);
        }
    }

    [Fact]
    public void A_fit_says_its_kind()
    {
        Assert.Equal(FitKind.Clearance, Iso286.Of(25, "H7/g6").Kind);
        Assert.Equal(FitKind.Transition, Iso286.Of(25, "k6/H7").Kind);
        Assert.Equal(FitKind.Interference, Iso286.Of(25, "H7/p6").Kind);
        Assert.Throws<ArgumentException>(() => Iso286.Of(25, "H7"));
        Assert.Throws<ArgumentException>(() => Iso286.Of(25, "H7/H8"));
        Assert.Throws<ArgumentException>(() => Iso286.Of(25, "/"));
    }
}
