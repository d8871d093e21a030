using Handwheel.Jobs.Designs;
using Handwheel.Trade;
using Handwheel.Trade.Joints;
using static Handwheel.Proof.Designs.DesignAnswers;

namespace Handwheel.Proof.Designs;

/// <summary>A screw in a tapped hole: what it pulls, what strips or stretches first.</summary>
internal static class ScrewCheck
{
    // Torque to pull scatters this much with a wrench (VDI 2230; Shigley 8-8).
    private const double Scatter = 1.3;

    /// <summary>Works it out.</summary>
    /// <param name="site">What it is checked on.</param>
    /// <param name="line">The line.</param>
    /// <returns>The result.</returns>
    public static DesignResult Of(DesignSite site, ScrewDesign line)
    {
        var answers = new DesignAnswers(site.Unit);
        if (DesignThread.Of(line.Thread) is not { } thread)
        {
            return Verdicts.Unworkable(line, answers, $"The reference has no thread {line.Thread}");
        }

        var metal = site.MetalOf(line.Metal);
        var engaged = Engaged(site, line, thread, answers);
        var pull = Pull(line, thread, answers);
        var grade = thread.Grade(line.Grade);
        var nutArea = ThreadStripping.NutArea(thread.Pitch, engaged, thread.ScrewMajorMin, thread.NutPitchMax);
        var screwArea = ThreadStripping.ScrewArea(thread.Pitch, engaged, thread.NutMinorMax, thread.ScrewPitchMin);
        var (nut, screw, proof) = (nutArea * metal.ShearMPa, screwArea * 0.6 * grade.TensileMPa, thread.StressArea * grade.ProofMPa);
        answers.Add($"pull that strips the thread in {metal.Name}", nut, "N", ThreadStripping.Basis, "25 % either way", $"AS(nut) x shear strength = {N(nutArea)} mm2 x {N(metal.ShearMPa)} MPa");
        answers.Add("pull that strips the screw's own thread", screw, "N", ThreadStripping.Basis, "20 % either way", $"AS(screw) x 0.6 x tensile = {N(screwArea)} mm2 x 0.6 x {N(grade.TensileMPa)} MPa");
        var told = line.Grade is null ? $"{grade.Name}, as none was told" : grade.Name;
        answers.Add($"proof load of the screw, {told}", proof, "N", grade.Basis, "5 %", $"stress area x proof stress = {N(thread.StressArea)} mm2 x {N(grade.ProofMPa)} MPa");
        var stands = Math.Min(nut, Math.Min(screw, proof));
        var first = nut <= Math.Min(screw, proof) ? $"the thread in {metal.Name} strips" : screw < proof ? "the screw's thread strips" : "the screw stretches";
        return Verdicts.Margin(line, answers, stands / pull, $"{first} first, at about {answers.F(stands)} against {answers.F(pull)} asked", "Engage more thread, take a larger screw or a stronger insert, or tighten it less.");
    }

    private static double Engaged(DesignSite site, ScrewDesign line, DesignThread thread, DesignAnswers answers)
    {
        if (line.Engaged is { } typed)
        {
            return typed.Value;
        }

        // The ends of a tapped hole are countersunk and its last turn is not full.
        var metal = site.Least.Find(line.Feature!) is { } hole ? site.RoundHole(hole) : 0;
        var engaged = Math.Max(0, metal - thread.Pitch);
        answers.Add("thread engaged", engaged, "mm", new Basis("the drawing at its least metal; one pitch lost at the ends: common practice", Evidence.CommonPractice), string.Empty, $"{answers.L(metal)} of metal round {line.Feature} less a pitch of {answers.L(thread.Pitch)}");
        return engaged;
    }

    private static double Pull(ScrewDesign line, DesignThread thread, DesignAnswers answers)
    {
        if (line.Torque is not { } torque)
        {
            return line.Pull!.Value;
        }

        var k = line.Surface switch { "oiled" => 0.18, "dry" => 0.30, _ => 0.20 };
        var preload = Bolts.Preload(k, torque.Value, thread.Major);
        answers.Add("pull by that torque", preload, "N", Bolts.TorqueBasis, "30 %", $"T / (K d) = {answers.T(torque.Value / 1000)} / ({N(k)} x {answers.L(thread.Major)}), {line.Surface ?? "plated"}; up to {answers.F(preload * Scatter)}");
        return Math.Max(preload * Scatter, line.Pull?.Value ?? 0);
    }
}
