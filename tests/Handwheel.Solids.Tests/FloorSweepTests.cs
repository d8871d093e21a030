using CsCheck;
using Handwheel.Draws;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Tests.Oracle;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Tests;

/// <summary>Many cuts made in one passage from the lowest floor up leave what the same cuts leave one by one, and what soundings say.</summary>
public sealed class FloorSweepTests
{
    private static readonly Block Bar = new(new(-12, -10, -8), new(13, 11, 6));

    private static readonly Solid[] Stocks =
    [
        Bar,
        new Placed(new Round(default, 9.5, -12, 12), Pose.TurnAboutY(Math.PI / 2)),
        new Difference(Bar, new Union([new Round(new(2, 1), 4, -20, 20), new Placed(new Round(new(1, 0), 3, -20, 20), Pose.TurnAboutX(Math.PI / 2))])),
    ];

    // End mills and drills on level paths, many with flutes that reach above the stock and some below its top: passes side by side and over one another,
    // the same path at several depths, whole numbers so that they touch, rings about one hub.
    private static List<ISolid> Job(int seed, int count)
    {
        var random = new RandomCuts(seed);
        var cuts = new List<ISolid>();
        CutterPath path = random.Path(mayClimb: false);
        var d = 6.0;
        for (var i = 0; i < count; i++)
        {
            var depth = random.Pick(3) == 0 ? random.Pick(14) - 8 : random.Between(-9, 6);
            switch (random.Pick(6))
            {
                case 0:
                    break;
                case 1:
                    path = CutterPath.Straight(new(-20, random.Pick(20) - 10, 0), new(20, random.Pick(20) - 10, 0));
                    break;
                case 2:
                    path = CutterPath.Straight(new(random.Pick(20) - 10, -20, 0), new(random.Pick(20) - 10, 20, 0));
                    break;
                case 3:
                    path = CutterPath.Arc(new(2, 1), new(2 + random.Pick(9), 1, 0), random.Pick(2) == 0 ? 7 : random.Between(-6.2, 6.2));
                    break;
                default:
                    path = random.Path(mayClimb: false);
                    d = random.Pick(2) == 0 ? random.Pick(9) + 1 : random.Between(0.2, 9);
                    break;
            }

            var flute = random.Pick(4) == 0 ? random.Between(1, 8) : 30;
            var cutter = random.Pick(5) switch
            {
                0 => CutterShape.Drill(d, 2, flute + d, d, 60),
                1 => random.Cutter(),
                _ => CutterShape.EndMill(d, flute, d, 60),
            };
            cuts.Add(new SweptCut(cutter, path, Pose.Translation(new(0, 0, depth - path.From.Z))));
        }

        return cuts;
    }

    [Fact]
    public void All_at_once_leaves_the_bytes_that_one_by_one_leaves() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            var stock = Stocks[seed % 3];
            var cuts = Job(seed, 14);
            RayGrid one = new(stock, 40 + (seed % 17)), all = new(stock, 40 + (seed % 17));
            cuts.ForEach(one.Cut);
            all.CutAll(cuts[..9]);
            all.CutAll(cuts[9..]);
            Assert.Equal(one.ToBytes(), all.ToBytes());
            SummariesHold(all);
        },
        times: 300);

    [Fact]
    public void All_at_once_over_a_smaller_box_leaves_the_bytes_that_one_by_one_leaves() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            // Metal without end in one direction, too.
            Solid[] stocks = [.. Stocks, new HalfSpace(new(1, 1, 3), new Vector3(seed % 2, 0.3, 1).ToUnit()), new HalfSpace(new(0, 0, 1), Vector3.UnitZ)];
            var box = new Box3(new(-5, -4, -6), new(7, 5, 2));
            var cuts = Job(seed, 10);
            RayGrid one = new(stocks[seed % 5], 0.4, box), all = new(stocks[seed % 5], 0.4, box);
            cuts.ForEach(one.Cut);
            all.CutAll(cuts);
            Assert.Equal(one.ToBytes(), all.ToBytes());
            SummariesHold(all);
        },
        times: 100);

    [Fact]
    public void Every_ray_is_a_sounding_of_the_workpiece() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            var cuts = Job(seed, 12);
            var grid = new RayGrid(Bar, 24);
            grid.CutAll(cuts);
            GridTests.AllSame(grid, cuts.Aggregate(new Workpiece(Bar), (w, c) => w.After(c)), seed);
        },
        times: 100);

    [Fact]
    public void A_block_is_on_the_rays_as_its_soundings_are() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            var box = new Box3(new(random.Between(-15, 0), random.Between(-15, 0), random.Between(-15, 0)), new(random.Between(1, 15), random.Between(1, 15), random.Between(1, 15)));
            RayGrid plain = new(Bar, 0.7, box), united = new(new Union(Bar), 0.7, box);
            Assert.Equal(united.ToBytes(), plain.ToBytes());
            SummariesHold(plain);
        },
        times: 100);

    [Fact]
    public void A_place_between_two_cuts_that_touch_stays_until_a_third_takes_it()
    {
        // Two slots share the border Y 0; a third over it, higher up, takes what stands there from its own floor.
        var slot = CutterShape.EndMill(4, 30, 4, 60);
        List<ISolid> cuts =
        [
            new SweptCut(slot, CutterPath.Straight(new(-20, -2, -4), new(20, -2, -4))),
            new SweptCut(slot, CutterPath.Straight(new(-20, 2, -4), new(20, 2, -4))),
            new SweptCut(slot, CutterPath.Straight(new(-20, 0, 1), new(20, 0, 1))),
        ];
        var left = new LinesLeft();
        left.Start(1, -10, 10);
        Assert.True(left.Take(0, -4, 0));
        Assert.True(left.Take(0, 0, 4));
        Assert.Equal([-10, -4, 0, 0, 4, 10], left.Of(0).ToArray());
        Assert.True(left.Take(0, -2, 2));
        Assert.False(left.Take(0, -2, 2));
        Assert.Equal([-10, -4, 4, 10], left.Of(0).ToArray());

        RayGrid one = new(Bar, 64), all = new(Bar, 64);
        cuts.ForEach(one.Cut);
        all.CutAll(cuts);
        Assert.Equal(one.ToBytes(), all.ToBytes());
    }

    [Fact]
    public void What_is_left_of_lines_is_what_plain_sets_of_places_say() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            // Whole numbers: the set {-10, -9.5, ..., 10} less open intervals, place by place.
            var random = new RandomCuts(seed);
            var left = new LinesLeft();
            left.Start(3, -10, 10);
            var places = Enumerable.Range(0, 41).Select(i => (i - 20) / 2.0).ToHashSet();
            for (var n = 0; n < 12; n++)
            {
                double a = random.Pick(20) - 10, b = a + 1 + random.Pick(6);
                double[] from = [.. Enumerable.Repeat(a, 16)], to = [.. Enumerable.Repeat(b, 16)];
                var any = places.RemoveWhere(p => p > a && p < b) > 0;
                Assert.True(!any || (left.Met(from, to) & 2) != 0);
                Assert.Equal(any, left.Take(1, a, b));
                Assert.Equal(places.Order(), Enumerable.Range(0, 41).Select(i => (i - 20) / 2.0).Where(p => Holds(left.Of(1), p)));
            }
        },
        times: 300);

    private static bool Holds(ReadOnlySpan<double> pairs, double place)
    {
        for (var i = 0; i < pairs.Length; i += 2)
        {
            if (place >= pairs[i] && place <= pairs[i + 1])
            {
                return true;
            }
        }

        return false;
    }

    private static void SummariesHold(RayGrid grid)
    {
        foreach (var set in (RaySet[])[grid.AlongX, grid.AlongY, grid.AlongZ])
        {
            double[] lo = [.. set.BlockLo], hi = [.. set.BlockHi], tileLo = [.. set.TileLo], tileHi = [.. set.TileHi];
            for (var block = 0; block < set.Blocks; block++)
            {
                for (var row = 0; row < set.Rows; row++)
                {
                    set.Summarise(row, block);
                }

                for (var tile = 0; tile < set.Tiles; tile++)
                {
                    set.SummariseTile(tile, block);
                }
            }

            Assert.Equal(lo, set.BlockLo);
            Assert.Equal(hi, set.BlockHi);
            Assert.Equal(tileLo, set.TileLo);
            Assert.Equal(tileHi, set.TileHi);
        }
    }
}
