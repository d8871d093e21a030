using System.Text;
using Handwheel.Jobs.Findings;
using Handwheel.Proof.Designs;
using Handwheel.Quantities;

namespace Handwheel.Sheets.Reports;

/// <summary>What came of a design, for a person: each line, its values with their working, and what it comes to.</summary>
public static class DesignText
{
    /// <summary>The lines with their workings.</summary>
    /// <param name="designs">What came of each line.</param>
    /// <param name="unit">The unit lengths are told in.</param>
    /// <param name="sources">Whether each value tells its rule&#39;s source and how firm that is.</param>
    /// <returns>Lines, each ending in a line feed; empty for no design.</returns>
    public static string Write(IReadOnlyList<DesignResult> designs, LengthUnit unit, bool sources)
    {
        ArgumentNullException.ThrowIfNull(designs);
        if (designs.Count == 0)
        {
            return string.Empty;
        }

        var text = new StringBuilder("design\n");
        foreach (var design in designs)
        {
            text.Append("  ").Append(design.Line.Text).Append('\n');
            var name = design.Answers.Max(a => (int?)a.Name.Length) ?? 0;
            var value = design.Answers.Max(a => (int?)Value(a, unit).Length) ?? 0;
            foreach (var answer in design.Answers)
            {
                text.Append("    ").Append(answer.Name.PadRight(name)).Append("  ").Append(Value(answer, unit).PadRight(value)).Append("  ").Append(answer.Working);
                text.Append(answer.Spread.Length > 0 ? $" (may be off: {answer.Spread})" : string.Empty).Append('\n');
                if (sources)
                {
                    text.Append(' ', name + 6).Append(answer.Basis.Source).Append("; ").Append(answer.Basis.EvidenceWords).Append('\n');
                }
            }

            text.Append("    ").Append(Graded(design.Grade)).Append(design.Verdict).Append(".\n");
        }

        return text.Append("  ").Append(DesignProof.Defers).Append('\n').ToString();
    }

    /// <summary>A value with its unit; forces, torques and stresses of an inch job in inch units, the metric beside.</summary>
    /// <param name="answer">The value.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <returns>The text.</returns>
    public static string Value(DesignAnswer answer, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Number is not { } number)
        {
            return answer.Text ?? string.Empty;
        }

        var metric = ThreeFigures.Of(number) + (answer.Unit.Length > 0 ? " " + answer.Unit : string.Empty);
        return (answer.Unit, unit) switch
        {
            ("mm", _) => unit.Told(number),
            ("N", _) => unit.Force(number),
            ("N m", _) => unit.Torque(number),
            ("MPa", LengthUnit.Inch) => $"{ThreeFigures.Of(number / 6.894757)} ksi ({metric})",
            _ => metric,
        };
    }

    private static string Graded(Grade? grade) => grade switch { Grade.Halt => "halt: ", Grade.Caution => "caution: ", _ => string.Empty };
}
