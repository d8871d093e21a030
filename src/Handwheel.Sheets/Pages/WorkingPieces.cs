using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Plan.Workings;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>Workings as lines a person can check.</summary>
internal static class WorkingPieces
{
    private const double LabelWide = 21;

    /// <summary>A step's workings.</summary>
    /// <param name="step">The step.</param>
    /// <param name="numbers">How readings are printed.</param>
    /// <param name="width">Width of the column.</param>
    /// <param name="row">The row a working's reading stands in.</param>
    /// <returns>Pieces.</returns>
    public static IEnumerable<Piece> Of(PlanStep step, SheetNumbers numbers, double width, Func<Working, int> row)
    {
        var readings = Readings(step.Lines, numbers);
        var seen = new HashSet<(string, string)>();
        foreach (var working in step.Workings)
        {
            var label = readings.TryGetValue(working, out var reading) ? reading : Value(working, numbers);
            if (seen.Add((label, working.Name)))
            {
                yield return One(working, label, numbers, width) with { Row = row(working) };
            }
        }
    }

    /// <summary>Workings that belong to no reading.</summary>
    /// <param name="workings">The workings.</param>
    /// <param name="numbers">How numbers are printed.</param>
    /// <param name="width">Width of the column.</param>
    /// <returns>Pieces.</returns>
    public static IEnumerable<Piece> Of(IEnumerable<Working> workings, SheetNumbers numbers, double width) => workings.Select(w => One(w, Value(w, numbers), numbers, width));

    /// <summary>A working's result as it is printed.</summary>
    /// <param name="working">The working.</param>
    /// <param name="numbers">How numbers are printed.</param>
    /// <returns>Text.</returns>
    public static string Value(Working working, SheetNumbers numbers) => working.Unit switch
    {
        "mm" when AxisNamed(working) is { } axis => $"{axis} {numbers.Reading(axis, working.Result)}",
        "mm" => numbers.Length(working.Result),
        "deg" => numbers.Reading(Jobs.Moves.Axis.T, working.Result),
        "1" => Markup.Number(working.Result),
        "mm/min" or "rpm" or "N" when Math.Abs(working.Result) >= 10 => $"{Bits.Fixed(working.Result, 0)} {working.Unit}",
        _ => $"{Markup.Number(Math.Round(working.Result, 2))} {working.Unit}",
    };

    // A working of a reading begins with its axis: "X of hub".
    private static Jobs.Moves.Axis? AxisNamed(Working working) => working.Name switch
    {
        ['X', ' ', ..] => Jobs.Moves.Axis.X,
        ['Y', ' ', ..] => Jobs.Moves.Axis.Y,
        ['Z', ' ', ..] => Jobs.Moves.Axis.Z,
        _ => null,
    };

    private static Piece One(Working working, string label, SheetNumbers numbers, double width)
    {
        var name = working.Name.Length > 0 ? working.Name + ":" : string.Empty;
        var sum = working.PutIn.Length > 0 ? " = " + Markup.TrueMinus(Markup.FormulaText(working.PutIn)) : string.Empty;
        var tail = Markup.TrueMinus(working.Rounded.Length > 0 ? "; " + working.Rounded : string.Empty);
        tail += working.Unit == "deg" ? "; " + Markup.TrueMinus(Markup.FormulaText(numbers.Rim(working.Result))) : string.Empty;
        // That speeds are estimates the first page says once.
        tail += working.Note.Length > 0 && working.Unit != "rpm" ? ". " + working.Note : string.Empty;
        var text = name + sum + tail;
        var room = width - LabelWide;
        var lines = Math.Max(TextMeasure.Lines(text, Face.Plain, 7.6, room), TextMeasure.Lines(Markup.TrueMinus(label), Face.FigureBold, 7.6, LabelWide - 0.6));
        return new(
            $"<div class=\"wk\"><span class=\"wl n\">{Markup.Figures(label)}</span><span class=\"wt\"><em>{Markup.Escape(name)}</em>{Markup.Escape(sum)}<em>{Markup.Escape(tail)}</em></span></div>",
            (lines * 3.3) + 1);
    }

    private static Dictionary<Working, string> Readings(IEnumerable<SheetLine> lines, SheetNumbers numbers)
    {
        var readings = new Dictionary<Working, string>(ReferenceEqualityComparer.Instance);
        foreach (var line in lines)
        {
            switch (line)
            {
                case MoveLine move:
                    readings.TryAdd(move.Working, $"{move.Axis} {numbers.Reading(move.Axis, move.To)}");
                    break;
                case TouchOffLine touch:
                    readings.TryAdd(touch.Working, $"{touch.TouchOff.Axis} {numbers.Reading(touch.TouchOff.Axis, touch.TouchOff.SetTo)}");
                    break;
                case PassBracket bracket:
                    foreach (var (working, z) in bracket.DepthWorkings.Zip(bracket.Depths))
                    {
                        readings.TryAdd(working, $"Z {numbers.Reading(Jobs.Moves.Axis.Z, z)}");
                    }

                    foreach (var (working, text) in Readings(bracket.Lines, numbers))
                    {
                        readings.TryAdd(working, text);
                    }

                    break;
            }
        }

        return readings;
    }
}
