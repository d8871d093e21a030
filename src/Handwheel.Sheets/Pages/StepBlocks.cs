using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Sheets.Pictures;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>One block a step: picture, workings and cautions at the left, readings at the right.</summary>
internal static class StepBlocks
{
    /// <summary>A holding's steps.</summary>
    /// <param name="parts">The sheet's parts.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="scene">Its pictures; null by hand.</param>
    /// <param name="moves">Its moves by step.</param>
    /// <returns>Blocks.</returns>
    public static IEnumerable<Block> Of(SheetParts parts, PlanStage stage, HoldingScene? scene, IReadOnlyDictionary<string, IReadOnlyList<Segment>> moves)
    {
        var numbers = scene?.Numbers ?? parts.Numbers;
        var rows = new MoveRows(numbers, stage.Setup, parts.Plan.Shop, Cutting(parts));
        foreach (var step in stage.Steps)
        {
            var id = step.Step.Id;
            var left = new List<Piece>();
            if (scene is not null && moves.TryGetValue(id, out var segments))
            {
                left.AddRange(StepPicture.Draw(scene, id, segments, Block.StepLeft, 52).Select(s => new Piece(s.ToString(), s.Height + 1)));
            }

            left.AddRange(Findings(parts, step, id));
            var right = new List<Piece>();
            if (step.Lines.Any(l => l is MoveLine or PassBracket or TouchOffLine))
            {
                right.Add(rows.Heading());
            }

            right.AddRange(rows.Of(step.Lines.Select(l => l.Remark == step.Step.Text ? l with { Remark = string.Empty } : l)));
            Place(step, numbers, left, right);
            yield return new()
            {
                Key = id,
                Under = scene is null ? "by hand" : $"holding {stage.Stage.Name}",
                Columns = Columns.Step,
                Head = Head(step, goesOn: false),
                Again = Head(step, goesOn: true),
                Left = left,
                Right = right,
            };
        }
    }

    // Workings stand under the picture while there is room beside the readings, else under the readings: whichever column is the shorter.
    private static void Place(PlanStep step, SheetNumbers numbers, List<Piece> left, List<Piece> right)
    {
        var hands = step.Lines.OfType<HandLine>().SelectMany(l => l.Workings).Except(step.Workings).ToArray();
        Piece[] narrow = [.. WorkingPieces.Of(step, numbers, Block.StepLeft), .. WorkingPieces.Of(hands, numbers, Block.StepLeft)];
        Piece[] wide = [.. WorkingPieces.Of(step, numbers, Block.StepRight), .. WorkingPieces.Of(hands, numbers, Block.StepRight)];
        for (var i = 0; i < narrow.Length; i++)
        {
            var (leftTall, rightTall) = (left.Sum(p => p.Height) + narrow[i].Height, right.Sum(p => p.Height) + wide[i].Height);
            if (leftTall <= rightTall)
            {
                left.Add(narrow[i]);
            }
            else
            {
                right.Add(wide[i]);
            }
        }
    }

    private static SortedSet<int> Cutting(SheetParts parts) =>
        [.. parts.Plan.Course.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Events).OfType<Move>().Where(m => m.Cutting).Select(m => m.Number)];

    private static IEnumerable<Piece> Findings(SheetParts parts, PlanStep step, string id) =>
        step.Cautions.Select(c => FindingPieces.Box(Grade.Caution, c, Block.StepLeft))
            .Concat(parts.Findings.Where(f => string.Equals(f.Step, id, StringComparison.Ordinal)).Select(f => FindingPieces.Of(f, Block.StepLeft, placed: false)));

    private static Piece Head(PlanStep step, bool goesOn)
    {
        var title = goesOn ? step.Step.Text + ", continued" : step.Step.Text;
        var heading = goesOn ? string.Empty : step.Heading;
        var wide = TextMeasure.Width(title, Face.Bold, 11.5);
        var room = Block.PageWide - 17 - 16;
        var beside = heading.Length > 0 && wide + 3 + TextMeasure.Width(heading, Face.Plain, 8.6) < room;
        var below = heading.Length > 0 && !beside;
        var lines = TextMeasure.Lines(title, Face.Bold, 11.5, room);
        var done = goesOn ? string.Empty : $"<span class=\"dn\">done {Bits.Box}</span>";
        return new(
            $"<div class=\"sh\"><b class=\"id\">{Markup.Escape(step.Step.Id)}</b><h3>{Markup.Escape(title)}{(beside ? $" <small>{Markup.Escape(heading)}</small>" : string.Empty)}</h3>{done}</div>{(below ? $"<p class=\"su\">{Markup.Escape(heading)}</p>" : string.Empty)}",
            (lines * 5.2) + 2.4 + (below ? (TextMeasure.Lines(heading, Face.Plain, 8.6, Block.PageWide) * 3.9) + 0.4 : 0));
    }
}
