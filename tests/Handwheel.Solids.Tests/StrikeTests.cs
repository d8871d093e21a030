using CsCheck;
using Handwheel.Draws;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Tests.Oracle;

namespace Handwheel.Solids.Tests;

/// <summary>Certified clearances: tight beside long faces, and never more than plane geometry or the oracle allows.</summary>
public sealed class StrikeTests
{
    private static readonly CutterShape Mill = CutterShape.EndMill(10, 22, 10, 30);
    private static readonly Block Jaw = new(new(-50, 10, -30), new(50, 20, 5));

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.5)]
    [InlineData(0.001)]
    public void Long_parallel_faces_are_certified_to_their_gap(double gap)
    {
        // A cutter of radius 5 passes 100 mm of jaw, its flank the gap away.
        var answer = Strike.Check(Pass(5 - gap), Jaw, tolerance: gap / 4);
        Assert.Equal(StrikeVerdict.Clear, answer.Verdict);
        Assert.InRange(answer.Clearance, 0.75 * gap, gap);
    }

    [Fact]
    public void Long_parallel_faces_that_overlap_by_five_thousandths_strike()
    {
        var answer = Strike.Check(Pass(5.005), Jaw);
        Assert.Equal(StrikeVerdict.Strikes, answer.Verdict);
        Assert.InRange(answer.Depth, 0.004, 0.005 + 1e-9);
        Assert.True(Jaw.Contains(answer.Place));
    }

    [Fact]
    public void Faces_that_only_touch_are_undecided() => Assert.Equal(StrikeVerdict.Undecided, Strike.Check(Pass(5), Jaw).Verdict);

    [Fact]
    public void Long_faces_under_a_floor_and_beside_a_tilted_pass_are_certified()
    {
        // Under a slot's floor, 0.02 below it.
        var floor = new Block(new(-50, -20, -30), new(50, 20, -4.02));
        var under = Strike.Check(new SweptCut(Mill, CutterPath.Straight(new(-60, 0, -4), new(60, 0, -4)), null, whole: true), floor);
        Assert.Equal(StrikeVerdict.Clear, under.Verdict);
        Assert.InRange(under.Clearance, 0.015, 0.02);

        // The same pass and jaw turned together by 30 degrees: bounds are looser, never too great.
        var turned = Pose.TurnAboutZ(Math.PI / 6);
        var tilted = Strike.Check(new SweptCut(Mill, CutterPath.Straight(new(-60, 4.9, -6), new(60, 4.9, -6)), turned, whole: true), new Placed(Jaw, turned));
        Assert.NotEqual(StrikeVerdict.Strikes, tilted.Verdict);
        Assert.InRange(tilted.Clearance, 0, 0.1);
    }

    [Fact]
    public void A_round_post_beside_an_arc_is_certified()
    {
        // The cutter goes round (0, 0) at radius 30; a post of radius 4 stands 39.05 away: 0.05 clear.
        var post = new Round(new(39.05 * Math.Cos(0.7), 39.05 * Math.Sin(0.7)), 4, -30, 0);
        var answer = Strike.Check(new SweptCut(Mill, CutterPath.Arc(default, new(30, 0, -5), 2), null, whole: true), post);
        Assert.Equal(StrikeVerdict.Clear, answer.Verdict);
        Assert.InRange(answer.Clearance, 0.03, 0.05);
    }

    [Fact]
    public void A_long_cell_under_a_rounded_corner_is_bounded_by_its_round()
    {
        // Corner radius 2 on a cutter of radius 6: the round's centre runs at (4, 2) beside and above the path; a cell from (7, -3) on, as long as the path.
        Solid cut = new SweptCut(CutterShape.BullNose(12, 2, 20, 12, 30), CutterPath.Straight(new(-40, 0, 0), new(40, 0, 0)));
        var least = cut.LeastIn(new(new(-30, 7, -5), new(30, 9, -3)));
        Assert.Equal(Math.Sqrt(9 + 25) - 2, least, 1e-12);

        // A ball of radius 3 the same, and a cone of 45 degrees square to its side.
        Solid ball = new SweptCut(CutterShape.BallNose(6, 10, 6, 30), CutterPath.Straight(new(-40, 0, 0), new(40, 0, 0)));
        Assert.Equal(5 - 3, ball.LeastIn(new(new(-30, 4, -2), new(30, 9, 0))), 1e-12);
        Solid cone = new SweptCut(CutterShape.Countersink(20, Math.PI / 2, 0, 6, 12), CutterPath.Straight(new(-40, 0, 0), new(40, 0, 0)));
        Assert.Equal(3 / Math.Sqrt(2), cone.LeastIn(new(new(-30, 8, 4), new(30, 9, 5))), 1e-12);
    }

    [Fact]
    public void No_cell_is_bounded_beyond_the_solid() => Gen.Int[0, int.MaxValue - 1].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            var cutter = random.Cutter();
            var path = random.Path(mayClimb: true);
            var pose = random.Pick(2) == 0 ? Pose.Identity : Pose.TurnAboutX(random.Between(-2, 2)).Then(Pose.TurnAboutZ(random.Between(-2, 2)));
            Solid cut = new SweptCut(cutter, path, pose);
            var oracle = new SweepOracle(cutter, path);
            var from = random.Place(12);
            var cell = new Box3(from, from + new Vector3(random.Between(0.01, 20), random.Between(0.01, 3), random.Between(0.01, 3)));
            var least = cut.LeastIn(cell);
            for (var i = 0; i < 2 && least > 0 && ((SweptCut)cut).ChordBound == 0; i++)
            {
                var size = cell.Size;
                var inside = from + new Vector3(size.X * random.Between(0, 1), size.Y * random.Between(0, 1), size.Z * random.Between(0, 1));


                // Straight towards the solid, as the engine finds it; the oracle says whether it is reached too soon.
                var nearest = new NearestPlace(cut).Find(inside, [], all: true);
                Assert.True(nearest is not { } n || n.Distance >= least - 1e-9, FormattableString.Invariant($"seed {seed} kind {random.Kind} {path.Kind}: {least:R} claimed, {nearest} met"));
                var aside = nearest is { } hit ? (hit.Place - inside).ToUnit() * (least * 0.9999) : default;
                var depth = oracle.Depth(pose.Inverse().Apply(inside + aside));
                Assert.True(depth <= 1e-9m, FormattableString.Invariant($"seed {seed} kind {random.Kind} {path.Kind}: {least:R} claimed, inside by {depth}"));
            }
        },
        times: 250);

    [Fact]
    public void A_verdict_never_contradicts_the_oracle() => Gen.Int[0, int.MaxValue - 1].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            var cutter = random.Cutter();
            var path = random.Path(mayClimb: false);
            var oracle = new SweepOracle(cutter, path);
            var corner = random.Place(14);
            var size = new Vector3(random.Between(1, 10), random.Between(1, 10), random.Between(1, 10));
            var block = new Block(corner, corner + size);
            var cut = new SweptCut(cutter, path);
            var answer = Strike.Check(cut, block, budget: 6_000);
            if (answer.Verdict == StrikeVerdict.Strikes)
            {
                Assert.True(block.Contains(answer.Place) && oracle.Depth(answer.Place) > 0, FormattableString.Invariant($"seed {seed}"));
                return;
            }

            for (var i = 0; i < 6; i++)
            {
                var place = corner + new Vector3(size.X * random.Between(0, 1), size.Y * random.Between(0, 1), size.Z * random.Between(0, 1));
                var nearest = new NearestPlace(cut).Find(place, [], all: true);
                var aside = nearest is { } hit ? (hit.Place - place).ToUnit() * (answer.Clearance * 0.9999) : default;
                Assert.True(answer.Verdict != StrikeVerdict.Clear || oracle.Depth(place + aside) <= 0, FormattableString.Invariant($"seed {seed} {answer}"));
            }
        },
        times: 80);

    private static SweptCut Pass(double y) => new(Mill, CutterPath.Straight(new(-60, y, -6), new(60, y, -6)), null, whole: true);
}
