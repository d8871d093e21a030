using Handwheel.Trade.Metals;
using Handwheel.Trade.Strength;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Webs and walls.</summary>
internal static class WebTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var force = q.Force();
        var supported = q.Has("supported", "resting");
        var clamped = q.Has("fixed", "both", "ends");
        var standing = q.Has("wall", "cantilever", "standing");
        var metal = q.TakeMetal();
        var named = q.Labelled(
            ("thick", ["thick", "thickness", "thin"]), ("long", ["long", "length", "span", "free"]), ("high", ["high", "height", "tall"]), ("wide", ["wide", "width", "broad", "deep"]),
            ("force", ["force", "load", "push"]));
        q.Has("web", "bend", "strip", "under", "will", "stand", "pass", "next", "force", "load", "cutting");
        var section = Section(q, named);
        double? Take(string name) => Sized(q, named, section, name);
        var thick = Take("thick") ?? Question.Need(q.Length(), "the thickness");
        var (length, width) = Sizes(standing, Take("long"), Take("high"), Take("wide"), q);
        if (metal is null)
        {
            metal = MetalTable.Find("mild steel")!;
            r.Note("No metal was said; mild steel was taken.");
        }

        if (force is null && named.TryGetValue("force", out var bare))
        {
            force = Question.Positive(bare.Value, bare.Raw);
        }

        var modulus = metal.ModulusGPa * 1000;
        var kind = Held(q, supported, clamped, standing);
        (double Stress, double Deflection) Of(double f) => kind switch
        {
            "resting on both ends" => Beams.Supported(width, thick, length, f, modulus),
            "fixed at both ends" => Beams.Fixed(width, thick, length, f, modulus),
            _ => Beams.Cantilever(width, thick, length, f, modulus),
        };
        r.Say("taken as", $"a strip {r.L(width)} wide, {r.L(thick)} thick, {r.L(length)} {(kind == "held along one edge" ? "long, " : "span, ")}{kind}, loaded {(kind == "held along one edge" ? "at the tip" : "in the middle")}", Beams.Basis);
        var strength = double.IsNaN(metal.YieldMPa) ? metal.TensileMPa : metal.YieldMPa;
        var most = strength / Of(1).Stress;
        if (force is { } f)
        {
            Under(r, f, Of(f), Beams.Shear(width, thick, f), strength, most, kind);
        }

        r.Add("force at which it yields", most, "N", Beams.Basis, "30 %", [$"strength {N(strength, 0)} MPa ({metal.Name}) / stress of 1 N"])
            .Add("stiffness", 1 / Of(1).Deflection, "N/mm", Beams.Basis, "15 %; low for webs shorter than three thicknesses", [])
            .Caution("A web that lets go throws the part: take the last passes light, conventional, and stand clear.");
        if (force is null)
        {
            r.Note("No force was said; say 'force 20 N' for stress and deflection under the next pass (ask force ... gives it).");
        }
    }

    private static string Held(Question q, bool supported, bool clamped, bool standing) =>
        supported ? "resting on both ends" : clamped || (!standing && q.HasIn("web")) ? "fixed at both ends" : "held along one edge";

    private static double? Sized(Question q, Dictionary<string, Token> named, (double Wide, double Thick)? section, string name) =>
        named.TryGetValue(name, out var t) ? q.Mm(t) : name == "wide" ? section?.Wide : name == "thick" ? section?.Thick : null;

    // "beam 15x3 span 80": the greater is its width, lying flat.
    private static (double Wide, double Thick)? Section(Question q, Dictionary<string, Token> named)
    {
        if (named.ContainsKey("thick") || named.ContainsKey("wide") || !named.ContainsKey("long") || q.Tokens.Count(t => t.IsNumber && !t.Used && (t.Unit.Length == 0 || Units.IsLength(t.Unit))) < 2)
        {
            return null;
        }

        var (first, second) = (q.Length()!.Value, q.Length()!.Value);
        return (Math.Max(first, second), Math.Min(first, second));
    }

    private static (double Length, double Width) Sizes(bool standing, double? length, double? high, double? wide, Question q)
    {
        if (standing && high is { } h)
        {
            return (h, wide ?? length ?? Question.Need(q.Length(), "the width along the fixed edge"));
        }

        var l = length ?? Question.Need(q.Length(), "the free length");
        return (l, wide ?? high ?? q.Length() ?? throw new UnansweredException("the width (or height) of the web is missing"));
    }

    private static void Under(ReplyBuilder r, double f, (double Stress, double Deflection) bent, (double Mean, double Greatest) shear, double strength, double most, string kind)
    {
        var formula = kind switch
        {
            "resting on both ends" => ("1.5 F L / (b t^2)", "F L^3 / (4 E b t^3)"),
            "fixed at both ends" => ("0.75 F L / (b t^2)", "F L^3 / (16 E b t^3)"),
            _ => ("6 F L / (b t^2)", "4 F L^3 / (E b t^3)"),
        };
        r.Add("bending stress", bent.Stress, "MPa", Beams.Basis, "15 %", [$"{formula.Item1} = {N(bent.Stress, 1)} MPa at {N(f, 1)} N"])
            .Add("deflection", bent.Deflection, "mm", Beams.Basis, "15 %", [$"{formula.Item2} = {N(bent.Deflection, 5)} mm"])
            .Add("greatest shear stress", shear.Greatest, "MPa", Beams.Basis, "15 %", ["1.5 F / (b t)"])
            .Add("times over it stands", strength / bent.Stress, string.Empty, Beams.Basis, "30 %", [$"{N(strength, 0)} / {N(bent.Stress, 1)} MPa"])
            .Say("verdict", f > most ? "it will not stand" : f > most / 2 ? "within a factor of two: too near" : "it stands, if the force is right", Beams.Basis);
    }
}
