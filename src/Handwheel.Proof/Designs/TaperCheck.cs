using Handwheel.Jobs.Designs;
using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Trade;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Tapers;
using static Handwheel.Proof.Designs.DesignAnswers;

namespace Handwheel.Proof.Designs;

/// <summary>A taper in its socket: whether it holds itself, the torque it passes by friction, what frees it.</summary>
internal static class TaperCheck
{
    private static readonly Basis Geometry = new("plane geometry", Evidence.StandardFormula);

    /// <summary>Works it out.</summary>
    /// <param name="site">What it is checked on.</param>
    /// <param name="line">The line.</param>
    /// <returns>The result.</returns>
    public static DesignResult Of(DesignSite site, TaperDesign line)
    {
        var answers = new DesignAnswers(site.Unit);
        if (Cone(site, line) is not var (name, half, mean, basis))
        {
            return Verdicts.Unworkable(line, answers, "what is named is no cone with two ends");
        }

        // The low end of what clean, oiled and dry faces show: what holds must hold at its worst.
        var friction = line.Surface switch { "oiled" => 0.05, "dry" => 0.12, _ => 0.10 };
        var holds = TaperHolding.HoldsItself(half, friction);
        var angle = TaperHolding.FrictionAngleDeg(friction);
        answers.Add($"half angle of {name}", half, "deg", basis, string.Empty, "atan(taper on the diameter / 2)");
        answers.Say("holds itself", holds ? "yes" : "no: it needs its drawbar", TaperHolding.Basis, $"half angle {N(half)} deg against a friction angle of {N(angle)} deg (atan {N(friction)}, {line.Surface ?? "wiped clean"}, its low end)");
        var seat = Seat(line, answers);
        if (seat is { } pull && !double.IsNaN(mean))
        {
            var free = TaperHolding.OutOverIn(half, friction);
            answers.Add("torque by friction", TaperHolding.TorqueNmm(pull, half, friction, mean) / 1000, "N m", TaperHolding.Basis, "factor of two", $"mu F / (sin a + mu cos a) x d/2 = {N(friction)} x {answers.F(pull)} / {N(Math.Sin(half * Math.PI / 180) + (friction * Math.Cos(half * Math.PI / 180)))} x {answers.L(mean)} / 2");
            answers.Add("force that frees it", free * pull, "N", TaperHolding.Basis, "factor of two", free > 0 ? $"{N(free)} of the pull that seated it" : "it comes out by itself when the pull is gone");
        }

        return Judged(line, answers, (half, mean, friction, holds), seat);
    }

    private static DesignResult Judged(TaperDesign line, DesignAnswers answers, (double Half, double Mean, double Friction, bool Holds) cone, double? seat)
    {
        if (seat is not { } pull)
        {
            return Verdicts.Said(line, answers, cone.Holds ? null : Grade.Halt, cone.Holds ? "it holds itself, once seated" : "it lets go without a drawbar, and what it carries is thrown", "Draw it in with a bolt: 'drawbar M12 on ..., torque ...'.");
        }

        if (line.Drawbar is { } bolt && DesignThread.Of(bolt) is { } thread)
        {
            var grade = thread.Grade(line.Grade);
            var proof = thread.StressArea * grade.ProofMPa;
            var most = line.Torque is null ? pull : pull / 0.7 * 1.3;
            answers.Add($"proof load of the drawbar, {grade.Name}", proof, "N", grade.Basis, "5 %", $"stress area x proof stress = {N(thread.StressArea)} mm2 x {N(grade.ProofMPa)} MPa, against up to {answers.F(most)}");
            if (most > proof)
            {
                return Verdicts.Margin(line, answers, proof / most, "the drawbar stretches", "Tighten it less, or take a larger drawbar or a better grade.");
            }
        }

        if (line.Drives is not { } drives || double.IsNaN(cone.Mean))
        {
            return Verdicts.Said(line, answers, null, cone.Holds ? "it holds itself; its drawbar keeps it from being shaken loose" : "it holds by its drawbar alone", string.Empty);
        }

        var torque = TaperHolding.TorqueNmm(pull, cone.Half, cone.Friction, cone.Mean);
        return Verdicts.Margin(
            line,
            answers,
            torque / drives.Value,
            $"friction passes about {answers.T(torque / 1000)} against {answers.T(drives.Value / 1000)} asked{(cone.Holds ? string.Empty : $"; keys would have to carry {answers.F(TaperHolding.KeyForceN(drives.Value, Math.Min(torque, drives.Value), cone.Mean / 2, 2))} each")}",
            "Draw it in harder, wipe both cones dry, take a larger taper, or let keys drive it.");
    }

    // What draws it in: a typed pull, or what the drawbar's torque gives at the low end of its scatter.
    private static double? Seat(TaperDesign line, DesignAnswers answers)
    {
        if (line.Torque is not { } torque || line.Drawbar is not { } bolt || DesignThread.Of(bolt) is not { } thread)
        {
            return line.Pull?.Value;
        }

        var k = line.Surface == "dry" ? 0.30 : line.Surface == "oiled" ? 0.18 : 0.20;
        var preload = Bolts.Preload(k, torque.Value, thread.Major);
        answers.Add($"pull of the {thread.Name} drawbar", preload, "N", Bolts.TorqueBasis, "30 %", $"T / (K d) = {answers.T(torque.Value / 1000)} / ({N(k)} x {answers.L(thread.Major)}); {answers.F(0.7 * preload)} is counted on");
        return 0.7 * preload;
    }

    private static (string Name, double Half, double Mean, Basis Basis)? Cone(DesignSite site, TaperDesign line)
    {
        if (line.Feature is { } feature)
        {
            if (site.Least.Find(feature) is not { Feature.Shape: ConeShape cone } drawn)
            {
                return null;
            }

            var high = Math.Abs(drawn.To - drawn.From);
            var (low, top) = (cone.AcrossLow.Middle, cone.AcrossHigh.Middle);
            return high > 0 && low != top ? (feature, Math.Atan(Math.Abs(low - top) / 2 / high) * 180 / Math.PI, (low + top) / 2, Geometry) : null;
        }

        if (TaperTable.Find(line.Family!, line.Number) is not { } taper)
        {
            return null;
        }

        // A 7/24 shank bears over about four fifths of its gauge diameter (common practice).
        var mean = double.IsNaN(taper.SmallIn) ? taper.LargeIn * 0.8 : (taper.LargeIn + taper.SmallIn) / 2;
        return (taper.Name, taper.HalfAngleDeg, mean * 25.4, taper.Basis);
    }
}
