using CsCheck;
using Handwheel.Draws;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Tests.Oracle;

namespace Handwheel.Solids.Tests;

/// <summary>Pieces kept from edit to edit are the pieces found from scratch, and those that a plain flood over all intervals finds.</summary>
public sealed class PiecesTests
{
    private static readonly Block Bar = new(new(-12, -10, -8), new(13, 11, 6));

    // Saws, slots and holes that part the bar in many places, some thinner than the rays are apart.
    private static SweptCut Cut(RandomCuts random)
    {
        var z = random.Between(-8, 6);
        var thick = random.Pick(2) == 0 ? random.Between(0.05, 0.6) : random.Between(0.6, 3);
        return random.Pick(6) switch
        {
            0 => new(CutterShape.Saw(30, thick, 8, 12, 0, 0), CutterPath.Straight(new(-30, random.Between(-24, 24), z), new(30, random.Between(-24, 24), z))),
            1 => new(CutterShape.EndMill(thick, 30, thick, 60), CutterPath.Straight(new(-20, random.Between(-10, 10), z), new(20, random.Between(-10, 10), z))),
            2 => new(CutterShape.EndMill(thick, 30, thick, 60), CutterPath.Straight(new(random.Between(-12, 12), -20, z), new(random.Between(-12, 12), 20, z))),
            3 => new(CutterShape.EndMill(thick, 30, thick, 60), CutterPath.Arc(random.Place(8).Plan, random.Place(8) with { Z = z }, random.Pick(2) == 0 ? 7 : 4)),
            4 => new(random.Cutter(), random.Path(mayClimb: true)),
            _ => new(CutterShape.Saw(30, thick, 8, 12, 0, 0), CutterPath.Straight(new(-30, 20, z), new(30, 20, z)), Pose.TurnAboutX(random.Pick(2) == 0 ? Math.PI / 2 : 0.4)),
        };
    }

    [Fact]
    public void Pieces_kept_through_cuts_and_undos_are_those_found_from_scratch() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            var kept = new RayGrid(Bar, 34 + (seed % 20), threads: 1 + (seed % 3));
            var cuts = new List<ISolid>();
            for (var edit = 0; edit < 10; edit++)
            {
                if (kept.CanUndo && random.Pick(3) == 0)
                {
                    kept.Undo();
                    cuts.RemoveAt(cuts.Count - 1);
                }
                else if (random.Pick(5) == 0)
                {
                    List<ISolid> more = [Cut(random), Cut(random)];
                    kept.CutAll(more);
                    cuts.AddRange(more);
                }
                else
                {
                    cuts.Add(Cut(random));
                    kept.Cut(cuts[^1]);
                }

                if (random.Pick(4) != 0)
                {
                    var fresh = new RayGrid(Bar, 34 + (seed % 20), threads: 1);
                    fresh.CutAll(cuts);
                    Same(Pieces.Of(fresh), Pieces.Of(kept), random);
                    Same(Pieces.Of(fresh), Pieces.Of(kept.Copy()), random);
                }
            }
        },
        times: 60);

    [Fact]
    public void Pieces_are_those_of_a_flood_over_all_intervals() => Gen.Int[0, 1_000_000].Hold(
        seed =>
        {
            var random = new RandomCuts(seed);
            var grid = new RayGrid(Bar, 30 + (seed % 25));
            for (var i = 0; i < 9; i++)
            {
                grid.Cut(Cut(random));
            }

            var pieces = Pieces.Of(grid);
            var flood = Flood(grid);
            Assert.Equal(flood.Count, pieces.Count);
            Assert.Equal(flood.Select(f => f.Volume), pieces.All.Select(p => p.Volume), (a, b) => Math.Abs(a - b) <= 1e-9 * a);
            foreach (var (volume, places) in flood)
            {
                var found = places.Select(p => pieces.PieceAt(p)).Distinct().ToList();
                Assert.Single(found);
                Assert.Equal(volume, pieces.All[found[0]].Volume, 1e-9 * volume);
                Assert.All(places, p => Assert.True(pieces.All[found[0]].Box.Grown(1e-9).Contains(p)));
            }
        },
        times: 100);

    [Fact]
    public void Pieces_of_a_grid_that_was_cut_since_are_not_asked()
    {
        var grid = new RayGrid(Bar, 20);
        var pieces = Pieces.Of(grid);
        Assert.Equal(0, pieces.PieceAt(new(0, 0, 0)));
        grid.Cut(new SweptCut(CutterShape.EndMill(4, 30, 4, 60), CutterPath.At(new(0, 0, -9))));
        Assert.Throws<InvalidOperationException>(() => pieces.PieceAt(new(0, 0, 0)));
        Assert.Throws<InvalidOperationException>(() => pieces.SamePiece(new(0, 0, 0), new(5, 5, 0)));
        Assert.Equal(-1, Pieces.Of(grid).PieceAt(new(0, 0, 0)));
    }

    [Fact]
    public void A_cut_thinner_than_the_rays_are_apart_parts_what_no_ray_crosses()
    {
        // A slot along X between two lines: rays along Y see it, rays along X do not.
        var grid = new RayGrid(Bar, 32);
        Assert.Equal(1, Pieces.Of(grid).Count);
        var y = (grid.Ys[15] + grid.Ys[16]) / 2;
        grid.Cut(new SweptCut(CutterShape.EndMill(0.1, 30, 0.1, 60), CutterPath.Straight(new(-20, y, -9), new(20, y, -9))));
        Assert.Equal(2, Pieces.Of(grid).Count);
        grid.Undo();
        Assert.Equal(1, Pieces.Of(grid).Count);
        grid.Redo();
        Assert.Equal(2, Pieces.Of(grid).Count);

        // A saw between two heights: only rays along Z see it.
        var z = (grid.Zs[20] + grid.Zs[21]) / 2;
        grid.Cut(new SweptCut(CutterShape.Saw(80, 0.02, 8, 12, 0, 0), CutterPath.Straight(new(-20, 0, z - 0.01), new(20, 0, z - 0.01))));
        Assert.Equal(4, Pieces.Of(grid).Count);
        grid.Undo();
        Assert.Equal(2, Pieces.Of(grid).Count);
    }

    private static void Same(Pieces expected, Pieces actual, RandomCuts random)
    {
        Assert.Equal(expected.All, actual.All);
        for (var i = 0; i < 30; i++)
        {
            var place = random.Place(11);
            Assert.Equal(expected.PieceAt(place), actual.PieceAt(place));
        }
    }

    // Intervals along X joined one by one wherever a ray along Y or Z that crosses both of two neighbours holds both in one interval.
    private static List<(double Volume, List<Point3> Places)> Flood(RayGrid grid)
    {
        var nodes = new List<(int Row, int Line, double Lo, double Hi)>();
        for (var ray = 0; ray < grid.RaysAlong(0); ray++)
        {
            nodes.AddRange(grid.Ray(0, ray).Select(s => (ray / grid.Ys.Length, ray % grid.Ys.Length, s.From, s.To)));
        }

        var of = nodes.Select((_, i) => i).ToArray();
        var byPlace = nodes.Select((n, i) => (n, i)).ToLookup(p => (p.n.Row, p.n.Line), p => p.i);
        for (var i = 0; i < nodes.Count; i++)
        {
            var (row, line, lo, hi) = nodes[i];
            foreach (var (up, right) in ((int, int)[])[(0, 1), (1, 0)])
            {
                foreach (var j in byPlace[(row + up, line + right)])
                {
                    for (var x = 0; x < grid.Xs.Length && of[i] != of[j]; x++)
                    {
                        var at = grid.Xs[x];
                        var crossing = up == 0 ? grid.Ray(1, (row * grid.Xs.Length) + x) : grid.Ray(2, (x * grid.Ys.Length) + line);
                        double from = up == 0 ? grid.Ys[line] : grid.Zs[row], to = up == 0 ? grid.Ys[line + 1] : grid.Zs[row + 1];
                        if (at >= lo && at <= hi && at >= nodes[j].Lo && at <= nodes[j].Hi && crossing.Any(s => s.From <= from && s.To >= to))
                        {
                            int keep = of[i], gone = of[j];
                            for (var k = 0; k < of.Length; k++)
                            {
                                of[k] = of[k] == gone ? keep : of[k];
                            }
                        }
                    }
                }
            }
        }

        var cell = (grid.Ys[1] - grid.Ys[0]) * (grid.Zs[1] - grid.Zs[0]);
        return [.. nodes.Select((n, i) => (n, of[i])).GroupBy(p => p.Item2, p => p.n)
            .Select(g => (g.Sum(n => n.Hi - n.Lo) * cell, g.Select(n => new Point3((n.Lo + n.Hi) / 2, grid.Ys[n.Line], grid.Zs[n.Row])).ToList()))
            .OrderByDescending(p => p.Item1)];
    }
}
