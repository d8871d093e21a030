using System.Security.Cryptography;
using System.Text;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Stocks;
using Handwheel.Plan;
using Handwheel.Proof;
using Handwheel.Sheets.Pages;
using Handwheel.Sheets.Pictures;

namespace Handwheel.Sheets;

/// <summary>The dial sheet: one self-contained page of HTML that prints on A4, with every reading to crank to, in order.</summary>
public static class DialSheet
{
    private const double DrawingRoom = 104;
    private const double HoldingRoom = 98;

    /// <summary>Writes the sheet. A pure function of its arguments: the same input gives the same bytes.</summary>
    /// <param name="plan">The job worked out.</param>
    /// <param name="proof">What cutting it in simulation showed; null: not proved, and the sheet says so.</param>
    /// <param name="fingerprint">A short mark of the job's and the shop's text, see <see cref="Fingerprint"/>.</param>
    /// <param name="progress">Told what share of the steps is drawn, 0 to 1; null: no one.</param>
    /// <returns>HTML.</returns>
    public static string Html(JobPlan plan, ProofResult? proof, string fingerprint, IProgress<double>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(fingerprint);
        var stocks = new SortedDictionary<string, StepStock>(StringComparer.Ordinal);
        foreach (var stock in proof?.Stocks ?? [])
        {
            stocks[stock.Step] = stock;
        }

        Finding[] findings = [.. plan.Findings, .. proof?.Findings ?? []];
        var parts = new SheetParts(plan, proof, fingerprint, new(plan.Job.Drawing), new(plan.Job.Unit, plan.Shop, null), findings, stocks);
        var rooms = Rooms(parts);
        var work = Work(parts, rooms.Holding, progress).ToArray();
        // Where each step stands is known once the pages are divided; the order of work takes no more room with it than without.
        var first = Divide(parts, rooms.Drawing, work, new SortedDictionary<string, int>(StringComparer.Ordinal));
        var pages = new SortedDictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < first.Count; i++)
        {
            foreach (var block in first[i].Where(b => b.Key.Length > 0))
            {
                pages.TryAdd(block.Key, i + 1);
            }
        }

        return SheetPage.Html(parts, Divide(parts, rooms.Drawing, work, pages));
    }

    /// <summary>A mark by which a sheet and what it was made from are known to belong together: the first 32 bits of SHA-256 (FIPS 180-4) over the texts.</summary>
    /// <param name="job">The job's text.</param>
    /// <param name="shop">The shop's text.</param>
    /// <returns>Eight hexadecimal digits in two groups.</returns>
    public static string Fingerprint(string job, string shop)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(job + "\0" + shop)));
        return $"{hash[..4]} {hash[4..8]}";
    }

    private static IReadOnlyList<IReadOnlyList<Block>> Divide(SheetParts parts, double room, IReadOnlyList<Block> work, IReadOnlyDictionary<string, int> pages) =>
        Paginator.Divide(Joined([.. OverviewBlocks.Of(parts, pages, room), .. work]), SheetPage.FirstHeadTall(parts), SheetPage.HeadTall);

    // The overview's blocks before the first step run on as one, column under column.
    private static IReadOnlyList<Block> Joined(IReadOnlyList<Block> blocks)
    {
        var joined = new List<Block>();
        foreach (var block in blocks)
        {
            if (block.Columns == Columns.Overview && joined.Count > 0 && joined[^1].Columns == Columns.Overview)
            {
                joined[^1] = joined[^1].Then(block);
            }
            else
            {
                joined.Add(block);
            }
        }

        return joined;
    }

    // Heights cut at so far in holdings that lie alike, and the bare stock's faces, as this holding reads them.
    private static IReadOnlyList<double> Planned(IEnumerable<CourseStage> stages, SetupFacts setup, Stock stock)
    {
        var pose = Poses.Of(setup);
        var faces = new[] { stock.Least.Z, stock.Least.Z + stock.Used.Z }.Select(z => pose.Apply(new(0, 0, z)).Z);
        var cuts = stages.Where(s => s.Setup is { } other && HoldingScene.Standing(Poses.Of(other)) != 0).SelectMany(s => s.Steps.SelectMany(t => t.Events).OfType<Move>().Where(m => m.Cutting)
            .Select(m => pose.Apply(Poses.Of(s.Setup!).Inverse().Apply(new(0, 0, m.To.Z))).Z));
        return HoldingScene.Standing(pose) == 0 ? [] : [.. cuts.Concat(faces).Distinct().Order()];
    }

    // How large the drawing and the first holding are drawn: so that both fill the first page's column best and do not run over it.
    private static (double Drawing, double Holding) Rooms(SheetParts parts)
    {
        var (i, stage) = parts.Plan.Stages.Index().FirstOrDefault(s => s.Item.Setup is not null);
        if (stage is null || Scene(parts, i) is not { } scene)
        {
            return (DrawingRoom, HoldingRoom);
        }

        var room = Paginator.Room(SheetPage.FirstHeadTall(parts)) - (2 * Paginator.Gap);
        double[] shares = [1.3, 1.2, 1.1, 1, 0.9, 0.8];
        var drawings = shares.Select(s => (Room: DrawingRoom * s, Tall: Overview(parts, DrawingRoom * s).Sum(b => b.Left.Sum(p => p.Height)))).ToArray();
        var holdings = shares.Select(s => (Room: HoldingRoom * s, Tall: HoldingBlocks.Of(parts, stage, scene, first: true, HoldingRoom * s).Left.Sum(p => p.Height))).ToArray();
        var best = drawings.SelectMany(d => holdings.Select(h => (Drawing: d.Room, Holding: h.Room, Tall: d.Tall + h.Tall))).Where(p => p.Tall <= room).OrderByDescending(p => p.Tall).ToArray();
        return best.Length > 0 ? (best[0].Drawing, best[0].Holding) : (DrawingRoom, HoldingRoom);
    }

    private static IEnumerable<Block> Overview(SheetParts parts, double room) => OverviewBlocks.Of(parts, new SortedDictionary<string, int>(StringComparer.Ordinal), room);

    private static HoldingScene? Scene(SheetParts parts, int stage) => parts.Plan.Stages[stage].Setup is { } setup
        ? new(parts.Plan.Job, parts.Plan.Shop, parts.Part, setup, parts.Stocks) { Planned = Planned(parts.Plan.Course.Stages.Take(stage + 1), setup, parts.Plan.Job.Stock) }
        : null;

    // Work by hand is drawn as the part lies in its drawing: what held it does not matter there.
    private static HoldingScene? ByHand(SheetParts parts, int stage)
    {
        if (parts.Plan.Stages.Take(stage).LastOrDefault(s => s.Setup is not null)?.Setup is not { } before)
        {
            return null;
        }

        var drawn = new SetupFacts { Up = "top", PartOrigin = default, Fixtures = [], Axes = before.Axes };
        return new(parts.Plan.Job, parts.Plan.Shop, parts.Part, drawn, parts.Stocks) { Freed = Freed(parts), Planned = Planned(parts.Plan.Course.Stages.Take(stage), drawn, parts.Plan.Job.Stock) };
    }

    private static SortedSet<string> Freed(SheetParts parts)
    {
        var ids = parts.Plan.Stages.SelectMany(s => s.Steps).Select(s => s.Step.Id).ToArray();
        var at = Array.IndexOf(ids, parts.Plan.Course.ReleaseAt);
        return new(at < 0 ? [] : ids.Skip(at + 1), StringComparer.Ordinal);
    }

    private static IEnumerable<Block> Work(SheetParts parts, double room, IProgress<double>? progress)
    {
        double total = parts.Plan.Stages.Sum(s => s.Steps.Count);
        var drawn = 0;
        var courses = parts.Plan.Course.Stages;
        var cutters = false;
        // An order of work longer than a page's column leaves no room beside it for the set-up.
        var crowded = Overview(parts, DrawingRoom).Sum(b => b.Right.Sum(p => p.Height)) > Paginator.Room(SheetPage.FirstHeadTall(parts));
        for (var i = 0; i < parts.Plan.Stages.Count; i++)
        {
            var stage = parts.Plan.Stages[i];
            var scene = Scene(parts, i) ?? ByHand(parts, i);

            if (stage.Setup is not null && scene is not null)
            {
                yield return HoldingBlocks.Of(parts, stage, scene, first: !cutters, cutters ? HoldingRoom : room, under: !cutters && crowded);
            }

            if (!cutters)
            {
                cutters = true;
                yield return CutterBlocks.Of(parts, crowded);
            }

            var moves = i < courses.Count ? Segment.Of(courses[i], parts.Plan.Shop) : new SortedDictionary<string, IReadOnlyList<Segment>>(StringComparer.Ordinal);
            foreach (var block in StepBlocks.Of(parts, stage, scene, moves))
            {
                progress?.Report(++drawn / total);
                yield return block;
            }
        }

        foreach (var block in SizeBlocks.Of(parts))
        {
            yield return block;
        }
    }
}
