using Handwheel.Trade.Cutting;
using Handwheel.Trade.Metals;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Bending of cutters.</summary>
internal static class CutterTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var force = q.Force();
        var carbide = q.Has("carbide");
        q.Has("hss", "end", "mill", "endmill", "cutter", "force", "under", "load", "side", "drill", "dia", "diameter");
        var named = q.Labelled(("out", ["out", "stickout", "stick-out", "overhang", "long", "length", "sticking", "reach"]), ("force", ["force", "load"]));
        var material = carbide ? CutterMaterial.Carbide : CutterMaterial.HighSpeedSteel;
        var outMm = named.TryGetValue("out", out var o) ? q.Mm(o) : double.NaN;
        var diameter = Question.Need(q.Length(), "the cutter's diameter");
        outMm = double.IsNaN(outMm) ? q.Length() ?? double.NaN : outMm;
        if (double.IsNaN(outMm))
        {
            outMm = 3 * diameter;
            r.Note($"No stick-out was said; three diameters, {r.L(outMm)}, was taken.");
        }

        var breaking = CutterStrength.BreakingForceN(material, diameter, outMm);
        if (force is { } f)
        {
            var (bend, stress) = CutterStrength.Bend(material, diameter, outMm, f);
            var solid = Strength.Beams.Round(diameter, outMm, f, CutterStrength.ModulusMPa(material));
            r.Add("deflection at the tip", bend, "mm", CutterStrength.Basis, "30 %; holder and spindle come on top", [$"F L^3 / (3 E I), I = pi (0.8 d)^4 / 64: {N(f, 1)} N, L = {N(outMm, 3)}, d = {N(diameter, 3)} mm, E = {N(CutterStrength.ModulusMPa(material), 0)} MPa = {N(bend, 5)} mm"])
                .Add("deflection of a solid bar", solid.Deflection, "mm", CutterStrength.Basis, "5 %", [$"the same with the whole diameter"])
                .Add("stress at the holder, fluted", stress, "MPa", CutterStrength.Basis, "30 %", ["32 F L / (pi (0.8 d)^3)"])
                .Add("stress of a solid bar", solid.Stress, "MPa", CutterStrength.Basis, "5 %", ["32 F L / (pi d^3)"])
                .Add("share of what breaks it", f / breaking, string.Empty, CutterStrength.Basis, "factor of 1.5", [$"{N(f, 1)} / {N(breaking, 0)} N"]);
        }

        r.Add("side force likely to break it", breaking, "N", CutterStrength.Basis, "factor of 1.5", [$"{N(CutterStrength.BreakingMPa(material), 0)} MPa x pi (0.8 d)^3 / (32 L)"])
            .Caution("A cutter that snaps flies: eyes. Shorten the stick-out first; it counts with its cube.");
    }
}
