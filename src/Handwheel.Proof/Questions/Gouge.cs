using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Proof.Nets;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Gouge: was anything cut inside least metal? Every ray of the grid; each interval lost belongs to the first stroke that took it. One finding a step, with its
/// greatest depth refined off the rays, the first move that does it, and the feature hurt.
/// </summary>
internal sealed class Gouge
{
    // Less than this is arithmetic, not metal, millimetres.
    private const double Certain = 1e-5;

    // A feature that has lost metal on this share of the rays through it is gone.
    private const double AllOfIt = 0.98;

    private readonly Subject subject;
    private readonly PartNets nets;

    private Gouge(Subject subject, PartNets nets)
    {
        this.subject = subject;
        this.nets = nets;
    }

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="nets">The nets.</param>
    /// <returns>Halts <c>gouge</c>, and <c>stock-short</c>; and the strokes that gouge.</returns>
    public static (IReadOnlyList<Finding> Findings, IReadOnlySet<int> Strokes, bool Short) Ask(Subject subject, PartNets nets)
    {
        var gouge = new Gouge(subject, nets);
        var findings = new List<Finding>();
        var lack = gouge.StockShort();
        if (lack is not null)
        {
            findings.Add(lack);
        }

        var lost = gouge.Lost();
        var strokes = new SortedSet<int>();
        foreach (var step in lost.OrderBy(l => l.Stroke).GroupBy(l => subject.Trace.Strokes[l.Stroke].Step.Id, StringComparer.Ordinal))
        {
            if (gouge.Told([.. step]) is { } finding)
            {
                findings.Add(gouge.Follows(step.Min(l => l.Stroke), strokes) ? finding with { Grade = Grade.Caution, Message = finding.Message + " It follows from the gouge before it." } : finding);
                strokes.UnionWith(step.Select(l => l.Stroke));
            }
        }

        return (findings, strokes, lack is not null);
    }

    // Whether a later gouge has the same cause as one before it: a web broken beside a saw cut that gouged, or a Z zero that was set wrong.
    private bool Follows(int stroke, SortedSet<int> before)
    {
        var (strokes, touches) = (subject.Trace.Strokes, subject.Trace.Touches);
        var now = strokes[stroke];
        if (before.Count == 0 || now.Hand is { Work: "break web" })
        {
            return before.Count > 0;
        }

        return now.RestsOn >= 0 && Math.Abs(touches[now.RestsOn].Off) > 0.02 && before.Any(b => strokes[b].RestsOn == now.RestsOn);
    }

    // Intervals of least metal that the stock had and the metal has not, each with the first stroke that took its middle.
    private List<(Missing Missing, int Stroke)> Lost()
    {
        var lost = new List<(Missing, int)>();
        for (var axis = 0; axis < 3; axis++)
        {
            var along = axis;
            foreach (var ray in Picked.Of(nets.Last, axis, r => Short(along, r)))
            {
                // Sounded again, so that the ends name their surfaces.
                var line = nets.Last.RayLine(axis, ray);
                foreach (var span in subject.Least.Solid.Sound(line).Intersection(subject.Trace.Bare.Sound(line)).Difference(subject.Trace.Last.Sound(line)).Cleaned(Certain))
                {
                    var missing = new Missing(axis, ray, line, span);
                    if (subject.Trace.Last.TakenBy(missing.Middle) is { } cut)
                    {
                        lost.Add((missing, subject.Trace.Last.Cut(cut).Stroke));
                    }
                }
            }
        }

        return lost;
    }

    // Whether a ray has lost metal that it must have.
    private bool Short(int axis, int ray)
    {
        for (var i = 0; i < nets.Least.IntervalCount(axis, ray); i++)
        {
            var (from, to) = nets.Least.Interval(axis, ray, i);
            if (!nets.Last.Covers(axis, ray, from, to))
            {
                return nets.Least.Ray(axis, ray).Intersection(nets.Bare.Ray(axis, ray)).Difference(nets.Last.Ray(axis, ray)).Cleaned(Certain).Count > 0;
            }
        }

        return false;
    }

    private Finding? Told(List<(Missing Missing, int Stroke)> lost)
    {
        var deepest = Solids.Questions.Gouge.Deepest(subject.Trace.Last.Piece, subject.Least.Solid, [.. lost.Select(l => l.Missing.Ends)], nets.Last.Spacing);
        var (deep, at) = (deepest.Depth, deepest.End);
        if (deep <= Certain)
        {
            return null;
        }

        var normal = subject.Trace.Last.NormalAt(deepest.Surface, at);

        var first = subject.Trace.Strokes[lost.Min(l => l.Stroke)];
        var inside = lost.OrderByDescending(l => l.Missing.Span.Length).First().Missing.Middle;
        var (feature, whole) = Hurt(lost, first, inside);
        var place = Places.Of(first, at);
        var turning = lost.Select(l => subject.Trace.Strokes[l.Stroke]).Where(s => s.Cutting && s.Legs.Any(l => l.IsTurning)).MinBy(s => s.Index);
        if (whole && feature is not null)
        {
            var axis = FeatureView.Axis(feature.Feature.View);
            deep = lost.Where(l => l.Missing.Axis == axis && feature.Solid.Contains(l.Missing.Middle)).Select(l => l.Missing.Span.Length).DefaultIfEmpty(deep).Max();
        }

        if (!whole && feature is not null && Formed(subject, place, first, feature, (deep, normal)) is { } formed)
        {
            return formed;
        }

        return FindingCatalogue.Gouge(place, subject.Unit, deep, feature?.Feature.Name ?? "part", whole, first.Cutting ? RightReading.For(subject, turning ?? Worst(lost), feature, inside, normal) : null);
    }

    // What a cutter's own form leaves where the drawing has another: a chamfer drawn nowhere, or smaller; a drill's point under a bottom drawn flat.
    private static Finding? Formed(Subject subject, FindingPlace place, Stroke first, DrawnFeature feature, (double Deep, Vector3 Normal) lost)
    {
        if (feature is { Feature: { ChamferAbove: 0, ChamferBelow: 0, IsCut: false } } && first is { Cutter: { Kind: CutterKind.Chamfer or CutterKind.Countersink, Name: var cone } } && Slopes(first, lost.Normal))
        {
            return FindingCatalogue.GougeByChamfer(place, subject.Unit, lost.Deep, cone, feature.Feature.Name);
        }

        return first.Cutter is { Kind: CutterKind.Drill } && feature.Feature is { IsCut: true, Through: false, PointAngle: null, Shape: RoundShape, Name: var hole }
            ? FindingCatalogue.Gouge(place, subject.Unit, lost.Deep, hole, whole: false, $"Drill less deep; or, where the drill's own bottom will do, draw it so: '{hole} hole ..., point 118'.")
            : null;
    }

    private static bool Slopes(Stroke stroke, Vector3 normal)
    {
        var leg = stroke.Legs[^1];
        return Math.Abs(leg.ToPart.Inverse().ApplyDirection(normal).Z) is > 0.2 and < 0.98;
    }

    // The stroke that took most of it.
    private Stroke Worst(List<(Missing Missing, int Stroke)> lost) =>
        subject.Trace.Strokes[lost.GroupBy(l => l.Stroke).OrderByDescending(g => g.Sum(l => l.Missing.Span.Length)).ThenBy(g => g.Key).First().Key];

    private (DrawnFeature? Feature, bool Whole) Hurt(List<(Missing Missing, int Stroke)> lost, Stroke first, Point3 inside)
    {
        if (first.Legs.All(l => l.IsAlongZ) && CutBeside(inside) is { } hole)
        {
            return (hole, false);
        }

        DrawnFeature? named = null;
        var most = 0;
        foreach (var feature in subject.Least.Features.Where(f => !f.Feature.IsCut))
        {
            if (Share(feature, lost) >= AllOfIt)
            {
                return (feature, true);
            }

            var count = lost.Count(l => feature.Solid.Contains(l.Missing.Middle));
            if (count > most)
            {
                (named, most) = (feature, count);
            }
        }

        return (named, false);
    }

    // The share of a feature's rays (along its depth) on which it has lost an end; none where less than half of it is lost.
    private double Share(DrawnFeature feature, List<(Missing Missing, int Stroke)> lost)
    {
        var axis = FeatureView.Axis(feature.Feature.View);
        int all = 0, hurt = 0;
        double whole = 0, gone = 0;
        var byRay = lost.Where(l => l.Missing.Axis == axis).ToLookup(l => l.Missing.Ray, l => l.Missing.Span);
        for (var ray = 0; ray < nets.Last.RaysAlong(axis); ray++)
        {
            if (nets.Least.IntervalCount(axis, ray) == 0 || !Picked.Always(nets.Last, axis, ray))
            {
                continue;
            }

            var own = nets.Least.Ray(axis, ray).Intersection(feature.Solid.Sound(nets.Last.RayLine(axis, ray))).Cleaned(0.01);
            if (own.Count > 0)
            {
                all++;
                hurt += byRay[ray].Any(s => Takes(s, own[0].From, own[^1].To)) ? 1 : 0;
                whole += own.Length;
                gone += Spans.Of(byRay[ray]).Intersection(own).Length;
            }
        }

        return all == 0 || gone < 0.5 * whole ? 0 : (double)hurt / all;
    }

    // Whether an interval lost takes an end of a feature.
    private static bool Takes(Span lost, double low, double high) => lost.From < high && lost.To > low && (lost.To >= high - 0.01 || lost.From <= low + 0.01);

    private DrawnFeature? CutBeside(Point3 inside) => subject.Aimed.Features
        .Where(f => f.Feature.IsCut && f.Across is not null)
        .Select(f => (Feature: f, Off: f.Outlines.Min(o => Off(o, f, inside))))
        .Where(p => p.Off < p.Feature.Across!.Value)
        .OrderBy(p => p.Off)
        .Select(p => p.Feature)
        .FirstOrDefault();

    private static double Off(Outline outline, DrawnFeature feature, Point3 p)
    {
        var inView = FeatureView.InView(feature.Feature.View, p);
        return outline.DistanceTo(new Point2(inView.X, inView.Y));
    }

    private Finding? StockShort()
    {
        var deepest = 0.0;
        Point3 at = default;
        for (var axis = 0; axis < 3; axis++)
        {
            for (var ray = 0; ray < nets.Last.RaysAlong(axis); ray++)
            {
                foreach (var span in nets.Least.Ray(axis, ray).Difference(nets.Bare.Ray(axis, ray)).Cleaned(Certain))
                {
                    if (span.Length > deepest)
                    {
                        (deepest, at) = (span.Length, nets.Last.RayLine(axis, ray).At(span.Middle));
                    }
                }
            }
        }

        // What lies wholly outside the stock's box shows on no ray of it.
        var (part, stock) = (subject.Least.Solid.Bounds, subject.Trace.Bare.Bounds);
        foreach (var (past, place) in Past(part, stock))
        {
            if (past > deepest + 1e-9)
            {
                (deepest, at) = (past, place);
            }
        }

        if (deepest <= Certain)
        {
            return null;
        }

        return FindingCatalogue.StockShort(new FindingPlace(Where: subject.Stock.Where, At: at), subject.Unit, deepest, Places.Nearest(subject.Least, at, cutsToo: false));
    }

    private static IEnumerable<(double Past, Point3 Place)> Past(Box3 part, Box3 stock)
    {
        var c = part.Centre;
        yield return (stock.Min.X - part.Min.X, c with { X = part.Min.X });
        yield return (part.Max.X - stock.Max.X, c with { X = part.Max.X });
        yield return (stock.Min.Y - part.Min.Y, c with { Y = part.Min.Y });
        yield return (part.Max.Y - stock.Max.Y, c with { Y = part.Max.Y });
        yield return (stock.Min.Z - part.Min.Z, c with { Z = part.Min.Z });
        yield return (part.Max.Z - stock.Max.Z, c with { Z = part.Max.Z });
    }
}
