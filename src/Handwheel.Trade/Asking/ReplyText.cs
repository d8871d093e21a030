using System.Globalization;
using System.Text;

namespace Handwheel.Trade.Asking;

/// <summary>A reply as plain text for a person.</summary>
public static class ReplyText
{
    /// <summary>Writes a reply.</summary>
    /// <param name="reply">The reply.</param>
    /// <returns>Lines, each ended by a line feed.</returns>
    public static string Write(Reply reply)
    {
        ArgumentNullException.ThrowIfNull(reply);
        var text = new StringBuilder();
        if (reply.Refusal is { } refusal)
        {
            return Refusal(text, refusal);
        }

        var asked = reply.Answers.Where(a => a.Asked).ToArray();
        var shown = asked.Length > 0 ? asked : [.. reply.Answers];
        var last = (Basis?)null;
        for (var i = 0; i < shown.Length; i++)
        {
            var answer = shown[i];
            Line(text, Value(answer));
            foreach (var line in answer.Working)
            {
                Line(text, "    " + line);
            }

            if (answer.Spread.Length > 0)
            {
                Line(text, "    may be off: " + answer.Spread);
            }

            last = answer.Basis;
            var next = i + 1 < shown.Length ? shown[i + 1].Basis : null;
            if (next != last)
            {
                Line(text, $"    source: {last.Source} ({last.EvidenceWords})");
            }
        }

        if (shown.Length < reply.Answers.Count)
        {
            Line(text, $"(and {(reply.Answers.Count - shown.Length).ToString(CultureInfo.InvariantCulture)} more lines on {reply.Topic}: ask the same with 'all')");
        }

        foreach (var caution in reply.Cautions)
        {
            Line(text, "caution: " + caution);
        }

        foreach (var note in reply.Notes)
        {
            Line(text, "note: " + note);
        }

        return text.ToString();
    }

    private static string Refusal(StringBuilder text, Refusal refusal)
    {
        Line(text, $"No answer: {refusal.What}.");
        if (refusal.Nearest.Count > 0)
        {
            Line(text, "Near to what was typed: " + string.Join(", ", refusal.Nearest));
        }

        foreach (var example in refusal.Examples)
        {
            Line(text, "  ask " + example);
        }

        return text.ToString();
    }

    private static string Value(Answer answer)
    {
        if (answer.Text is { } word)
        {
            return $"{answer.Name}: {word}";
        }

        var first = Number(answer.Number!.Value, answer.Unit);
        if (answer.Metric is not { } metric || answer.Inch is not { } inch)
        {
            return $"{answer.Name}: {first}";
        }

        var other = answer.Unit == metric.Unit ? inch : metric;
        return $"{answer.Name}: {first}  =  {Number(other.Value, other.Unit)}";
    }

    private static string Number(double value, string unit)
    {
        var decimals = unit switch
        {
            "mm" => 3,
            "in" => 4,
            "um" or "thou" or "rpm" or "ft/min" or "psi" or "lbf" or "kg/m^3" => Math.Abs(value) < 10 ? 2 : Math.Abs(value) < 100 ? 1 : 0,
            "deg" => 4,
            _ => Math.Abs(value) switch { < 0.001 => 7, < 0.1 => 5, < 10 => 4, < 100 => 3, < 1000 => 1, _ => 0 },
        };
        if ((unit is "mm" or "in") && value != 0 && Math.Abs(value) < 0.01)
        {
            decimals += 2;
        }

        var fixedDecimals = unit is "mm" or "in" ? new string('0', decimals) : new string('#', decimals);
        return (value.ToString("0." + fixedDecimals, CultureInfo.InvariantCulture) + " " + unit).TrimEnd();
    }

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
