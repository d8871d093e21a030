using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof;
using Handwheel.Quantities;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>The last page: sizes with boxes for what they come out, true sizes of what cut them, the record.</summary>
internal static class SizeBlocks
{
    /// <summary>The blocks.</summary>
    /// <param name="parts">The sheet's parts.</param>
    /// <returns>Blocks.</returns>
    public static IEnumerable<Block> Of(SheetParts parts)
    {
        var drawing = parts.Plan.Job.Drawing;
        var unit = parts.Numbers.Unit.Symbol();
        List<Piece> sizes =
        [
            Bits.Heading("sizes", $"{unit}; measure at 20 deg C, clean and dry, edges broken"),
            new("<div class=\"sz hdr\"><span>size</span><span class=\"r\">wanted</span><span class=\"r\">least</span><span class=\"r\">most</span><span class=\"r\">planned</span><span></span><span>actual</span><span>in</span></div>", 4.4),
        ];
        // A size that the proof has no value for is measured only where the drawing states it: check leaves the others out too.
        var known = parts.Proof?.Sizes.Where(r => r.ByHand || r.Planned is not null).Select(r => r.Name).ToHashSet(StringComparer.Ordinal);
        sizes.AddRange(drawing.Sizes.Where(s => s.Stated).Select(s => Row(parts, s)));
        var others = drawing.Sizes.Where(s => !s.Stated && known?.Contains(s.Name) != false).ToArray();
        if (others.Length > 0)
        {
            sizes.Add(new("<div class=\"hd2\">the rest, by the general limits</div>", 5));
            sizes.AddRange(others.Select(s => Row(parts, s)));
        }

        if (parts.Proof is { } proof)
        {
            sizes.Add(Bits.Paragraph("Planned: what the moves as rounded cut in the proof, not what you will measure; a cutter that is not true, play and spring come on top. " + proof.Guarantee, Block.PageWide, "para", 7.8));
        }

        yield return new() { Under = "sizes and record", Columns = Columns.Whole, Left = sizes };
        yield return new() { Under = "sizes and record", Columns = Columns.Whole, Left = [Bits.Heading("true sizes of what cut it", unit), .. TrueSizes(parts)] };
        yield return Record();
    }

    private static Piece Row(SheetParts parts, Size size)
    {
        var result = parts.Proof?.Sizes.FirstOrDefault(r => string.Equals(r.Name, size.Name, StringComparison.Ordinal));
        var angle = size.Kind == SizeKind.Angle;
        string Print(double value) => angle ? Markup.Number(Math.Round(value * 180 / Math.PI, 3)) + "\u00B0" : parts.Numbers.Length(value);
        var planned = result switch
        {
            { ByHand: true } => "by hand",
            { Least: { } least, Greatest: { } most } when Math.Abs(most - least) > 0.0005 => $"{Print(least)} to {Print(most)}",
            { Planned: { } middle } => Print(middle),
            _ => "measure it",
        };
        var verdict = result switch
        {
            null or { ByHand: true } or { Planned: null } => string.Empty,
            { Ok: true } => "within",
            _ => "outside",
        };
        var wanted = Wanted(parts.Numbers, size);
        var symbol = size.Kind == SizeKind.Across ? "\u00D8\u00A0" : string.Empty;
        return new(
            $"<div class=\"sz\"><b>{Markup.Escape(size.Name)}</b><span class=\"r n w\">{symbol}{Markup.Figures(wanted)}</span><span class=\"r n\">{Markup.Figures(Print(size.Limits.Lower))}</span><span class=\"r n\">{Markup.Figures(Print(size.Limits.Upper))}</span><span class=\"r n pl\">{Markup.Figures(planned)}</span><span class=\"vd\">{verdict}</span><b class=\"act\"></b><b class=\"in\"></b></div>",
            Math.Max(8, (Math.Max(TextMeasure.Lines(size.Name, Face.Bold, 9, 36), TextMeasure.Lines(planned, Face.FigureBold, 8.4, 29)) * 4) + 2.4));
    }

    private static string Wanted(SheetNumbers numbers, Size size)
    {
        var limits = size.Limits;
        if (size.Kind == SizeKind.Angle)
        {
            return Markup.Number(Math.Round(limits.Nominal * 180 / Math.PI, 3)) + "\u00B0";
        }

        if (Math.Abs(limits.UpperDeviation + limits.LowerDeviation) < 1e-9)
        {
            return $"{numbers.Short(limits.Nominal)} \u00B1{numbers.Short(limits.UpperDeviation)}";
        }

        return $"{numbers.Short(limits.Nominal)} {Signed(numbers, limits.UpperDeviation)} {Signed(numbers, limits.LowerDeviation)}";
    }

    private static string Signed(SheetNumbers numbers, double value) => Math.Abs(value) < 1e-9 ? "0" : value > 0 ? "+" + numbers.Short(value) : "\u2212" + numbers.Short(-value);

    private static IEnumerable<Piece> TrueSizes(SheetParts parts) => CutterBlocks.Used(parts.Plan).Chunk(7).Select(row => new Piece(
        $"<div class=\"ts\">{string.Concat(row.Select(u => $"<span><b class=\"id\">{Markup.Escape(u.Name)}</b><i class=\"n\">{Markup.Figures(Size(parts, u.Cutter))}</i><b class=\"tb\"></b></span>"))}</div>",
        15));

    private static string Size(SheetParts parts, Cutter? cutter) => cutter is null ? string.Empty : parts.Numbers.Length(cutter.Kind == CutterKind.Saw ? cutter.Thick : cutter.TrueAcross);

    private static Block Record()
    {
        static Piece Line(string says) => new($"<div class=\"rl\">{says}</div>", 7.4);
        return new()
        {
            Under = "sizes and record",
            Columns = Columns.Whole,
            Left =
            [
                Bits.Heading("record"),
                new("<div class=\"rh\"><span>started</span><i></i><span>finished</span><i></i><span>machine</span><i></i><span>by</span><i></i></div>", 9),
                Line("changed at the machine, and at which move"), Line(string.Empty), Line("went wrong, or nearly"), Line(string.Empty), Line("next time"), Line(string.Empty),
                new($"<div class=\"rv\"><span>{Bits.Box} good</span><span>{Bits.Box} to be mended</span><span>{Bits.Box} scrap</span><span class=\"sg\">signed</span></div>", 11),
            ],
        };
    }

    /// <summary>A size's verdict in the proof.</summary>
    /// <param name="proof">The proof.</param>
    /// <returns>How many are outside their limits.</returns>
    public static int Outside(ProofResult? proof) => proof?.Sizes.Count(s => s is { Ok: false, ByHand: false }) ?? 0;
}
