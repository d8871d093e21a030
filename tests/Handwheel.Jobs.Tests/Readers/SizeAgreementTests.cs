namespace Handwheel.Jobs.Tests.Readers;

/// <summary>A size that says other than what is drawn is a finding (plane geometry).</summary>
public sealed class SizeAgreementTests
{
    // Rise 10 on a run of 15: atan(10/15) = 33.690 deg.
    private const string Drawn = """
        job   Wedge plate
        unit  mm
        metal brass
        shop  home.handwheel
        drawing
          base   block 40 by 20 at 0, 0     from -12 to 0
          wedge  cut outline 5, -10; 20, -10; 20, 0   from -4 to 0
          side   cut outline 0, -3; 4, 0; 0, 0   from -10 to -8, seen from front
          hub    round 6 at 3, 4            from 0 to 2
          nut    hexagon 6 across corners at -12, 4 from 0 to 2
          toe    cut outline -20, -10; -14, -10; -14, -7 fillet 2; -20, -7  from -4 to 0
          SIZE
          others +/-0.2
        stock bar 20 wide, 14 high, 40 long
          x middle 0
          z top 2
        holding A in large vise, bar along jaws on parallels 25
          zero x on left end of stock by finder 10
          zero y on fixed jaw by indicator
          zero z on base top by paper .05
        """;

    [Theory]
    [InlineData("wedge angle to base 33.69 +/-0.1")]
    [InlineData("wedge angle to base 146.31 +/-0.1")]
    [InlineData("wedge angle to x 33.5 +/-0.5")]
    [InlineData("wedge angle to y 56.31 +/-0.5")]
    [InlineData("side angle to x 36.87 +/-0.1")]
    [InlineData("side angle to z 53.13 +/-0.1")]
    [InlineData("base left to hub along x 23 +/-0.05")]
    [InlineData("base left to hub right 26 +/-0.05")]
    [InlineData("base near to hub 14 +/-0.05")]
    [InlineData("nut across corners 6 +/-0.1")]
    [InlineData("toe radius 2 +/-0.1")]
    public void What_is_drawn_may_be_said(string size) => Reads.Sound(With(size));

    [Theory]
    [InlineData("wedge angle to base 30 +/-0.5", "The size says wedge angle to base 30 deg; their sides are drawn at 0, 33.69, 56.31, 90, 123.69, 146.31 deg.")]
    [InlineData("wedge angle to x 45 +/-0.5", "The size says wedge angle to x 45 deg; their sides are drawn at 0, 33.69, 90, 146.31, 180 deg.")]
    [InlineData("base left to hub along x 20 +/-0.05", "The size says base left to hub along x 20 mm; they are drawn 23 mm apart.")]
    [InlineData("base far to hub near 8 +/-0.05", "The size says base far to hub near 8 mm; they are drawn 9 mm apart.")]
    [InlineData("toe radius 3 +/-0.1", "The size says toe radius 3 mm; the nearest arc is drawn with 2 mm.")]
    public void What_is_not_drawn_contradicts(string size, string says) => Found(size, "contradiction", says);

    [Theory]
    [InlineData("hub angle to base 0 +/-1", "'hub' has no straight side to take an angle from.")]
    [InlineData("side angle to y 0 +/-1", "'side' is drawn looking along y, so it has no angle to it.")]
    [InlineData("side angle to base 0 +/-1", "'side' and 'base' are drawn in different views, so no angle is seen between them.")]
    [InlineData("wedge radius 2 +/-0.1", "'wedge' has no arc, so it has no radius.")]
    public void What_no_angle_is_seen_of_is_not_there(string size, string says) => Found(size, "not-there", says);

    [Theory]
    [InlineData("nut across corners 6.2 +/-0.1", "contradiction", "6.2", "drawn 5.1962 mm")]
    [InlineData("hub across corners 6 +/-0.1", "not-there", "hub across corners", "no such size")]
    public void Corners_are_those_of_a_polygon(string size, string code, string marked, string says) =>
        Assert.Contains(says, Reads.Only(With(size), code, marked).Message, StringComparison.Ordinal);

    private static string With(string size) => Drawn.Replace("SIZE", "size " + size, StringComparison.Ordinal);

    private static void Found(string size, string code, string says)
    {
        var finding = Reads.Only(With(size), code, "size " + size);
        Assert.Contains(says, finding.Message, StringComparison.Ordinal);
    }
}
