using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Tests.Oracle;

namespace Handwheel.Solids.Tests;

/// <summary>One random sounding of one random turning cut against the oracle: null when they agree, else what is wrong.</summary>
internal static class TurnCheck
{
    internal static string? Fault(int seed, bool exactKinds)
    {
        var random = new RandomCuts(seed);
        var cutter = exactKinds ? Exactly(random) : random.Cutter();
        var (at, axis) = (random.Place(8), random.Place(8));
        if (random.Pick(6) == 0)
        {
            axis = axis with { Y = at.Y };
        }

        var turn = random.Pick(5) switch { 0 => Math.PI / 2, 1 => 7, 2 => -random.Between(0, 6.2), _ => random.Between(0, 6.2) };
        var feed = exactKinds || random.Pick(3) > 0 ? 0 : random.Between(-3, 3);
        var aboutY = random.Pick(4) == 0;
        var cut = aboutY
            ? TurnedCut.AboutY(cutter, at, axis, turn, feed, chord: 0.02)
            : TurnedCut.AboutX(cutter, at, axis, turn, feed, chord: 0.02);

        // About Y: the oracle's X is Y and its Y is -X.
        Point3 Own(Point3 p) => aboutY ? new(p.Y, -p.X, p.Z) : p;
        var oracle = new TurnOracle(cutter, Own(at), Own(axis), turn, feed);
        var line = random.Line();
        var slack = 1e-9m + (decimal)cut.ChordBound;
        if (exactKinds && cut.ChordBound != 0)
        {
            return FormattableString.Invariant($"seed {seed}: chords where none are wanted");
        }

        return Spans(cut.Sound(line), t => oracle.Depth(Own(line.At(t))), slack, random)
            is { } fault ? FormattableString.Invariant($"seed {seed} {random.Kind} {at} {axis} {turn:R} {feed:R} {line}: {fault}") : null;
    }

    /// <summary>Intervals against a depth along the line: ends on the surface, inside within, outside between.</summary>
    internal static string? Spans(Spans spans, Func<double, decimal> depth, decimal slack, RandomCuts random)
    {
        var previous = -60.0;
        foreach (var span in spans)
        {
            if (span.Length < 1e-6)
            {
                continue;
            }

            foreach (var end in (double[])[span.From, span.To])
            {
                if (Math.Abs(depth(end)) > slack)
                {
                    return FormattableString.Invariant($"end {end:R} of {span} is {depth(end)} off the surface");
                }
            }

            for (var i = 1; i < 4; i++)
            {
                var t = span.From + (span.Length * i / 4);
                if (depth(t) < -slack)
                {
                    return FormattableString.Invariant($"{t:R} in {span} is outside by {depth(t)}");
                }
            }

            if (Gap(previous, span.From) is { } fault)
            {
                return fault;
            }

            previous = span.To;
        }

        return Gap(previous, 60);

        string? Gap(double lo, double hi)
        {
            for (var i = 0; i < 8; i++)
            {
                var t = lo + ((hi - lo) * random.Between(0, 1));
                if (t > lo && t < hi && depth(t) > slack)
                {
                    return FormattableString.Invariant($"{t:R} between intervals is inside by {depth(t)}");
                }
            }

            return null;
        }
    }

    internal static CutterShape Exactly(RandomCuts random)
    {
        var d = random.Between(1, 12);
        return random.Pick(5) switch
        {
            0 => CutterShape.EndMill(d, random.Between(2, 20), 6, 30),
            1 => CutterShape.BallNose(d, d, 6, 30),
            2 => CutterShape.Saw(4 * d, random.Between(0.3, 2), 8, 20, 3, 6),
            3 => CutterShape.CupWheel(d, 0.7 * d, 3, 5),
            _ => CutterShape.Of([ProfilePiece.Straight(0, 0.3 * d, 1, 0.3 * d).Hollow(0.1 * d, 0.1 * d), ProfilePiece.Straight(1, 0.5 * d, 4, 0.5 * d)]),
        };
    }
}
