using CsCheck;
using Handwheel.Draws;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Tests.Oracle;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Tests;

/// <summary>Thinnest sections and engagement against brute force: random chords, and the oracle's membership on fine rows of places.</summary>
public sealed class BruteForceTests
{
    [Fact]
    public void The_web_between_two_holes_is_their_distance_less_their_radii_and_no_chord_is_shorter() => Gen.Int[0, int.MaxValue - 1].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            double r1 = random.Between(1, 4), r2 = random.Between(1, 4), web = random.Between(0.1, 2);
            var pose = Pose.TurnAboutZ(random.Between(-3, 3)).Then(Pose.TurnAboutX(random.Between(-1, 1)));
            var bar = new Placed(new Block(new(-20, -20, -10), new(20, 20, 10)), pose);
            var piece = new Workpiece(bar)
                .After(new SweptCut(CutterShape.EndMill(2 * r1, 40, 6, 41), CutterPath.At(new(-r1, 0, -20)), pose))
                .After(new SweptCut(CutterShape.EndMill(2 * r2, 40, 6, 41), CutterPath.At(new(web + r2, 0, -20)), pose));
            var middle = pose.Apply(new Point3(web / 2, 0, 0));
            var region = new Box3(middle, middle).Grown(0.4 * Math.Min(r1, r2));
            bool Across(Handwheel.Solids.Soundings.SurfaceId a, Handwheel.Solids.Soundings.SurfaceId b) => a.Owner * b.Owner == 2;
            var found = Thinnest.In(piece, region, accept: Across);
            Assert.NotNull(found);
            Assert.True(Math.Abs(found.Thickness - web) < 1e-6, FormattableString.Invariant($"seed {seed}: {found.Thickness:R} against {web:R}"));
            for (var i = 0; i < 60; i++)
            {
                var at = region.Min + new Vector3(region.Size.X * random.Between(0, 1), region.Size.Y * random.Between(0, 1), region.Size.Z * random.Between(0, 1));
                var spans = piece.Sound(new(at, new Vector3(random.Between(-1, 1), random.Between(-1, 1), random.Between(-1, 1)).ToUnit()));
                var chord = spans.IndexAt(0);
                Assert.True(chord < 0 || !Across(spans[chord].FromSurface, spans[chord].ToSurface) || spans[chord].Length >= found.Thickness - 1e-6, FormattableString.Invariant($"seed {seed}"));
            }
        },
        times: 60);

    [Fact]
    public void The_wall_under_a_ball_and_beside_a_pocket_is_the_least_of_the_formulas() => Gen.Int[0, int.MaxValue - 1].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            double r = random.Between(1, 4), floor = random.Between(0.2, 3);
            var bar = new Block(new(-20, -20, 0), new(20, 20, 12));
            var at = new Point3(random.Between(-8, 8), random.Between(-8, 8), floor);
            var piece = new Workpiece(bar).After(new SweptCut(CutterShape.BallNose(2 * r, 20, 2 * r, 30), CutterPath.Straight(at, at + new Vector3(random.Between(-4, 4), 3, 0))));
            var found = Thinnest.In(piece, new Box3(new(at.X - 1, at.Y - 1, 0), new(at.X + 1, at.Y + 1, floor)));
            Assert.NotNull(found);
            Assert.True(Math.Abs(found.Thickness - floor) < 1e-6, FormattableString.Invariant($"seed {seed}: {found.Thickness:R} against {floor:R}"));
        },
        times: 60);

    [Fact]
    public void Engagement_agrees_with_membership_before_the_cutter() => Gen.Int[0, int.MaxValue - 1].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            var r = random.Between(2, 6);
            var mill = CutterShape.EndMill(2 * r, 30, 6, 40);
            var (low, high) = (new Point3(-20, random.Between(-8, -1), -12), new Point3(20, random.Between(1, 8), 0));
            CutterPath before = CutterPath.Straight(random.Place(10) with { Z = -3.137 }, random.Place(10) with { Z = -3.137 });
            var path = random.Pick(2) == 0
                ? CutterPath.Straight(new(-9, random.Between(-6, 6), -6.213), new(9, random.Between(-6, 6), -6.213))
                : CutterPath.Arc(new(0, random.Between(-9, -2)), new(-8, 0, -6.213), random.Between(0.5, 2));
            var piece = new Workpiece(new Block(low, high)).After(new SweptCut(mill, before));
            var gone = new SweepOracle(mill, before);
            bool Metal(double x, double y, double z) =>
                x >= low.X && x <= high.X && y >= low.Y && y <= high.Y && z >= low.Z && z <= high.Z && gone.Depth(new(x, y, z)) <= 0;
            var station = Engagement.Along(piece, new SweptCut(mill, path), 3).Stations[1];
            var brute = Brute(path, r, Metal);
            var said = (station.Depth, station.Width, station.Arc, station.Left, station.Right);
            var tell = FormattableString.Invariant($"seed {seed}: {said} against {brute}");
            Assert.True(Math.Abs(said.Depth - brute.Depth) < 0.04, tell);
            Assert.True(Math.Abs(said.Width - brute.Width) < 0.06 * r, tell);
            Assert.True(Math.Abs(said.Arc - brute.Arc) < 0.09, tell);
            Assert.True(Math.Abs(said.Left - brute.Left) < 0.04 && Math.Abs(said.Right - brute.Right) < 0.04, tell);
        },
        times: 40);

    // Every degree of the front half, columns of places 0.02 apart from the cutter's end up.
    private static (double Depth, double Width, double Arc, double Left, double Right) Brute(CutterPath path, double r, Func<double, double, double, bool> metal)
    {
        var place = path.At(0.5);
        var feed = path.DirectionAt(0.5);
        double depth = 0, least = double.PositiveInfinity, most = double.NegativeInfinity;
        int left = 0, right = 0;
        for (var k = 0; k < 180; k++)
        {
            var side = (k - 89.5) * Math.PI / 180;
            var (s, c) = Math.SinCos(side);
            double x = place.X + (r * ((feed.X * c) - (feed.Y * s))), y = place.Y + (r * ((feed.Y * c) + (feed.X * s))), tall = 0;
            for (var z = place.Z + 0.01; z < 0.01; z += 0.02)
            {
                tall += metal(x, y, z) ? 0.02 : 0;
            }

            if (tall > 0)
            {
                depth = Math.Max(depth, tall);
                (left, right) = side > 0 ? (left + 1, right) : (left, right + 1);
                (least, most) = (Math.Min(least, r * s), Math.Max(most, r * s));
            }
        }

        return (depth, Math.Max(0, most - least), (left + right) * Math.PI / 180, left / 90.0, right / 90.0);
    }
}
