using CsCheck;
using Handwheel.Draws;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Tests.Oracle;

namespace Handwheel.Solids.Tests;

/// <summary>Normals named by soundings against differences of the oracle's depth, which shares no code with the engine.</summary>
public sealed class NormalTests
{
    private const double Step = 1e-4;

    [Fact]
    public void Normals_of_level_cuts_point_the_way_the_depth_falls() => Gen.Int[0, int.MaxValue - 1].Hold(seed => Swept(seed, level: true), times: 2_000);

    [Fact]
    public void Normals_of_slanted_cuts_point_the_way_the_depth_falls() => Gen.Int[0, int.MaxValue - 1].Hold(seed => Swept(seed, level: false), times: 150);

    [Fact]
    public void Normals_of_turning_cuts_point_the_way_the_depth_falls() => Gen.Int[0, int.MaxValue - 1].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            var cutter = TurnCheck.Exactly(random);
            var (at, axis, turn) = (random.Place(8), random.Place(8), random.Between(-6.2, 6.2));
            var oracle = new TurnOracle(cutter, at, axis, turn, 0);
            Agrees(TurnedCut.AboutX(cutter, at, axis, turn), oracle.Depth, random.Line(), 0, seed);
        },
        times: 150);

    private static void Swept(int seed, bool level)
    {
        var random = new RandomCuts(seed);
        var cutter = random.Cutter();
        var path = random.Path(mayClimb: !level);
        if (!level && path.From.Z == path.To.Z)
        {
            path = CutterPath.Straight(path.From, path.To with { Z = path.From.Z + random.Between(0.5, 6) });
        }

        var cut = new SweptCut(cutter, path);
        Agrees(cut, new SweepOracle(cutter, path).Depth, random.Line(), cut.ChordBound, seed);
    }

    private static void Agrees(ISolid cut, Func<Point3, decimal> depth, Line3 line, double chord, int seed)
    {
        foreach (var span in cut.Sound(line))
        {
            if (span.Length < 0.01)
            {
                continue;
            }

            foreach (var (t, surface) in (ReadOnlySpan<(double, SurfaceId)>)[(span.From, span.FromSurface), (span.To, span.ToSurface)])
            {
                var place = line.At(t);
                if (Outward(depth, place) is { } expected)
                {
                    var miss = (cut.NormalAt(surface, place) - expected).Length;
                    Assert.True(miss < 1e-3 + (20 * Math.Sqrt(chord)), FormattableString.Invariant($"seed {seed} face {surface.Face} at {place}: {cut.NormalAt(surface, place)} against {expected}"));
                }
            }
        }
    }

    // By central differences; null within a few steps of an edge, where they differ from one side to the other.
    private static Vector3? Outward(Func<Point3, decimal> depth, Point3 p)
    {
        var here = depth(p);
        Span<double> slope = stackalloc double[3];
        for (var axis = 0; axis < 3; axis++)
        {
            var d = axis switch { 0 => Vector3.UnitX, 1 => Vector3.UnitY, _ => Vector3.UnitZ } * Step;
            double ahead = (double)(depth(p + d) - here) / Step, behind = (double)(here - depth(p - d)) / Step;
            if (Math.Abs(ahead - behind) > 0.01)
            {
                return null;
            }

            slope[axis] = -(ahead + behind) / 2;
        }

        var g = new Vector3(slope[0], slope[1], slope[2]);
        return g.Length > 0.1 ? g.ToUnit() : null;
    }
}
