using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Workings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// The work in the indexer's chuck: the middle of the stock on its axis, which lies along X; the chuck at the left unless its face stands right of the part's middle: what is made stands out of it.
internal sealed class IndexerSetter(Shop shop, Indexer indexer, Figures figures, List<string> how, List<Finding> findings)
{
    // What the chuck grips where nothing was said, millimetres (common practice, no source).
    private const double UsualGrip = 20;

    // Length of the indexer's head behind its chuck, millimetres (common practice, no source).
    private const double HeadLong = 120;

    // Step an angle made by a plate's holes is told to, degrees.
    private const double PlateStep = 0.0001;

    internal SetupFacts Set(Holding h, HoldingPlan plan, HeldMetal held, SetupFacts bare)
    {
        double y = (plan.Least.Y + plan.Most.Y) / 2, z = (plan.Least.Z + plan.Most.Z) / 2;
        var box = held.Box(0);
        var run = held.Widest(true, box.Min.Y, box.Max.Y, box.Min.Z, box.Max.Z) ?? (box.Min.X, box.Max.X);
        var face = h.JawsAt?.Value ?? (run.Low + Math.Min(UsualGrip, (run.High - run.Low) / 3));
        var left = h.JawsAt is null || face <= plan.PartAlongX();
        var radius = Gripped(held, run, face, left, y, z);
        var deep = left ? face - run.Low : run.High - face;
        how.Add($"Indexer on the table, its axis along X, {figures.LU(indexer.CentreHigh)} high, swept parallel by a test bar; its chuck at the {(left ? "left" : "right")}, its face at X {figures.R(face, shop.Mill!.X.Step)}, {figures.LU(deep)} of the work in it.");
        how.Add($"The axis stands at Y {figures.R(y, shop.Mill.Y.Step)}, Z {figures.R(z, shop.Mill.Z.Step)}. Angles are of the work, counterclockwise as seen from {(left ? "its free end" : "X plus")}; index forward only and lock the spindle before each cut.");
        if (2 * radius > indexer.Takes && indexer.Takes > 0)
        {
            findings.Add(FindingCatalogue.Jaws(h.Where, $"The work is {figures.LU(2 * radius)} across where it is gripped, and the indexer takes {figures.LU(indexer.Takes)}: it does not go in.", "Grip it where it is smaller, turn it down first, or hold it otherwise."));
        }

        var dial = indexer.DialStep > 0 ? indexer.DialStep * Plane.ToDegrees : PlateStep;
        return bare with
        {
            Fixtures = Fixtures(face, left, radius, y, z),
            Axes = bare.Axes with { T = new(null, null, Readout: false, dial, 0) },
            Rotary = new(0, y, z, Lies: true, 1, 0, dial),
        };
    }

    // How far the metal in the chuck reaches up from the axis: what its upper jaw bears on.
    private static double Gripped(HeldMetal held, (double Low, double High) run, double face, bool left, double y, double z)
    {
        var (from, to) = left ? (run.Low, face) : (face, run.High);
        var high = 0.0;
        for (var i = 0; i <= 10; i++)
        {
            high = Math.Max(high, (held.TopAt(new Point2(from + 0.01 + ((to - from - 0.02) * i / 10), y), 0) ?? z) - z);
        }

        return Math.Max(high, 0.5);
    }

    // Four jaws about the work, the chuck and the head behind it, the table below. A jaw is taken as 18 long, 12 high and 8 wide (common practice, no source).
    private List<FixtureFacts> Fixtures(double face, bool left, double radius, double y, double z)
    {
        const double Jaw = 12, Half = 4, Long = 18;
        var (a, b) = left ? (face - Long, face) : (face, face + Long);
        FixtureFacts Block(string name, bool holds, (double X0, double X1) x, (double Y0, double Y1) across, (double Z0, double Z1) high) => new()
        {
            Name = name,
            Holds = holds,
            Turns = holds,
            Least = new(x.X0, across.Y0, high.Z0),
            Most = new(x.X1, across.Y1, high.Z1),
        };
        var body = Math.Max(indexer.Takes, 2 * radius) / 2 + Jaw;
        var behind = left ? (a - HeadLong, a) : (b, b + HeadLong);
        return
        [
            Block("indexer's chuck", true, (a, b), (y - Half, y + Half), (z + radius, z + radius + Jaw)),
            Block("indexer's chuck", true, (a, b), (y - Half, y + Half), (z - radius - Jaw, z - radius)),
            Block("indexer's chuck", true, (a, b), (y + radius, y + radius + Jaw), (z - Half, z + Half)),
            Block("indexer's chuck", true, (a, b), (y - radius - Jaw, y - radius), (z - Half, z + Half)),
            Block("indexer", false, behind, (y - body, y + body), (z - indexer.CentreHigh, z + body)),
            Block("table", false, (-shop.Mill!.X.Travel, shop.Mill.X.Travel), (-shop.Mill.Y.Travel, shop.Mill.Y.Travel), (z - indexer.CentreHigh - 60, z - indexer.CentreHigh)),
        ];
    }
}
