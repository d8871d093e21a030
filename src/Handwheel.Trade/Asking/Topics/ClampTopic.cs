using Handwheel.Trade.Cutting;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Clamping.</summary>
internal static class ClampTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var force = q.Force();
        var named = q.Labelled(("friction", ["friction", "mu"]), ("factor", ["factor", "times"]));
        q.Has("force", "against", "vise", "vice", "hold", "cutting", "clamp", "slip");
        var cutting = force ?? Question.Need(q.Plain(), "the cutting force (N or lbf)");
        var friction = named.TryGetValue("friction", out var f) && f.Value is > 0 and < 2 ? f.Value : 0.15;
        var factor = named.TryGetValue("factor", out var k) && k.Value is >= 1 and <= 20 ? k.Value : 2.5;
        var squeeze = Clamping.SqueezeN(Question.Positive(cutting, "force"), friction, 2, factor);
        r.Add("squeeze needed", squeeze, "N", Clamping.Basis, "factor of two", [$"F x factor / (mu x faces) = {N(cutting, 1)} x {N(factor)} / ({N(friction)} x 2) = {N(squeeze, 0)} N"]);
        r.Add("torque on an M12 vise screw for that", squeeze * 0.2 * 12 / 1000, "N m", Joints.Bolts.TorqueBasis, "factor of 1.5", ["K F d, K = 0.2"]);
        r.Note($"Friction {N(friction)}, two faces, held {N(factor)} times over.").Caution("Work that lets go is thrown: stop against the cut, pull down on parallels, card under smooth faces.");
    }
}
