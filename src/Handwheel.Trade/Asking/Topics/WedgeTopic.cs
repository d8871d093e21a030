using Handwheel.Trade.Joints;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Wedges.</summary>
internal static class WedgeTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var angle = q.Angle();
        var load = q.Force();
        var named = q.Labelled(("friction", ["friction", "mu"]), ("load", ["load", "under"]));
        var mu = named.TryGetValue("friction", out var f) && f.Value is > 0 and < 2 ? f.Value : 0.12;
        var a = angle ?? Question.Need(q.Plain(), "the wedge's angle in degrees");
        var w = load ?? (named.TryGetValue("load", out var l) ? l.Value : Question.Need(q.Plain(), "the load"));
        if (a is not (> 0 and < 80))
        {
            throw new UnansweredException($"a wedge of {N(a)} deg cannot be driven");
        }

        var drive = TaperHolding.WedgeDriveN(w, a, mu);
        var back = TaperHolding.WedgeWithdrawN(w, a, mu);
        r.Add("force to drive it", drive, "N", TaperHolding.Basis, "factor of two", [$"W (tan(a + phi) + tan phi), phi = {N(TaperHolding.FrictionAngleDeg(mu), 3)} deg"])
            .Add("force to draw it", back, "N", TaperHolding.Basis, "factor of two", ["W (tan(phi - a) + tan phi)"])
            .Say("stays by itself", back > 0 ? "yes: the angle is under twice the friction angle" : "no", TaperHolding.Basis)
            .Note($"Friction {N(mu)} on both faces.").Caution("A wedge knocked loose under load flies out: stand clear of its line.");
    }
}
