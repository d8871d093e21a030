using Handwheel.Jobs.Findings;
using Handwheel.Plan;
using Handwheel.Sheets.Pictures;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>The first page: findings, drawing and order of work.</summary>
internal static class OverviewBlocks
{
    /// <summary>The blocks.</summary>
    /// <param name="parts">The sheet's parts.</param>
    /// <param name="pages">The page each step stands on.</param>
    /// <param name="room">Height there is for the drawing.</param>
    /// <returns>Blocks.</returns>
    public static IEnumerable<Block> Of(SheetParts parts, IReadOnlyDictionary<string, int> pages, double room)
    {
        var grave = parts.Findings.Where(f => f.Grade != Grade.Note || f.Step is null).OrderByDescending(f => f.Grade).ToArray();
        if (grave.Any(f => f.Grade == Grade.Halt || f.Step is null))
        {
            yield return new()
            {
                Columns = Columns.Whole,
                Left = [Bits.Heading("what the proof found"), .. grave.Where(f => f.Grade == Grade.Halt || f.Step is null).Select(f => FindingPieces.Of(f, Block.PageWide, placed: true))],
            };
        }

        var (picture, says) = DrawingPicture.Draw(parts.Plan.Job, parts.Part, parts.Numbers, Block.OverviewLeft, room);
        yield return new()
        {
            Columns = Columns.Overview,
            Left = Bits.Headed(Bits.Heading("drawing", says), [new(picture.ToString(), picture.Height + 1)]),
            Right = Bits.Headed(Bits.Heading("order of work", "sheet"), parts.Plan.Stages.SelectMany(s => Order(parts, s, pages))),
        };
    }

    private static IReadOnlyList<Piece> Order(SheetParts parts, PlanStage stage, IReadOnlyDictionary<string, int> pages)
    {
        var time = Bits.Time(stage.Steps.Sum(s => s.Minutes));
        var byHand = stage.Setup is null;
        var name = byHand ? string.Empty : $"<b class=\"ltr\">{Markup.Escape(stage.Stage.Name)}</b> ";
        var text = byHand ? "by hand" : Heading(stage);
        var heading = new Piece(
            $"<div class=\"oh\"><span>{name}{Markup.Escape(text)}</span><span>{time}</span></div>",
            (TextMeasure.Lines(text, Face.Plain, 8.2, Block.OverviewRight - 22) * 3.7) + 1.2);
        return Bits.Headed(heading, StepGroups.Of(stage.Steps).Select(g => Row(parts, g, pages)));
    }

    private static Piece Row(SheetParts parts, IReadOnlyList<PlanStep> group, IReadOnlyDictionary<string, int> pages)
    {
        var step = StepGroups.Merged(group);
        var text = group.Count > 1 ? $"moves as typed, to {group[^1].Step.Id}" : Short(step.Step.Text);
        var page = pages.TryGetValue(step.Step.Id, out var n) ? Bits.Count(n) : string.Empty;
        var marks = parts.Findings.Where(f => group.Any(g => string.Equals(f.Step, g.Step.Id, StringComparison.Ordinal))).Select(f => f.Grade).ToList();
        if (step.Cautions.Count > 0)
        {
            marks.Add(Grade.Caution);
        }

        var mark = marks.Count > 0 ? " " + Bits.Mark(marks.Max(), 3.2) : string.Empty;
        return new(
            $"<div class=\"or\">{Bits.Box}<b class=\"id\">{Markup.Escape(step.Step.Id)}</b><span>{Markup.Escape(text)}{mark}</span><span class=\"pg\">{page}</span></div>",
            Math.Max(4.3, (TextMeasure.Lines(text + (marks.Count > 0 ? " MM" : string.Empty), Face.Plain, 8.4, Block.OverviewRight - 21) * 3.75) + 0.7));
    }

    // A step's first words name it here: what it is cut with and how stands at the step.
    private static string Short(string text)
    {
        var with = text.IndexOf(" with ", StringComparison.Ordinal);
        return with > 0 ? text[..with] : text;
    }

    private static string Heading(PlanStage stage)
    {
        // "holding A in small vise on rotary, ..." without what the letter says already.
        var text = stage.Stage.Text;
        var start = $"holding {stage.Stage.Name} ";
        text = text.StartsWith(start, StringComparison.Ordinal) ? text[start.Length..] : text;
        return text.StartsWith("in ", StringComparison.Ordinal) ? text[3..] : text;
    }
}
