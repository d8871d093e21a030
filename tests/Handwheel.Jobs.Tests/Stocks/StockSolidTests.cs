using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Stocks;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Tests.Stocks;

/// <summary>Stock as a solid against plain geometry.</summary>
public sealed class StockSolidTests
{
    private static Stock Stock(StockForm form, Point3 used, string along = "x", bool flatsUp = true, double bore = 0) => new()
    {
        Form = form,
        Nominal = used,
        Used = used,
        Least = new(-9, -7, -30),
        Along = along,
        FlatsUp = flatsUp,
        Bore = bore,
        Where = new SourceSpan("stock.handwheel", 1, 1, 1),
    };

    private static double Chord(ISolid solid, Line3 line) => solid.Sound(line).Length;

    [Fact]
    public void A_bar_is_a_block()
    {
        var solid = StockSolid.Of(Stock(StockForm.Bar, new(48, 14, 30)));
        Assert.Equal(new Box3(new(-9, -7, -30), new(39, 7, 0)), solid.Bounds);
        Assert.True(solid.Contains(new(38.99, 6.99, -29.99)));
    }

    [Theory]
    [InlineData("x")]
    [InlineData("y")]
    [InlineData("z")]
    public void A_round_bar_runs_along_its_axis(string along)
    {
        var size = along switch { "x" => new Point3(50, 20, 20), "y" => new(20, 50, 20), _ => new(20, 20, 50) };
        var solid = StockSolid.Of(Stock(StockForm.Round, size, along, bore: 8));
        var c = new Point3(-9 + (size.X / 2), -7 + (size.Y / 2), -30 + (size.Z / 2));
        var (length, across) = along switch
        {
            "x" => (Vector3.UnitX, Vector3.UnitY),
            "y" => (Vector3.UnitY, Vector3.UnitZ),
            _ => (Vector3.UnitZ, Vector3.UnitX),
        };
        Assert.Equal(0, Chord(solid, new(c, length)));
        Assert.Equal(50, Chord(solid, new(c + (across * 5), length)), 1e-9);
        Assert.Equal(12, Chord(solid, new(c, across)), 1e-9);
        Assert.Equal(0, Chord(solid, new(c + (across * 10.01), length)));
    }

    [Theory]
    [InlineData("x", true)]
    [InlineData("x", false)]
    [InlineData("y", true)]
    [InlineData("z", true)]
    [InlineData("z", false)]
    public void A_hexagon_lies_on_its_flats_or_its_corners(string along, bool flatsUp)
    {
        // Across corners = across flats / cos 30 deg.
        var corners = 20 / Math.Cos(Math.PI / 6);
        var (up, over) = flatsUp ? (20.0, corners) : (corners, 20.0);
        var size = along switch { "x" => new Point3(50, over, up), "y" => new(over, 50, up), _ => new(over, up, 50) };
        var solid = StockSolid.Of(Stock(StockForm.Hex, size, along, flatsUp));
        var c = new Point3(-9 + (size.X / 2), -7 + (size.Y / 2), -30 + (size.Z / 2));
        var (upwards, sideways) = along switch
        {
            "x" => (Vector3.UnitZ, Vector3.UnitY),
            "y" => (Vector3.UnitZ, Vector3.UnitX),
            _ => (Vector3.UnitY, Vector3.UnitX),
        };
        Assert.Equal(up, Chord(solid, new(c, upwards)), 1e-9);
        Assert.Equal(over, Chord(solid, new(c, sideways)), 1e-9);
    }
}
