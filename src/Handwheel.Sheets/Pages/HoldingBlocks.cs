using Handwheel.Jobs.Stocks;
using Handwheel.Plan;
using Handwheel.Quantities;
using Handwheel.Sheets.Pictures;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>How the stock is held: pictures and sentences; and the dry check once its zero is found.</summary>
internal static class HoldingBlocks
{
    /// <summary>The block of one holding.</summary>
    /// <param name="parts">The sheet's parts.</param>
    /// <param name="stage">The holding.</param>
    /// <param name="scene">Its pictures.</param>
    /// <param name="first">Whether it is the job's first.</param>
    /// <param name="room">Height there is for the picture.</param>
    /// <param name="under">Whether the words stand under the picture, as the right column is taken.</param>
    /// <returns>A block.</returns>
    public static Block Of(SheetParts parts, PlanStage stage, HoldingScene scene, bool first, double room, bool under = false)
    {
        var name = stage.Stage.Name;
        var (picture, says) = HoldingPicture.Draw(scene, name, stage.Steps.Count > 0 ? stage.Steps[0].Step.Id : string.Empty, Block.OverviewLeft, room);
        var right = new List<Piece>();
        var wide = under ? Block.OverviewLeft : Block.OverviewRight;
        if (first)
        {
            right.Add(Sentence(Stock(parts), wide));
        }

        right.AddRange(stage.HowSet.Select(s => Sentence(s, wide)));
        right.AddRange(WorkingPieces.Of(stage.Workings, scene.Numbers, wide));
        var shown = Bits.Headed(Bits.Heading(first ? $"stock and holding {name}" : $"holding {name}", says), [new(picture.ToString(), picture.Height + 1)]);
        var told = Bits.Headed(Bits.Heading(first ? "stock and set-up" : "set-up"), right);
        return new()
        {
            Under = $"holding {name}",
            Columns = Columns.Overview,
            Left = under ? [.. shown, new(string.Empty, Paginator.Gap), .. told] : shown,
            Right = under ? [] : told,
        };
    }

    /// <summary>The dry check: the cutter stood over places that are known, the spindle off, before the first chip.</summary>
    /// <param name="stage">The holding.</param>
    /// <param name="numbers">How readings are written.</param>
    /// <param name="wide">Width of its column.</param>
    /// <returns>Its box.</returns>
    public static Piece Dry(PlanStage stage, SheetNumbers numbers, double wide)
    {
        var lines = stage.DryCheck.Sum(d => Math.Max(1, TextMeasure.Lines(d, Face.Plain, 8.6, wide - 12)));
        var items = string.Concat(stage.DryCheck.Select(d => $"<div class=\"di\">{Bits.Box}<span>{Markup.Escape(Markup.TrueMinus(d))}</span></div>"));
        var retract = Markup.Figures(numbers.Reading(Jobs.Moves.Axis.Z, stage.RetractZ));
        return new($"<div class=\"dry\"><p><b>dry check</b> spindle off, cutter clear at Z <b class=\"n\">{retract}</b></p>{items}</div>", (lines * 3.9) + (stage.DryCheck.Count * 1.6) + 10.5);
    }

    private static Piece Sentence(string text, double width) => new(
        $"<p class=\"how\">{Markup.Escape(Markup.TrueMinus(text))}</p>",
        (TextMeasure.Lines(text, Face.Plain, 8.6, width - 3.2) * 3.9) + 1.8);

    private static string Stock(SheetParts parts)
    {
        var stock = parts.Plan.Job.Stock;
        var n = parts.Numbers;
        var form = stock.Form switch
        {
            StockForm.Round => stock.Bore > 0 ? $"Tube {n.Short(Across(stock))} across, bore {n.Short(stock.Bore)}, {n.Short(Along(stock))} long" : $"Round bar {n.Short(Across(stock))} across, {n.Short(Along(stock))} long",
            StockForm.Hex => $"Hexagon bar {n.Short(Across(stock))} across, {n.Short(Along(stock))} long",
            _ => $"Bar {n.Short(stock.Nominal.Y)} wide, {n.Short(stock.Nominal.Z)} high, {n.Short(stock.Nominal.X)} long",
        };
        var measured = stock.Measured.Select(m => $"It measured {n.Short(Of(stock, m))} {m}; yours ________").ToArray();
        return $"{form} ({n.Unit.Symbol()}), {parts.Plan.Job.Metal}. {(measured.Length > 0 ? string.Join("; ", measured) + "." : Measure(stock))}";
    }

    private static string Measure(Stock stock) => stock.Form == StockForm.Bar ? "Measure it: wide ________ high ________ long ________" : "Measure it: across ________ long ________";

    private static double Across(Stock stock) => stock.Along == "x" ? stock.Nominal.Y : stock.Nominal.X;

    private static double Along(Stock stock) => stock.Along switch
    {
        "x" => stock.Nominal.X,
        "y" => stock.Nominal.Y,
        _ => stock.Nominal.Z,
    };

    private static double Of(Stock stock, string what) => what switch
    {
        "wide" => stock.Used.Y,
        "high" => stock.Used.Z,
        "long" => stock.Used.X,
        _ => stock.Along == "x" ? stock.Used.Y : stock.Used.X,
    };
}
