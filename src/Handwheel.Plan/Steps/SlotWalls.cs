using Handwheel.Jobs.Moves;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Workings;
using Handwheel.Quantities;

namespace Handwheel.Plan.Steps;

// The walls and round ends of a slot wider than its cutter. Walls by one run each; the ends by short runs across from the middle line, in an order that keeps metal to the left of the feed.
internal sealed class SlotWalls(Bench bench, string name, Axis run, Axis side, Working line)
{
    // What the runs may leave standing on an end between them, millimetres (common practice, no source).
    private const double Cusp = 0.02;

    // Across is counted from far to near along X, so that what lies to the left along X lies to the left along Y too.
    private readonly int sign = run == Axis.X ? 1 : -1;

    // From the middle line, which is cut from end to end already, back to it; the spindle's play to each side given.
    internal IEnumerable<Crank> Round(double first, double last, double middle, double play)
    {
        var count = Math.Max(2, (int)Math.Ceiling(Math.PI / 2 / (2 * Math.Acos(1 - Math.Min(1, Cusp / play)))));
        List<(double Out, double Across)> steps = [.. Enumerable.Range(1, count - 1).Select(i => Math.PI / 2 * i / count).Select(a => (play * Math.Sin(a), play * Math.Cos(a)))];
        return
        [
            .. Wall(last, first, middle, -play),
            .. steps.SelectMany(s => Short(last + s.Out, s.Out, middle, -s.Across)),
            .. Rows(last, -play / 2, 1, middle, steps, 1),
            .. Wall(first, last, middle, play),
            .. steps.SelectMany(s => Short(first - s.Out, -s.Out, middle, s.Across)),
            .. Rows(first, play / 2, -1, middle, steps, -1),
        ];
    }

    private IEnumerable<Crank> Wall(double from, double to, double middle, double across)
    {
        yield return new(run, Along(from, 0), false);
        yield return new(side, Across(middle, across), true);
        yield return new(run, Along(to, 0), true);
        yield return new(side, line, false);
    }

    private IEnumerable<Crank> Short(double at, double by, double middle, double across)
    {
        yield return new(run, Along(at, by), false);
        yield return new(side, Across(middle, across), true);
        yield return new(side, line, false);
    }

    // Runs out along the slot, from a little within, each further across than the one before.
    private IEnumerable<Crank> Rows(double end, double within, int way, double middle, List<(double Out, double Across)> steps, int over)
    {
        yield return new(run, Along(end + within, within), false);
        foreach (var (by, across) in Enumerable.Reverse(steps))
        {
            yield return new(side, Across(middle, over * across), true);
            yield return new(run, Along(end + (way * by), way * by), true);
            yield return new(run, Along(end + within, within), false);
        }

        yield return new(side, line, false);
    }

    private Working Along(double at, double by) => bench.Reading(
        run,
        by == 0 ? $"{run} where the walls of {name} end" : $"{run} at the end of {name}",
        by == 0 ? "its end - half its width" : "middle of the end +- a share of (width - cutter)/2",
        bench.Figures.L(at),
        at,
        by > 0 ? Toward.Minus : by < 0 ? Toward.Plus : Toward.Nearest,
        bench.CutterInput);

    private Working Across(double middle, double by)
    {
        var off = sign * by;
        return bench.Reading(
            side,
            $"{side} along a wall of {name}",
            "middle +- (width - cutter)/2, its share at an end",
            $"{bench.Figures.L(middle)} {(off < 0 ? "-" : "+")} {bench.Figures.L(Math.Abs(off))}",
            middle + off,
            off > 0 ? Toward.Minus : Toward.Plus,
            bench.CutterInput);
    }
}
