using Handwheel.Jobs.Findings;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>Findings and cautions as framed boxes.</summary>
internal static class FindingPieces
{
    /// <summary>A finding.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="width">Width of the column.</param>
    /// <param name="placed">Whether its step and line are told.</param>
    /// <param name="steps">The steps it is true of, where there are more than one; empty else.</param>
    /// <returns>A piece.</returns>
    public static Piece Of(Finding finding, double width, bool placed, string steps = "")
    {
        var place = new List<string>();
        if (steps.Length > 0)
        {
            place.Add(steps);
        }

        if (placed && finding.Step is { } step)
        {
            place.Add(finding.Move is { } move ? FormattableString.Invariant($"{step}, move {move}") : step);
        }

        if (placed && finding.Where is { } where)
        {
            place.Add(FormattableString.Invariant($"line {where.Line}"));
        }

        var at = place.Count > 0 ? $" ({string.Join("; ", place)})" : string.Empty;
        var mend = finding.Mend.Length > 0 ? " " + finding.Mend : string.Empty;
        return Box(finding.Grade, $"{finding.Code}{at}: {finding.Message}{mend}", width);
    }

    /// <summary>A framed sentence of a grade.</summary>
    /// <param name="grade">The grade.</param>
    /// <param name="text">The sentence.</param>
    /// <param name="width">Width of the column.</param>
    /// <returns>A piece.</returns>
    public static Piece Box(Grade grade, string text, double width)
    {
        var word = Bits.Word(grade);
        var lines = TextMeasure.Lines($"{word}  {text}", Face.Plain, 8.2, width - 11.5);
        return new($"<div class=\"fd {word}\">{Bits.Mark(grade, 4.4)}<span><b>{word}</b> {Markup.Escape(Markup.TrueMinus(text))}</span></div>", Math.Max(6.6, (lines * 3.75) + 2.2) + 1.2);
    }
}
