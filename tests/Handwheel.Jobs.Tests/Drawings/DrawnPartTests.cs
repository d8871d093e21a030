using Handwheel.Jobs.Drawings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Tests.Drawings;

/// <summary>A drawing&#39;s solids against plain geometry and the rules of least and most metal.</summary>
public sealed class DrawnPartTests
{
    private const double Exactly = 1e-12;

    // Membership written out for the crank, straight from its text.
    private static bool InCrank(Point3 p)
    {
        var r = Math.Sqrt((p.X * p.X) + (p.Y * p.Y));
        var e = Math.Sqrt(((p.X - 28) * (p.X - 28)) + (p.Y * p.Y));
        var sin = (5.0 - 4.0) / 28;
        var cos = Math.Sqrt(1 - (sin * sin));

        // Between the rounds: under the straight line at distance 5 from the hub's axis and 4 from the eye's.
        var along = (p.X * cos) - (Math.Abs(p.Y) * sin);
        var flank = (p.X * sin) + (Math.Abs(p.Y) * cos) <= 5 && along >= 0 && along <= 28 * cos;
        var metal = (r <= 5 && p.Z <= 0 && p.Z >= -12) || (p.Z is <= -8 and >= -12 && (e <= 4 || r <= 5 || flank));
        return metal && !(r < 2) && !(Math.Abs(p.X) < 2 && Math.Abs(p.Y) < 2 && p.Z > -6) && !(e < 1.5);
    }

    [Fact]
    public void The_nominal_part_is_what_the_text_says()
    {
        var part = DrawnPart.Of(Drawn.Crank(), PartVariant.Nominal);
        var random = new Random(17);
        for (var i = 0; i < 20_000; i++)
        {
            var p = new Point3((random.NextDouble() * 44) - 8, (random.NextDouble() * 14) - 7, (random.NextDouble() * 14) - 13);
            Assert.True(InCrank(p) == part.Solid.Contains(p), p.ToString());
        }
    }

    [Fact]
    public void Aimed_is_the_middle_of_every_limit()
    {
        var part = DrawnPart.Of(Drawn.Crank(), PartVariant.Aimed);
        Assert.Equal(9.975, part.Find("hub")!.Across!.Value, Exactly);
        Assert.Equal(3.007, part.Find("pin")!.Across!.Value, Exactly);
        Assert.Equal(4.03, part.Find("socket")!.Across!.Value, Exactly);
        Assert.Equal(-12, part.Find("arm")!.From, Exactly);

        // Hub and arm meet tangent at acos((9.975/2 - 8/2)/28) = 87.979 deg (plane trigonometry).
        var arm = part.Find("arm")!.Outlines[0];
        var hub = arm.Pieces.Single(p => p.IsArc && p.Centre == new Point2(0, 0));
        Assert.Equal(87.979, hub.StartAngle * 180 / Math.PI, 5e-4);
    }

    [Fact]
    public void Least_lies_in_nominal_and_nominal_in_most()
    {
        var least = DrawnPart.Of(Drawn.Crank(), PartVariant.LeastMetal).Solid;
        var nominal = DrawnPart.Of(Drawn.Crank(), PartVariant.Nominal).Solid;
        var most = DrawnPart.Of(Drawn.Crank(), PartVariant.MostMetal).Solid;
        var random = new Random(5);
        var between = 0;
        for (var i = 0; i < 50_000; i++)
        {
            var p = new Point3((random.NextDouble() * 44) - 8, (random.NextDouble() * 14) - 7, (random.NextDouble() * 14) - 13);
            var (a, b, c) = (least.Contains(p), nominal.Contains(p), most.Contains(p));
            Assert.True((!a || b) && (!b || c), p.ToString());
            between += a != c ? 1 : 0;
        }

        Assert.True(between > 100);
    }

    [Fact]
    public void Bands_follow_the_rules()
    {
        var least = DrawnPart.Of(Drawn.Crank(), PartVariant.LeastMetal);
        var most = DrawnPart.Of(Drawn.Crank(), PartVariant.MostMetal);

        // Across: half on each side.
        Assert.Equal(4.975, Radius(least, "hub"), Exactly);
        Assert.Equal(5.0, Radius(most, "hub"), Exactly);

        // Heights: whole on the end away from the origin; unnamed ends take the general limits.
        Assert.Equal(-11.95, least.Find("arm")!.From, Exactly);
        Assert.Equal(-12.05, most.Find("arm")!.From, Exactly);
        Assert.Equal(-11.9, least.Find("hub")!.From, Exactly);
        Assert.Equal(-12.1, most.Find("hub")!.From, Exactly);

        // A cut: grown in least metal by its diameter's limit and the disc its axis may lie in.
        Assert.Equal(1.507 + 0.1, Radius(least, "pin"), Exactly);
        Assert.Equal(1.5 - 0.1, Radius(most, "pin"), Exactly);

        // A tangent outline is drawn again round its rounds, not offset.
        var flank = most.Find("arm")!.Outlines[0];
        Assert.Equal(Outline.TangentHull(new(0, 0), 5, new(28, 0), 4.05 + 0.1).Area, flank.Area, 1e-9);
    }

    [Fact]
    public void A_size_with_uneven_limits_moves_what_is_aimed_at()
    {
        var drawing = Drawn.Crank() with
        {
            Sizes =
            [
                Drawn.Size(SizeKind.Distance, "hub", Limits.FromDeviations(28, 0, 0.2), "eye", "x"),
                Drawn.Size(SizeKind.High, "arm", Limits.FromDeviations(4, 0, 0.2)),
                Drawn.Size(SizeKind.Distance, "hub", Limits.FromDeviations(8, 0, 0.1), "eye", "z"),
            ],
        };
        var part = DrawnPart.Of(drawing, PartVariant.Aimed);
        Assert.Equal(28.1, part.Find("eye")!.Centres[0].X, Exactly);
        Assert.Equal(-12.1, part.Find("arm")!.From, Exactly);
        Assert.Equal(-8.05, part.Find("eye")!.To, Exactly);
    }

    [Fact]
    public void Without_any_limits_all_four_variants_are_one()
    {
        var drawing = Drawn.Crank() with { Sizes = [], Others = null, Features = [.. Drawn.Crank().Features.Take(5)] };
        var least = DrawnPart.Of(drawing, PartVariant.LeastMetal);
        var most = DrawnPart.Of(drawing, PartVariant.MostMetal);
        Assert.Equal(Radius(least, "hub"), Radius(most, "hub"));
        Assert.Equal(least.Find("arm")!.From, most.Find("arm")!.From);
    }

    [Fact]
    public void A_cut_through_passes_all_metal_at_its_place_and_what_is_added_later_stays()
    {
        var drawing = new Drawing
        {
            Features =
            [
                Drawn.Feature("base", false, new BlockShape(Drawn.Exact(20), Drawn.Exact(20), 0), default, -5, 0),
                Drawn.Feature("hole", true, new RoundShape(Drawn.Exact(6)), default, -5, 0, through: true),
                Drawn.Feature("plug", false, new RoundShape(Drawn.Exact(6)), default, -2, 0),
            ],
            Sizes = [],
        };
        var solid = DrawnPart.Of(drawing, PartVariant.Nominal).Solid;
        Assert.False(solid.Contains(new(0, 0, -4.99)));
        Assert.True(solid.Contains(new(0, 0, -1)));
        Assert.True(solid.Contains(new(4, 4, -4.99)));
    }

    [Fact]
    public void Views_bore_along_their_own_axis()
    {
        var drawing = new Drawing
        {
            Features =
            [
                Drawn.Feature("base", false, new BlockShape(Drawn.Exact(20), Drawn.Exact(12), 0), default, -10, 0),
                Drawn.Feature("front hole", true, new RoundShape(Drawn.Exact(4)), new(5, -5), -6, 0, view: View.Front) with { PointAngle = Math.PI / 2 },
                Drawn.Feature("end hole", true, new RoundShape(Drawn.Exact(4)), new(3, -5), 8, 10, view: View.Right),
            ],
            Sizes = [],
        };
        var solid = DrawnPart.Of(drawing, PartVariant.Nominal).Solid;

        // Front: plan X, Y are part X, Z; from Y -6 to 0, then a point of 90 deg, two deep, to Y 2.
        Assert.False(solid.Contains(new(5, -5.9, -5)));
        Assert.False(solid.Contains(new(5, -0.1, -6.9)));
        Assert.True(solid.Contains(new(5, -3, -7.1)));
        Assert.False(solid.Contains(new(5, 1.9, -5)));
        Assert.True(solid.Contains(new(5, 2.1, -5)));
        Assert.True(solid.Contains(new(5, 1, -6.5)));

        // Right: plan X, Y are part Y, Z; from X 8 to 10.
        Assert.False(solid.Contains(new(9.9, 3, -5)));
        Assert.True(solid.Contains(new(7.9, 3, -5)));
        Assert.True(solid.Contains(new(9.9, 5.1, -5)));
    }

    [Fact]
    public void A_repeat_stands_at_all_its_places_turned_and_mirrored()
    {
        var feature = Drawn.Feature("wedge", false, new OutlineShape(
            [new(new(0, 0), 0, 0, null, false), new(new(4, 0), 0, 0, null, false), new(new(0, 1), 0, 0, null, false)]), new(10, 0), 0, 5) with
        {
            Places = [new(new(10, 0), 0, false), new(new(0, 10), Math.PI / 2, false), new(new(-10, 0), 0, true)],
        };
        var part = DrawnPart.Of(new Drawing { Features = [feature], Sizes = [] }, PartVariant.Nominal);
        Assert.All(part.Features[0].Outlines, o => Assert.Equal(2, o.Area, 1e-12));
        Assert.True(part.Solid.Contains(new(13, 0.1, 1)));
        Assert.True(part.Solid.Contains(new(-0.1, 13, 1)));
        Assert.True(part.Solid.Contains(new(-13, 0.1, 1)));
        Assert.False(part.Solid.Contains(new(-13, -0.1, 1)));
    }

    [Fact]
    public void A_ring_and_a_cone_are_what_they_are_called()
    {
        var drawing = new Drawing
        {
            Features =
            [
                Drawn.Feature("ring", false, new RingShape(Drawn.Exact(20), Drawn.Exact(10)), default, 0, 5),
                Drawn.Feature("cone", false, new ConeShape(Drawn.Exact(8), Drawn.Exact(4)), new(30, 0), 0, 10),
            ],
            Sizes = [Drawn.Size(SizeKind.Across, "ring", Limits.FromDeviations(20, -0.2, 0))],
            Others = Limits.FromDeviations(0, -0.1, 0.1),
        };
        var least = DrawnPart.Of(drawing, PartVariant.LeastMetal);
        Assert.Equal(9.9, least.Find("ring")!.Outlines[0].Max.X, Exactly);
        Assert.Equal(5.05, least.Find("ring")!.Bores[0].Max.X, Exactly);
        var nominal = DrawnPart.Of(drawing, PartVariant.Nominal).Solid;
        Assert.False(nominal.Contains(new(4.9, 0, 1)));
        Assert.True(nominal.Contains(new(5.1, 0, 1)));

        // Half way up the cone is 6 across.
        Assert.True(nominal.Contains(new(32.99, 0, 5)));
        Assert.False(nominal.Contains(new(33.01, 0, 5)));
    }

    [Fact]
    public void A_drawing_that_adds_nothing_is_the_callers_mistake()
    {
        var hole = Drawn.Feature("hole", true, new RoundShape(Drawn.Exact(6)), default, -5, 0);
        Assert.Throws<ArgumentException>(() => DrawnPart.Of(new Drawing { Features = [hole], Sizes = [] }, PartVariant.Nominal));
        Assert.Throws<ArgumentException>(() => DrawnPart.Of(new Drawing { Features = [], Sizes = [] }, PartVariant.Nominal));
    }

    [Fact]
    public void The_sizes_a_feature_has_are_those_its_shape_gives()
    {
        Assert.Equal([SizeKind.Across, SizeKind.Radius, SizeKind.High, SizeKind.Position], DrawnSizes.Of(Drawn.Crank().Features[0]));
        Assert.Equal([SizeKind.AcrossFlats, SizeKind.Deep, SizeKind.Position], DrawnSizes.Of(Drawn.Crank().Features[4]));
        Assert.DoesNotContain(SizeKind.Deep, DrawnSizes.Of(Drawn.Crank().Features[5]));
    }

    private static double Radius(DrawnPart part, string feature) => part.Find(feature)!.Outlines[0].Pieces[0].Radius;
}
