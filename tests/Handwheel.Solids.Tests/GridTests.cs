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

public sealed class GridTests
{
    private static readonly Block Stock = new(new(-12, -10, -8), new(13, 11, 6));

    private static List<ISolid> RandomJob(int seed, int count)
    {
        var random = new RandomCuts(seed);
        var cuts = new List<ISolid>();
        for (var i = 0; i < count; i++)
        {
            var pose = random.Pick(4) switch
            {
                0 => Pose.Identity,
                1 => Pose.TurnAboutZ(random.Between(-3, 3), new(1, 2, 0)),
                2 => Pose.TurnAboutX(Math.PI / 2),
                _ => Pose.TurnAboutY(0.3).Then(Pose.TurnAboutZ(1)),
            };
            cuts.Add(new SweptCut(random.Cutter(), random.Path(mayClimb: random.Pick(4) == 0), pose));
        }

        return cuts;
    }

    [Fact]
    public void Every_ray_of_the_grid_is_a_sounding_of_the_workpiece() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            var cuts = RandomJob(seed, 6);
            var grid = new RayGrid(Stock, 24);
            grid.CutAll(cuts);
            AllSame(grid, cuts.Aggregate(new Workpiece(Stock), (w, c) => w.After(c)), seed);
        },
        times: 60);

    [Fact]
    public void The_same_bytes_with_one_thread_and_with_many()
    {
        var cuts = RandomJob(7, 20);
        var one = new RayGrid(Stock, 64, threads: 1);
        var many = new RayGrid(Stock, 64, threads: 4);
        one.CutAll(cuts);
        many.CutAll(cuts);
        Assert.Equal(one.ToBytes(), many.ToBytes());
    }

    [Fact]
    public void A_cut_taken_back_leaves_the_grid_as_it_was_and_made_again_as_it_became()
    {
        var cuts = RandomJob(11, 8);
        var grid = new RayGrid(Stock, 48);
        grid.CutAll(cuts[..7]);
        var before = grid.ToBytes();
        grid.Cut(cuts[7]);
        var after = grid.ToBytes();
        grid.Undo();
        Assert.Equal(before, grid.ToBytes());
        grid.Redo();
        Assert.Equal(after, grid.ToBytes());
    }

    [Fact]
    public void A_region_refined_answers_as_a_finer_grid_over_it() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            var cuts = RandomJob(seed, 7);
            var grid = new RayGrid(Stock, 20);
            grid.CutAll(cuts[..4]);
            grid.Cut(cuts[4]);
            grid.Cut(cuts[5]);
            grid.Undo();
            var corner = random.Place(9);
            var box = new Box3(corner, corner + new Vector3(random.Between(0.5, 6), random.Between(0.5, 6), random.Between(0.5, 6)));
            var spacing = random.Between(0.05, 0.5);
            var fine = new RayGrid(Stock, spacing, box);
            foreach (var cut in cuts[..5])
            {
                fine.Cut(cut);
            }

            var refined = grid.Refine(box, spacing);
            Assert.Equal(fine.ToBytes(), refined.ToBytes());
            Assert.True(refined.Spacing <= spacing * (1 + 1e-12));

            // It goes its own way, and a copy refines alike.
            var before = grid.ToBytes();
            refined.Cut(cuts[6]);
            fine.Cut(cuts[6]);
            Assert.Equal(fine.ToBytes(), refined.ToBytes());
            Assert.Equal(before, grid.ToBytes());
            fine.Undo();
            Assert.Equal(fine.ToBytes(), grid.Copy().Refine(box, spacing).ToBytes());
        },
        times: 60);

    [Fact]
    public void A_sliver_between_the_rays_is_met_once_its_place_is_refined()
    {
        // A wall 0.02 thick stands between two slots, thinner than the rays are apart: none runs in it along X, the refined ones do.
        var slot = CutterShape.EndMill(4, 30, 4, 60);
        var grid = new RayGrid(Stock, 0.5);
        grid.CutAll(
        [
            new SweptCut(slot, CutterPath.Straight(new(-20, -1.99, -2), new(20, -1.99, -2))),
            new SweptCut(slot, CutterPath.Straight(new(-20, 2.03, -2), new(20, 2.03, -2))),
        ]);
        Assert.DoesNotContain(grid.Ys, y => y is > 0.01 and < 0.03);
        var fine = grid.Refine(new Box3(new(-1, -0.1, 0), new(1, 0.1, 1)), 0.004);
        var inWall = Enumerable.Range(0, fine.Ys.Length).Where(j => fine.Ys[j] is > 0.01 and < 0.03).ToList();
        Assert.InRange(inWall.Count, 4, 6);
        Assert.All(inWall, j => Assert.Equal((-12, 13), fine.AlongX.IntervalOf(j, 0)));
        Assert.Equal(3, fine.AlongY.CountOf(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => grid.Refine(new Box3(new(0, 0, 0), new(0, 1, 1)), 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => grid.Refine(Box3.Everything, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => grid.Refine(fine.Box, double.NaN));
    }

    [Fact]
    public void Cuts_in_another_order_leave_the_same_metal()
    {
        Gen.Int[0, 1_000_000].Hold(
            seed =>
            {
                var cuts = RandomJob(seed, 5);
                var forward = cuts.Aggregate(new Workpiece(Stock), (w, c) => w.After(c));
                var back = Enumerable.Reverse(cuts).Aggregate(new Workpiece(Stock), (w, c) => w.After(c));
                var random = new RandomCuts(seed);
                for (var i = 0; i < 40; i++)
                {
                    var line = random.Line();
                    var (a, b) = (forward.Sound(line), back.Sound(line));
                    Assert.Equal(a.Select(s => (s.From, s.To)), b.Select(s => (s.From, s.To)));
                }
            },
            times: 100);
    }

    [Fact]
    public void A_cut_never_adds_metal() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            var cuts = RandomJob(seed, 3);
            var piece = new Workpiece(Stock);
            var random = new RandomCuts(seed);
            foreach (var cut in cuts)
            {
                var next = piece.After(cut);
                for (var i = 0; i < 20; i++)
                {
                    var line = random.Line();
                    Assert.True(next.Sound(line).Difference(piece.Sound(line)).Cleaned(2e-6).Count == 0);
                }

                piece = next;
            }
        },
        times: 200);

    [Fact]
    public void Volume_of_a_bored_block_is_that_of_the_formulas()
    {
        // Solid geometry: block less cylinder, pi r^2 h.
        var grid = new RayGrid(Stock, 256);
        var bore = new SweptCut(CutterShape.EndMill(8, 30, 8, 40), CutterPath.Straight(new(0, 0, 10), new(0, 0, -9)));
        grid.Cut(bore);
        var exact = (25.0 * 21 * 14) - (Math.PI * 16 * 14);
        Assert.InRange(grid.Volume(), exact * 0.999, exact * 1.001);
    }

    internal static void AllSame(RayGrid grid, Workpiece piece, int seed)
    {
        for (var i = 0; i < 24; i++)
        {
            for (var j = 0; j < 24; j++)
            {
                Same(grid.AlongX, (i * 24) + j, piece.Sound(Line3.AlongX(grid.Ys[j], grid.Zs[i])), seed);
                Same(grid.AlongY, (i * 24) + j, piece.Sound(Line3.AlongY(grid.Xs[j], grid.Zs[i])), seed);
                Same(grid.AlongZ, (i * 24) + j, piece.Sound(Line3.AlongZ(grid.Xs[i], grid.Ys[j])), seed);
            }
        }
    }

    private static void Same(RaySet set, int ray, Spans exact, int seed)
    {
        var rough = new SpanList();
        for (var i = 0; i < set.CountOf(ray); i++)
        {
            var (lo, hi) = set.IntervalOf(ray, i);
            rough.Add(new Span(lo, hi, default, default));
        }

        rough.Clean(Workpiece.Thinnest);
        Assert.True(exact.Count == rough.Count, FormattableString.Invariant($"seed {seed}: {exact.Count} against {rough.Count}"));
        for (var i = 0; i < exact.Count; i++)
        {
            Assert.InRange(rough[i].From, exact[i].From - 1e-7, exact[i].From + 1e-7);
            Assert.InRange(rough[i].To, exact[i].To - 1e-7, exact[i].To + 1e-7);
        }
    }
}
