using System.Text.Json;
using Handwheel.Jobs.Findings;
using Handwheel.Proof.Designs;

namespace Handwheel.Sheets.Reports;

/// <summary>What came of a design, for programs: mm, N, N m, MPa, degrees.</summary>
public static class DesignJson
{
    /// <summary>What <c>why JOB design --json</c> prints.</summary>
    /// <param name="designs">What came of each line.</param>
    /// <returns>JSON, ending in a line feed.</returns>
    public static string Alone(IReadOnlyList<DesignResult> designs)
    {
        ArgumentNullException.ThrowIfNull(designs);
        return ReportJson.Written(json => Write(json, designs));
    }

    /// <summary>Writes the property <c>designs</c>, and <c>defers</c> where there are any.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="designs">What came of each line.</param>
    internal static void Write(Utf8JsonWriter json, IReadOnlyList<DesignResult> designs)
    {
        json.WriteStartArray("designs");
        foreach (var design in designs)
        {
            json.WriteStartObject();
            json.WriteString("text", design.Line.Text);
            json.WriteString("file", design.Line.Where.File);
            json.WriteNumber("line", design.Line.Where.Line);
            json.WriteString("grade", design.Grade is { } grade ? FindingPrinter.GradeText(grade) : "stands");
            Number(json, "margin", design.Margin);
            json.WriteString("verdict", design.Verdict);
            json.WriteString("mend", design.Mend);
            json.WriteStartArray("answers");
            foreach (var answer in design.Answers)
            {
                json.WriteStartObject();
                json.WriteString("name", answer.Name);
                if (answer.Text is { } word)
                {
                    json.WriteString("value", word);
                }
                else
                {
                    Number(json, "value", answer.Number);
                }

                json.WriteString("unit", answer.Unit);
                json.WriteString("working", answer.Working);
                json.WriteString("spread", answer.Spread);
                json.WriteString("source", answer.Basis.Source);
                json.WriteString("evidence", answer.Basis.EvidenceWords);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (designs.Count > 0)
        {
            json.WriteString("defers", DesignProof.Defers);
        }
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, Math.Round(number, 6, MidpointRounding.AwayFromZero));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
