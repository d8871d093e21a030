using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Steps;
using Handwheel.Plan;
using Handwheel.Plan.Lines;
using Handwheel.Sheets.Pictures;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>One block a step: picture, workings and cautions at the left, readings at the right.</summary>
internal static class StepBlocks
{
    private const double PictureTall = 52;
    private const double HandPictureTall = 34;

    /// <summary>A stage's steps.</summary>
    /// <param name="parts">The sheet's parts.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="scene">Its pictures, by hand those of the holding before; null: none.</param>
    /// <param name="moves">Its moves by step.</param>
    /// <returns>Blocks.</returns>
    public static IEnumerable<Block> Of(SheetParts parts, PlanStage stage, HoldingScene? scene, IReadOnlyDictionary<string, IReadOnlyList<Segment>> moves)
    {
        var byHand = stage.Setup is null;
        var numbers = byHand ? parts.Numbers : scene?.Numbers ?? parts.Numbers;
        var rows = new MoveRows(numbers, stage.Setup, parts.Plan.Shop, Cutting(parts));
        var told = new Dictionary<(string Code, string Message), string>();
        foreach (var group in StepGroups.Of(stage.Steps))
        {
            var step = StepGroups.Merged(group);
            var id = step.Step.Id;
            var right = new StepRows(step, rows);
            var left = new List<Piece>();
            Segment[] segments = [.. group.SelectMany(s => moves.GetValueOrDefault(s.Step.Id) ?? [])];
            if (scene is not null && group.Any(s => moves.ContainsKey(s.Step.Id)))
            {
                left.AddRange(StepPicture.Draw(scene, (id, group[^1].Step.Id), segments, Block.StepLeft, byHand ? HandPictureTall : PictureTall)
                    .Select((s, i) => new Piece(s.Picture.ToString(), s.Picture.Height + 1) { Row = i == 0 ? 0 : right.RowOf(s.Move) }));
            }

            left.AddRange(step.Cautions.Select(c => FindingPieces.Box(Grade.Caution, c, Block.StepLeft)));
            left.AddRange(Findings(parts, group, told));
            Place(step, numbers, left, right);
            if (stage.DryCheck.Count > 0 && ReferenceEquals(group[^1], LastZero(stage)))
            {
                right.Under(HoldingBlocks.Dry(stage, numbers, Block.StepRight));
            }

            yield return new()
            {
                Key = id,
                Under = byHand ? "by hand" : $"holding {stage.Stage.Name}",
                Columns = Columns.Step,
                Head = (goesOn, more) => Head(step, goesOn, more),
                RightAgain = right.Heading,
                Left = [.. left.OrderBy(p => p.Row)],
                Right = right.Pieces,
            };
        }
    }

    // The step that finds the holding's last zero before anything is cut; its first step where it finds none.
    private static PlanStep LastZero(PlanStage stage) => stage.Steps.TakeWhile(s => s.Step is ZeroStep).LastOrDefault() ?? stage.Steps[0];

    // Workings stand under the picture while there is room beside the readings, else under the readings: whichever column is the shorter.
    private static void Place(PlanStep step, SheetNumbers numbers, List<Piece> left, StepRows right)
    {
        var hands = step.Lines.OfType<HandLine>().SelectMany(l => l.Workings).Except(step.Workings).ToArray();
        Piece[] narrow = [.. WorkingPieces.Of(step, numbers, Block.StepLeft, right.RowOf), .. WorkingPieces.Of(hands, numbers, Block.StepLeft)];
        Piece[] wide = [.. WorkingPieces.Of(step, numbers, Block.StepRight, right.RowOf), .. WorkingPieces.Of(hands, numbers, Block.StepRight)];
        for (var i = 0; i < narrow.Length; i++)
        {
            var (leftTall, rightTall) = (left.Sum(p => p.Height) + narrow[i].Height, right.Pieces.Sum(p => p.Height) + wide[i].Height);
            if (leftTall <= rightTall)
            {
                left.Add(narrow[i]);
            }
            else
            {
                right.Under(wide[i]);
            }
        }
    }

    private static SortedSet<int> Cutting(SheetParts parts) =>
        [.. parts.Plan.Course.Stages.SelectMany(s => s.Steps).SelectMany(s => s.Events).OfType<Move>().Where(m => m.Cutting).Select(m => m.Number)];

    // A finding said before in this holding, word for word, is told by where it was said; a halt is always said whole.
    private static IEnumerable<Piece> Findings(SheetParts parts, IReadOnlyList<PlanStep> group, Dictionary<(string Code, string Message), string> told)
    {
        var ids = group.Select(s => s.Step.Id).ToArray();
        var again = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var finding in parts.Findings.Where(f => f.Step is { } step && ids.Contains(step, StringComparer.Ordinal)))
        {
            if (finding.Grade == Grade.Halt || told.TryAdd((finding.Code, finding.Message), group[0].Step.Id))
            {
                var all = parts.Findings.Where(f => f.Grade == finding.Grade && f.Code == finding.Code && f.Message == finding.Message).Select(f => f.Step ?? string.Empty).Distinct(StringComparer.Ordinal).ToArray();
                yield return FindingPieces.Of(finding, Block.StepLeft, placed: false, finding.Grade == Grade.Halt || all.Length == 1 ? string.Empty : StepGroups.Runs(all));
            }
            else if (told[(finding.Code, finding.Message)] is var at && at != group[0].Step.Id && again.Add(finding.Code + at))
            {
                yield return FindingPieces.Box(finding.Grade, $"{finding.Code}: as said at {at}.", Block.StepLeft);
            }
        }
    }

    private static Piece Head(PlanStep step, bool goesOn, bool more)
    {
        var title = goesOn ? step.Step.Text + ", continued" : step.Step.Text;
        var heading = goesOn ? string.Empty : step.Heading;
        var wide = TextMeasure.Width(title, Face.Bold, 11.5);
        var room = Block.PageWide - 17 - 22;
        var beside = heading.Length > 0 && wide + 3 + TextMeasure.Width(heading, Face.Plain, 8.6) < room;
        var below = heading.Length > 0 && !beside;
        var lines = TextMeasure.Lines(title, Face.Bold, 11.5, room);
        var done = more ? "<span class=\"dn\">goes on overleaf</span>" : $"<span class=\"dn\">done {Bits.Box}</span>";
        return new(
            $"<div class=\"sh\"><b class=\"id\">{Markup.Escape(step.Step.Id)}</b><h3>{Markup.Escape(title)}{(beside ? $" <small>{Markup.Escape(heading)}</small>" : string.Empty)}</h3>{done}</div>{(below ? $"<p class=\"su\">{Markup.Escape(heading)}</p>" : string.Empty)}",
            (lines * 5.2) + 2.4 + (below ? (TextMeasure.Lines(heading, Face.Plain, 8.6, Block.PageWide) * 3.9) + 0.4 : 0));
    }
}
