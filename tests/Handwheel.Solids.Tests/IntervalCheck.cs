using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Tests.Oracle;

namespace Handwheel.Solids.Tests;

/// <summary>
/// One random sounding against interval arithmetic: every place of every interval lies inside the cutter, and every place between them outside, no more than a slack
/// off. Not samples: stretches are halved until each is settled. What a least stretch leaves open is added up.
/// </summary>
internal sealed class IntervalCheck(double slack, double least)
{
    private int left = 400_000;

    /// <summary>How much of the line is left open, mm.</summary>
    public double Open { get; private set; }

    // Off: how far the engine's cut is moved away on purpose, to see that it is noticed.
    internal static (string? Fault, double Open) Level(int seed, bool ring, double off = 0)
    {
        var random = new RandomCuts(seed);
        var (cutter, path) = ring ? random.RingOnSmallPath() : (random.Cutter(), random.Path(mayClimb: false));
        var line = random.Line();
        line = path.Length < 4 ? line with { Origin = path.From + new Vector3(random.Between(-2, 2), random.Between(-2, 2), random.Between(0, 4)) } : line;
        var oracle = new LevelEnclosure(cutter, path, line);
        var check = new IntervalCheck(1e-9, 1e-10);
        var sounded = new SweptCut(cutter, path).Sound(line with { Origin = line.Origin + new Vector3(off, off, off) });
        var fault = check.Walk(sounded, (from, to, inside) => check.Settled(from, to, inside, oracle.Depth));
        return (fault is null ? null : FormattableString.Invariant($"seed {seed} kind {random.Kind} {path.Kind}: {fault}"), check.Open);
    }

    internal static (string? Fault, double Open) Slanted(int seed)
    {
        var random = new RandomCuts(seed);
        var cutter = random.Cutter();
        Point3 from = random.Place(10), to = random.Place(10);
        var line = random.Line();
        var cut = new SweptCut(cutter, CutterPath.Straight(from, to));
        var oracle = CarriedEnclosure.Along(cutter, from, to, line);
        var check = new IntervalCheck(1e-9 + cut.ChordBound, 1e-5);
        var fault = check.Walk(cut.Sound(line), (a, b, inside) => check.Carried(a, b, inside, oracle));
        return (fault is null ? null : FormattableString.Invariant($"seed {seed} kind {random.Kind}: {fault}"), check.Open);
    }

    internal static (string? Fault, double Open) Turning(int seed)
    {
        var random = new RandomCuts(seed);
        var cutter = TurnCheck.Exactly(random);
        Point3 at = random.Place(8), axis = random.Place(8);
        var turn = random.Pick(3) == 0 ? 7 : random.Between(-6.2, 6.2);
        var line = random.Line();
        var cut = TurnedCut.AboutX(cutter, at, axis, turn, 0, chord: 0.02);
        var oracle = CarriedEnclosure.About(cutter, at, axis, turn, line);
        var check = new IntervalCheck(1e-9, 2e-6);
        var fault = check.Walk(cut.Sound(line), (a, b, inside) => check.Carried(a, b, inside, oracle));
        return (fault is null ? null : FormattableString.Invariant($"seed {seed}: {fault}"), check.Open);
    }

    private string? Walk(Spans spans, Func<double, double, bool, string?> settled)
    {
        var previous = -60.0;
        foreach (var span in spans.Where(s => s.Length >= 1e-6))
        {
            if ((settled(previous, span.From, false) ?? settled(span.From, span.To, true)) is { } fault)
            {
                return fault;
            }

            previous = span.To;
        }

        return settled(previous, 60, false);
    }

    private string? Settled(double from, double to, bool inside, Func<Enclosure, Enclosure> depth)
    {
        var waiting = new Stack<Enclosure>([new(from, to)]);
        while (waiting.TryPop(out var t))
        {
            var d = depth(t);
            if (inside ? d.Hi < -slack : d.Lo > slack)
            {
                return FormattableString.Invariant($"{t.Lo:R} to {t.Hi:R} is {(inside ? "outside" : "inside")} by {d}");
            }

            if (!(inside ? d.Lo >= -slack : d.Hi <= slack))
            {
                Halve(waiting, t);
            }
        }

        return null;
    }

    private string? Carried(double from, double to, bool inside, CarriedEnclosure oracle)
    {
        if (inside)
        {
            // At each stretch one place of the way that holds it is enough.
            return Settled(from, to, inside: true, t => oracle.Depth(t, Best(t.Middle, oracle)) with { Hi = double.PositiveInfinity });
        }

        var waiting = new Stack<(Enclosure T, Enclosure S)>([(new(from, to), new(0, 1))]);
        while (waiting.TryPop(out var box))
        {
            var d = oracle.Depth(box.T, box.S);
            if (d.Lo > slack)
            {
                return FormattableString.Invariant($"{box.T.Lo:R} to {box.T.Hi:R} is inside by {d}");
            }

            if (d.Hi <= slack)
            {
                continue;
            }

            if (Math.Max(box.T.Width, box.S.Width) < least || left-- <= 0)
            {
                Open = Math.Max(Open, box.T.Width);
            }
            else if (box.T.Width >= 20 * box.S.Width)
            {
                waiting.Push((box.T with { Lo = box.T.Middle }, box.S));
                waiting.Push((box.T with { Hi = box.T.Middle }, box.S));
            }
            else
            {
                waiting.Push((box.T, box.S with { Lo = box.S.Middle }));
                waiting.Push((box.T, box.S with { Hi = box.S.Middle }));
            }
        }

        return null;
    }

    // Where on its way the cutter holds a place of the line deepest, looked for roughly: whatever is found, the enclosure there decides.
    private static double Best(double t, CarriedEnclosure oracle)
    {
        const int Row = 200;
        double Depth(double s) => oracle.Depth(t, s).Lo;
        var best = Enumerable.Range(0, Row + 1).Select(i => i / (double)Row).MaxBy(Depth);
        for (var h = 1.0 / Row; h > 1e-12; h /= 2)
        {
            best = new[] { best, Math.Max(0, best - h), Math.Min(1, best + h) }.MaxBy(Depth);
        }

        return best;
    }

    private void Halve(Stack<Enclosure> waiting, Enclosure t)
    {
        if (t.Width < least || left-- <= 0)
        {
            Open += t.Width;
            return;
        }

        waiting.Push(t with { Lo = t.Middle });
        waiting.Push(t with { Hi = t.Middle });
    }
}
