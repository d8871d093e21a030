using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Proof.Nets;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Release and loose: by which move or work by hand does the part come free of what is held, and does a cutter still pass through a piece that has come free?
/// The net is cut stroke by stroke; pieces are counted after each step, and inside the step in which something changed after each stroke.
/// </summary>
internal sealed class Release
{
    // A piece smaller than this is a chip, cubic millimetres.
    private const double Chip = 1;

    // A free move that takes less than this only rubs along what it has just cut, millimetres.
    private const double Skim = 0.02;

    // Metal this near to what presses on it is held, millimetres.
    private const double Touching = 0.15;

    private readonly Subject subject;
    private readonly RayNet aimed;
    private readonly int threads;
    private readonly List<Finding> findings = [];
    private readonly HashSet<string> told = new(StringComparer.Ordinal);
    private readonly HashSet<string> struck = new(StringComparer.Ordinal);
    private RayNet net;
    private PieceMap pieces;
    private IReadOnlyList<ISolid> holders = [];
    private HashSet<int> held = [];
    private (FollowedStep Step, Stroke? Stroke)? released;
    private bool decided = true;
    private bool partFree;

    private Release(Subject subject, RayNet bare, RayNet aimed)
    {
        this.subject = subject;
        this.aimed = aimed;
        net = bare;
        threads = subject.Options.Threads;
        pieces = PieceMap.Of(bare);
    }

    /// <summary>Follows the pieces through the course.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="bare">The bare stock&#39;s net.</param>
    /// <param name="aimed">The aimed part on it.</param>
    /// <param name="progress">Told the share of strokes done.</param>
    /// <returns>What was found, the net and the pieces in the end, which piece is the part, and the release.</returns>
    public static ReleaseAnswer Ask(Subject subject, RayNet bare, RayNet aimed, Action<double> progress)
    {
        var release = new Release(subject, bare, aimed);
        release.Follow(progress);
        release.Judge();
        return new ReleaseAnswer(
            release.findings,
            release.net,
            release.pieces,
            release.Part(release.pieces),
            new ReleaseResult(release.released?.Step.Step.Id, release.released?.Stroke?.Move?.Number, subject.Course.ReleaseAt, release.decided),
            release.released is not null || subject.Course.ReleaseAt is null);
    }

    private void Follow(Action<double> progress)
    {
        var stage = -1;
        var strokes = subject.Trace.Strokes;
        var byStep = strokes.ToLookup(s => (s.Stage.Index, s.Step.Id));
        for (var i = 0; i < subject.Trace.Steps.Count; i++)
        {
            var step = subject.Trace.Steps[i];
            if (step.Stage.Index != stage)
            {
                stage = step.Stage.Index;
                Hold(step.Stage);
            }

            Cut(step, [.. byStep[(step.Stage.Index, step.Step.Id)].Where(s => s.After.Count > s.Before.Count)]);
            progress((i + 1.0) / subject.Trace.Steps.Count);
        }
    }

    // What presses on the work, a little thicker so that it overlaps what it touches. By hand the work stays as it was held.
    private void Hold(FollowedStage stage)
    {
        if (stage.Facts.Setup is not { } setup)
        {
            return;
        }

        holders = [.. setup.Fixtures.Where(f => f.Holds).Select(f => FixtureSolids.InPart(Thicker(f), setup)).OfType<ISolid>()];
        held = Held(net, pieces);
        partFree = !held.Contains(Part(pieces));
    }

    private static FixtureFacts Thicker(FixtureFacts f) => f with
    {
        Least = f.Across > 0 ? f.Least with { Z = f.Least.Z - Touching } : new Place3(f.Least.X - Touching, f.Least.Y - Touching, f.Least.Z - Touching),
        Most = f.Across > 0 ? f.Most with { Z = f.Most.Z + Touching } : new Place3(f.Most.X + Touching, f.Most.Y + Touching, f.Most.Z + Touching),
        Across = f.Across > 0 ? f.Across + (2 * Touching) : 0,
        Bore = f.Bore > 2 * Touching ? f.Bore - (2 * Touching) : 0,
    };

    private void Cut(FollowedStep step, IReadOnlyList<Stroke> strokes)
    {
        if (strokes.Count == 0)
        {
            return;
        }

        var start = net;
        foreach (var stroke in strokes)
        {
            var next = Without(net, stroke);
            Loose(stroke, net, next);
            Free(stroke, net, next);
            net = next;
        }

        var after = PieceMap.Of(net);
        var heldAfter = Held(net, after);
        var free = !heldAfter.Contains(Part(after));
        if (free && !partFree && released is null)
        {
            released = (step, Parting(start, strokes));
            decided = Gap(net, after) >= 4 * net.Spacing || Apart(released.Value.Stroke!, after, heldAfter);
        }

        (pieces, held, partFree) = (after, heldAfter, free);
    }

    private RayNet Without(RayNet before, Stroke stroke)
    {
        for (var i = stroke.Before.Count; i < stroke.After.Count; i++)
        {
            before = before.Without(stroke.After.Cut(i).Solid, i + 1, threads);
        }

        return before;
    }

    // The stroke of a step after which the part is free.
    private Stroke Parting(RayNet start, IReadOnlyList<Stroke> strokes)
    {
        var at = start;
        foreach (var stroke in strokes)
        {
            at = Without(at, stroke);
            var map = PieceMap.Of(at);
            if (!Held(at, map).Contains(Part(map)))
            {
                return stroke;
            }
        }

        return strokes[^1];
    }

    private void Loose(Stroke stroke, RayNet before, RayNet after)
    {
        if (stroke.Move is null || pieces.Count <= held.Count || told.Contains(stroke.Step.Id))
        {
            return;
        }

        var part = Part(pieces);
        for (var ray = 0; ray < before.Count(2); ray++)
        {
            if (ReferenceEquals(before.Ray(2, ray), after.Ray(2, ray)))
            {
                continue;
            }

            // Pieces are known as they were when the step began: an interval is told by where it then lay.
            foreach (var span in before.Ray(2, ray).Difference(after.Ray(2, ray)).Cleaned(0.01))
            {
                var piece = PieceOf(ray, span.Middle);
                if (piece >= 0 && !held.Contains(piece) && pieces.Volumes[piece] > Chip && told.Add(stroke.Step.Id))
                {
                    var at = before.Line(2, ray).At(span.Middle);
                    findings.Add(FindingCatalogue.Loose(Places.Of(stroke, at), stroke.CutterName, piece == part ? "part" : "piece cut off"));
                    return;
                }
            }
        }
    }

    // A move that is not meant to cut has taken metal.
    private void Free(Stroke stroke, RayNet before, RayNet after)
    {
        if (stroke.Cutting || !struck.Add(stroke.Step.Id))
        {
            return;
        }

        var (thick, at) = Taken(before, after);
        if (thick > Skim)
        {
            findings.Add(FindingCatalogue.StrikeFree(Places.Of(stroke, at), stroke.CutterName, subject.Unit, thick));
        }
        else
        {
            struck.Remove(stroke.Step.Id);
        }
    }

    // The thickest metal taken between two nets: the least chord of the three axes through the middle of each long interval.
    private static (double Thick, Point3 At) Taken(RayNet before, RayNet after)
    {
        (double Thick, Point3 At) best = default;
        for (var axis = 0; axis < 3; axis++)
        {
            for (var ray = 0; ray < before.Count(axis); ray++)
            {
                if (ReferenceEquals(before.Ray(axis, ray), after.Ray(axis, ray)))
                {
                    continue;
                }

                foreach (var span in before.Ray(axis, ray).Difference(after.Ray(axis, ray)))
                {
                    if (span.Length > best.Thick && Chord(before, after, before.Line(axis, ray).At(span.Middle), axis, span.Length) is var thick && thick > best.Thick)
                    {
                        best = (thick, before.Line(axis, ray).At(span.Middle));
                    }
                }
            }
        }

        return best;
    }

    // On the two other axes, what was taken on the nearest rays: none there means thinner than the net sees.
    private static double Chord(RayNet before, RayNet after, Point3 at, int axis, double along)
    {
        double[] place = [at.X, at.Y, at.Z];
        var least = along;
        for (var other = 0; other < 3; other++)
        {
            if (other == axis)
            {
                continue;
            }

            int u = (other + 1) % 3, v = (other + 2) % 3;
            int i = before.Nearest(u, place[u]), j = before.Nearest(v, place[v]);
            var taken = before.Ray(other, i, j).Difference(after.Ray(other, i, j));
            var index = taken.IndexAt(place[other]);
            least = index < 0 ? Math.Min(least, Nearest(taken, place[other], before.Spacing)) : Math.Min(least, taken[index].Length);
        }

        return least;
    }

    private static double Nearest(Spans spans, double at, double within)
    {
        foreach (var span in spans)
        {
            if (span.From - within <= at && at <= span.To + within)
            {
                return span.Length;
            }
        }

        return 0;
    }

    // The piece that held a place when pieces were last counted.
    private int PieceOf(int ray, double z)
    {
        var index = pieces.Net.Ray(2, ray).IndexAt(z);
        return index < 0 ? -1 : pieces.Of(2, ray, index);
    }

    private int Part(PieceMap map)
    {
        var shared = new double[map.Count];
        for (var ray = 0; ray < net.Count(2); ray++)
        {
            var wanted = aimed.Ray(2, ray);
            var metal = map.Net.Ray(2, ray);
            for (var s = 0; s < metal.Count && wanted.Count > 0; s++)
            {
                var piece = map.Of(2, ray, s);
                if (piece >= 0)
                {
                    shared[piece] += Spans.Of([metal[s]]).Intersection(wanted).Length;
                }
            }
        }

        return shared.Length == 0 ? -1 : Array.IndexOf(shared, shared.Max());
    }

    private HashSet<int> Held(RayNet at, PieceMap map)
    {
        var found = new HashSet<int>();
        foreach (var holder in holders)
        {
            for (var axis = 0; axis < 3; axis++)
            {
                Touch(at, map, holder, axis, found);
            }
        }

        return found;
    }

    private static void Touch(RayNet at, PieceMap map, ISolid holder, int axis, HashSet<int> found)
    {
        var box = holder.Bounds;
        double[] low = [box.Min.X, box.Min.Y, box.Min.Z], high = [box.Max.X, box.Max.Y, box.Max.Z];
        int u = (axis + 1) % 3, v = (axis + 2) % 3;
        var (firstU, pastU) = RayNet.Range(at.Places(u), low[u], high[u]);
        var (firstV, pastV) = RayNet.Range(at.Places(v), low[v], high[v]);
        for (var j = firstV; j < pastV; j++)
        {
            for (var i = firstU; i < pastU; i++)
            {
                var ray = i + (j * at.Places(u).Count);
                var metal = at.Ray(axis, ray);
                if (metal.Count == 0)
                {
                    continue;
                }

                var grip = holder.Sound(at.Line(axis, ray));
                for (var s = 0; s < metal.Count && grip.Count > 0; s++)
                {
                    if (map.Of(axis, ray, s) is >= 0 and var piece && grip.Any(g => g.From <= metal[s].To && g.To >= metal[s].From))
                    {
                        found.Add(piece);
                    }
                }
            }
        }
    }

    // Where the net is too coarse to be certain, the engine looks again, finer and finer.
    private bool Apart(Stroke stroke, PieceMap map, HashSet<int> heldNow)
    {
        if (heldNow.Count == 0 || Inside(map, Part(map)) is not { } a || Inside(map, heldNow.Min()) is not { } b)
        {
            return false;
        }

        return Pieces.Decide(stroke.After.Piece, a, b, net.Spacing, net.Spacing / 4) == Joined.Apart;
    }

    // The middle of a piece's longest interval along X.
    private static Point3? Inside(PieceMap map, int piece)
    {
        Point3? best = null;
        double longest = 0;
        for (var ray = 0; ray < map.Net.Count(0); ray++)
        {
            var metal = map.Net.Ray(0, ray);
            for (var s = 0; s < metal.Count; s++)
            {
                if (metal[s].Length > longest && map.Of(0, ray, s) == piece)
                {
                    (longest, best) = (metal[s].Length, map.Net.Line(0, ray).At(metal[s].Middle));
                }
            }
        }

        return best;
    }

    // The least gap between the part and any other piece along a ray.
    private double Gap(RayNet at, PieceMap map)
    {
        var part = Part(map);
        var least = double.PositiveInfinity;
        for (var axis = 0; axis < 3; axis++)
        {
            for (var ray = 0; ray < at.Count(axis); ray++)
            {
                var metal = at.Ray(axis, ray);
                for (var s = 1; s < metal.Count; s++)
                {
                    int a = map.Of(axis, ray, s - 1), b = map.Of(axis, ray, s);
                    if (a >= 0 && b >= 0 && a != b && (a == part || b == part))
                    {
                        least = Math.Min(least, metal[s].From - metal[s - 1].To);
                    }
                }
            }
        }

        return least;
    }

    private void Judge()
    {
        var meant = subject.Course.ReleaseAt;
        if (released is not { } r)
        {
            if (meant is not null)
            {
                var step = subject.Trace.Steps.LastOrDefault(s => string.Equals(s.Step.Id, meant, StringComparison.Ordinal)) ?? subject.Trace.Steps[^1];
                findings.Add(FindingCatalogue.Release(
                    new FindingPlace(step.Step.Id, step.Step.Where), "The part never comes free", $"it is meant to at step {meant}"));
            }

            return;
        }

        var place = r.Stroke?.Place ?? new FindingPlace(r.Step.Step.Id, r.Step.Step.Where);
        if (!string.Equals(r.Step.Step.Id, meant, StringComparison.Ordinal))
        {
            var told1 = meant is null ? "it is meant to stay held" : $"it is meant to at step {meant}";
            findings.Add(FindingCatalogue.Release(place, $"The part comes free at step {r.Step.Step.Id}" + (r.Stroke?.Move is { } m ? FormattableString.Invariant($", move {m.Number}") : string.Empty), told1));
        }

        if (!decided)
        {
            findings.Add(FindingCatalogue.ReleaseUndecided(place, subject.Unit, net.Spacing));
        }
    }
}
