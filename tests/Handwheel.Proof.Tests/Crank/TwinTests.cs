using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;

namespace Handwheel.Proof.Tests.Crank;

/// <summary>Spoiled twins of the crank: each gives the finding a machinist would give at its step, and no other halt (common practice, no source).</summary>
public sealed class TwinTests(ITestOutputHelper output)
{
    private static readonly Dictionary<string, (Func<Course, Course> Damage, string Code, string? Step, string[] Then)> Twins = new(StringComparer.Ordinal)
    {
        ["climb beside the web"] = (c => c.Moves("B4", r => r with { X = r.X == 2 ? -61 : r.X == -61 ? 61 : r.X }), "direction", "B4", []),
        ["cutter not on hand"] = (c => c.Each("B3", e => e is CutterIn i ? i with { Cutter = "em9" } : e), "on-hand", "B3", ["zero"]),
        ["depth ten too far"] = (c => c.Moves("A8", r => r with { Z = r.Z == -8 ? -18 : r.Z }), "gouge", "A8", []),
        ["flank too deep"] = (c => c.Moves("A12", r => r with { Y = r.Y == 9.99 ? 9.49 : r.Y }), "gouge", "A12", []),
        ["half a cutter forgotten"] = (c => c.Moves("A10", r => r with { X = r.X == 9.99 ? 5 : r.X }), "gouge", "A10", []),
        ["jaws too high for the screw"] = (
            c => c.Setups("B", s => s with { Fixtures = [.. s.Fixtures.Select(f => f.Holds ? f with { Most = f.Most with { Z = -15 }, Least = f.Least with { Y = f.Least.Y < 0 ? -26.98 : f.Least.Y } } : f)] }), "strike", "B4", []),
        ["near flank left standing"] = (c => c.Each("A12", e => e is Move { To.Y: < 0 } ? null : e), "leftover", null, []),
        ["no lift between the flanks"] = (c => c.Moves("A12", r => r with { Z = r.Z == 5 ? -9 : r.Z }), "strike", "A12", ["gouge"]),
        ["no touch-off after a change"] = (c => c.Each("A8", e => e is TouchOff ? null : e), "zero", "A8", []),
        ["out of travel"] = (c => c.Setups("B", s => s with { Axes = s.Axes with { X = s.Axes.X with { Least = -50 } } }), "travel", "B4", []),
        ["saw on the wrong face"] = (c => c.Moves("B4", r => r with { Z = r.Z == -13.1 ? -12.1 : r.Z }), "gouge", "B4", []),
        ["sign of a drilled place"] = (c => c.Moves("A6", r => r with { X = -r.X }), "plunge", "A7", []),
        ["touched off as on the raw top"] = (c => c.Each("A8", e => e is TouchOff t ? t with { SetTo = t.SetTo + 0.5 } : e), "gouge", "A8", []),
        ["turned the wrong way"] = (c => c.TurnTheOtherWay("A11"), "gouge", "A11", []),
        ["web on the wrong side"] = (c => c.Moves("B4", r => r with { Y = r.Y == -27.8 ? -27.2 : r.Y }), "release", "B4", ["loose"]),
        ["wrong drill"] = (c => c.Each("A6", e => e is CutterIn i ? i with { Cutter = "d4" } : e is TouchOff t ? t with { With = "d4" } : e), "gouge", "A6", []),
    };

    public static TheoryData<string> Names() => [.. Twins.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_twin_gives_its_finding_and_no_other_halt(string name)
    {
        var (damage, code, step, then) = Twins[name];
        var result = Prover.Prove(damage(CrankCourse.Sound()), CrankCourse.Job.Drawing, CrankCourse.Job.Stock, CrankCourse.Shop);
        foreach (var f in result.Findings.Where(f => f.Grade >= Grade.Caution))
        {
            output.WriteLine(FormattableString.Invariant($"{f.Grade} {f.Code} {f.Step} {f.Move}: {f.Message} | {f.Mend} {f.At}"));
        }

        Assert.Contains(result.Findings, f => f.Grade == Grade.Halt && f.Code == code && (step is null || f.Step == step));
        Assert.DoesNotContain(result.Findings, f => f.Grade == Grade.Halt && f.Code != code && !then.Contains(f.Code, StringComparer.Ordinal));
    }

    [Fact]
    public void A_stock_too_short_is_told_and_nothing_else_halts()
    {
        var stock = CrankCourse.Job.Stock;
        stock = stock with { Used = stock.Used with { X = 40 }, Nominal = stock.Nominal with { X = 40 } };
        var result = Prover.Prove(CrankCourse.Sound(), CrankCourse.Job.Drawing, stock, CrankCourse.Shop);
        foreach (var f in result.Findings.Where(f => f.Grade >= Grade.Caution))
        {
            output.WriteLine(FormattableString.Invariant($"{f.Grade} {f.Code} {f.Step} {f.Move}: {f.Message} | {f.Mend} {f.At}"));
        }

        Assert.Equal("stock-short", Assert.Single(result.Findings, f => f.Grade == Grade.Halt).Code);
    }
}
