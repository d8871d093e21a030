using CsCheck;
using Handwheel.Draws;

namespace Handwheel.Solids.Tests;

/// <summary>Soundings of swept cuts against membership from the definition, in 28-digit decimals, which shares no code with the engine.</summary>
public sealed class SweptCutOracleTests
{
    [Fact]
    public void Level_cuts_agree_with_the_definition() =>
        Gen.Int[0, int.MaxValue - 1].Hold(seed => Agrees(seed, mayClimb: false), times: 20_000);

    [Fact]
    public void Cuts_on_any_path_agree_with_the_definition() =>
        Gen.Int[0, int.MaxValue - 1].Hold(seed => Agrees(seed, mayClimb: true), times: 800);

    [Fact]
    public void Rings_on_paths_smaller_than_their_holes_agree_with_the_definition() =>
        Gen.Int[0, int.MaxValue - 1].Hold(seed => Assert.Null(OracleCheck.RingFault(seed)), times: 4_000);

    private static void Agrees(int seed, bool mayClimb)
    {
        if (OracleCheck.Fault(seed, mayClimb) is { } fault)
        {
            Assert.Fail(fault);
        }
    }
}
