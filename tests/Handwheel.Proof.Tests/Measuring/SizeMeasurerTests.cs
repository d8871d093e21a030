using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Reading;
using Handwheel.Proof.Measuring;
using Handwheel.Proof.Tests.Crank;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Tests.Measuring;

/// <summary>Sizes of parts whose size is known by plane geometry.</summary>
public sealed class SizeMeasurerTests
{
    private static readonly Block Plate = new(new(-20, -10, -12), new(20, 10, 0));

    [Fact]
    public void The_angle_of_a_side_to_an_axis()
    {
        // Drawn to atan(10/15) = 33.690 deg; cut to atan(10/15.5) = 32.829 deg.
        var tally = Of("wedge cut outline 5, -10; 20, -10; 20, 0 from -4 to 0", "wedge angle to x 33.69 +/-2", Outline.Polyline([new(4.5, -10), new(20, -10), new(20, 0)]), -4);
        Assert.Equal(Math.Atan2(10, 15.5), tally.Least, 1e-9);
        Assert.Equal(Math.Atan2(10, 15.5), tally.Greatest, 1e-9);
    }

    [Fact]
    public void The_angle_between_two_features()
    {
        var tally = Of("wedge cut outline 5, -10; 20, -10; 20, 0 from -4 to 0", "wedge angle to base 33.69 +/-2", Outline.Polyline([new(4.5, -10), new(20, -10), new(20, 0)]), -4);
        Assert.Equal(Math.Atan2(10, 15.5), tally.Least, 1e-9);
    }

    [Theory]
    [InlineData("triangle", 3)]
    [InlineData("pentagon", 5)]
    public void Across_flats_of_an_odd_polygon(string word, int sides)
    {
        // Cut 0.1 larger, and 0.05 aside in both directions: across flats is twice from the middle to a side wherever the middle is.
        var (feature, size) = ($"hole cut {word} 6 at -5, 2 from -3 to 0", "hole across flats 6 +/-0.2");
        var turn = ((PolygonShape)Drawn(feature, size).Features[1].Shape).Turn;
        var tally = Of(feature, size, Outline.RegularPolygon(new(-4.95, 2.05), 6.1, sides, turn), -3);
        Assert.Equal(6.1, tally.Least, 1e-9);
        Assert.Equal(6.1, tally.Greatest, 1e-9);
    }

    [Fact]
    public void The_bore_of_a_ring()
    {
        var size = "rim bore 8 +/-0.2";
        var aimed = Drawn("rim ring 12 bore 8 at 0, 0 from 0 to 5", size);
        var cut = new Union(Plate, new Difference(new Round(new(0, 0), 6, 0, 5), new Round(new(0.1, 0), 4.03, 0, 5)));
        var tally = new SizeMeasurer(DrawnPart.Of(aimed, PartVariant.Aimed), cut).Measure(aimed.Sizes[0]);
        Assert.InRange(tally.Least, 8.05, 8.06 + 1e-9);
        Assert.InRange(tally.Greatest, 8.05, 8.06 + 1e-9);
    }

    private static Tally Of(string feature, string size, Outline cut, double floor)
    {
        var drawing = Drawn(feature, size);
        ISolid metal = new Difference(Plate, new Prism(cut, floor, 0));
        return new SizeMeasurer(DrawnPart.Of(drawing, PartVariant.Aimed), metal).Measure(drawing.Sizes[0]);
    }

    private static Drawing Drawn(string feature, string size)
    {
        var text = $"""
            job   Plate
            unit  mm
            metal brass
            shop  home.handwheel
            drawing
              base   block 40 by 20 at 0, 0 from -12 to 0
              {feature}
              size   {size}
              others +/-0.2
            stock bar 20 wide, 20 high, 40 long
              x middle 0
              z top 5
            holding A in large vise, bar along jaws on parallels 25
              zero x on left end of stock by finder 10
              zero y on fixed jaw by indicator
              zero z on stock top by paper .05
            """;
        var read = JobReader.Read("plate.handwheel", text, CrankCourse.Example);
        Assert.True(read.Value is not null, string.Join("; ", read.Findings.Select(f => f.Message)));
        return read.Value!.Drawing;
    }
}
