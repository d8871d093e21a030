using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Setting;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Steps;

// A shoulder, a step, a notch: a straight-sided cut with walls on some sides and open on the others. Rows begin and end in the air beyond the open sides, the
// outermost first, and follow the walls clockwise seen from above, so that metal lies to the left of the feed (conventional); the last runs along the walls.
internal sealed class OpenMilling(Bench bench)
{
    // A row covers no more than this share of the cutter, and the outermost overlaps the metal's edge (common practice, no source).
    private const double Share = 0.8;

    // Gone along in this order with the wall to the left.
    private static readonly string[] Clockwise = ["left", "far", "right", "near"];

    private readonly double[] walls = new double[4];
    private readonly double[] ends = new double[4];
    private readonly bool[] open = new bool[4];
    private PlanFeature feature = null!;
    private double to;
    private double left;

    private double Over => bench.Job.Unit == LengthUnit.Inch ? 0.04 * LengthUnit.Inch.MillimetresPerUnit() : 1;

    // False where it is no such cut: closed all round, or open all round.
    internal bool Plan(Step step, PlanFeature f, double floor, double allow, Typed? perPass, bool onlyWalls)
    {
        (feature, to, left) = (f, floor, allow);
        var (least, most) = f.Outline.Extent();
        (walls[0], walls[1], walls[2], walls[3]) = (least.X, most.Y, most.X, least.Y);
        for (var side = 0; side < 4; side++)
        {
            open[side] = IsOpen(side);
        }

        if (open.All(o => o) || !open.Any(o => o))
        {
            return false;
        }

        Reach();
        bench.Straighten();
        var first = true;
        foreach (var chain in Chains())
        {
            // Between two walls that face one another the middle was cleared with the first.
            Chain(step, chain, perPass, onlyWalls, again: !first);
            first = false;
        }

        bench.Up();
        return true;
    }

    private static bool AlongY(int side) => side is 0 or 2;

    // +1 where the part's metal stands on the plus side of a wall.
    private static int Sense(int side) => side is 1 or 2 ? 1 : -1;

    // Whether the drawn part has nothing beyond a side above the floor, however far out.
    private bool IsOpen(int side)
    {
        double from = AlongY(side) ? walls[3] : walls[0], run = (AlongY(side) ? walls[1] : walls[2]) - from;
        foreach (var share in new[] { 0.013, 0.12, 0.26, 0.41, 0.57, 0.73, 0.89, 0.987 })
        {
            foreach (var up in new[] { 0.07, 0.31, 0.53, 0.71, 0.93 })
            {
                double across = from + (run * share), z = to + ((feature.High - to) * up);
                var spans = bench.Drawn(AlongY(side) ? Line3.AlongX(across, z) : Line3.AlongY(across, z), 0);
                if (spans.Any(s => Sense(side) > 0 ? s.To > walls[side] + 1e-3 : s.From < walls[side] - 1e-3))
                {
                    return false;
                }
            }
        }

        return true;
    }

    // How far metal stands out beyond each open side.
    private void Reach()
    {
        for (var side = 0; side < 4; side++)
        {
            var alongX = AlongY(side);
            var metal = bench.Metal.Extent(alongX, alongX ? walls[3] : walls[0], alongX ? walls[1] : walls[2], to, 0);
            ends[side] = metal is not { } m ? walls[side] : Sense(side) > 0 ? Math.Max(walls[side], m.High) : Math.Min(walls[side], m.Low);
        }
    }

    // Walls next to one another are gone along in one run.
    private IEnumerable<int[]> Chains()
    {
        for (var first = 0; first < 4; first++)
        {
            if (!open[first] && open[(first + 3) % 4])
            {
                List<int> chain = [];
                for (var side = first; !open[side]; side = (side + 1) % 4)
                {
                    chain.Add(side);
                }

                yield return [.. chain];
            }
        }
    }

    private void Chain(Step step, int[] chain, Typed? perPass, bool onlyWalls, bool again)
    {
        var (deep, narrow) = Deep(chain);
        if (narrow < -1e-6)
        {
            bench.Cannot(step, $"{bench.Cutter!.Name} is wider than '{feature.Feature.Name}'.", "Take a smaller cutter.");
            return;
        }

        var rows = onlyWalls || deep <= 1e-6 ? 0 : (int)Math.Ceiling((deep / (2 * bench.Radius * Share)) - 1e-9);
        for (var row = again && !onlyWalls ? rows - 1 : rows; row >= 0; row--)
        {
            Row(chain, row, rows == 0 ? 0 : deep * row / rows, perPass);
        }
    }

    // How far off its walls the outermost row runs, and the room the cutter has between two walls that face one another.
    private (double Deep, double Narrow) Deep(int[] chain)
    {
        var d = 2 * bench.Radius;
        double Out(int side) => Math.Abs(ends[(side + 2) % 4] - walls[side]) - left - d + Over;
        double Between(int side) => Math.Abs(walls[(side + 2) % 4] - walls[side]) - (2 * left) - d;
        switch (chain.Length)
        {
            case 1 when !open[(chain[0] + 2) % 4]:
                return (Between(chain[0]) / 2, Between(chain[0]));
            case 1:
                return (Math.Max(0, Out(chain[0])), 0);
            case 2:
                return (Math.Max(0, Math.Min(Out(chain[0]), Out(chain[1]))), 0);
            default:
                return (Math.Max(0, Math.Min(Between(chain[0]) / 2, Out(chain[1]))), Between(chain[0]));
        }
    }

    private void Row(int[] chain, int row, double off, Typed? perPass)
    {
        List<Working> legs = [.. chain.Select(side => Leg(side, row, off))];
        var (before, after) = ((chain[0] + 3) % 4, (chain[^1] + 1) % 4);
        Working start = Beyond(before), end = Beyond(after);
        var (run, across) = AlongY(chain[0]) ? (Axis.Y, Axis.X) : (Axis.X, Axis.Y);
        List<Crank> body = [];
        for (var i = 0; i < chain.Length; i++)
        {
            var stop = i + 1 < chain.Length ? legs[i + 1] : end;
            body.Add(new(AlongY(chain[i]) ? Axis.Y : Axis.X, stop, true) { ReadBack = row == 0 && left <= 0 && i + 1 < chain.Length });
        }

        body.Add(new(Axis.Z, bench.Safe(), false));
        body.Add(new(across, legs[0], false));
        body.Add(new(run, start, false));
        bench.Up();
        bench.Free(run, start);
        bench.Free(across, legs[0]);
        bench.Machine.Passes(bench.Depths(Math.Max(feature.High, Top()), to, perPass, "the floor"), plunges: false, body);
    }

    private Working Leg(int side, int row, double off)
    {
        var figures = bench.Figures;
        var sign = Sense(side) > 0 ? "-" : "+";
        var axis = AlongY(side) ? Axis.X : Axis.Y;
        var exact = walls[side] - (Sense(side) * (bench.Radius + left + off));
        var word = $"{Clockwise[side]} wall of {feature.Feature.Name}";
        if (row == 0)
        {
            bench.Offs.Add(new(word, axis, Sense(side) < 0, walls[side] - (Sense(side) * bench.Radius)));
        }

        var more = (left > 0 ? $" {sign} allowance" : string.Empty) + (row > 0 ? $" {sign} row x spacing" : string.Empty);
        var moreIn = (left > 0 ? $" {sign} {figures.L(left)}" : string.Empty) + (row > 0 ? $" {sign} {Bench.Bare(row)} x {figures.L(off / row)}" : string.Empty);
        return bench.Show(bench.Reading(
            axis,
            row == 0 ? $"{axis} along the {word}" : $"{axis} of row {Bench.Bare(row)} off the {word}",
            $"the wall {sign} {bench.Cutter!.Name}/2{more}",
            $"{figures.L(walls[side])} {sign} {figures.L(2 * bench.Radius)}/2{moreIn}",
            exact,
            Sense(side) > 0 ? Toward.Minus : Toward.Plus,
            new WorkingInput(word, walls[side], figures.L(walls[side]), InputKind.Aimed, $"the middle of the limits of {feature.Feature.Name}", feature.Feature.Where, null),
            bench.CutterInput));
    }

    private Working Beyond(int side)
    {
        var up = Sense(side) > 0;
        return bench.Clearing(AlongY(side) ? Axis.X : Axis.Y, $"out past the open {Clockwise[side]} side", ends[side] + ((up ? 1 : -1) * (bench.Radius + bench.Clear)), up);
    }

    // The highest metal over the cut.
    private double Top()
    {
        var top = to;
        for (var i = 0; i <= 16; i++)
        {
            for (var k = 0; k <= 16; k++)
            {
                top = Math.Max(top, bench.Metal.TopAt(new(Between(ends[0], ends[2], i), Between(ends[3], ends[1], k)), 0) ?? to);
            }
        }

        return top;
    }

    private static double Between(double low, double high, int i) => low + 1e-3 + ((high - low - 2e-3) * i / 16);
}
