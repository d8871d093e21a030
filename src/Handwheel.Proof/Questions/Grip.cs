using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Proof.Loads;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Grip and burr, as geometry: does what presses on the work bear on metal, on a face or on lines alone, how deep, and was that face cut since its edges were
/// last broken? Looked at before each face of each jaw or clamp, within a chuck's jaws all round, as the holding begins.
/// </summary>
internal static class Grip
{
    // A jaw that bears on less than this depth holds little, millimetres (common practice, no source).
    private const double Little = 2;

    // A round that lies is past its middle in the jaws where they reach this far above it, millimetres (common practice, no source).
    private const double Past = 1;

    private const string Narrow = "A V-block against one jaw, or soft jaws cut to it, hold it better; where it has two flats, lay them to the jaws.";

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="loads">The forces; null: none are known.</param>
    /// <returns>Findings <c>grip</c> and <c>burr</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject, CutLoads? loads)
    {
        foreach (var (stage, metal) in subject.Trace.Held)
        {
            if (stage.Facts.Setup is not { } setup || stage.Facts.Steps.Count == 0)
            {
                continue;
            }

            var holding = setup.Fixtures.Where(f => f.Holds && (f.Across == 0 || f.Bore > 0)).ToList();
            var bears = holding.ConvertAll(f => Bearings.Of(f, stage, metal));
            var place = new FindingPlace(stage.Facts.Steps[0].Id, stage.Facts.Steps[0].Where);
            foreach (var finding in Told(subject, place, bears, stage, metal))
            {
                yield return finding;
            }

            if (loads is not null && GripStrength.Of(subject, loads, stage, bears) is { } slips)
            {
                yield return slips;
            }
        }
    }

    private static IEnumerable<Finding> Told(
        Subject subject, FindingPlace place, List<Bearing> bears, FollowedStage stage, Metal metal)
    {
        if (bears.Count > 0 && bears.All(b => b.Places.Count == 0))
        {
            yield return FindingCatalogue.Grip(place, $"Nothing that holds in holding {stage.Facts.Name} bears on the work", Grade.Halt);
            yield break;
        }

        foreach (var bearing in bears)
        {
            if (Depth(subject, place, bearing, stage) is { } finding)
            {
                yield return finding;
            }
        }

        if (Lines(subject, place, bears, stage) is { } lines)
        {
            yield return lines;
        }

        if (bears.Any(b => b.Places.Any(p => Burred(subject, stage, metal, p))))
        {
            yield return FindingCatalogue.Burr(place, $"What holds in holding {stage.Facts.Name} bears on a face that was cut, and no edge was broken since");
        }
    }

    // What bears on nothing, or on little.
    private static Finding? Depth(Subject subject, FindingPlace place, Bearing bearing, FollowedStage stage)
    {
        var (facts, places) = (bearing.Facts, bearing.Places);
        if (places.Count == 0)
        {
            return FindingCatalogue.Grip(place, $"The {facts.Name} of holding {stage.Facts.Name} bears on nothing", Grade.Caution);
        }

        if (!facts.Name.Contains("jaw", StringComparison.Ordinal) || bearing.IsUnderOverhang)
        {
            return null;
        }

        if (bearing is { Kind: ContactKind.LyingLine, IsViseJaw: true })
        {
            return bearing.Above < Past ? FindingCatalogue.Grip(place, $"The {facts.Name} of holding {stage.Facts.Name} reaches only {subject.Unit.Told(bearing.Above)} above the line it bears on", Grade.Caution) : null;
        }

        var deep = Deep(places);
        return deep < Little ? FindingCatalogue.Grip(place, $"The {facts.Name} of holding {stage.Facts.Name} holds only {subject.Unit.Told(deep)} deep", Grade.Caution) : null;
    }

    // The places are the middles of rows: the outermost rows reach half a row further.
    private static double Deep(IReadOnlyList<Point3> places)
    {
        var rows = places.Select(p => Math.Round(p.Z, 6)).Distinct().Order().ToList();
        return rows.Count < 2 ? 0 : (rows[^1] - rows[0]) * rows.Count / (rows.Count - 1);
    }

    // A vise's two hard jaws on lines alone.
    private static Finding? Lines(Subject subject, FindingPlace place, List<Bearing> bears, FollowedStage stage)
    {
        if (bears.FirstOrDefault(b => b is { IsUnderOverhang: true, IsViseJaw: true }) is { } under)
        {
            return FindingCatalogue.GripOnLines(
                place,
                $"The {under.Facts.Name} of holding {stage.Facts.Name} meets the work with its upper edge alone, under metal that leans out over it: drawn up, it squeezes the work out upwards",
                Grade.Halt,
                "Let the jaws reach past the middle of a round, or past the whole of a chamfer, on lower parallels; or turn the work over.");
        }

        var jaws = bears.Where(b => b.IsViseJaw).ToList();
        if (jaws.Count != 2 || HeldLines.Between(jaws[0], jaws[1]) is not { } lines)
        {
            return null;
        }

        if (lines.IsTurnedByPress)
        {
            return FindingCatalogue.GripOnLines(
                place,
                $"The jaws of holding {stage.Facts.Name} meet the work on two edges {subject.Unit.Told(lines.Beside)} {(lines.IsUpright ? "beside" : "above")} each other: drawn up, they turn it",
                Grade.Halt,
                "Lay two flat sides of it to the jaws, or hold it between soft jaws cut to it or in a V-block.");
        }

        var where = jaws.Exists(j => j.Kind == ContactKind.Point) ? "at two points" : lines.IsUpright ? "on two upright lines" : "on two lines along them";
        return FindingCatalogue.GripOnLines(place, $"The jaws of holding {stage.Facts.Name} bear {where} only: friction alone keeps the work from turning", Grade.Caution, Narrow);
    }

    // Whether the face borne on was made by a cut after which no edge was broken before this holding.
    private static bool Burred(Subject subject, FollowedStage stage, Metal metal, Point3 place)
    {
        var at = stage.Frame!.WorkToPart.Apply(place);
        var cut = -1;
        foreach (var way in new[] { Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ })
        {
            foreach (var span in metal.Sound(new Line3(at, way)))
            {
                foreach (var (end, surface) in new[] { (span.From, span.FromSurface), (span.To, span.ToSurface) })
                {
                    if (Math.Abs(end) <= 2 * JawFace.Off && metal.StrokeOf(surface) is { } stroke)
                    {
                        cut = Math.Max(cut, stroke);
                    }
                }
            }
        }

        return cut >= 0 && !subject.Trace.Steps.Any(s => s.Stage.Index < stage.Index
            && s.Stage.Index >= subject.Trace.Strokes[cut].Stage.Index
            && s.Step.Events.OfType<Handwork>().Any(h => h.Work is "break edges" or "file" or "rub"));
    }
}
