using CsCheck;
using Handwheel.Draws;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Tests.Oracle;

namespace Handwheel.Solids.Tests;

/// <summary>Nearest places of solids against distances of plane and solid geometry: faces, edges, corners, rims, inner edges.</summary>
public sealed class NearestPlaceTests
{
    [Fact]
    public void Nearest_place_of_a_block_askew_is_the_formulas() => Against(
        pose => (new Placed(new Block(new(-4, -3, -2), new(4, 3, 2)), pose), p => Math.Abs(ToBlock(p))));

    [Fact]
    public void Nearest_place_of_a_round_askew_is_the_formulas() => Against(Round);

    [Fact]
    public void Nearest_place_of_a_cone_is_the_formulas() => Against(Cone);

    [Fact]
    public void Nearest_place_of_a_block_with_a_corner_cut_out_is_the_formulas() => Against(Notch);

    // Found by random draws: a rim gone along in steps of the last bits; a round side hardly nearer than an end; a second wall behind the rim of a notch.
    [Theory]
    [InlineData(741398909, "cone")]
    [InlineData(222497712, "cone")]
    [InlineData(35643967, "round")]
    [InlineData(1263763734, "notch")]
    public void Places_once_missed_are_found(int seed, string solid) => Holds(seed, solid switch { "cone" => Cone, "round" => Round, _ => Notch });

    private static (Solid Solid, Func<Point3, double> Distance) Round(Pose pose) =>
        (new Placed(new Round(default, 3, -2, 2), pose), p => Math.Abs(Solid.Corner(p.Plan.Length - 3, Math.Abs(p.Z) - 2)));

    private static (Solid Solid, Func<Point3, double> Distance) Cone(Pose pose) =>
        (new Placed(new Frustum(default, 3, 1, -2, 2), pose), p => ToFrustum(p.Plan.Length, p.Z));

    private static (Solid Solid, Func<Point3, double> Distance) Notch(Pose pose) => (new Placed(new Difference(new Block(new(-4, -3, -2), new(4, 3, 2)), new Block(new(0, 0, -9), new(9, 9, 9))), pose), p =>
        {
            // An L in plan: outside, the nearer of the two blocks it is made of; inside, the least of its walls and of its inner edge.
            double a = ToBlock(p, new(-4, -3, -2), new(0, 3, 2)), b = ToBlock(p, new(-4, -3, -2), new(4, 0, 2));
            if (a > 0 && b > 0)
            {
                return Math.Min(a, b);
            }

            var walls = Math.Min(Math.Min(p.X + 4, p.Y + 3), 2 - Math.Abs(p.Z));
            walls = p.Y > 0 ? Math.Min(walls, Math.Min(-p.X, 3 - p.Y)) : p.X > 0 ? Math.Min(walls, Math.Min(-p.Y, 4 - p.X)) : Math.Min(walls, p.Plan.Length);
            return walls;
        });

    private static double ToBlock(Point3 p) => ToBlock(p, new(-4, -3, -2), new(4, 3, 2));

    private static double ToBlock(Point3 p, Point3 a, Point3 b)
    {
        double x = Math.Max(a.X - p.X, p.X - b.X), y = Math.Max(a.Y - p.Y, p.Y - b.Y), z = Math.Max(a.Z - p.Z, p.Z - b.Z);
        var outside = Math.Sqrt((Math.Max(0, x) * Math.Max(0, x)) + (Math.Max(0, y) * Math.Max(0, y)) + (Math.Max(0, z) * Math.Max(0, z)));
        return outside > 0 ? outside : Math.Max(x, Math.Max(y, z));
    }

    // To the three straight sides of the half section.
    private static double ToFrustum(double rho, double z)
    {
        var q = new Point2(rho, z);
        var sides = (ReadOnlySpan<(Point2 A, Point2 B)>)[(new(0, -2), new(3, -2)), (new(3, -2), new(1, 2)), (new(1, 2), new(0, 2))];
        var least = double.PositiveInfinity;
        foreach (var (a, b) in sides)
        {
            least = Math.Min(least, q.DistanceTo(OutlinePiece.Straight(a, b).Nearest(q)));
        }

        return least;
    }

    private static void Against(Func<Pose, (Solid Solid, Func<Point3, double> Distance)> make) => Gen.Int[0, int.MaxValue - 1].Hold(seed => Holds(seed, make), times: 1_000);

    private static void Holds(int seed, Func<Pose, (Solid Solid, Func<Point3, double> Distance)> make)
    {
        var random = new RandomCuts(seed);
        var pose = random.Pick(2) == 0 ? Pose.Identity : Pose.TurnAboutX(random.Between(-2, 2)).Then(Pose.TurnAboutZ(random.Between(-2, 2)));
        var (solid, distance) = make(pose);
        var p = new Point3(random.Between(-6, 6), random.Between(-5, 5), random.Between(-4, 4));
        var hit = new NearestPlace(solid).FindClosely(pose.Apply(p), []);
        Assert.NotNull(hit);
        var expected = distance(p);
        Assert.True(Math.Abs(hit.Value.Distance - expected) < 1e-6, FormattableString.Invariant($"seed {seed} {p}: {hit.Value.Distance:R} against {expected:R}"));
    }
}
