using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Proof.Nets;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>Leftover: is anything of the released part outside most metal? Asked once, at the end; waste does not count. One finding a feature.</summary>
internal static class Leftover
{
    private const double Certain = 1e-5;

    // From the corner to where it stands highest, in heights: sqrt(2) / (sqrt(2) - 1) at a square corner, with half as much again for limits and sharper ones.
    private const double Diagonal = 5;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="nets">The nets.</param>
    /// <param name="pieces">The pieces in the end.</param>
    /// <param name="part">The piece that is the part.</param>
    /// <returns>Halts <c>leftover</c>.</returns>
    public static IReadOnlyList<Finding> Ask(Subject subject, PartNets nets, PieceMap pieces, int part)
    {
        var over = Over(subject, nets, pieces, part);
        var found = new Dictionary<string, (double Depth, Point3 At)>(StringComparer.Ordinal);
        foreach (var group in over.GroupBy(m => Places.Left(subject.Aimed, m.Middle), StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            // Where it stands out most may lie nearer to another feature than where it was met.
            var deepest = Solids.Questions.Leftover.Deepest(subject.Trace.Last.Piece, subject.Most.Solid, [.. group.Select(m => m.Ends)], nets.Last.Spacing);
            var name = Places.Left(subject.Aimed, deepest.End);
            if (deepest.Depth > Certain && (!found.TryGetValue(name, out var known) || deepest.Depth > known.Depth))
            {
                found[name] = (deepest.Depth, deepest.End);
            }
        }

        return [.. found.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => FindingCatalogue.Leftover(
            new FindingPlace(Where: subject.Aimed.Find(f.Key)?.Feature.Where, At: f.Value.At), subject.Unit, f.Value.Depth, f.Key, Corner(subject, f.Value.At, f.Value.Depth)))];
    }

    // The cut in whose inside corner, drawn sharp, metal stands so high: a round cutter leaves (sqrt(2) - 1) of its radius before a square corner.
    private static string? Corner(Subject subject, Point3 at, double depth)
    {
        foreach (var cut in subject.Aimed.Features.Where(f => f.Feature.IsCut))
        {
            var inView = FeatureView.InView(cut.Feature.View, at);
            if (inView.Z < Math.Min(cut.From, cut.To) - depth || inView.Z > Math.Max(cut.From, cut.To) + depth)
            {
                continue;
            }

            var plan = new Point2(inView.X, inView.Y);
            foreach (var pieces in cut.Outlines.Select(o => o.Pieces))
            {
                for (var i = 0; i < pieces.Count; i++)
                {
                    var (first, next) = (pieces[i], pieces[(i + 1) % pieces.Count]);
                    if (first.To.DistanceTo(plan) < Diagonal * depth && Bends(first, next))
                    {
                        return cut.Feature.Name;
                    }
                }
            }
        }

        return null;
    }

    // Whether an outline, counterclockwise, turns to the left where one piece meets the next.
    private static bool Bends(OutlinePiece first, OutlinePiece next)
    {
        Point2 before = first.At(0.99), after = next.At(0.01);
        double x1 = first.To.X - before.X, y1 = first.To.Y - before.Y, x2 = after.X - next.From.X, y2 = after.Y - next.From.Y;
        return (x1 * y2) - (y1 * x2) > 0.1 * Math.Sqrt(((x1 * x1) + (y1 * y1)) * ((x2 * x2) + (y2 * y2)));
    }

    private static List<Missing> Over(Subject subject, PartNets nets, PieceMap pieces, int part)
    {
        var over = new List<Missing>();
        for (var axis = 0; axis < 3; axis++)
        {
            var along = axis;
            foreach (var ray in Picked.Of(nets.Last, axis, r => Exceeds(nets, pieces, part, along, r)))
            {
                // Sounded again, so that the ends name their surfaces.
                var line = nets.Last.RayLine(axis, ray);
                var most = subject.Most.Solid.Sound(line);
                foreach (var own in subject.Trace.Last.Sound(line).Where(s => pieces.Of(axis, ray, s.From, s.To) == part))
                {
                    over.AddRange(Spans.Of([own]).Difference(most).Cleaned(Certain).Select(span => new Missing(axis, ray, line, span)));
                }
            }
        }

        return over;
    }

    // Whether the part has metal on a ray that most metal has not.
    private static bool Exceeds(PartNets nets, PieceMap pieces, int part, int axis, int ray)
    {
        for (var i = 0; i < nets.Last.IntervalCount(axis, ray); i++)
        {
            var (from, to) = nets.Last.Interval(axis, ray, i);
            if (!nets.Most.Covers(axis, ray, from, to) &&
                Spans.Of([new Span(from, to, default, default)]).Difference(nets.Most.Ray(axis, ray)).Cleaned(Certain).Count > 0 &&
                pieces.Of(axis, ray, from, to) == part)
            {
                return true;
            }
        }

        return false;
    }
}
