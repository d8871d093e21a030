namespace Handwheel.Trade.Asking;

/// <summary>Marks, among the answers of a topic, those that the question named, and puts them first.</summary>
/// <remarks>"weight of titanium" wants the density, not forty lines. A question with "all" or "everything" in it marks none.</remarks>
internal static class AskedFor
{
    // Topic; words of the question, two of them joined by an underscore where only both mean it; parts of the names of the answers meant.
    private static readonly (string Topic, string Words, string Parts)[] Meant =
    [
        ("metal", "weight weigh weighs density heavy heavier light", "density|weight"), ("metal", "strong strength tensile breaking", "strength"), ("metal", "yield", "yield"), ("metal", "shear", "shear"),
        ("metal", "stiff stiffness modulus young's youngs", "modulus"), ("metal", "expansion expand expands grow grows", "expansion"), ("metal", "kc mc kc1.1 kienzle", "specific cutting|exponent"),
        ("taper", "drawbar", "drawbar"), ("taper", "tang", "tang|socket"), ("taper", "drift slot", "slot"), ("taper", "angle", "half angle|included angle"), ("taper", "included", "included angle"),
        ("taper", "large big gauge gage", "large end|gauge line"), ("taper", "small little", "small end"), ("taper", "tpf foot", "taper per foot"), ("taper", "setover offset tailstock", "set over"),
        ("taper", "hold holds holding self-holding release releases stay itself", "holds itself|friction|free it|normal force|pressure"),
        ("thread", "minor core root", "minor"), ("thread", "effective pitch_diameter pitch_dia pitch_line pitchline pd", "pitch diameter|pitch max|pitch min"), ("thread", "major outside od", "major"),
        ("thread", "thread_depth depth_of", "depth of thread"), ("thread", "lead", "lead"), ("thread", "stress_area", "stress area"), ("thread", "allowance", "allowance"), ("thread end", "bore hole", "minor diameter, nut|minor max|minor min"), ("thread end", "stud bolt", "major"),
        ("screw", "key keys allen wrench spanner", "key across flats|across flats"), ("screw", "counterbore cbore c'bore counterbored", "counterbore"),
        ("screw", "countersink csk countersunk countersinking", "countersink|sharp edge"), ("screw", "height tall thick thickness high", "head height|thickness"), ("taper", "shank biggest largest", "greatest shank"), ("metal", "kc11 specific constants", "specific cutting|exponent"), ("metal", "grow growth grows", "growth"),
        ("bolt", "torque tight tighten tightening", "torque|VDI"), ("bolt", "preload clampload drawbar", "preload"), ("bolt", "proof", "proof"),
        ("press", "push pushing force tons ton tonnage", "push"), ("press", "slip slips twist", "torque"), ("press", "warm warmth heat heating hot temperature", "warmth"), ("press", "crack burst stress", "stress"),
        ("press", "pressure", "pressure"),
        ("speed", "rpm revs rev spin", "spindle speed"), ("speed", "sfm surface", "cutting speed"), ("speed", "feed feedrate tooth chipload", "feed"),
        ("force", "power horsepower hp", "power"), ("force", "torque", "torque"), ("force", "thrust", "thrust"),
        ("wires", "best", "best wire"), ("wires", "measured reading read measures micrometer mic pitch", "measured"), ("taper", "let go drops", "holds itself|free it"),
        ("key", "depth deep", "depth|bottom"), ("key", "height tall", "key height"),
        ("polygon", "corners points", "corner"), ("bolt circle", "chord chords", "chord"),
        ("heat", "blue", "blue"), ("heat", "straw", "straw"), ("heat", "purple", "purple"), ("heat", "brown", "brown"), ("heat", "yellow", "yellow"), ("heat", "grey gray", "grey"),
        ("tap drill", "percent percentage", "percent"), ("tap drill", "smallest small least undersize", "least hole"), ("tap drill", "biggest largest greatest oversize", "greatest hole"),
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

        var end = reply.Topic == "thread" ? End(question) : string.Empty;
        string[] parts = [.. Meant.Where(m => Stands(m.Parts, question) && (m.Topic == reply.Topic || (end.Length > 0 && m.Topic == "thread end")) && m.Words.Split(' ').Any(w => Said(question, w))).SelectMany(m => m.Parts.Split('|'))];
        bool IsMeant(Answer a) => parts.Any(p => a.Name.Contains(p, StringComparison.OrdinalIgnoreCase)) || (parts.Length == 0 && end.Length > 0);
        bool AtEnd(Answer a) => IsMeant(a) && a.Name.Contains(end, StringComparison.Ordinal);
        var meant = reply.Answers.Any(AtEnd) ? (Func<Answer, bool>)AtEnd : IsMeant;
        var count = reply.Answers.Count(meant);
        if (count == 0 || count == reply.Answers.Count)
        {
            return reply;
        }

        return reply with { Answers = [.. reply.Answers.Where(meant).Select(a => a with { Asked = true }), .. reply.Answers.Where(a => !meant(a))] };
    }

    // "will it let go when the drawbar snaps" asks for no drawbar.
    private static bool Stands(string parts, Question question) => parts != "drawbar" || !question.HasIn("let", "hold", "holds", "release");

    // "biggest a stud may be" is a greatest limit.
    private static string End(Question question) =>
        question.HasIn("max", "maximum", "biggest", "largest", "greatest", "oversize") ? " max," : question.HasIn("min", "minimum", "small", "smallest", "least", "undersize") ? " min," : string.Empty;

    private static bool Said(Question question, string word)
    {
        var parts = word.Split('_');
        return parts.Length == 1 ? question.HasIn(word) : question.Tokens.Zip(question.Tokens.Skip(1)).Any(p => p.First.Low == parts[0] && p.Second.Low == parts[1]);
    }
}
