using Handwheel.Jobs;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Proof;
using Handwheel.Sheets.Text;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Sheets.Pictures;

/// <summary>Everything a holding's pictures are drawn from: how the part lies, what holds it, its edges and the stock after each step.</summary>
internal sealed class HoldingScene
{
    private readonly IReadOnlyDictionary<string, StepStock> _stocks;

    /// <summary>Initializes a new instance of the <see cref="HoldingScene"/> class.</summary>
    /// <param name="job">The job.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="part">Its part.</param>
    /// <param name="setup">The set-up facts.</param>
    /// <param name="stocks">The stock after each step.</param>
    public HoldingScene(Job job, Shop shop, PartColumns part, SetupFacts setup, IReadOnlyDictionary<string, StepStock> stocks)
    {
        (Job, Shop, Part, Setup, _stocks) = (job, shop, part, setup, stocks);
        Pose = Poses.Of(setup);
        Upright = Standing(Pose);
        Numbers = new(job.Unit, shop, setup);
        StockBox = Boxed(job.Stock.Least, new(job.Stock.Least.X + job.Stock.Used.X, job.Stock.Least.Y + job.Stock.Used.Y, job.Stock.Least.Z + job.Stock.Used.Z));
        PartBox = Boxed(new(part.Box.Left, part.Box.Low, part.Low), new(part.Box.Right, part.Box.High, part.High));
        (Seen, Hidden) = Edges();
    }

    /// <summary>Heights the holding's moves were planned to cut at, and the stock's own faces.</summary>
    public IReadOnlyList<double> Planned { get; init; } = [];

    /// <summary>Steps by hand after the part has come off the stock: the part alone is drawn.</summary>
    public IReadOnlySet<string> Freed { get; init; } = new SortedSet<string>(StringComparer.Ordinal);

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>The shop.</summary>
    public Shop Shop { get; }

    /// <summary>The part.</summary>
    public PartColumns Part { get; }

    /// <summary>The set-up facts.</summary>
    public SetupFacts Setup { get; }

    /// <summary>How readings are printed.</summary>
    public SheetNumbers Numbers { get; }

    /// <summary>How the part lies.</summary>
    public Pose Pose { get; }

    /// <summary>Whether the part's Z stands upright here: 1 as drawn, -1 upside down, 0 leaning or on its side.</summary>
    public int Upright { get; }

    /// <summary>The bare stock's box in the holding at theta 0.</summary>
    public (Box2 Plan, double Low, double High) StockBox { get; }

    /// <summary>The part's box in the holding at theta 0.</summary>
    public (Box2 Plan, double Low, double High) PartBox { get; }

    /// <summary>The part's edges seen from above, holding plan at theta 0.</summary>
    public IReadOnlyList<IReadOnlyList<Point2>> Seen { get; }

    /// <summary>Its hidden edges.</summary>
    public IReadOnlyList<IReadOnlyList<Point2>> Hidden { get; }

    /// <summary>The highest metal before a step, as the work lies at theta.</summary>
    /// <param name="step">The step's id.</param>
    /// <param name="theta">Degrees.</param>
    /// <returns>Asked in holding plan.</returns>
    public Func<Point2, double?> Before(string step, double theta) => Turned(Freed.Contains(step) ? Part.Top : _stocks.TryGetValue(step, out var stock) ? stock.TopBefore : Bare, theta);

    /// <summary>The same after it.</summary>
    /// <param name="step">The step's id.</param>
    /// <param name="theta">Degrees.</param>
    /// <returns>Asked in holding plan.</returns>
    public Func<Point2, double?> After(string step, double theta) => Turned(Freed.Contains(step) ? Part.Top : _stocks.TryGetValue(step, out var stock) ? stock.TopAfter : Bare, theta);

    /// <summary>A box in plan as it lies at theta.</summary>
    /// <param name="box">Theta 0.</param>
    /// <param name="theta">Degrees.</param>
    /// <returns>The box round it.</returns>
    public Box2 AtTheta(Box2 box, double theta) => Box2.Around(new Point2[] { new(box.Left, box.Low), new(box.Right, box.Low), new(box.Right, box.High), new(box.Left, box.High) }.Select(p => InPlan(Turning(theta), p)));

    /// <summary>Runs of points as they lie at theta.</summary>
    /// <param name="runs">Theta 0.</param>
    /// <param name="theta">Degrees.</param>
    /// <returns>Turned.</returns>
    public IReadOnlyList<IReadOnlyList<Point2>> AtTheta(IReadOnlyList<IReadOnlyList<Point2>> runs, double theta) =>
        Through(Turning(theta), runs);

    /// <summary>Whether a pose keeps the part's Z upright.</summary>
    /// <param name="pose">The pose.</param>
    /// <returns>1 as drawn, -1 upside down, 0 leaning or on its side.</returns>
    public static int Standing(Pose pose) => pose.ApplyDirection(Vector3.UnitZ).Z is var up && Math.Abs(Math.Abs(up) - 1) < 1e-9 ? Math.Sign(up) : 0;

    private Func<Point2, double?> Turned(Func<Point2, double?> top, double theta)
    {
        var back = Turning(-theta);
        return back.Equals(Pose.Identity) ? top : p => top(InPlan(back, p));
    }

    private double? Bare(Point2 p) => StockBox.Plan.Holds(p.X, p.Y) ? StockBox.High : null;

    private (Box2 Plan, double Low, double High) Boxed(Point3 least, Point3 most)
    {
        var corners = new List<Point3>();
        for (var n = 0; n < 8; n++)
        {
            corners.Add(Pose.Apply(new((n & 1) == 0 ? least.X : most.X, (n & 2) == 0 ? least.Y : most.Y, (n & 4) == 0 ? least.Z : most.Z)));
        }

        return (Box2.Around(corners.Select(c => new Point2(c.X, c.Y))), corners.Min(c => c.Z), corners.Max(c => c.Z));
    }

    private (IReadOnlyList<IReadOnlyList<Point2>> Seen, IReadOnlyList<IReadOnlyList<Point2>> Hidden) Edges()
    {
        if (Upright == 0)
        {
            var part = new Placed(Part.Solid, Pose);
            var box = PartBox.Plan.Grown(0.6);
            var map = new HeightMap(box, 70, Math.Clamp((int)(70 * box.Tall / box.Wide), 16, 110), p => LeaningTop(part, p));
            return ([.. map.Levels().SelectMany(l => map.Above(double.IsNegativeInfinity(l.Divide) ? -1e9 : l.Divide)).Select(l => (IReadOnlyList<Point2>)[.. l, l[0]])], []);
        }

        var edges = PartEdges.Look(Part, fromBelow: Upright < 0);
        return (Through(Pose, edges.Seen), Through(Pose, edges.Hidden));
    }

    private static IReadOnlyList<IReadOnlyList<Point2>> Through(Pose pose, IReadOnlyList<IReadOnlyList<Point2>> runs) => [.. runs.Select(r => (IReadOnlyList<Point2>)[.. r.Select(p => InPlan(pose, p))])];

    // How the work is turned in pictures: an indexer's work is drawn as it lies at nought.
    private Pose Turning(double theta) => Setup.Rotary is null or { Lies: true } || theta % 360 == 0 ? Pose.Identity : Poses.Turn(Setup, theta % 360);

    private static Point2 InPlan(Pose pose, Point2 p)
    {
        var at = pose.Apply(p.At(0));
        return new(at.X, at.Y);
    }

    // The part's top where it lies on its side or leans.
    private static double? LeaningTop(ISolid part, Point2 p) => part.Sound(Line3.AlongZ(p.X, p.Y)) is { Count: > 0 } metal ? metal[^1].To : null;
}
