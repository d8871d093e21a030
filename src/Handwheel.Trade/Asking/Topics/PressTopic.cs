using Handwheel.Trade.Fits;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Metals;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Press and shrink fits.</summary>
internal static class PressTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var (hole, shaft, inch) = FitFinder.Take(q);
        var metal = q.TakeMetal(false) ?? MetalTable.Find("mild steel")!;
        var shaftMetal = MetalTable.Find("mild steel")!;
        var named = q.Labelled(
            ("hub", ["hub", "outside", "od", "outer", "sleeve", "ring", "bush", "bushing"]), ("length", ["long", "length", "wide", "thick", "deep"]),
            ("interference", ["interference", "tight", "oversize", "bigger", "squeeze"]), ("bore", ["hollow", "bored"]), ("friction", ["friction", "mu"]));
        q.Has("press", "fit", "shrink", "in", "pin", "steel", "shaft", "force", "push", "pushing", "into", "housing", "much", "heat", "drive");
        if (inch.Length > 0)
        {
            q.Inch = true;
        }

        var interference = named.TryGetValue("interference", out var i) ? q.Mm(i) : double.NaN;
        var size = Bushed(q, named, q.Length() ?? Only(q, named));
        var (least, most) = double.IsNaN(interference) ? FromFit(r, size, hole, shaft, inch) : (interference, interference);
        var hub = named.TryGetValue("hub", out var h) ? q.Mm(h) : Assume(r, 2 * size, "outside of the hub", "hub 40");
        var length = named.TryGetValue("length", out var l) ? q.Mm(l) : Assume(r, size, "length of the joint", "long 25");
        var bore = named.TryGetValue("bore", out var b) ? q.Mm(b) : 0;
        if (hub <= size || bore >= size)
        {
            throw new UnansweredException("the hub must be larger than the joint, and a hollow shaft's bore smaller");
        }

        var friction = named.TryGetValue("friction", out var f) && f.Value is > 0 and < 1 ? f.Value : 0.12;
        PressFit Solve(double x) => PressFits.Solve(size, x, hub, bore, metal.ModulusGPa * 1000, shaftMetal.ModulusGPa * 1000, metal.Poisson, shaftMetal.Poisson, length, friction);
        Results(r, metal, Solve(least), Solve(most), least, most);
        r.Add($"warmth that opens the hub for {r.L(most)} and 0.05 mm to spare", PressFits.RiseK(size, most + 0.05, metal.Expansion * 1e-6), "K", PressFits.Basis, $"opening / (d x {N(metal.Expansion, 1)}e-6)")
            .Note($"Hub: {metal.Name}; shaft: steel, {(bore > 0 ? "bored " + r.L(bore) : "solid")}; friction {N(friction)}.")
            .Caution("Press straight, in a press with a guard, hands clear: a brittle hub or a cocked pin flies. Warm hubs burn: gloves, and no oil near a flame.");
    }

    // A bush pushed into a housing joins at its outside, and its bore is the hollow.
    private static double Bushed(Question q, Dictionary<string, Token> named, double size)
    {
        if (!q.HasIn("bush", "bushing", "liner", "sleeve") || !q.HasIn("housing") || !named.TryGetValue("hub", out var outside) || named.ContainsKey("bore"))
        {
            return size;
        }

        named.Remove("hub");
        var other = q.Mm(outside);
        named["bore"] = new Token { Raw = "bore", IsNumber = true, Value = Math.Min(size, other), Unit = "mm" };
        return Math.Max(size, other);
    }

    // "a bush 20 bore": the one size there is.
    private static double Only(Question q, Dictionary<string, Token> named) =>
        named.Remove("hub", out var only) || named.Remove("bore", out only) ? q.Mm(only) : throw new UnansweredException("the diameter of the joint is missing");

    private static double Assume(ReplyBuilder r, double value, string what, string example)
    {
        r.Note($"The {what} was not said; {r.L(value)} was taken (say '{example}').");
        return value;
    }

    private static (double Least, double Most) FromFit(ReplyBuilder r, double size, string hole, string shaft, string inch)
    {
        Fit fit;
        var reason = string.Empty;
        if (inch.Length > 0)
        {
            fit = InchFits.TryOf(size / 25.4, inch, out var found, out reason) ? found : throw new UnansweredException(reason);
        }
        else
        {
            if (hole.Length + shaft.Length == 0)
            {
                (hole, shaft) = ("H7", "s6");
                r.Note("No interference and no fit was said; H7/s6, a medium drive fit, was taken.");
            }

            hole = hole.Length == 0 ? "H7" : hole;
            shaft = shaft.Length == 0 ? "p6" : shaft;
            fit = Iso286.TryLimits(size, hole, out var a, out reason) && Iso286.TryLimits(size, shaft, out var b, out reason) ? new Fit(size, a, b) : throw new UnansweredException(reason);
        }

        if (fit.LeastClearanceMm >= 0)
        {
            throw new UnansweredException("that fit has no interference: it cannot grip");
        }

        return (Math.Max(0, -fit.GreatestClearanceMm), -fit.LeastClearanceMm);
    }

    private static void Results(ReplyBuilder r, Metal metal, PressFit low, PressFit high, double least, double most)
    {
        var basis = PressFits.Basis;
        r.Add("least interference", least, "mm", basis).Add("greatest interference", most, "mm", basis)
            .Add("least pressure", low.PressureMPa, "MPa", basis, "15 % and what roughness takes away", ["delta / (d [((do^2+d^2)/(do^2-d^2) + nu)/Eo + ((d^2+di^2)/(d^2-di^2) - nu)/Ei])"])
            .Add("greatest pressure", high.PressureMPa, "MPa", basis, "15 %", [])
            .Add("greatest hoop stress in the hub", high.HubHoopMPa, "MPa", basis, "15 %", ["p (do^2 + d^2) / (do^2 - d^2)"])
            .Add("greatest push to press it on", high.PushN, "N", basis, "factor of two (friction)", ["mu p pi d L"])
            .Add("least torque before it slips", low.TorqueNmm / 1000, "N m", basis, "factor of two (friction)", ["mu p pi d L d/2"]);
        var yield = double.IsNaN(metal.YieldMPa) ? metal.TensileMPa : metal.YieldMPa;
        var mises = Math.Sqrt((high.HubHoopMPa * high.HubHoopMPa) + (high.PressureMPa * high.PressureMPa) + (high.HubHoopMPa * high.PressureMPa));
        r.Add("hub stress as a share of its yield", mises / yield, string.Empty, basis, "25 %", [$"von Mises {N(mises, 0)} / {N(yield, 0)} MPa"]);
        if (mises > yield)
        {
            r.Caution($"The hub of {metal.Name} yields (or cracks, if it is brittle): less interference or a thicker hub.");
        }
    }
}
