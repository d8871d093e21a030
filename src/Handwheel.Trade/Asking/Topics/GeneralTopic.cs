using System.Globalization;
using Handwheel.Trade.Fits;
using static Handwheel.Trade.Asking.ReplyBuilder;

namespace Handwheel.Trade.Asking.Topics;

/// <summary>General tolerances and grades.</summary>
internal static class GeneralTopic
{
    /// <summary>Works out the answers.</summary>
    /// <param name="q">Question.</param>
    /// <param name="r">Reply.</param>
    /// <exception cref="UnansweredException">Something needed is missing, or cannot be.</exception>
    internal static void Work(Question q, ReplyBuilder r)
    {
        var grade = Grade(q);
        if (grade is { } it)
        {
            q.Has("grade", "tolerance");
            var nominal = Question.Need(q.Length(), "the nominal size");
            var tolerance = Iso286.GradeMm(nominal, it);
            if (double.IsNaN(tolerance))
            {
                throw new UnansweredException($"ISO 286-1 gives no such grade at {N(nominal)} mm");
            }

            r.Add("tolerance", tolerance, "mm", Iso286.BasisOf(nominal, $"h{(it < 0 ? "01" : N(it))}"), $"ISO 286-1 Table 1 at {N(nominal)} mm");
            return;
        }

        var classes = Classes(q);
        var angle = q.Has("angle", "angular", "angles");
        var edge = q.Has("radius", "chamfer", "edge", "corner");
        q.Has("general", "tolerance", "tolerances", "iso", "title", "block", "open", "untoleranced", "unless", "leg", "size", "linear", "length");
        var number = q.Tokens.FirstOrDefault(t => t is { IsNumber: true, Value: 2768 });
        if (number is not null)
        {
            number.Used = true;
        }

        var size = Question.Need(q.Length(), "the size");
        foreach (var c in classes)
        {
            One(r, size, c, angle, edge);
        }
    }

    private static void One(ReplyBuilder r, double size, char c, bool angle, bool edge)
    {
        var word = c switch { 'f' => "fine", 'm' => "medium", 'c' => "coarse", _ => "very coarse" };
        if (angle)
        {
            var minutes = GeneralTolerances.AngleMinutes(size, c);
            r.Add($"angle, {word} ({c}), plus and minus", minutes / 60, "deg", GeneralTolerances.Basis, $"{N(minutes)} minutes of arc for a shorter leg of {N(size)} mm");
            return;
        }

        var value = edge ? GeneralTolerances.EdgeMm(size, c) : GeneralTolerances.LinearMm(size, c);
        if (double.IsNaN(value))
        {
            r.Note($"ISO 2768-1 gives no {word} tolerance at {N(size)} mm.");
            return;
        }

        r.Add($"{(edge ? "edge" : "length")}, {word} ({c}), plus and minus", value, "mm", GeneralTolerances.Basis);
    }

    private static int? Grade(Question q)
    {
        for (var i = 0; i < q.Tokens.Count; i++)
        {
            var token = q.Tokens[i];
            var digits = token.Low.StartsWith("it", StringComparison.Ordinal) && token.Raw.Length > 2 ? token.Raw[2..].TrimStart('-')
                : token.Low == "it" && i + 1 < q.Tokens.Count ? q.Tokens[i + 1].Raw : string.Empty;
            if (int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var grade) && grade <= 18)
            {
                token.Used = true;
                q.Tokens[token.Low == "it" ? i + 1 : i].Used = true;
                return digits == "01" ? -1 : grade;
            }
        }

        return null;
    }

    private static char[] Classes(Question q)
    {
        foreach (var token in q.Tokens.Where(t => t.Low.Contains("2768", StringComparison.Ordinal) && !t.IsNumber))
        {
            token.Used = true;
            var letter = token.Low[(token.Low.IndexOf("2768", StringComparison.Ordinal) + 4)..].TrimStart('-', '1');
            if (letter.Length > 0 && "fmcv".Contains(letter[0], StringComparison.Ordinal))
            {
                return [letter[0]];
            }
        }

        foreach (var (words, c) in new[] { (new[] { "very", "v" }, 'v'), (["medium", "m", "mk"], 'm'), (["fine", "f", "fh"], 'f'), (["coarse", "c", "cl"], 'c') })
        {
            if (q.Has(words))
            {
                q.Has("coarse");
                return [c];
            }
        }

        // "25 m" reads as metres: a class was meant.
        foreach (var token in q.Tokens.Where(t => t is { IsNumber: true, Unit: "m" }))
        {
            token.Unit = string.Empty;
            return ['m'];
        }

        return ['f', 'm', 'c', 'v'];
    }
}
