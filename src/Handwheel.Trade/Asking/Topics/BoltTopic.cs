using Handwheel.Trade.Joints;
using Handwheel.Trade.Screws;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Bolts.</summary>
internal static class BoltTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        if (ThreadFinder.Take(q) is not { } thread)
        {
            ByDiameter(q, r);
            return;
        }

        q.Inch = thread.Unified is not null;
        ThreadFinder.TakeClass(q, thread);
        var torque = q.InUnit("N m", "ft lbf", "lbf in");
        var force = q.Force();
        var named = q.Labelled(("k", ["k", "factor"]), ("friction", ["friction", "mu"]));
        var k = Factor(q, named);
        var mu = named.TryGetValue("friction", out var said) && said.Value is > 0.01 and < 1 ? said.Value : 0.12;
        q.Has("drawbar", "force", "bolt", "screw", "preload", "tighten", "load", "proof", "cap", "steel", "socket", "bar");
        var grade = GradeFinder.Take(q, thread.MajorMm, thread.Unified is not null, r);
        var s = thread.Scale;
        var area = thread.Basics.StressArea * s * s;
        var proof = area * grade.ProofMPa;
        r.Add("stress area", area, "mm^2", grade.Basis).Add($"proof load, {grade.Name}", proof, "N", grade.Basis, $"At x proof stress = {N(area, 3)} x {N(grade.ProofMPa, 0)} = {N(proof, 0)} N");
        var preload = torque is { } t ? Bolts.Preload(k, t * 1000, thread.MajorMm) : force ?? 0.75 * proof;
        r.Add("preload", preload, "N", Bolts.TorqueBasis, "30 %", [torque is { } given ? $"T / (K d) = {N(given)} N m / ({N(k)} x {N(thread.MajorMm, 3)} mm)" : force is null ? "0.75 of the proof load (usual for joints taken apart again)" : "as given"])
            .Add("tightening torque", Bolts.Torque(k, preload, thread.MajorMm) / 1000, "N m", Bolts.TorqueBasis, "30 %", [$"K F d = {N(k)} x {N(preload, 0)} x {N(thread.MajorMm, 3)} / 1000"]);
        var head = ScrewTable.Of(thread.Size).FirstOrDefault(h => h.Kind == "socket head cap")?.HeadDiameter ?? 1.5 * thread.MajorMm;
        var bearing = (head + (1.1 * thread.MajorMm)) / 2;
        r.Add("the same by VDI 2230 at friction " + N(mu), Bolts.TorqueByFriction(preload, thread.PitchMm, thread.Basics.Pitch * s, bearing, mu, mu) / 1000, "N m", Bolts.VdiBasis, "30 %", [$"F (0.16 P + 0.58 d2 mu + Dkm/2 mu), Dkm = {N(bearing, 2)} mm"])
            .Add("preload as a share of proof", preload / proof, string.Empty, grade.Basis)
            .Note($"K = {N(k)}: 0.30 black, 0.20 plated, 0.18 oiled, 0.12 anti-seize.")
            .Caution("Torque is a poor measure of pull: three tenths either way.");
        if (preload > proof)
        {
            r.Caution("That is over the proof load: the screw stretches for good.");
        }
    }

    private static double Factor(Question q, Dictionary<string, Token> named) =>
        named.TryGetValue("k", out var f) && f.Value is > 0.02 and < 1 ? f.Value
            : q.Has("oiled", "lubricated", "lube", "oil", "greased") ? 0.18 : q.Has("plated", "zinc") ? 0.2 : q.Has("black", "dry") ? 0.3 : q.Has("anti-seize", "antiseize") ? 0.12 : 0.2;

    // "torque for 2000 lb, 5/16, K 0.18": the short formula needs no pitch.
    private static void ByDiameter(Question q, ReplyBuilder r)
    {
        var torque = q.InUnit("N m", "ft lbf", "lbf in");
        var force = q.Force();
        var named = q.Labelled(("k", ["k", "factor"]));
        var k = Factor(q, named);
        q.Has("bolt", "screw", "preload", "tighten", "load", "torque", "drawbar", "force");
        if ((torque is null) == (force is null) || q.Length() is not { } diameter)
        {
            throw new UnansweredException("the thread is missing");
        }

        if (torque is { } t)
        {
            r.Add("preload", Bolts.Preload(k, t * 1000, diameter), "N", Bolts.TorqueBasis, "30 %", [$"T / (K d) = {N(t)} N m / ({N(k)} x {N(diameter, 3)} mm)"]);
        }
        else
        {
            r.Add("tightening torque", Bolts.Torque(k, force!.Value, diameter) / 1000, "N m", Bolts.TorqueBasis, "30 %", [$"K F d = {N(k)} x {N(force.Value, 0)} x {N(diameter, 3)} / 1000"]);
        }

        r.Note($"K = {N(k)}: 0.30 black, 0.20 plated, 0.18 oiled, 0.12 anti-seize. Say the whole thread (5/16-18) for the proof load.").Caution("Torque is a poor measure of pull: three tenths either way.");
    }
}
