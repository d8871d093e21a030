using Handwheel.Jobs;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Moves;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Steps;
using Handwheel.Plan.Cranking;
using Handwheel.Plan.Workings;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Plan.Setting;

// How a holding truly stands: where the part lies, what holds it, how the axes stand.
internal sealed class HoldingSetter(Job job, Shop shop, AimedDrawing drawing, Figures figures)
{
    private const double TableThick = 60;

    private readonly List<string> how = [];
    private readonly List<Finding> findings = [];

    // What does not go in where it is to be held.
    internal IReadOnlyList<Finding> Findings => findings;

    internal (HoldingPlan Plan, SetupFacts Setup, IReadOnlyList<string> How) Set(Holding h, Workpiece metal)
    {
        var plan = new HoldingPlan(drawing, job.Stock, Placed(h));
        var bare = Bare(h, plan);
        if (Typed(h, new(metal, bare)) is { } shift)
        {
            plan = new(drawing, job.Stock, plan.Placement.Moved(new(plan.Placement.Shift.X + shift.X, plan.Placement.Shift.Y + shift.Y, 0)));
            bare = Bare(h, plan);
        }

        var held = new HeldMetal(metal, bare);
        if (h.InIndexer && shop.Indexer is { } indexer)
        {
            return (plan, new IndexerSetter(shop, indexer, figures, how, findings).Set(h, plan, held, bare with { Axes = Axes(Middle(h, held)) }), how);
        }

        var fixtures = shop.Holders.GetValueOrDefault(h.Holder) is { } holder ? Fixtures(h, holder, held) : [];
        var middle = Middle(h, held);
        return (plan, bare with { Fixtures = fixtures, Axes = Axes(middle), Rotary = Turning(h, fixtures) }, how);
    }

    // The part moved so that what its zeros are found on comes to lie where they say; a side keeps the drawing's own place unless a value was typed.
    private Placement Placed(Holding h)
    {
        var placement = Placement.Of(h);
        var plan = new HoldingPlan(drawing, job.Stock, placement);
        double x = 0, y = 0;
        foreach (var zero in h.Steps.OfType<ZeroStep>())
        {
            if (drawing.Find(zero.Feature) is not { } f || zero.On is not (ZeroOn.RotaryCentre or ZeroOn.FeatureAxis))
            {
                continue;
            }

            var at = plan.InPlan(f.View, drawing.PlaceOf(f, f.Places[0]));
            x = zero.Axes.Contains('x', StringComparison.Ordinal) ? -at.X : x;
            y = zero.Axes.Contains('y', StringComparison.Ordinal) ? -at.Y : y;
        }

        if (h.InIndexer && y == 0 && h.Steps.OfType<ZeroStep>().Any(z => z.On == ZeroOn.RotaryCentre && z.Axes.Contains('y', StringComparison.Ordinal)))
        {
            y = -(plan.Least.Y + plan.Most.Y) / 2;
        }

        return placement.Moved(new(x, y, 0));
    }

    // Where a value was typed for a side, the work is read from there: the finder beside that side stands at the value.
    private Point2? Typed(Holding h, HeldMetal held)
    {
        double x = 0, y = 0;
        var box = held.Box(0);
        foreach (var zero in h.Steps.OfType<ZeroStep>().Where(z => z.SetTo is not null && z.On is ZeroOn.LeftEnd or ZeroOn.RightEnd or ZeroOn.NearSide or ZeroOn.FarSide))
        {
            var alongX = zero.Axes.Contains('x', StringComparison.Ordinal);
            var half = (zero.Size?.Value ?? shop.Gauges.Values.Where(g => g.Kind == "finder" && g.Size > 0).Select(g => g.Size).DefaultIfEmpty(10).First()) / 2;
            if (held.Widest(alongX, alongX ? box.Min.Y : box.Min.X, alongX ? box.Max.Y : box.Max.X, box.Min.Z, box.Max.Z) is not { } extent)
            {
                continue;
            }

            var stands = zero.On is ZeroOn.LeftEnd or ZeroOn.NearSide ? extent.Low - half : extent.High + half;
            (x, y) = alongX ? (zero.SetTo!.Value - stands, y) : (x, zero.SetTo!.Value - stands);
        }

        return x != 0 || y != 0 ? new Point2(x, y) : null;
    }

    private static SetupFacts Bare(Holding h, HoldingPlan plan) => new()
    {
        Up = Poses.NameOf(h.Up),
        Turn = h.Turn * Plane.ToDegrees,
        TiltX = h.TiltX * Plane.ToDegrees,
        TiltY = h.TiltY * Plane.ToDegrees,
        PartOrigin = Placement.ToPlace(plan.Placement.Shift),
        Fixtures = [],
        Axes = new(new(null, null, Readout: true, 0.001, 0), new(null, null, Readout: true, 0.001, 0), new(null, null, Readout: true, 0.001, 0), new(null, null, Readout: false, 1.0 / 60, 0)),
    };

    private Point2 Middle(Holding h, HeldMetal held)
    {
        if (h.OnRotary)
        {
            return default;
        }

        var box = held.Box(0);
        var x = held.Widest(true, box.Min.Y, box.Max.Y, box.Min.Z, box.Max.Z) ?? (box.Min.X, box.Max.X);
        var y = held.Widest(false, box.Min.X, box.Max.X, box.Min.Z, box.Max.Z) ?? (box.Min.Y, box.Max.Y);
        return new((x.Low + x.High) / 2, (y.Low + y.High) / 2);
    }

    private AxesFacts Axes(Point2 middle)
    {
        var mill = shop.Mill!;
        AxisFacts Axis(MachineAxis a, double? c) => new(c - (a.Travel / 2), c + (a.Travel / 2), a.ReadoutStep is not null, a.Step, a.Backlash);
        var t = shop.Rotary is { } r
            ? new AxisFacts(null, null, Readout: false, Tidied(r.DialStep * Plane.ToDegrees), r.Backlash * Plane.ToDegrees)
            : new AxisFacts(null, null, Readout: false, 1.0 / 60, 0);
        return new(Axis(mill.X, middle.X), Axis(mill.Y, middle.Y), Axis(mill.Z, null), t);
    }

    // A dial's step as so many to a degree, so that whole degrees stay whole.
    private static double Tidied(double step)
    {
        var perDegree = Math.Round(1 / step);
        return perDegree >= 1 && Math.Abs((perDegree * step) - 1) < 1e-9 ? 1 / perDegree : step;
    }

    private RotaryFacts? Turning(Holding h, IReadOnlyList<FixtureFacts> fixtures) => h.OnRotary && shop.Rotary is { } r
        ? new(0, 0, fixtures.Where(f => f.Name == "rotary").Select(f => f.Most.Z).FirstOrDefault(), Lies: false, r.Sense, 0, Tidied(r.DialStep * Plane.ToDegrees))
        : null;

    private List<FixtureFacts> Fixtures(Holding h, Holder holder, HeldMetal held)
    {
        var (bottom, _) = held.Heights();
        var fixtures = holder.Kind switch
        {
            HolderKind.Vise => Vise(h, holder, held, bottom),
            HolderKind.ThreeJawChuck => Chuck(h, holder, held, bottom),
            _ => Clamps(h, holder, bottom),
        };
        fixtures = [.. fixtures.Select(f => f.Holds ? f with { Press = holder.Press } : f)];
        var under = fixtures.Count == 0 ? bottom : fixtures.Min(f => f.Least.Z);
        if (h.OnRotary && shop.Rotary is { } r)
        {
            fixtures.Add(new() { Name = "rotary", Turns = true, Across = r.Across, Least = new(0, 0, under - r.High), Most = new(0, 0, under) });
            under -= r.High;
        }

        if (fixtures.Count > 0 && fixtures.TrueForAll(f => f.Name != "table"))
        {
            fixtures.Add(new() { Name = "table", Least = new(-shop.Mill!.X.Travel, -shop.Mill.Y.Travel, under - TableThick), Most = new(shop.Mill.X.Travel, shop.Mill.Y.Travel, under) });
        }

        return fixtures;
    }

    private List<FixtureFacts> Vise(Holding h, Holder v, HeldMetal held, double bottom)
    {
        var bed = bottom - (h.Parallels?.Value ?? 0);
        var top = h.JawsAt?.Value ?? (bed + v.JawsDeep);
        bed = h.Parallels is null && h.JawsAt is not null ? top - v.JawsDeep : bed;
        var low = Math.Max(bottom, top - v.JawsDeep);
        var (left, right, grip) = Gripped(h, v, held, low, top);
        Say(h, v, (top, bed, bottom), grip, (left, right), Now(held));
        return Blocks(h, v, top, (left, right), grip);
    }

    // Where the jaws stand along themselves, and the metal between them.
    private static (double Left, double Right, (double Low, double High) Grip) Gripped(Holding h, Holder v, HeldMetal held, double low, double top)
    {
        var along = !h.JawsAlongY;
        var box = held.Box(0);
        var run = held.Widest(along, along ? box.Min.Y : box.Min.X, along ? box.Max.Y : box.Max.X, low, top) ?? (along ? (box.Min.X, box.Max.X) : (box.Min.Y, box.Max.Y));
        var middle = h.JawsMiddle?.Value ?? (h.OnRotary ? 0 : (run.Low + run.High) / 2);
        double left = middle - (v.JawsWide / 2), right = middle + (v.JawsWide / 2);
        var grip = held.Widest(!along, Math.Max(left, run.Low), Math.Min(right, run.High), low, top) ?? (0, 0);
        return (left, right, grip);
    }

    // The box of the work as it is now, cut as it has been.
    private static Box3 Now(HeldMetal held)
    {
        var box = held.Box(0);
        var (low, high) = held.Heights();
        var x = held.Widest(true, box.Min.Y, box.Max.Y, box.Min.Z, box.Max.Z) ?? (box.Min.X, box.Max.X);
        var y = held.Widest(false, box.Min.X, box.Max.X, box.Min.Z, box.Max.Z) ?? (box.Min.Y, box.Max.Y);
        return new(new Point3(x.Low, y.Low, low), new Point3(x.High, y.High, high));
    }

    private static List<FixtureFacts> Blocks(Holding h, Holder v, double top, (double Left, double Right) run, (double Low, double High) grip)
    {
        var along = !h.JawsAlongY;
        FixtureFacts Block(string name, bool holds, double a, double b, double z0, double z1) => new()
        {
            Name = name,
            Holds = holds,
            Turns = h.OnRotary,
            Soft = holds && (v.Soft || h.SoftJaws),
            Least = along ? new(run.Left, a, z0) : new(a, run.Left, z0),
            Most = along ? new(run.Right, b, z1) : new(b, run.Right, z1),
        };
        var body = Math.Max(v.BodyLong, v.Open + (2 * v.JawThick)) / 2;
        var centre = (grip.Low + grip.High) / 2;
        return
        [
            Block("fixed jaw", true, grip.High, grip.High + v.JawThick, top - v.JawsDeep, top),
            Block("moving jaw", true, grip.Low - v.JawThick, grip.Low, top - v.JawsDeep, top),
            Block("vise bed", false, centre - body, centre + body, top - v.JawsDeep - v.BedHigh, top - v.JawsDeep),
        ];
    }

    private void Say(Holding h, Holder v, (double Top, double Bed, double Bottom) at, (double Low, double High) grip, (double Left, double Right) jaws, Box3 box)
    {
        var (top, bed, bottom) = at;
        var (x, y) = (shop.Mill!.X.Step, shop.Mill.Y.Step);
        how.Add(FormattableString.Invariant($"{Named(v.Name)} vise{(h.OnRotary ? " on the rotary" : string.Empty)}, jaws along {(h.JawsAlongY ? "Y, fixed jaw at the right" : "X, fixed jaw at the back")}, their tops at Z {figures.R(top, shop.Mill!.Z.Step)}; swept parallel by indicator."));
        how.Add(h.Parallels is { } p
            ? $"The work stands on parallels {figures.LU(p.Value)}, tapped down: its underside at Z {figures.R(bottom, shop.Mill!.Z.Step)}."
            : h.JawsAt is null ? $"The work stands on the bed of the vise, at Z {figures.R(bed, shop.Mill!.Z.Step)}." : "The work hangs in the jaws, set by height.");
        how.Add(When(h) + (h.JawsAlongY
            ? $"the fixed jaw's face stands at X {figures.R(grip.High, x)} from the zero, the work's near side at Y {figures.R(box.Min.Y, y)}."
            : $"the fixed jaw's face stands at Y {figures.R(grip.High, y)} from the zero, the work's ends at X {figures.R(box.Min.X, x)} and {figures.R(box.Max.X, x)}."));
        if (h is { OnRotary: true, Slid: false } && h.Steps.OfType<ZeroStep>().Any(z => z.On == ZeroOn.RotaryCentre))
        {
            how.Add(Found(h, grip, box));
        }

        if (ReferenceEquals(h, job.Stages.OfType<Holding>().FirstOrDefault()))
        {
            how.Add("Does your stock measure otherwise, type it into the job and print again.");
        }

        var (low, high) = h.JawsAlongY ? (box.Min.Y, box.Max.Y) : (box.Min.X, box.Max.X);
        var (near, far) = h.JawsAlongY ? ("toward you", "away from you") : ("at the left", "at the right");
        var (out1, out2) = (Math.Max(0, jaws.Left - low), Math.Max(0, high - jaws.Right));
        string[] over = [.. new[] { (Out: out1, Where: near), (Out: out2, Where: far) }.Where(e => e.Out > 1e-6).Select(e => $"{figures.LU(e.Out)} stands out of them {e.Where}")];
        var ends = over.Length == 0 ? "neither end stands out of them" : string.Join(", ", over);
        how.Add($"The jaws press on {figures.LU(grip.High - grip.Low)} of metal, {figures.LU(top - Math.Max(bottom, top - v.JawsDeep))} deep and {figures.LU(Math.Max(0, Math.Min(high, jaws.Right) - Math.Max(low, jaws.Left)))} long; {ends}. The work's top stands {figures.LU(box.Max.Z - top)} above them.");
        if (h.TiltX != 0 || h.TiltY != 0)
        {
            how.Add($"The work is set in the jaws at {Figures.Deg(Math.Abs((h.TiltX + h.TiltY) * Plane.ToDegrees))} deg, on an angle block or by the protractor.");
        }
    }

    // What the readout must show as the finder touches the jaw and then the work: half the finder short of the face, on the open side of it.
    private string Found(Holding h, (double Low, double High) grip, Box3 box)
    {
        var finders = shop.Gauges.Values.Where(g => g.Kind == "finder" && g.Size > 0).Select(g => g.Size).ToArray();
        var finder = finders.Length > 0 ? finders[0] : 10;
        var told = finders.Length > 0 ? string.Empty : " (the shop lists none; with another, put half of yours)";
        string One(string axis, double face, double step) => $"{axis} {figures.R(face - (finder / 2), step)} = {figures.R(face, step)} - {figures.L(finder)}/2";
        var (x, y) = (shop.Mill!.X.Step, shop.Mill.Y.Step);
        var (jaw, end) = h.JawsAlongY ? (One("X", grip.High, x), "near side: " + One("Y", box.Min.Y, y)) : (One("Y", grip.High, y), "left end: " + One("X", box.Min.X, x));
        return $"A finder of {figures.LU(finder)}{told} just touches the fixed jaw's face at {jaw}, and the work's {end}. Crank there, then bring the vise, and after it the work, up to the finder.";
    }

    // On the rotary the zero comes first and the vise, or the work in it, is brought to it; on the table the work lies first and the zero is found on it.
    private static string When(Holding h)
    {
        var zero = h.Steps.OfType<ZeroStep>().FirstOrDefault(z => z.On == ZeroOn.RotaryCentre);
        return !h.OnRotary || zero is null ? "With the zero found, "
            : h.Slid ? $"The vise stays where it was. After {zero.Id}, "
            : $"When {zero.Id} has found X and Y, and before it sets T, the vise and the work are set to that zero by a finder in the spindle (half of it short of each face), bolted down and swept: ";
    }

    private List<FixtureFacts> Chuck(Holding h, Holder c, HeldMetal held, double bottom)
    {
        var top = h.JawsAt?.Value ?? (bottom + c.JawsDeep);
        var low = top - c.JawsDeep;
        var grip = held.Extent(true, -c.Open / 2, c.Open / 2, Math.Max(low, bottom), 0, top) ?? (-c.Open / 2, c.Open / 2);
        var bore = Math.Max(grip.High, -grip.Low) * 2;
        how.Add(FormattableString.Invariant($"{Named(c.Name)}-jaw chuck{(h.OnRotary ? " on the rotary, its body set true to the rotary's centre" : string.Empty)}, tops of its jaws at Z {figures.R(top, shop.Mill!.Z.Step)}, closed on {figures.LU(bore)}, {figures.LU(top - Math.Max(low, bottom))} deep."));
        return
        [
            new() { Name = "chuck jaws", Holds = true, Turns = h.OnRotary, Soft = c.Soft || h.SoftJaws, Across = Math.Max(c.JawsWide, bore + 2), Bore = bore, Least = new(0, 0, low), Most = new(0, 0, top) },
            new() { Name = "chuck", Turns = h.OnRotary, Across = c.JawsWide, Least = new(0, 0, Math.Min(low, bottom) - Math.Max(c.BedHigh, 1)), Most = new(0, 0, Math.Min(low, bottom)) },
        ];
    }

    private List<FixtureFacts> Clamps(Holding h, Holder c, double bottom)
    {
        how.Add($"Clamped on the {(h.OnRotary ? "rotary" : "table")}{(h.Parallels is { } p ? $", the work on parallels {figures.LU(p.Value)}, clear of what is drilled and milled through" : string.Empty)}: {h.Clamps.Count} clamps, packed level, each stud nearer the work than the packing.");
        bottom -= h.Parallels?.Value ?? 0;
        var half = c.JawsWide / 2;
        List<FixtureFacts> all = [.. h.Clamps.Select(k => new FixtureFacts
        {
            Name = "clamp",
            Holds = true,
            Turns = h.OnRotary,
            Least = new(k.X.Value - half, k.Y.Value - half, k.Top.Value),
            Most = new(k.X.Value + half, k.Y.Value + half, k.Top.Value + c.JawsDeep),
        })];
        if (!h.OnRotary)
        {
            all.Add(new() { Name = "table", Least = new(-300, -300, bottom - 50), Most = new(300, 300, bottom) });
        }

        return all;
    }

    private static string Named(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
}
