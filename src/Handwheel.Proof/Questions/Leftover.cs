using Handwheel.Jobs.Findings;
using Handwheel.Proof.Nets;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>Leftover: is anything of the released part outside most metal? Asked once, at the end; waste does not count. One finding a feature.</summary>
internal static class Leftover
{
    private const double Certain = 1e-5;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="nets">The nets.</param>
    /// <param name="pieces">The pieces in the end.</param>
    /// <param name="part">The piece that is the part.</param>
    /// <returns>Halts <c>leftover</c>.</returns>
    public static IReadOnlyList<Finding> Ask(Subject subject, PartNets nets, PieceMap pieces, int part)
    {
        var over = Over(subject, nets, pieces, part);
        var findings = new List<Finding>();
        foreach (var group in over.GroupBy(m => Places.Nearest(subject.Aimed, m.Middle, cutsToo: true), StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var deepest = Solids.Questions.Leftover.Deepest(subject.Trace.Last.Piece, subject.Most.Solid, [.. group.Select(m => m.Ends)], nets.Last.Spacing);
            if (deepest.Depth > Certain)
            {
                findings.Add(FindingCatalogue.Leftover(Place(subject, deepest.End), subject.Unit, deepest.Depth, group.Key));
            }
        }

        return findings;
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

    private static FindingPlace Place(Subject subject, Point3 at)
    {
        var where = subject.Aimed.Find(Places.Nearest(subject.Aimed, at, cutsToo: true))?.Feature.Where;
        return new FindingPlace(Where: where, At: at);
    }
}
