using Handwheel.Plan.Lines;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>A measurement: a box for what it measures and, where a later pass is corrected by it, the strip that says what to crank to.</summary>
internal static class MeasurePiece
{
    /// <summary>The piece.</summary>
    /// <param name="line">The measurement.</param>
    /// <param name="numbers">How readings are printed.</param>
    /// <returns>A piece.</returns>
    public static Piece Of(MeasureLine line, SheetNumbers numbers)
    {
        var expect = $"expect <b class=\"n\">{Markup.Figures(numbers.Length(line.Expected))}</b>";
        var word = Word(line);
        var limits = line.Limits is { } l ? $"; {word} {Markup.Figures(numbers.Length(l.Lower))} to {Markup.Figures(numbers.Length(l.Upper))}" : string.Empty;
        var with = line.With.Length > 0 ? $"<br>with {Markup.Escape(line.With)}" : string.Empty;
        var remark = line.Remark.Length > 0 ? $"<div class=\"mr\">{Markup.Escape(Markup.TrueMinus(Markup.FormulaText(line.Remark)))}</div>" : string.Empty;
        var under = remark.Length > 0 ? (TextMeasure.Lines(line.Remark, Face.Plain, 7.6, Block.StepRight - 8) * 3.4) + 0.8 : 0;
        var says = $"{line.Size} measures; expect {numbers.Length(line.Expected)} {(line.Limits is null ? string.Empty : word + " 00.0000 to 00.0000")}";
        var width = line.Strip.Count > 0 ? 31.0 : 78;
        var lines = TextMeasure.Lines(says, Face.Plain, 8, width) + (with.Length > 0 ? TextMeasure.Lines("with " + line.With, Face.Plain, 8, width) : 0);
        var strip = Strip(line, numbers);
        var html = $"<div class=\"me\"><span class=\"c0\">{Bits.Box}</span><span class=\"mw\" style=\"width:{Markup.Number(width)}mm\"><b>{Markup.Escape(line.Size)}</b> measures; {expect}{limits}{with}</span><b class=\"mb\"></b>{strip}</div>{remark}";
        return new(html, Math.Max(line.Strip.Count > 0 ? 13 : 11, ((lines + (line.Strip.Count > 0 ? 1 : 0)) * 3.75) + 1.6) + under);
    }

    // What is measured before its last pass need not be within its limits yet.
    private static string Word(MeasureLine line) =>
        line.Strip.Count == 0 && line.Limits is { } l && line.Expected >= l.Lower - 1e-6 && line.Expected <= l.Upper + 1e-6 ? "allowed" : "in the end";

    private static string Strip(MeasureLine line, SheetNumbers numbers)
    {
        if (line.Strip.Count == 0 || (line.Corrects is null && !line.OpensHead))
        {
            return string.Empty;
        }

        string to(double value) => line.Corrects is { } axis ? numbers.Reading(axis, value) : numbers.Length(value);

        // About what is expected, as many pairs as find room: five, or three of the longer readings.
        var cell = line.Strip.Max(p => TextMeasure.Width(to(p.CrankTo), Face.FigureBold, 7.6)) + 1.7;
        var most = cell * 5 < 42 ? 5 : 3;
        var nearest = Enumerable.Range(0, line.Strip.Count).MinBy(i => Math.Abs(line.Strip[i].Measures - line.Expected));
        var first = Math.Clamp(nearest - (most / 2), 0, Math.Max(0, line.Strip.Count - most));
        var pairs = line.Strip.Skip(first).Take(most).ToArray();
        var heads = string.Concat(pairs.Select(p => $"<td class=\"n\">{Markup.Figures(numbers.Length(p.Measures))}</td>"));
        var cells = string.Concat(pairs.Select((p, i) => $"<td class=\"n{(first + i == nearest ? " ex" : string.Empty)}\">{Markup.Figures(to(p.CrankTo))}</td>"));
        return $"<table class=\"st\"><tr><th>if it is</th>{heads}</tr><tr><th>{(line.Corrects is { } cranked ? $"crank {cranked} to" : "open head by")}</th>{cells}</tr></table>";
    }
}
