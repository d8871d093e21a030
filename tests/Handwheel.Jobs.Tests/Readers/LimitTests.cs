using Handwheel.Jobs.Drawings;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Tests.Readers;

public sealed class LimitTests
{
    private static Drawing Drawn(string lines) => Reads.Sound(
        "job t\nunit mm\nmetal steel\nshop home.handwheel\ndrawing\n" + lines + "\n  others +/-0.1\nstock bar 300 wide, 300 high, 300 long\n  x from -150\n  z top 150\nholding A in step clamps\n  zero x on middle of stock\n").Drawing;

    private static (double Nominal, double Lower, double Upper) Of(Limits limits) => (Math.Round(limits.Nominal, 9), Math.Round(limits.Lower, 9), Math.Round(limits.Upper, 9));

    [Theory]
    // Exact: 25.4 mm to the inch (1959).
    [InlineData("1.5 in", 38.1)]
    [InlineData("1 1/2 in", 38.1)]
    [InlineData("1.5\"", 38.1)]
    [InlineData("3/32 in", 2.38125)]
    [InlineData(".094 in", 2.3876)]
    [InlineData("94 thou", 2.3876)]
    [InlineData("(3/8 + 1/16) in", 11.1125)]
    [InlineData("(1 in - 0.4)", 25)]
    [InlineData("(2*(3 + 4)/7)", 2)]
    [InlineData("(12/3/2)", 2)]
    [InlineData("(sqrt(3*3 + 4*4))", 5)]
    [InlineData("(20*sin(30 deg))", 10)]
    [InlineData("(20*cos(60))", 10)]
    [InlineData("2400 um", 2.4)]
    [InlineData("7.", 7)]
    public void Numbers_are_exact(string typed, double millimetres)
    {
        var round = Assert.IsType<RoundShape>(Drawn($"  a round {typed} at 0, 0 from -5 to 0").Features[0].Shape);
        Assert.True(Math.Abs(round.Across.Nominal - millimetres) < (typed.Contains("sin", StringComparison.Ordinal) || typed.Contains("cos", StringComparison.Ordinal) ? 1e-12 : double.Epsilon), typed);
    }

    [Theory]
    [InlineData("10 +0 -0.05", 10, 9.95, 10)]
    [InlineData("10 -0.05 +0", 10, 9.95, 10)]
    [InlineData("10 +0.08 +0.02", 10, 10.02, 10.08)]
    [InlineData("28 +/-0.05", 28, 27.95, 28.05)]
    [InlineData("1/2 in +0.002 -0", 12.7, 12.7, 12.7508)]
    // ISO 286-1:2010: 6 H7 is +0.012 0, 6 g6 is -0.004 -0.012 (tables 2 and 4 of ISO 286-2).
    [InlineData("6 H7", 6, 6, 6.012)]
    [InlineData("6 g6", 6, 5.988, 5.996)]
    public void Limits_in_a_feature_s_line(string typed, double nominal, double lower, double upper)
    {
        var round = Assert.IsType<RoundShape>(Drawn($"  a round {typed} at 0, 0 from -5 to 0").Features[0].Shape);
        Assert.Equal((nominal, lower, upper), Of(round.Across));
    }

    [Fact]
    public void A_range_and_at_most_in_a_size_line()
    {
        var drawing = Drawn("  a round 10 at 0, 0 from -5 to 0\n  size a across 9.95 to 10.01\n  b round 4 at 0, 0 from 0 to 2\n  size b across 4 +0.1 -0");
        Assert.Equal((10, 9.95, 10.01), Of(drawing.Sizes[0].Limits));
    }

    [Fact]
    public void A_name_in_a_sum_is_the_middle_of_its_limits() =>
        Assert.Equal(9.975 / 2 + 0.2, Assert.IsType<RoundShape>(Drawn("  hub round 10 at 0, 0 from -5 to 0\n  size hub across 10 +0 -0.05\n  b round (hub/2 + 0.2) at 0, 0 from -5 to 0").Features[1].Shape).Across.Nominal, 12);

    [Fact]
    public void A_distance_is_aimed_at_the_middle_of_its_limits()
    {
        var drawing = Drawn("  hub round 10 at 0, 0 from -12 to 0\n  eye round 8 at 28, 0 from -12 to 0\n  pin cut round 3 at eye through\n  size hub to pin along x 28 +0.1 -0");
        Assert.Equal(28.05, drawing.Features[1].Centre.X, 9);
        Assert.Equal(28.05, drawing.Features[2].Centre.X, 9);
        Assert.Equal(0, drawing.Features[0].Centre.X);
    }

    [Fact]
    public void A_height_s_limits_stand_on_the_face_away_from_the_origin()
    {
        var arm = Drawn("  arm round 10 at 0, 0 from -12 to -8\n  size arm high 4 +0.1 -0").Features[0];
        Assert.Equal((-8, -8.1, -7.9), Of(arm.To));
        Assert.Equal((-12, -12.1, -12), Of(arm.From));
        Assert.Equal(-12.05, arm.From.Middle, 9);
    }

    [Fact]
    public void A_face_s_limits_come_from_its_distance()
    {
        var drawing = Drawn("  hub round 10 at 0, 0 from -12 to 0\n  arm round 30 at 0, 0 from -12 to -8\n  size hub top to arm top 8 +0.06 -0");
        Assert.Equal((-8, -8.06, -8), Of(drawing.Features[1].To));
    }

    [Fact]
    public void Seen_from_the_front_deep_goes_away_from_you()
    {
        var drawing = Drawn("  base block 60 by 40 at 0, 0 from -20 to 0\n  side hole 4 at 0, -10 seen from front, 6 deep from -20\n  end hole 4 at 0, -10 6 deep from 30, seen from right\n  stub round 4 at 10, -10 5 high from -20, seen from front");
        Assert.Equal((-20, -14), (drawing.Features[1].From.Nominal, drawing.Features[1].To.Nominal));
        Assert.Equal((24, 30), (drawing.Features[2].From.Nominal, drawing.Features[2].To.Nominal));
        Assert.Equal((-25, -20), (drawing.Features[3].From.Nominal, drawing.Features[3].To.Nominal));
    }

    [Fact]
    public void An_angle_has_its_own_limits()
    {
        var read = Reads.Job(Reads.With("size    arm high", "  size arm high 4 +/-0.05", "  size arm angle to socket 0"));
        Assert.Equal("limits", Assert.Single(read.Findings).Code);
    }

    [Fact]
    public void Across_corners_becomes_across_flats()
    {
        // Machinery's Handbook: across flats = 0.866025 across corners for a hexagon. From memory.
        var hex = Assert.IsType<PolygonShape>(Drawn("  nut hexagon 20 across corners at 0, 0 from -5 to 0").Features[0].Shape);
        Assert.Equal(17.320508, hex.AcrossFlats.Nominal, 6);
    }

    [Fact]
    public void Repeats_have_all_their_places()
    {
        var drawing = Drawn("  base block 90 by 60 at 0, 0 from -20 to 0\n  bolts hole 4 at 1, 2 6 on circle 30, first at 90 deg, through\n  heads counterbore 7 at bolts 3 deep from 0\n  lugs hole 3 at 40, 25 mirrored across x and y, through\n  grid hole 2 at -40, -20 grid of 3 by 2, 5 by 4 apart, through");
        Assert.Equal(6, drawing.Features[1].Places.Count);
        Assert.Equal((1d, 17d), (Math.Round(drawing.Features[1].Centre.X, 9), Math.Round(drawing.Features[1].Centre.Y, 9)));
        Assert.Equal(drawing.Features[1].Places, drawing.Features[2].Places);
        Assert.Equal([(40d, 25d), (-40, 25), (40, -25), (-40, -25)], drawing.Features[3].Places.Select(p => (p.Centre.X, p.Centre.Y)));
        Assert.Equal([(-40d, -20d), (-35, -20), (-30, -20), (-40, -16), (-35, -16), (-30, -16)], drawing.Features[4].Places.Select(p => (p.Centre.X, p.Centre.Y)));
    }

    [Fact]
    public void An_outline_runs_counterclockwise_whichever_way_it_was_typed()
    {
        var one = Assert.IsType<OutlineShape>(Drawn("  a outline 0, 0; 20, 0; 20, 10; arc about 15, 10 to 10, 10; 0, 10 from -5 to 0").Features[0].Shape);
        var other = Assert.IsType<OutlineShape>(Drawn("  a outline 0, 10; 10, 10; arc clockwise about 15, 10 to 20, 10; 20, 0; 0, 0 from -5 to 0").Features[0].Shape);
        Assert.Equal(one.Corners.Single(c => c.ArcCentre is not null), other.Corners.Single(c => c.ArcCentre is not null));
    }

    // A fraction after a nought is the next clause's: 1/2 deep.
    [Fact]
    public void A_fraction_after_a_nought_is_a_number_of_its_own()
    {
        var job = Reads.Sound(Reads.With("pilot", "  pilot   cut round 4 at 0, 0   1/2 deep from 0"));
        Assert.Equal(-0.5, job.Drawing.Features.Single(f => f.Name == "pilot").From.Nominal, 9);
    }
}
