using Handwheel.Trade.Strength;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Buckling.</summary>
internal static class BuckleTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var push = q.Force();
        var stress = q.InUnit("MPa", "psi", "ksi");
        var end = Ends(q, r);

        var metal = q.TakeMetal(false);
        var named = q.Labelled(("long", ["long", "length", "free", "sticking", "high", "tall", "out"]), ("yield", ["yield", "sy", "strength"]), ("end", ["c"]));
        (stress, end) = Said(named, stress, end);
        q.Has("punch", "rod", "round", "column", "buckle", "broach", "steel", "dia", "diameter", "square", "pin");
        var length = named.TryGetValue("long", out var l) ? q.Mm(l) : double.NaN;
        var diameter = Question.Need(q.Length(), "the diameter");
        length = double.IsNaN(length) ? Question.Need(q.Length(), "the free length") : length;
        var yield = stress ?? (metal is null ? 2000 : double.IsNaN(metal.YieldMPa) ? metal.TensileMPa : metal.YieldMPa);
        var modulus = (metal?.ModulusGPa ?? 207) * 1000;
        var (load, euler) = Columns.CriticalLoad(Math.PI * diameter * diameter / 4, diameter / 4, length, yield, modulus, end);
        r.Add("slenderness l/k", length / (diameter / 4), string.Empty, Columns.Basis, $"{N(length)} / ({N(diameter)} / 4)")
            .Add("slenderness where the formulas meet", Columns.Transition(yield, modulus, end), string.Empty, Columns.Basis, $"sqrt(2 pi^2 C E / Sy), C = {N(end)}, E = {N(modulus, 0)}, Sy = {N(yield, 0)} MPa")
            .Say("formula", euler ? "Euler" : "Johnson", Columns.Basis)
            .Add("critical load", load, "N", Columns.Basis, "a real push, a little off centre, stands half or less", [euler ? "A C pi^2 E / (l/k)^2" : "A [Sy - (Sy l / (2 pi k))^2 / (C E)]"])
            .Add("push to trust", load / 3, "N", Columns.Basis, "factor of 3 included", []);
        if (push is { } p)
        {
            r.Add("critical load over the push", load / p, string.Empty, Columns.Basis);
        }

        if (metal is null && stress is null)
        {
            r.Note("Hardened tool steel was taken (yield 2000 MPa); say the metal, or the yield in MPa.");
        }

        r.Caution("A punch that buckles or snaps flies: guide it short, keep it square, wear eye protection.");
    }

    // "yield 1500" without its unit is megapascals; "c 1" is the end constant.
    private static (double? Stress, double End) Said(Dictionary<string, Token> named, double? stress, double end) =>
        (stress ?? (named.TryGetValue("yield", out var sy) ? Question.Positive(sy.Value, sy.Raw) : null), named.TryGetValue("end", out var c) && c.Value is >= 0.25 and <= 4 ? c.Value : end);

    private static double Ends(Question q, ReplyBuilder r)
    {
        if (q.Has("pinned"))
        {
            return 1;
        }

        if (q.HasIn("free") && !q.HasIn("both", "guided"))
        {
            q.Has("fixed", "free", "ends");
            return 0.25;
        }

        if (q.Has("fixed", "guided", "both"))
        {
            return 1.2;
        }

        q.Has("free");
        r.Note("Ends: one held, one free (C = 1/4), the careful choice; say pinned (1) or guided (1.2).");
        return 0.25;
    }
}
