using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Tests.Readers;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Tests.Drawings;

/// <summary>What is drawn from the far side of a view keeps its axes and looks the other way; places by plane geometry.</summary>
public sealed class FarSideTests
{
    private const string Part = """
        job   Block
        unit  mm
        metal brass, free-cutting
        shop  home.handwheel
        drawing
          base  block 60 by 40 at 0, 0   from -20 to 0
          FEATURE
          others +/-0.1
        stock bar 50 wide, 30 high, 70 long
          x middle 0
          z top 5
        holding A in large vise on table
          zero z on bar top by paper 0.05
        """;

    // A hole of 4, 10 deep from each side in turn, its drill's point 2/tan 59 deg = 1.2017 further: open 9.9 in, and on its axis 11.1; shut beside the axis and 11.3 in.
    [Theory]
    [InlineData("top", "at 5, 3", "from 0", 5, 3, 0, 0, 0, -1)]
    [InlineData("below", "at 5, 3", "from -20", 5, 3, -20, 0, 0, 1)]
    [InlineData("front", "at 5, -10", "from -20", 5, -20, -10, 0, 1, 0)]
    [InlineData("back", "at 5, -10", "from 20", 5, 20, -10, 0, -1, 0)]
    [InlineData("right", "at 3, -10", "from 30", 30, 3, -10, -1, 0, 0)]
    [InlineData("left", "at 3, -10", "from -30", -30, 3, -10, 1, 0, 0)]
    public void A_drilled_hole_runs_away_from_its_side(string side, string at, string from, double x, double y, double z, double dx, double dy, double dz)
    {
        var job = Reads.Sound(Part.Replace("FEATURE", $"hole  hole 4 {at}  10 deep {from}, point 118, seen from {side}", StringComparison.Ordinal));
        var solid = DrawnPart.Of(job.Drawing, PartVariant.Nominal).Solid;
        Point3 inside(double deep, double aside) => new(x + (dx * deep) + (dx == 0 ? aside : 0), y + (dy * deep) + (dx != 0 ? aside : 0), z + (dz * deep));
        Assert.False(solid.Contains(inside(0.1, 1.9)));
        Assert.False(solid.Contains(inside(9.9, 1.9)));
        Assert.True(solid.Contains(inside(9.9, 2.1)));
        Assert.False(solid.Contains(inside(11.1, 0)));
        Assert.True(solid.Contains(inside(11.1, 0.5)));
        Assert.True(solid.Contains(inside(11.3, 0)));
    }

    // A stud of 8 standing 4 off the far side, its outer end chamfered 1: at its very end it is 6 across.
    [Theory]
    [InlineData("below", "at 5, 3", "from -20", 5, 3, -20, 0, 0, -1)]
    [InlineData("back", "at 5, -10", "from 20", 5, 20, -10, 0, 1, 0)]
    [InlineData("left", "at 3, -10", "from -30", -30, 3, -10, -1, 0, 0)]
    public void A_stud_is_chamfered_where_it_looks_at_you(string side, string at, string from, double x, double y, double z, double dx, double dy, double dz)
    {
        var job = Reads.Sound(Part.Replace("FEATURE", $"stud  round 8 {at}  4 high {from}, chamfered 1, seen from {side}", StringComparison.Ordinal));
        var solid = DrawnPart.Of(job.Drawing, PartVariant.Nominal).Solid;
        Point3 off(double high, double aside) => new(x + (dx * high) + (dx == 0 ? aside : 0), y + (dy * high) + (dx != 0 ? aside : 0), z + (dz * high));
        Assert.True(solid.Contains(off(2.9, 3.9)));
        Assert.True(solid.Contains(off(3.9, 3)));
        Assert.False(solid.Contains(off(3.9, 3.3)));
        Assert.False(solid.Contains(off(4.1, 0)));
    }

    [Theory]
    [InlineData("left", "cut cone 8 to 2")]
    [InlineData("front", "cut cone 8 to 2")]
    public void A_countersink_that_opens_downwards_is_a_cone(string side, string mend)
    {
        var read = Reads.Job(Part.Replace("FEATURE", $"sunk  countersink 8 by 90 deg at 3, -10  down from -30, seen from {side}", StringComparison.Ordinal));
        Assert.Contains(read.Findings, f => f.Code == "not-there" && f.Mend.Contains(mend, StringComparison.Ordinal) && f.Mend.Contains(side, StringComparison.Ordinal));
    }
}
