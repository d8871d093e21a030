using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Order: is a broach pressed where its chips have no room below it; is a hole drilled when its wall is already cut away, so that the drill runs off; does a
/// drill break into a hole already finished, leaving its burr inside where nothing reaches? One of a kind a step.
/// </summary>
internal static class Order
{
    // Room that chips need under a broach, millimetres (common practice, no source).
    private const double Room = 0.5;

    // A finished hole up to this wide hides the burr of a hole that breaks into it, millimetres (common practice, no source).
    private const double Hidden = 12;
    private const int Spokes = 16;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Cautions <c>order</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var told = new HashSet<(string Step, string What)>();
        foreach (var stroke in subject.Trace.Strokes)
        {
            if (stroke is { Hand: { Work: "press" } hand })
            {
                var way = new Vector3(hand.Direction.X, hand.Direction.Y, hand.Direction.Z).ToUnit();
                var foot = new Point3(hand.At.X, hand.At.Y, hand.At.Z) + (way * hand.Depth);
                if (stroke.Before.Sound(new Line3(foot, way)).Any(s => s.From < Room && s.To > 0))
                {
                    yield return FindingCatalogue.Order(
                        stroke.Place with { At = foot }, $"{stroke.CutterName} is pressed to a floor: its chips have no room below it", "Drill the hole deeper, or undercut it, before it is pressed.");
                }
            }
            else if (stroke is { Cutter.Kind: CutterKind.Drill, Cutting: true, Shape: not null })
            {
                foreach (var (what, finding) in Drilled(subject, stroke))
                {
                    if (told.Add((stroke.Step.Id, what)))
                    {
                        yield return finding;
                    }
                }
            }
        }
    }

    private static IEnumerable<(string What, Finding Finding)> Drilled(Subject subject, Stroke stroke)
    {
        foreach (var leg in stroke.Legs.Where(l => l.IsAlongZ && l.To.Z < l.From.Z))
        {
            var radius = stroke.Shape!.GreatestRadius;
            var range = Spans.Of([new Span(leg.Path.To.Z + radius, leg.Path.From.Z, default, default)]);
            Line3 Beside(double r, int spoke)
            {
                var plan = Point2.Polar(new Point2(leg.Path.From.X, leg.Path.From.Y), r, 2 * Math.PI * spoke / Spokes);
                return Line3.AlongZ(plan.X, plan.Y).Placed(leg.ToPart);
            }

            var inside = Enumerable.Range(0, Spokes).Select(i => stroke.Before.Sound(Beside(0.9 * radius, i)).Intersection(range)).ToList();
            var engaged = inside.Aggregate(Spans.None, (all, one) => all.Union(one));
            if (engaged.Length < 1)
            {
                continue;
            }

            // Open to one side only: what is open on both (a hole crossed in the middle) pushes the drill nowhere.
            var gone = Enumerable.Range(0, Spokes).Select(i => Gone(subject, stroke, Beside(radius + 0.2, i), engaged)).ToList();
            var open = gone.Where((g, i) => g - gone[(i + (Spokes / 2)) % Spokes] >= Math.Max(1, 0.25 * engaged.Length)).Count();
            if (open >= 2)
            {
                yield return ("wall", FindingCatalogue.Order(
                    stroke.Place,
                    FormattableString.Invariant($"{stroke.CutterName} drills where the wall of its hole is already cut away on {100 * open / Spokes} of 100 of its round: it runs off to that side"),
                    "Drill it before the cut that takes its wall away."));
            }

            if (inside.Select(s => Finished(subject, stroke, s)).FirstOrDefault(s => s is not null) is { } into)
            {
                yield return ("burr", FindingCatalogue.Order(
                    stroke.Place,
                    $"{stroke.CutterName} breaks into the hole that {into.CutterName} has finished in {into.Step.Id}: its burr stands inside it, where it can no longer be reached",
                    "Drill it before that hole is reamed or bored; the last cut through it takes the burr."));
            }
        }
    }

    // How much of a wall beside the hole, where the drill meets metal, an earlier cut has taken.
    private static double Gone(Subject subject, Stroke stroke, Line3 wall, Spans engaged) =>
        subject.Trace.Bare.Sound(wall).Intersection(engaged).Difference(stroke.Before.Sound(wall)).Length;

    // The stroke that finished a narrow hole which the drill crosses.
    private static Stroke? Finished(Subject subject, Stroke stroke, Spans met)
    {
        for (var i = 1; i < met.Count; i++)
        {
            if (met[i].From - met[i - 1].To is > 0.2 and <= Hidden
                && stroke.Before.StrokeOf(met[i].FromSurface) is { } low && stroke.Before.StrokeOf(met[i - 1].ToSurface) is { } high
                && subject.Trace.Strokes[low].Cutter is { Kind: CutterKind.Reamer or CutterKind.BoringBar } && subject.Trace.Strokes[high].Cutter?.Name == subject.Trace.Strokes[low].Cutter!.Name)
            {
                return subject.Trace.Strokes[low];
            }
        }

        return null;
    }
}
