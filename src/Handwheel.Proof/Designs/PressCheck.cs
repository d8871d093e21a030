using Handwheel.Jobs.Designs;
using Handwheel.Trade;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Metals;
using static Handwheel.Proof.Designs.DesignAnswers;

namespace Handwheel.Proof.Designs;

/// <summary>A press fit: pressure and stress at its tightest, what it holds at its loosest, the push it needs.</summary>
internal static class PressCheck
{
    private const double LowFriction = 0.10;
    private const double HighFriction = 0.20;

    /// <summary>Works it out.</summary>
    /// <param name="site">What it is checked on.</param>
    /// <param name="line">The line.</param>
    /// <returns>The result.</returns>
    public static DesignResult Of(DesignSite site, PressDesign line)
    {
        var answers = new DesignAnswers(site.Unit);
        var (least, most) = FitCheck.Clearances(line.OwnIsHole, line.OwnLimits, line.CounterLimits, answers);
        if (least >= 0)
        {
            return Verdicts.Said(line, answers, Jobs.Findings.Grade.Halt, "it is never tight: nothing is held", "Take a class with interference (p6, s6 in H7).");
        }

        var size = line.OwnLimits.Middle;
        var drawn = site.Least.Find(line.Feature);
        var steel = MetalTable.Find("mild steel")!;
        var other = line.Of is null ? steel : site.MetalOf(line.Of);
        var (hub, shaft) = line.OwnIsHole ? (site.Metal, other) : (other, site.Metal);
        var outside = line.Outside?.Value ?? (line.OwnIsHole && drawn is not null ? size + (2 * site.Round(drawn)) : 2 * size);
        var length = line.Long?.Value ?? (drawn is null ? 0 : line.OwnIsHole ? site.RoundHole(drawn) : Math.Abs(drawn.To - drawn.From));
        if (outside <= size || length <= 0)
        {
            return Verdicts.Unworkable(line, answers, "the drawing has no metal round the joint; say 'outside 20' and '10 long'");
        }

        answers.Add("outside of the hub", outside, "mm", new Basis("the drawing at its least metal, as a ring of its thinnest wall", Evidence.CommonPractice), string.Empty, line.Outside is null ? "the joint and twice the thinnest wall round it" : "as typed");
        PressFit Solve(double tight, double friction) => PressFits.Solve(size, tight, outside, 0, hub.ModulusGPa * 1000, shaft.ModulusGPa * 1000, hub.Poisson, shaft.Poisson, length, friction);
        return Judged(site, line, answers, (Solve(Math.Max(0, -most), LowFriction), Solve(-least, HighFriction)), hub);
    }

    private static DesignResult Judged(DesignSite site, PressDesign line, DesignAnswers answers, (PressFit Loosest, PressFit Tightest) fit, Metal hub)
    {
        var (loosest, tightest) = fit;
        var basis = PressFits.Basis;
        var mises = Math.Sqrt((tightest.HubHoopMPa * tightest.HubHoopMPa) + (tightest.PressureMPa * tightest.PressureMPa) + (tightest.HubHoopMPa * tightest.PressureMPa));
        var strength = DesignSite.Strength(hub);
        answers.Add("greatest pressure", tightest.PressureMPa, "MPa", basis, "15 %", "Lame, at the greatest interference");
        answers.Add($"greatest stress in the hub of {hub.Name}", mises, "MPa", basis, "15 %", $"von Mises of hoop {N(tightest.HubHoopMPa)} and pressure {N(tightest.PressureMPa)} MPa, against {N(strength)} MPa");
        answers.Add("push to press it home", tightest.PushN, "N", basis, "factor of two (friction)", $"mu p pi d L, mu {N(HighFriction)}");
        answers.Add("torque it is sure to hold", loosest.TorqueNmm / 1000, "N m", basis, "factor of two (friction)", $"mu p pi d L d/2 at the least interference, mu {N(LowFriction)}");
        answers.Add("pull it is sure to hold", loosest.PushN, "N", basis, "factor of two (friction)", $"mu p pi d L at the least interference, mu {N(LowFriction)}");
        List<(double Margin, string Why, string Mend)> all = [(strength / mises, $"the hub yields at {N(strength)} MPa and sees {N(mises)} MPa", "Less interference, or more metal round the joint.")];
        if (site.PressPush is > 0 and var press)
        {
            all.Add((press / tightest.PushN, $"the press gives {answers.F(press)} against {answers.F(tightest.PushN)}", "Warm the hub, ease the lead-in, or take less interference."));
        }

        if (line.Drives is { } torque)
        {
            all.Add((loosest.TorqueNmm / torque.Value, $"it is sure of {answers.T(loosest.TorqueNmm / 1000)} against {answers.T(torque.Value / 1000)} asked", "More interference, a longer joint, a key or retaining compound."));
        }

        if (line.Pull is { } pull)
        {
            all.Add((loosest.PushN / pull.Value, $"it is sure of {answers.F(loosest.PushN)} against {answers.F(pull.Value)} asked", "More interference, a longer joint, a shoulder or retaining compound."));
        }

        var worst = all.MinBy(a => a.Margin);
        return Verdicts.Margin(line, answers, worst.Margin, worst.Why, worst.Mend);
    }
}
