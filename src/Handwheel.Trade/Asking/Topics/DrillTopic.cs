using Handwheel.Trade.Drills;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>Drills by name and by size.</summary>
internal static class DrillTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        q.Has("twist", "dia", "jobber", "mm", "bit", "bits", "decimal", "between", "inches");
        var nearest = q.Has("nearest", "closest", "near", "next", "replace", "instead");
        var named = nearest ? null : Named(q);
        if (named is not null)
        {
            q.Inch = named.Family != DrillFamily.Metric;
            r.Say("drill", named.Name, DrillTable.BasisOf(named)).Add("diameter", named.DiameterMm, "mm", DrillTable.BasisOf(named));
            Around(r, named.DiameterMm, named.Name);
            return;
        }

        var size = Question.Need(q.Length(), "the drill's name or a size");
        Around(r, size, string.Empty);
    }

    private static DrillSize? Named(Question q)
    {
        var number = q.Has("number", "no", "no.", "num", "wire", "gauge", "gage", "#");
        foreach (var token in q.Tokens.Where(t => !t.Used))
        {
            var name = token.IsNumber ? Numbered(token, number) : Lettered(q, token);
            if (name is not null && DrillTable.Find(Fraction(name)) is { } drill)
            {
                token.Used = true;
                return drill;
            }

            if (token.Raw.StartsWith('#') || (number && token.IsNumber))
            {
                throw new UnansweredException($"there is no drill {(number ? "#" : string.Empty)}{token.Raw}; number drills run from #1 to #97");
            }
        }

        return null;
    }

    private static string? Numbered(Token token, bool number)
    {
        if (number)
        {
            return "#" + token.Raw;
        }

        return token.IsFraction ? token.Raw.TrimEnd('"') : token.Unit == "mm" ? Question.Plainly(token.Value) + " mm" : null;
    }

    private static string? Lettered(Question q, Token token)
    {
        var letter = token.Raw.Length == 1 && char.IsAsciiLetter(token.Raw[0]) && (token.Low is not ("a" or "i") || char.IsUpper(token.Raw[0]) || q.Tokens.Count <= 2 || Follows(q, token));
        return letter || token.Raw.StartsWith('#') || token.Low.StartsWith("no", StringComparison.Ordinal) ? token.Raw : null;
    }

    // "letter i", "size a": the word before says that it is a name.
    private static bool Follows(Question q, Token token)
    {
        var at = q.Tokens.TakeWhile(t => !ReferenceEquals(t, token)).Count();
        return at > 0 && q.Tokens[at - 1].Low is "letter" or "size" or "drill";
    }

    private static string Fraction(string name) => name.EndsWith("in", StringComparison.OrdinalIgnoreCase) ? name[..^2].Trim() : name;

    private static void Around(ReplyBuilder r, double size, string except)
    {
        foreach (var (label, families) in new[] { ("nearest number, letter or fraction", new[] { DrillFamily.Number, DrillFamily.Letter, DrillFamily.Fraction }), ("nearest metric", new[] { DrillFamily.Metric }) })
        {
            var found = DrillTable.Nearest(size, 4, families).Where(d => d.Name != except).Take(3).ToArray();
            if (found.Length == 0 || Math.Abs(found[0].DiameterMm - size) > 0.2 * size)
            {
                continue;
            }

            var drill = found[0];
            r.Say(label, drill.Name, DrillTable.BasisOf(drill)).Add($"{drill.Name} diameter", drill.DiameterMm, "mm", DrillTable.BasisOf(drill), $"off by {r.L(drill.DiameterMm - size)}");
            r.Say(label + ", others", string.Join(", ", found.Skip(1).Select(d => $"{d.Name} ({N(d.DiameterMm, 3)} mm, {N(d.DiameterIn, 4)} in)")), DrillTable.Basis);
        }

        r.Note("A drilled hole comes out 0.05 to 0.15 mm (0.002 to 0.006 in) over the drill unless it is ground and started well.");
    }
}
