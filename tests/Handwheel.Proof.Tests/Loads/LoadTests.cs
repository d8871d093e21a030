using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Tests.Plate;

namespace Handwheel.Proof.Tests.Loads;

/// <summary>
/// Forces of the guide plate&#39;s cuts, sound and spoiled. Its aluminium: kc1.1 700 N/mm2, exponent 0.25 (German handbook tables, memory); em6 is a HSS end mill of
/// 5.98 with 2 flutes, 24 out; everything is fed 50 mm/min at 900 rpm.
/// </summary>
public sealed class LoadTests(ITestOutputHelper output)
{
    // Slot, full width, 2 deep: chip 50 / 900 / 2 = 0.02778 mm; kc = 700 x 0.02778^-0.25 = 1714.6; one tooth 1714.6 x 0.02778 x 2 = 95.3 N, and with a radial
    // share of 0.4 (x sqrt(1.16)) 102.6 N. A bar of 0.8 x 5.98 held 24 out breaks at 1250 x pi x 4.784^3 / (32 x 24) = 559.9 N (beam formula, Shigley Table A-9).
    private const double Slotting = 102.6;
    private const double Breaks = 559.9;

    [Fact]
    public void A_sound_slot_has_no_load_to_tell() => Assert.DoesNotContain(Proved(1), f => f.Code is "load" or "grip");

    [Theory]
    [InlineData(5, Grade.Caution)]
    [InlineData(10, Grade.Halt)]
    public void A_feed_too_fast_breaks_the_cutter(double times, Grade grade)
    {
        var finding = Assert.Single(Proved(times), f => f is { Code: "load", Step: "A3" });
        Assert.Equal((grade, "N"), (finding.Grade, finding.Unit));

        // kc falls with the chip to the power 0.25, so the force grows with the power 0.75 (Kienzle).
        var force = Slotting * Math.Pow(times, 0.75);
        Assert.Equal(force, finding.Amount!.Value, 0.01 * force);
        Assert.Equal(grade == Grade.Halt, force > Breaks);
        Assert.Contains("560 N", finding.Message, StringComparison.Ordinal);
        Assert.NotNull(finding.At);
    }

    [Fact]
    public void More_power_than_the_motor_has_is_a_halt()
    {
        // 2 x 6 x 50 mm3/min at kc 1900 to 2000 N/mm2 is about 0.02 kW; a motor of 20 W gives 14 W at the cutter.
        Assert.Contains(Proved(1, s => s with { Mill = s.Mill! with { Power = 20 } }), f => f is { Code: "load", Grade: Grade.Halt, Unit: "W" });
        Assert.DoesNotContain(Proved(1, s => s with { Mill = s.Mill! with { Power = 100 } }), f => f is { Code: "load" });
    }

    [Theory]
    [InlineData(500, null)]
    [InlineData(60, Grade.Caution)]
    [InlineData(8, Grade.Halt)]
    public void A_drill_is_held_against_what_the_quill_pushes(double push, Grade? grade)
    {
        // d4 at 0.05556 mm a turn: chip 0.02778 sin 59 = 0.02381; kc = 1782; thrust 1782 x 0.05556 x 2 x sin 59 = 169.7 N (lips and chisel edge alike, Kienzle).
        var findings = Proved(1, s => s with { Mill = s.Mill! with { QuillPush = push } });
        var finding = findings.FirstOrDefault(f => f is { Code: "load", Step: "A5" });
        Assert.Equal(grade, finding?.Grade);
        Assert.True(finding is null || Math.Abs(finding.Amount!.Value - 169.7) < 2);
    }

    [Theory]
    [InlineData(3000, null)]
    [InlineData(700, Grade.Caution)]
    [InlineData(100, Grade.Halt)]
    public void A_vise_is_held_against_the_heaviest_cut(double press, Grade? grade)
    {
        // 102.6 N across and half of it lifting are 115 N together; two faces at 0.15 give 0.3 of the press (Coulomb).
        var finding = Proved(1, press: press).FirstOrDefault(f => f.Code == "grip");
        Assert.Equal(grade, finding?.Grade);
        Assert.True(finding is null || finding.Amount <= 0.3 * press / 114);
    }

    [Fact]
    public void A_wall_s_strength_follows_the_feed()
    {
        var job = PlateCourse.Job(key: 6.5);
        var sound = Assert.Single(Proved(1, job: job, y: 6.5), f => f.Code == "wall");
        Assert.Equal(Grade.Caution, sound.Grade);
        Assert.Contains("It stands 4.000 mm high", sound.Message, StringComparison.Ordinal);
        var spoiled = Assert.Single(Proved(8, job: job, y: 6.5), f => f.Code == "wall");
        Assert.Equal(Grade.Halt, spoiled.Grade);
        Assert.Contains("it will not stand", spoiled.Message, StringComparison.Ordinal);
    }

    private IReadOnlyList<Finding> Proved(double times, Func<Shop, Shop>? spoil = null, double press = 4000, Handwheel.Jobs.Job? job = null, double y = 0)
    {
        var course = PlateCourse.Begin().Slot(y).Hole(y).Build(null);
        course = course with
        {
            Stages = [.. course.Stages.Select(stage => stage with
            {
                Setup = stage.Setup! with { Fixtures = [.. stage.Setup.Fixtures.Select(f => f.Holds ? f with { Press = press } : f)] },
                Steps = [.. stage.Steps.Select(step => step with { Events = [.. step.Events.Select(e => e is Move m && step.Id == "A3" ? m with { Feed = m.Feed * times } : e)] })],
            })],
        };
        var findings = course.Proved(job, spoil is null ? null : spoil(PlateCourse.Shop)).Findings;
        foreach (var f in findings)
        {
            output.WriteLine(FormattableString.Invariant($"{f.Grade} {f.Code} {f.Step} {f.Move}: {f.Message}"));
        }

        return findings;
    }
}
