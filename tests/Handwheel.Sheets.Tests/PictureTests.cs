using CsCheck;
using Handwheel.Draws;
using Handwheel.Jobs.Moves;
using Handwheel.Sheets.Pictures;
using Handwheel.Sheets.Tests.Fixtures;
using Handwheel.Sheets.Text;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Tests;

public sealed class PictureTests
{
    // Plane geometry: a circle's area and a square's corners.
    [Fact]
    public void A_traced_circle_has_its_area()
    {
        var loops = Contours.Of(new(-6, -6, 6, 6), 60, 60, p => (p.X * p.X) + (p.Y * p.Y) < 25);
        Assert.Single(loops);
        // A chord of a square of 0.2 lies at most 0.2^2/(8 x 5) = 0.001 within, so the area is at most 0.001 x 2 pi x 5 = 0.032 short, and twice that where two run as one.
        Assert.InRange(Area(loops[0]), (Math.PI * 25) - 0.064, Math.PI * 25);
    }

    [Fact]
    public void A_traced_square_keeps_its_corners()
    {
        var loop = Assert.Single(Contours.Of(new(0, 0, 10, 10), 37, 41, p => p.X is > 2 and < 7.5 && p.Y is > 3 and < 8));
        foreach (var corner in new Point2[] { new(2, 3), new(7.5, 3), new(7.5, 8), new(2, 8) })
        {
            Assert.Contains(loop, p => Math.Abs(p.X - corner.X) < 0.01 && Math.Abs(p.Y - corner.Y) < 0.01);
        }
    }

    [Fact]
    public void The_part_is_where_the_drawing_says()
    {
        var part = new PartColumns(CrankJob.Job.Drawing);
        Assert.Equal(-12, part.Low);
        Assert.Equal(0, part.High);
        Assert.Null(part.Top(new(0, 0)));
        Assert.Equal(0, part.Top(new(4, 0)));
        Assert.Equal(-8, part.Top(new(15, 0)));
        Assert.Null(part.Top(new(28, 0)));
        var below = Assert.Single(part.At(1.98, 0.9));
        Assert.Equal((-12.0, -6.0), (below.From, below.To));
    }

    // acos((9.975/2 - 8/2)/28) = 87.979 deg: the arm leaves the hub's circle there.
    [Fact]
    public void The_arm_is_tangent_to_both_rounds()
    {
        var loop = Assert.Single(new PartColumns(CrankJob.Job.Drawing).Features[2].Loops);
        var angle = Math.Acos((4.9875 - 4) / 28);
        Assert.Equal(87.979, angle * 180 / Math.PI, 0.001);
        Assert.Contains(loop, p => Math.Abs(p.X - (4.9875 * Math.Cos(angle))) < 1e-9 && Math.Abs(p.Y - (4.9875 * Math.Sin(angle))) < 1e-9);
    }

    [Fact]
    public void Labels_never_lie_on_one_another()
    {
        Gen.Double[0, 100].Array[1, 12].Hold(wanted =>
        {
            var at = Spread.Along(wanted, [.. wanted.Select(_ => 5.0)], 0, 100);
            var sorted = at.Order().ToArray();
            Assert.True(sorted.Zip(sorted.Skip(1)).All(p => p.Second - p.First > 5 - 1e-9) && sorted[0] >= 2.5 - 1e-9 && sorted[^1] <= 97.5 + 1e-9);
        }, times: 100);
    }

    [Theory]
    [InlineData(-360, "0 deg 00'")]
    [InlineData(-87.9833333, "87 deg 59'")]
    [InlineData(2.0166667, "357 deg 59'")]
    [InlineData(-720.0000001, "0 deg 00'")]
    [InlineData(0.0001, "0 deg 00'")]
    public void A_rotary_that_reads_clockwise_prints_its_own_rim(double theta, string printed) =>
        Assert.Equal(printed, new SheetNumbers(Quantities.LengthUnit.Millimetre, CrankShop.Shop, CrankPlan.Setup).Reading(Axis.T, theta));

    private static double Area(IReadOnlyList<Point2> loop)
    {
        var twice = 0.0;
        for (int i = 0, j = loop.Count - 1; i < loop.Count; j = i++)
        {
            twice += (loop[j].X * loop[i].Y) - (loop[i].X * loop[j].Y);
        }

        return Math.Abs(twice) / 2;
    }
}
