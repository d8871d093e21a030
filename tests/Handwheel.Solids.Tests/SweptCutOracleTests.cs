using CsCheck;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Tests.Oracle;

namespace Handwheel.Solids.Tests;

/// <summary>Soundings of swept cuts against membership from the definition, in 28-digit decimals, which shares no code with the engine.</summary>
public sealed class SweptCutOracleTests
{
    private const decimal OnSurface = 1e-9m;

    [Fact]
    public void Level_cuts_agree_with_the_definition() =>
        Gen.Int[0, int.MaxValue - 1].Sample(seed => Agrees(seed, mayClimb: false), iter: 20_000);

    [Fact]
    public void Cuts_on_any_path_agree_with_the_definition() =>
        Gen.Int[0, int.MaxValue - 1].Sample(seed => Agrees(seed, mayClimb: true), iter: 2_000);

    internal static string? Fault(int seed, bool mayClimb)
    {
        var random = new RandomCuts(seed);
        var cutter = random.Cutter();
        var path = random.Path(mayClimb);
        var line = random.Line();
        var cut = new SweptCut(cutter, path);
        var oracle = new SweepOracle(cutter, path);
        var spans = cut.Sound(line);
        var slack = OnSurface + (decimal)cut.ChordBound;
        var previous = -60.0;
        foreach (var span in spans)
        {
            if (span.Length < 1e-6)
            {
                continue;
            }

            foreach (var end in (double[])[span.From, span.To])
            {
                var depth = oracle.Depth(line.At(end));
                if (Math.Abs(depth) > slack)
                {
                    return FormattableString.Invariant($"seed {seed} kind {random.Kind} {path.Kind}: end {end:R} of {span} is {depth} off the surface");
                }
            }

            for (var i = 1; i < 4; i++)
            {
                var t = span.From + (span.Length * i / 4);
                if (oracle.Depth(line.At(t)) < -slack)
                {
                    return FormattableString.Invariant($"seed {seed} kind {random.Kind} {path.Kind}: {t:R} in {span} is outside");
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
                if (t > lo && t < hi && oracle.Depth(line.At(t)) > slack)
                {
                    return FormattableString.Invariant($"seed {seed} kind {random.Kind} {path.Kind}: {t:R} between intervals is inside by {oracle.Depth(line.At(t))}");
                }
            }

            return null;
        }
    }

    private static void Agrees(int seed, bool mayClimb)
    {
        if (Fault(seed, mayClimb) is { } fault)
        {
            Assert.Fail(fault);
        }
    }
}
