namespace Handwheel.Trade.Asking;

/// <summary>Marks, among the answers of a topic, those that the question named, and puts them first.</summary>
/// <remarks>"weight of titanium" wants the density, not forty lines. A question with "all" or "everything" in it marks none.</remarks>
internal static class AskedFor
{
    // Topic; words of the question; parts of the names of the answers meant.
    private static readonly (string Topic, string Words, string Parts)[] Meant =
    [
        ("metal", "weight weigh weighs density heavy heavier light", "density"), ("metal", "strong strength tensile breaking", "strength"), ("metal", "yield", "yield"), ("metal", "shear", "shear"),
        ("metal", "stiff stiffness modulus young's youngs", "modulus"), ("metal", "expansion expand expands grow grows", "expansion"), ("metal", "kc mc kc1.1 kienzle", "specific cutting|exponent"),
        ("taper", "drawbar", "drawbar"), ("taper", "tang", "tang|socket"), ("taper", "drift slot", "slot"), ("taper", "angle", "angle"), ("taper", "included", "included angle"),
        ("taper", "large big gauge gage", "large end|gauge line"), ("taper", "small little", "small end"), ("taper", "foot tpf", "taper per foot"), ("taper", "setover offset tailstock", "set over"),
        ("taper", "hold holds holding self-holding release releases stay itself", "holds itself|friction|free it|normal force|pressure"),
        ("thread", "minor core root", "minor"), ("thread", "effective pitch-diameter", "pitch diameter|pitch max|pitch min"), ("thread", "major outside od", "major"), ("thread", "stress area", "stress area"),
        ("thread", "allowance", "allowance"),
        ("screw", "key keys allen wrench spanner", "key across flats|across flats"), ("screw", "counterbore cbore c'bore counterbored", "counterbore"),
        ("screw", "countersink csk countersunk countersinking", "countersink|sharp edge"), ("screw", "height tall", "head height"),
        ("bolt", "torque tight tighten tightening", "torque|VDI"), ("bolt", "preload clampload", "preload"), ("bolt", "proof", "proof"),
        ("press", "push tons ton tonnage", "push"), ("press", "slip slips twist", "torque"), ("press", "warm warmth heat heating hot temperature", "warmth"), ("press", "crack burst stress", "stress"),
        ("press", "pressure", "pressure"),
        ("speed", "rpm revs", "spindle speed"), ("speed", "sfm surface", "cutting speed"),
        ("force", "power horsepower hp", "power"), ("force", "torque", "torque"), ("force", "thrust", "thrust"),
        ("wires", "best", "best wire"),
        ("key", "depth deep", "depth|bottom"), ("key", "height tall", "key height"),
        ("polygon", "corners points", "corner"), ("bolt circle", "chord chords", "chord"),
        ("heat", "blue", "blue"), ("heat", "straw", "straw"), ("heat", "purple", "purple"), ("heat", "brown", "brown"), ("heat", "yellow", "yellow"), ("heat", "grey gray", "grey"),
        ("tap drill", "percent percentage", "percent"),
    ];

    /// <summary>Marks what was asked for.</summary>
    /// <param name="question">Question.</param>
    /// <param name="reply">Reply with its answers in the topic's order.</param>
    /// <returns>The reply with those asked for first; as it was where none, or all, were.</returns>
    internal static Reply Mark(Question question, Reply reply)
    {
        if (question.HasIn("all", "everything", "whole", "full") || (reply.Topic == "taper" && question.Tokens.Any(t => t.Unit is "N" or "kN" or "lbf")))
        {
            return reply;
        }

        string[] parts = [.. Meant.Where(m => m.Topic == reply.Topic && question.HasIn(m.Words.Split(' '))).SelectMany(m => m.Parts.Split('|'))];
        bool IsMeant(Answer a) => parts.Any(p => a.Name.Contains(p, StringComparison.OrdinalIgnoreCase));
        var count = reply.Answers.Count(IsMeant);
        if (count == 0 || count == reply.Answers.Count)
        {
            return reply;
        }

        return reply with { Answers = [.. reply.Answers.Where(IsMeant).Select(a => a with { Asked = true }), .. reply.Answers.Where(a => !IsMeant(a))] };
    }
}
