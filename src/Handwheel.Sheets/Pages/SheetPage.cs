using System.Text;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>The pages put together: headings, footings, style and faces.</summary>
internal static class SheetPage
{
    /// <summary>Height of every page's heading but the first's.</summary>
    public const double HeadTall = 16.5;

    private static readonly string[] General = ["eyes covered", "sleeves rolled", "no gloves near a turning spindle", "key out of the chuck", "chips by brush"];

    /// <summary>Height of the first page's heading.</summary>
    /// <param name="parts">The sheet's parts.</param>
    /// <returns>Millimetres.</returns>
    public static double FirstHeadTall(SheetParts parts) => 33 + (Stop(parts).Length > 0 ? 13 : 0) + (parts.Halted ? 6 : 0) + (TextMeasure.Width(parts.Plan.Job.Title, Face.Bold, 16) > 74 ? 5 : 0);

    /// <summary>The whole document.</summary>
    /// <param name="parts">The sheet's parts.</param>
    /// <param name="pages">Each page's blocks.</param>
    /// <returns>HTML.</returns>
    public static string Html(SheetParts parts, IReadOnlyList<IReadOnlyList<Block>> pages)
    {
        var title = Markup.Escape(parts.Plan.Job.Title);
        var html = new StringBuilder();
        html.Append("<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>").Append(title).Append(": dial sheet</title>\n<style>\n");
        html.Append(Resource.Faces()).Append(Resource.Text("sheet.css")).Append("</style></head>\n<body>").Append(Bits.Symbols).Append('\n');
        for (var i = 0; i < pages.Count; i++)
        {
            html.Append("<section class=\"page\" aria-label=\"sheet ").Append(Bits.Count(i + 1)).Append("\">\n");
            html.Append(i == 0 ? FirstHead(parts, pages.Count) : Head(parts, pages[i], i + 1, pages.Count));
            foreach (var block in pages[i])
            {
                html.Append(block.Html()).Append('\n');
            }

            html.Append("<footer>").Append(Foot(i, pages[i])).Append("</footer></section>\n");
        }

        return html.Append("</body></html>\n").ToString();
    }

    private static string Foot(int page, IReadOnlyList<Block> blocks) => page == 0
        ? "Strength, speed and time figures are estimates: the machine\u2019s manual, the cutter maker\u2019s data, local rules and a licensed engineer (for anything that lifts, holds pressure or carries people) come first."
        : blocks.Any(b => b.Columns == Columns.Step)
            ? "Bar at the left: it cuts. Framed: set, not cranked to. Solid ring: the cutter\u2019s first place; dashed: its last. Hatched: what the step takes. Counter: counterclockwise. S a turn: seconds for one turn of the crank. Reads: once there, write what the readout shows before you crank on. Spindle turns clockwise from above."
            : "What is written here is typed back into the job: a true cutter size moves the readings that rest on it.";

    private static string Stop(SheetParts parts) => parts.Halted
        ? $"DO NOT CUT. The proof found {Counted(parts.Count(Grade.Halt), "halt")}: cutting as planned would scrap the part, break something or hurt someone. Mend the job and print again."
        : parts.Proof is null ? "DO NOT CUT. This sheet was not proved." : string.Empty;

    private static string Counted(int count, string word) => count == 1 ? "1 " + word : $"{Bits.Count(count)} {word}s";

    private static string Cautions(SheetParts parts)
    {
        var metal = parts.Plan.Job.Metal;
        IEnumerable<string> more = metal.Contains("magnesium", StringComparison.OrdinalIgnoreCase) ? General.Append("magnesium burns: dry sand at hand, no water") : General;
        return $"<div class=\"ca\">{Bits.Mark(Grade.Caution, 4.4)}<b>caution</b>{string.Concat(more.Select(c => $"<span>{c}</span>"))}</div>";
    }

    private static string StopBox(SheetParts parts) => Stop(parts) is { Length: > 0 } stop ? $"<div class=\"stop\">{Bits.Mark(Grade.Halt, 8)}<b>{Markup.Escape(stop)}</b></div>" : string.Empty;

    private static string FirstHead(SheetParts parts, int count)
    {
        var job = parts.Plan.Job;
        var unit = job.Unit.Symbol();
        var mill = parts.Plan.Shop.Mill;
        var counts = mill is null ? unit
            : mill.X.ReadoutStep is null ? $"{unit}; dials by {parts.Numbers.Length(mill.X.Step)}"
            : $"{unit}; readout by {parts.Numbers.Length(mill.X.Step)} of slide travel";
        var found = new StringBuilder(parts.Halted ? Counted(parts.Count(Grade.Halt), "halt") : parts.Proof is null ? "not proved" : "no halt");
        foreach (var grade in new[] { Grade.Caution, Grade.Note })
        {
            if (parts.Count(grade) > 0)
            {
                found.Append(' ').Append(Bits.Mark(grade, 3.8)).Append(' ').Append(Counted(parts.Count(grade), Bits.Word(grade)));
            }
        }

        if (parts.Count(Grade.Caution) > 0 || parts.Count(Grade.Note) > 0)
        {
            found.Append(" in the proof");
        }

        var usual = parts.Plan.Stages.SelectMany(s => s.Steps).Sum(s => s.Cautions.Count);
        if (usual > 0)
        {
            found.Append(" <small>").Append(Counted(usual, "caution")).Append(" of the trade beside the steps</small>");
        }

        var proof = (parts.Halted ? Bits.Mark(Grade.Halt, 3.8) + " " : string.Empty) + found;
        return $"""
            {StopBox(parts)}<header class="first"><div class="ti"><p>{Bits.Symbol("wheel", 5.4, 5.4)} dial sheet: every reading to crank to, in order</p><h1>{Markup.Escape(job.Title)}</h1></div>
            <div class="fa"><div class="f2"><span><small>metal</small><b>{Markup.Escape(job.Metal)}</b></span><span><small>unit</small><b>{Markup.Escape(counts)}</b></span><span><small>shop</small><b>{Markup.Escape(parts.Plan.Shop.Title)}</b></span><span class="of"><small>sheet</small><b><big>1</big> of {Bits.Count(count)}</b></span></div>
            <div class="f2"><span><small>proof</small><b>{proof}</b></span><span><small>revision</small><b>________</b></span><span><small>fingerprint</small><b class="n">{Markup.Escape(parts.Fingerprint)}</b></span><span class="of"><small>to make</small><b>{Bits.Count(job.ToMake)}</b></span></div></div></header>
            {Cautions(parts)}

            """;
    }

    private static string Head(SheetParts parts, IReadOnlyList<Block> blocks, int page, int count)
    {
        var under = blocks.Select(b => b.Under).FirstOrDefault(u => u.Length > 0) ?? string.Empty;
        var stop = parts.Halted || parts.Proof is null ? $"<b class=\"dont\">{Bits.Mark(Grade.Halt, 4)} DO NOT CUT</b>" : string.Empty;
        return $"""
            <header class="next">{Bits.Symbol("wheel", 5, 5)}<b class="t">{Markup.Escape(parts.Plan.Job.Title)}</b><span class="u">{Markup.Escape(under)}</span>{stop}<span class="fp">fingerprint <b class="n">{Markup.Escape(parts.Fingerprint)}</b></span><span class="of">sheet <big>{Bits.Count(page)}</big> of {Bits.Count(count)}</span></header>
            {Cautions(parts)}

            """;
    }
}
