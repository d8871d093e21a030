using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Tests;

public sealed class GridReadingTests
{
    private static readonly Block Bar = new(new(-20, -10, -8), new(20, 10, 0));

    private static readonly ISolid[] Cuts =
    [
        new SweptCut(CutterShape.EndMill(10, 20, 10, 30), CutterPath.Straight(new(-30, 3, -4), new(30, 3, -4))),
        new SweptCut(CutterShape.EndMill(6, 20, 6, 30), CutterPath.Straight(new(2, -30, -6), new(2, 30, -6))),
        new SweptCut(CutterShape.EndMill(4, 20, 4, 30), CutterPath.Straight(new(-11, -5, 1), new(-11, -5, -9))),
    ];

    [Fact]
    public void Every_ray_is_the_sounding_of_its_line()
    {
        var grid = new RayGrid(Bar, 0.9);
        var piece = new Workpiece(Bar);
        foreach (var cut in Cuts)
        {
            grid.Cut(cut);
            piece = piece.After(cut);
        }

        for (var axis = 0; axis < 3; axis++)
        {
            for (var ray = 0; ray < grid.RaysAlong(axis); ray++)
            {
                var sounding = piece.Sound(grid.RayLine(axis, ray));
                Assert.Equal(sounding.Count, grid.IntervalCount(axis, ray));
                for (var i = 0; i < sounding.Count; i++)
                {
                    Assert.Equal(sounding[i].From, grid.Interval(axis, ray, i).From, 9);
                    Assert.Equal(sounding[i].To, grid.Interval(axis, ray, i).To, 9);
                    Assert.Equal(sounding[i].To, grid.Ray(axis, ray)[i].To, 9);
                }
            }
        }
    }

    [Fact]
    public void What_changed_is_told_as_it_was_before()
    {
        var grid = new RayGrid(Bar, 0.9);
        grid.Cut(Cuts[0]);
        var before = grid.Copy();
        grid.Cut(Cuts[1]);
        var changed = grid.Changed().ToDictionary(c => (c.Axis, c.Ray), c => c.Before);
        Assert.NotEmpty(changed);
        for (var axis = 0; axis < 3; axis++)
        {
            for (var ray = 0; ray < grid.RaysAlong(axis); ray++)
            {
                var was = before.Ray(axis, ray);
                Assert.Equal(changed.ContainsKey((axis, ray)), !was.SequenceEqual(grid.Ray(axis, ray)));
                if (changed.TryGetValue((axis, ray), out var told))
                {
                    Assert.Equal(was, told);
                }
            }
        }

        grid.Undo();
        Assert.Equal(before.ToBytes(), grid.ToBytes());
    }

    [Fact]
    public void A_copy_does_not_follow()
    {
        var grid = new RayGrid(Bar, 0.9);
        grid.Cut(Cuts[0]);
        grid.Cut(Cuts[2]);
        var copy = grid.Copy();
        var bytes = copy.ToBytes();
        grid.CutAll([Cuts[1]]);
        Assert.Equal(bytes, copy.ToBytes());
        copy.CutAll([Cuts[1]]);
        Assert.Equal(grid.ToBytes(), copy.ToBytes());
    }

    // A half space has no bounds: all rows are met.
    [Fact]
    public void A_half_space_cuts_every_ray()
    {
        var grid = new RayGrid(Bar, 0.9);
        grid.Cut(new HalfSpace(new Point3(5, 0, 0), Vector3.UnitX));
        for (var ray = 0; ray < grid.RaysAlong(0); ray++)
        {
            Assert.Equal((5, 20), grid.Interval(0, ray, 0));
        }
    }

    [Fact]
    public void The_nearest_ray_is_near()
    {
        var grid = new RayGrid(Bar, 0.9);
        var place = new Point3(3.3, -2.1, -4.4);
        for (var axis = 0; axis < 3; axis++)
        {
            var line = grid.RayLine(axis, grid.RayNear(axis, place));
            var along = (place - line.Origin).Dot(line.Direction);
            Assert.True(line.At(along).DistanceTo(place) <= 0.9 * Math.Sqrt(0.5) + 1e-9);
        }
    }
}
