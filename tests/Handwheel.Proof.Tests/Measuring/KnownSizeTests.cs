using Handwheel.Jobs;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Reading;
using Handwheel.Jobs.Measuring;
using Handwheel.Proof.Tests.Crank;

namespace Handwheel.Proof.Tests.Measuring;

/// <summary>
/// Every kind of size measured on a part whose sizes are known because it was drawn so: the drawing asks for one thing, the part "cut" is another drawing.
/// What the values must be is plane geometry (Euclid; regular polygons: across corners = across flats / cos(180 deg / sides)).
/// </summary>
public sealed class KnownSizeTests
{
    private const double Near = 1e-7;

    [Theory]
    [InlineData("triangle")]
    [InlineData("pentagon")]
    [InlineData("polygon of 7 sides,")]
    public void An_odd_polygon_is_measured_from_its_middle(string shape)
    {
        const string asks = "size key across flats 20 +/-0.5";
        Holds(Measured($"key {shape} 20 across flats at 0, 0 from -5 to 0", asks, $"key {shape} 20.3 across flats at 0, 0 from -5 to 0"), 20.3);
        Holds(Measured($"key {shape} 20 across flats at 0, 0 from -5 to 0", asks, $"key {shape} 19.8 across flats at 0.2, -0.1 from -5 to 0"), 19.8);
    }

    [Theory]
    [InlineData("triangle", 3)]
    [InlineData("square", 4)]
    [InlineData("pentagon", 5)]
    [InlineData("hexagon", 6)]
    public void A_polygon_is_measured_over_its_corners(string shape, int sides) =>
        Holds(
            Measured($"key {shape} 20 across corners at 0, 0 from -5 to 0", "size key across corners 20 +/-0.5", $"key {shape} 10.1 across flats at 0, 0 from -5 to 0", 20 * Math.Cos(Math.PI / sides)),
            (20 * Math.Cos(Math.PI / sides) + 0.1) / Math.Cos(Math.PI / sides));

    [Fact]
    public void A_hexagon_with_one_side_out_shows_least_and_greatest()
    {
        // A side shaved 0.2 by a block shortens one of the three widths.
        var tally = Measured(
            "key hexagon 20 across flats at 0, 0 from -5 to 0",
            "size key across flats 20 +/-0.5",
            "key hexagon 20 across flats at 0, 0 from -5 to 0\nshave cut block 40 by 2 at 0, 10.8 from -5 to 0");
        Assert.Equal(19.8, tally.Least, Near);
        Assert.Equal(20, tally.Greatest, Near);
    }

    [Fact]
    public void A_ring_has_its_bore_measured() =>
        Holds(Measured("tube ring 20 bore 10 at 0, 0 from -5 to 0", "size tube bore 10 +/-0.5", "tube ring 20.4 bore 10.2 at 0, 0 from -5 to 0"), 10.2);

    [Fact]
    public void A_taper_is_measured_at_both_ends_and_over_all_its_length()
    {
        const string drawn = "spud cone 10 to 6 at 0, 0 from -20 to 0";
        Holds(Measured(drawn, "size spud across bottom 10 +/-0.5", "spud cone 10.2 to 6.2 at 0, 0 from -20 to 0"), 10.2);
        Holds(Measured(drawn, "size spud across top 6 +/-0.5", "spud cone 10.2 to 6.2 at 0, 0 from -20 to 0"), 6.2);

        // A taper too slow stands 0.4 over at one end and nothing at the other: at shares 0.02 and 0.98 of its length.
        var tally = Measured(drawn, "size spud across top 6 +/-0.5", "spud cone 10 to 6.4 at 0, 0 from -20 to 0");
        Assert.Equal(6 + (0.4 * 0.02), tally.Least, Near);
        Assert.Equal(6 + (0.4 * 0.98), tally.Greatest, Near);
    }

    [Theory]
    [InlineData("left", 25)]
    [InlineData("right", 35)]
    public void A_distance_from_a_face_is_from_that_face(string face, double drawn) => Holds(
        Measured(
            "base block 60 by 40 at 0, 0 from -5 to 0\npin cut round 4 at -5, 0 through",
            FormattableString.Invariant($"size base {face} to pin {drawn} +/-0.5"),
            "base block 60 by 40 at 0, 0 from -5 to 0\npin cut round 4 at -4.8, 0 through"),
        face == "left" ? drawn + 0.2 : drawn - 0.2);

    [Fact]
    public void A_distance_between_two_faces_that_look_the_same_way_is_measured() => Holds(
        Measured(
            "base block 60 by 40 at 0, 0 from -5 to 0\nstep block 20 by 10 at 0, 0 from 0 to 5",
            "size base near to step near 15 +/-0.5",
            "base block 60 by 40 at 0, 0 from -5 to 0\nstep block 20 by 10.2 at 0, 0 from 0 to 5"),
        14.9);

    [Fact]
    public void The_face_of_a_round_is_its_outermost_place() => Holds(
        Measured(
            "base block 60 by 40 at 0, 0 from -5 to 0\nboss round 10 at 10, 0 from 0 to 5",
            "size base left to boss right 45 +/-0.5",
            "base block 60 by 40 at 0, 0 from -5 to 0\nboss round 10.2 at 10.1, 0 from 0 to 5"),
        45.2);

    [Fact]
    public void An_angle_between_sides_is_measured()
    {
        const string drawn = "base block 60 by 40 at 0, 0 from -5 to 0\nrib block 30 by 6 at 0, 0 from 0 to 5, turned 30 deg";
        var tally = Measured(drawn, "size rib angle to base 30 +/-1", drawn.Replace("30 deg", "30.5 deg", StringComparison.Ordinal));
        Holds(Degrees(tally), 30.5);
    }

    [Fact]
    public void An_angle_is_measured_on_a_flank_that_a_boss_covers_in_part()
    {
        const string drawn = "hub round 10 at 0, 0 from -5 to 0\neye round 8 at 28, 0 from -5 to 0\narm tangent to hub and eye from -5 to 0\nboss round 12 at 24, 0 from -5 to 4";
        var flank = Math.Asin(1 / 28.0) * 180 / Math.PI;
        Holds(Degrees(Measured(drawn, "size arm angle to x 2 +/-1", drawn)), flank, 1e-6);
        Holds(Degrees(Measured(drawn, "size arm angle to x 2 +/-1", drawn.Replace("eye round 8", "eye round 7.8", StringComparison.Ordinal))), Math.Asin(1.1 / 28.0) * 180 / Math.PI, 1e-6);
    }

    [Fact]
    public void The_radius_of_a_corner_is_measured()
    {
        const string drawn = "plate outline 0, 0; 40, 0; 40, 20 fillet 5; 0, 20 from -5 to 0";
        Holds(Measured(drawn, "size plate radius 5 +/-0.5", drawn.Replace("fillet 5", "fillet 5.2", StringComparison.Ordinal)), 5.2, 0.02);
        Holds(Measured(drawn, "size plate radius 5 +/-0.5", drawn), 5);
    }

    [Fact]
    public void A_position_is_twice_how_far_the_axis_lies_off() => Holds(
        Measured(
            "base block 60 by 40 at 0, 0 from -5 to 0\npin cut round 4 at 5, 0 through",
            "size pin position 1",
            "base block 60 by 40 at 0, 0 from -5 to 0\npin cut round 4 at 5.03, 0.04 through"),
        0.1);

    [Fact]
    public void A_face_that_is_not_there_is_gone()
    {
        var tally = Measured(
            "base block 60 by 40 at 0, 0 from -5 to 0\nrib block 30 by 6 at 0, 0 from 0 to 5",
            "size rib wide 6 +/-0.5",
            "base block 60 by 40 at 0, 0 from -5 to 0\nrib block 4 by 3 at 29, 18 from 0 to 5");
        Assert.True(tally.Gone);
    }

    private static void Holds(Tally tally, double value, double near = Near) => Holds((tally.Least, tally.Greatest), value, near);

    private static void Holds((double Least, double Greatest) found, double value, double near = Near)
    {
        Assert.Equal(value, found.Least, near);
        Assert.Equal(value, found.Greatest, near);
    }

    private static (double Least, double Greatest) Degrees(Tally tally) => (tally.Least * 180 / Math.PI, tally.Greatest * 180 / Math.PI);

    private static Tally Measured(string asked, string size, string made, double? flats = null)
    {
        if (flats is { } across)
        {
            made = made.Replace("10.1", FormattableString.Invariant($"{across + 0.1:R}"), StringComparison.Ordinal);
        }

        var job = Read(asked, size);
        var cut = DrawnPart.Of(Read(made, string.Empty).Drawing, PartVariant.Aimed);
        var stated = job.Drawing.Sizes.First(s => s.Stated);
        return new SizeMeasurer(DrawnPart.Of(job.Drawing, PartVariant.Aimed), cut.Solid).Measure(stated);
    }

    private static Job Read(string drawing, string size)
    {
        var text = $"job Known\nunit mm\nmetal brass\nshop home.handwheel\n\ndrawing\n{drawing}\n{size}\nothers +/-0.1\n\nstock bar 80 wide, 60 high, 120 long\n  x middle 0\n  z top 20\n\nholding A in large vise\n  zero z on bar top by paper 0.05\n";
        var read = JobReader.Read("known.handwheel", text, CrankCourse.Example);
        return read.Value is { } job && read.Findings.Count == 0 ? job : throw new InvalidOperationException(string.Join("; ", read.Findings.Select(f => f.Message)));
    }
}
