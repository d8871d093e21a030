using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Tests.Oracle;

namespace Handwheel.Solids.Tests;

/// <summary>One random sounding of one random cut against the oracle: null when they agree, else what is wrong.</summary>
internal static class OracleCheck
{
    private const decimal OnSurface = 1e-9m;

    internal static string? Fault(int seed, bool mayClimb)
    {
        var random = new RandomCuts(seed);
        var cutter = random.Cutter();
        return Fault(seed, random, cutter, random.Path(mayClimb));
    }

    internal static string? RingFault(int seed)
    {
        var random = new RandomCuts(seed);
        var (ring, path) = random.RingOnSmallPath();
        return Fault(seed, random, ring, path);
    }

    private static string? Fault(int seed, RandomCuts random, CutterShape cutter, CutterPath path)
    {
        // Rings: a line through the hole, where a core may stand.
        var line = random.Line();
        line = path.Length < 4 ? line with { Origin = path.From + new Vector3(random.Between(-2, 2), random.Between(-2, 2), random.Between(0, 4)) } : line;
        var cut = new SweptCut(cutter, path);
        var oracle = new SweepOracle(cutter, path);
        var spans = cut.Sound(line);
        var slack = OnSurface + (decimal)cut.ChordBound;
        return TurnCheck.Spans(spans, t => oracle.Depth(line.At(t)), slack, random) is { } fault
            ? FormattableString.Invariant($"seed {seed} kind {random.Kind} {path.Kind}: {fault}") : null;
    }
}
