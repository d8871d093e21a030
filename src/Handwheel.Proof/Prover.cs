using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Stocks;
using Handwheel.Proof.Designs;
using Handwheel.Proof.Following;
using Handwheel.Proof.Loads;
using Handwheel.Proof.Nets;
using Handwheel.Proof.Questions;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;

namespace Handwheel.Proof;

/// <summary>
/// Proves a course: follows it from the bare stock as the machine truly would and holds what comes of it against the drawing. Knows only moves and declared
/// facts, the drawing, the stock and the shop. Pure: the same input gives the same result, whatever the threads.
/// </summary>
public static class Prover
{
    // So many rays in all are looked at when no spacing is asked for.
    private const double Rays = 200_000;

    /// <summary>Proves a course.</summary>
    /// <param name="course">How the job is cut.</param>
    /// <param name="drawing">What the part must be, as the reader checked it.</param>
    /// <param name="stock">The piece it is cut from.</param>
    /// <param name="shop">What is on hand.</param>
    /// <param name="progress">Told how far the proof has come; null: no one.</param>
    /// <param name="options">How finely to look; null: the usual.</param>
    /// <returns>Findings, sizes, release.</returns>
    /// <exception cref="ArgumentNullException">An argument that is needed is null.</exception>
    public static ProofResult Prove(
        Course course, Drawing drawing, Stock stock, Shop shop, IProgress<ProofProgress>? progress = null, ProofOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(shop);
        options ??= ProofOptions.Usual;
        progress?.Report(new ProofProgress("following", 0));
        var most = DrawnPart.Of(drawing, PartVariant.MostMetal);
        var trace = new Follower(course, shop, StockSolid.Of(stock), most).Follow();
        var subject = new Subject
        {
            Course = course,
            Drawing = drawing,
            Stock = stock,
            Shop = shop,
            Trace = trace,
            Least = DrawnPart.Of(drawing, PartVariant.LeastMetal),
            Most = most,
            Aimed = DrawnPart.Of(drawing, PartVariant.Aimed),
            Options = options,
        };
        return Answer(subject, progress);
    }

    private static ProofResult Answer(Subject subject, IProgress<ProofProgress>? progress)
    {
        var (trace, threads) = (subject.Trace, subject.Options.Threads);
        progress?.Report(new ProofProgress("release", 0.1));
        var box = trace.Bare.Bounds;
        var spacing = subject.Options.Spacing is > 0 and var asked ? asked : SpacingOf(box);
        var bare = new RayGrid(trace.Bare, spacing, box, threads);
        var aimed = bare.Like(subject.Aimed.Solid);
        var release = Release.Ask(subject, bare, aimed, share => progress?.Report(new ProofProgress("release", 0.1 + (0.5 * share))));
        progress?.Report(new ProofProgress("gouge", 0.6));
        var nets = new PartNets(bare, release.Pieces.Grid, bare.Like(subject.Least.Solid), bare.Like(subject.Most.Solid));
        var (gouges, gouging, isShort) = Gouge.Ask(subject, nets);
        var known = new Explained(subject, gouging, isShort);
        progress?.Report(new ProofProgress("size", 0.7));
        var (sizes, sizeFindings) = Sizes.Ask(subject, known.Any);
        var leftover = release is { Finished: true, Part: >= 0 } ? Leftover.Ask(subject, nets, release.Pieces, release.Part) : [];
        progress?.Report(new ProofProgress("strike", 0.8));
        var loads = CutLoads.Of(subject);
        var designs = DesignProof.Of(subject.Drawing, subject.Stock, subject.Shop, subject.Unit);
        List<Finding> findings =
        [
            .. trace.Findings,
            .. gouges,
            .. known.Graded(release.Findings),
            .. known.Graded(leftover),
            .. Zero.Ask(subject, gouging),
            .. Zero.Turned(subject),
            .. Travel.Ask(subject),
            .. Strike.Ask(subject),
            .. Plunge.Ask(subject),
            .. known.Graded(Direction.Ask(subject)),
            .. Questions.Lock.Ask(subject),
            .. Questions.Spindle.Ask(subject),
            .. Reach.Ask(subject),
            .. known.Graded(Load.Ask(subject, loads)),
            .. known.Graded(Thin.Ask(subject, loads)),
            .. known.Graded(Grip.Ask(subject, loads)),
            .. Knock.Ask(subject),
            .. Burr.Ask(subject),
            .. Sawn.Ask(subject),
            .. Unmeasured.Ask(subject),
            .. Order.Ask(subject),
            .. OnHand.Ask(subject),
            .. sizeFindings,
            .. Design.Ask(designs),
        ];
        progress?.Report(new ProofProgress("done", 1));
        return new ProofResult
        {
            Findings = Ordered(subject, findings),
            Sizes = sizes,
            Designs = designs,
            Release = release.Result,
            Guarantee = Guarantee(spacing, subject.Unit),
            Stocks = [.. trace.Steps.Select(s => Stocks.Of(s))],
        };
    }

    private static double SpacingOf(Box3 box)
    {
        var area = (box.Size.X * box.Size.Y) + (box.Size.Y * box.Size.Z) + (box.Size.Z * box.Size.X);
        return Math.Sqrt(area / Rays);
    }

    private static IReadOnlyList<Finding> Ordered(Subject subject, List<Finding> findings)
    {
        var order = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var step in subject.Trace.Steps)
        {
            order.TryAdd(step.Step.Id, order.Count);
        }

        int At(Finding f) => f.Step is { } id && order.TryGetValue(id, out var place) ? place : int.MaxValue;
        return [.. findings
            .Select((f, i) => (Finding: f, Index: i))
            .OrderBy(p => At(p.Finding))
            .ThenByDescending(p => p.Finding.Grade)
            .ThenBy(p => p.Finding.Move ?? 0)
            .ThenBy(p => p.Index)
            .Select(p => p.Finding)];
    }

    private static string Guarantee(double spacing, LengthUnit unit) =>
        $"Looked at on three sets of rays {unit.Told(spacing)} apart, every interval exact: what is lost or left is found wherever its shadow along an axis holds a disc of {unit.Told(Math.Sqrt(2) * spacing)}, however thin; depths are refined off the rays.";
}
