using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Tests.Drawings;

/// <summary>Outlines with fillets, chamfers and bands against areas from plane geometry.</summary>
public sealed class OutlineDrawingTests
{
    private static OutlineCorner At(double x, double y, double fillet = 0, double chamfer = 0) => new(new(x, y), fillet, chamfer, null, false);

    private static OutlineShape Rectangle(double fillet, double chamfer) =>
        new([At(0, 0, fillet, chamfer), At(20, 0, fillet, chamfer), At(20, 10, fillet, chamfer), At(0, 10, fillet, chamfer)]);

    [Fact]
    public void Four_fillets_take_four_minus_pi_squares_of_their_radius() =>
        Assert.Equal(200 - ((4 - Math.PI) * 9), OutlineDrawing.Of(Rectangle(3, 0)).Area, 1e-9);

    [Fact]
    public void Four_chamfers_take_half_a_square_each() =>
        Assert.Equal(200 - (4 * 2), OutlineDrawing.Of(Rectangle(0, 2)).Area, 1e-9);

    [Fact]
    public void A_fillet_in_an_inner_corner_adds_metal()
    {
        var ell = OutlineDrawing.Of(new([At(0, 0), At(10, 0), At(10, 4), At(4, 4, fillet: 2), At(4, 10), At(0, 10)]));
        Assert.Equal(64 + ((1 - (Math.PI / 4)) * 4), ell.Area, 1e-9);
    }

    [Fact]
    public void A_half_round_end_runs_on_smoothly()
    {
        var dee = OutlineDrawing.Of(new([At(0, 0), new(new(10, 0), 0, 0, new Point2(10, 5), true), At(10, 10), At(0, 10)]));
        Assert.Equal(100 + (Math.PI * 25 / 2), dee.Area, 1e-9);
        var grown = OutlineDrawing.Offset(dee, 0.1);

        // Ten of length either side and five round the end; two sharp corners on the left.
        Assert.Equal(10.2 * 10.1 + (Math.PI * 5.1 * 5.1 / 2), grown.Area, 1e-9);
    }

    [Fact]
    public void A_fillet_between_a_line_and_an_arc_touches_both()
    {
        // A quarter disc of radius 10; the fillet of 1 at (10, 0) lies inside the line y = 0 and the arc.
        var shape = new OutlineShape([At(0, 0), new(new(10, 0), 1, 0, new Point2(0, 0), true), At(0, 10)]);
        var outline = OutlineDrawing.Of(shape);
        var round = outline.Pieces.Single(p => p.IsArc && p.Radius == 1);
        Assert.Equal(1, round.Centre.Y, 1e-12);
        Assert.Equal(9, round.Centre.Length, 1e-12);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(-0.1)]
    [InlineData(0.75)]
    [InlineData(-0.75)]
    public void A_band_changes_a_filleted_rectangle_by_steiners_formula(double by)
    {
        var outline = OutlineDrawing.Of(Rectangle(3, 0));
        var around = (2 * 14) + (2 * 4) + (2 * Math.PI * 3);
        Assert.Equal(outline.Area + (around * by) + (Math.PI * by * by), OutlineDrawing.Offset(outline, by).Area, 1e-9);
    }

    [Fact]
    public void A_band_leaves_sharp_corners_sharp()
    {
        Assert.Equal(20.4 * 10.4, OutlineDrawing.Offset(OutlineDrawing.Of(Rectangle(0, 0)), 0.2).Area, 1e-9);
        Assert.Equal(19.6 * 9.6, OutlineDrawing.Offset(OutlineDrawing.Of(Rectangle(0, 0)), -0.2).Area, 1e-9);
        Assert.Equal(Math.PI * 25.5 * 25.5, OutlineDrawing.Offset(Outline.Circle(new(3, 4), 25), 0.5).Area, 1e-9);
    }
}
