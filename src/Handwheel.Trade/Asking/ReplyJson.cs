using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Handwheel.Trade.Asking;

/// <summary>A reply as JSON: question, topic, answers (name, value, unit, metric, inch, working, source, evidence, spread, asked), cautions, notes, refusal.</summary>
public static class ReplyJson
{
    /// <summary>Writes a reply.</summary>
    /// <param name="reply">The reply.</param>
    /// <returns>JSON, indented, ending without a line break.</returns>
    public static string Write(Reply reply)
    {
        ArgumentNullException.ThrowIfNull(reply);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("question", reply.Question);
            json.WriteString("topic", reply.Topic);
            json.WriteStartArray("answers");
            foreach (var answer in reply.Answers)
            {
                Answer(json, answer);
            }

            json.WriteEndArray();
            Lines(json, "cautions", reply.Cautions);
            Lines(json, "notes", reply.Notes);
            if (reply.Refusal is { } refusal)
            {
                json.WriteStartObject("refusal");
                json.WriteString("what", refusal.What);
                Lines(json, "nearest", refusal.Nearest);
                Lines(json, "examples", refusal.Examples);
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Answer(Utf8JsonWriter json, Answer answer)
    {
        json.WriteStartObject();
        json.WriteString("name", answer.Name);
        if (answer.Number is { } number)
        {
            json.WriteNumber("value", Tidy(number));
        }
        else
        {
            json.WriteString("value", answer.Text);
        }

        json.WriteString("unit", answer.Unit);
        Side(json, "metric", answer.Metric);
        Side(json, "inch", answer.Inch);
        Lines(json, "working", answer.Working);
        json.WriteString("source", answer.Basis.Source);
        json.WriteString("evidence", answer.Basis.EvidenceWords);
        json.WriteString("spread", answer.Spread);
        json.WriteBoolean("asked", answer.Asked);
        json.WriteEndObject();
    }

    private static void Side(Utf8JsonWriter json, string name, Measure? side)
    {
        if (side is { } measure)
        {
            json.WriteStartObject(name);
            json.WriteNumber("value", Tidy(measure.Value));
            json.WriteString("unit", measure.Unit);
            json.WriteEndObject();
        }
    }

    private static void Lines(Utf8JsonWriter json, string name, IReadOnlyList<string> lines)
    {
        json.WriteStartArray(name);
        foreach (var line in lines)
        {
            json.WriteStringValue(line);
        }

        json.WriteEndArray();
    }

    // Nine significant digits: enough for any of these, and no tail of binary fractions.
    private static decimal Tidy(double value)
    {
        if (value == 0 || Math.Abs(value) is < 1e-20 or > 1e20)
        {
            return 0;
        }

        var decimals = Math.Clamp(8 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 28);
        return Math.Round((decimal)value, decimals) / 1.0000000000000000000000000000m;
    }
}
