using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Proof.Nets;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Questions;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Release and loose: by which move or work by hand does the part come free of what is held, and does a cutter still pass through a piece that has come free?
/// The grid is cut stroke by stroke; pieces are counted after each step, and inside the step in which something changed after each stroke.
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
    private readonly RayGrid aimed;
    private readonly RayGrid metal;
    private readonly List<Finding> findings = [];
    private readonly HashSet<string> told = new(StringComparer.Ordinal);
    private readonly HashSet<string> struck = new(StringComparer.Ordinal);
    private PieceMap pieces;
    private int part;
    private IReadOnlyList<ISolid> holders = [];
    private HashSet<int> held = [];
    private (FollowedStep Step, Stroke Stroke)? released;
    private bool decided = true;
    private bool partFree;

    private Release(Subject subject, RayGrid bare, RayGrid aimed)
    {
        this.subject = subject;
        this.aimed = aimed;
        metal = bare.Copy();
        pieces = PieceMap.Of(metal);
        part = pieces.Most(aimed);
    }

    /// <summary>Follows the pieces through the course.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="bare">The bare stock&#39;s grid.</param>
    /// <param name="aimed">The aimed part on the same rays.</param>
    /// <param name="progress">Told the share of strokes done.</param>
    /// <returns>What was found, the metal and the pieces in the end, which piece is the part, and the release.</returns>
    public static ReleaseAnswer Ask(Subject subject, RayGrid bare, RayGrid aimed, Action<double> progress)
    {
        var release = new Release(subject, bare, aimed);
        release.Follow(progress);
        release.Judge();
        return new ReleaseAnswer(
            release.findings,
            release.pieces,
            release.part,
            new ReleaseResult(release.released?.Step.Step.Id, release.released?.Stroke.Move?.Number, subject.Course.ReleaseAt, release.decided),
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
        held = pieces.Touching(holders);
        partFree = !held.Contains(part);
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

        foreach (var stroke in strokes)
        {
            // What a stroke changed is only looked at where it can matter.
            var loose = stroke.Move is not null && pieces.Count > held.Count && !told.Contains(stroke.Step.Id);
            if (!loose && (stroke.Cutting || struck.Contains(stroke.Step.Id)))
            {
                Cut(metal, stroke, null);
                continue;
            }

            var before = new Dictionary<(int Axis, int Ray), Spans>();
            Cut(metal, stroke, before);
            Loose(stroke, before);
            Free(stroke, before);
        }

        var after = PieceMap.Of(metal);
        var (partAfter, heldAfter) = (after.Most(aimed), after.Touching(holders));
        var free = !heldAfter.Contains(partAfter);
        if (free && !partFree && released is null)
        {
            released = (step, Parting(pieces.Grid.Copy(), strokes));
            decided = after.Gap(partAfter) >= 4 * metal.Spacing || Apart(released.Value.Stroke, after, partAfter, heldAfter);
        }

        (pieces, part, held, partFree) = (after, partAfter, heldAfter, free);
    }

    // Makes a stroke's cuts; notes the rays they change, each as it was before the stroke.
    private static void Cut(RayGrid grid, Stroke stroke, Dictionary<(int Axis, int Ray), Spans>? before)
    {
        for (var i = stroke.Before.Count; i < stroke.After.Count; i++)
        {
            grid.Cut(stroke.After.Cut(i).Solid);
            foreach (var changed in before is null ? [] : grid.Changed())
            {
                before!.TryAdd((changed.Axis, changed.Ray), changed.Before);
            }
        }
    }

    // The stroke of a step after which the part is free.
    private Stroke Parting(RayGrid at, IReadOnlyList<Stroke> strokes)
    {
        foreach (var stroke in strokes)
        {
            Cut(at, stroke, null);
            var map = PieceMap.Of(at);
            if (!map.Touching(holders).Contains(map.Most(aimed)))
            {
                return stroke;
            }
        }

        return strokes[^1];
    }

    private void Loose(Stroke stroke, Dictionary<(int Axis, int Ray), Spans> before)
    {
        if (stroke.Move is null || pieces.Count <= held.Count || told.Contains(stroke.Step.Id))
        {
            return;
        }

        foreach (var ((axis, ray), was) in before)
        {
            // Pieces are known as they were when the step began: an interval is told by where it then lay.
            foreach (var span in was.Difference(metal.Ray(axis, ray)).Cleaned(0.01))
            {
                var piece = axis == 2 ? pieces.At(axis, ray, span.Middle) : -1;
                if (piece >= 0 && !held.Contains(piece) && pieces.VolumeOf(piece) > Chip && told.Add(stroke.Step.Id))
                {
                    var at = metal.RayLine(axis, ray).At(span.Middle);
                    findings.Add(FindingCatalogue.Loose(Places.Of(stroke, at), stroke.CutterName, piece == part ? "part" : "piece cut off"));
                    return;
                }
            }
        }
    }

    // A move that is not meant to cut has taken metal.
    private void Free(Stroke stroke, Dictionary<(int Axis, int Ray), Spans> before)
    {
        if (stroke.Cutting || !struck.Add(stroke.Step.Id))
        {
            return;
        }

        var (thick, at) = Taken(before);
        if (thick > Skim)
        {
            findings.Add(FindingCatalogue.StrikeFree(Places.Of(stroke, at), stroke.CutterName, subject.Unit, thick));
        }
        else
        {
            struck.Remove(stroke.Step.Id);
        }
    }

    // The thickest metal taken by a stroke: the least chord of the three axes through the middle of each long interval.
    private (double Thick, Point3 At) Taken(Dictionary<(int Axis, int Ray), Spans> before)
    {
        (double Thick, Point3 At) best = default;
        foreach (var ((axis, ray), was) in before)
        {
            foreach (var span in was.Difference(metal.Ray(axis, ray)))
            {
                var middle = metal.RayLine(axis, ray).At(span.Middle);
                if (span.Length > best.Thick && Chord(before, middle, axis, span.Length) is var thick && thick > best.Thick)
                {
                    best = (thick, middle);
                }
            }
        }

        return best;
    }

    // On the two other axes, what was taken on the nearest rays: none there means thinner than the rays see.
    private double Chord(Dictionary<(int Axis, int Ray), Spans> before, Point3 at, int axis, double along)
    {
        double[] place = [at.X, at.Y, at.Z];
        var least = along;
        for (var other = 0; other < 3; other++)
        {
            if (other != axis)
            {
                var ray = metal.RayNear(other, at);
                var taken = before.TryGetValue((other, ray), out var was) ? was.Difference(metal.Ray(other, ray)) : Spans.None;
                var index = taken.IndexAt(place[other]);
                least = Math.Min(least, index < 0 ? Nearest(taken, place[other], metal.Spacing) : taken[index].Length);
            }
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

    // Where the grid is too coarse to be certain, the engine looks again, finer and finer.
    private bool Apart(Stroke stroke, PieceMap map, int partNow, HashSet<int> heldNow) =>
        partNow >= 0 && heldNow.Count > 0 &&
        Pieces.Decide(stroke.After.Piece, map.Inside(partNow), map.Inside(heldNow.Min()), metal.Spacing, metal.Spacing / 4) == Joined.Apart;

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

        var place = r.Stroke.Place;
        if (!string.Equals(r.Step.Step.Id, meant, StringComparison.Ordinal))
        {
            var told1 = meant is null ? "it is meant to stay held" : $"it is meant to at step {meant}";
            findings.Add(FindingCatalogue.Release(place, $"The part comes free at step {r.Step.Step.Id}" + (r.Stroke.Move is { } m ? FormattableString.Invariant($", move {m.Number}") : string.Empty), told1));
        }

        if (!decided)
        {
            findings.Add(FindingCatalogue.ReleaseUndecided(place, subject.Unit, metal.Spacing));
        }
    }
}
