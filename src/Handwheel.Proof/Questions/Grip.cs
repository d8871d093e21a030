using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Moves;
using Handwheel.Proof.Following;
using Handwheel.Proof.Loads;
using Handwheel.Quantities;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Grip and burr, as geometry: does what presses on the work bear on metal, how deep, and was that face cut since its edges were last broken? Looked at on a
/// net of places just off each face of each jaw or clamp, within a chuck's jaws all round, as the holding begins.
/// </summary>
internal static class Grip
{
    // A jaw that bears on less than this depth holds little, millimetres (common practice, no source).
    private const double Little = 2;

    // How far off a face metal still counts as borne on, millimetres.
    private const double Off = 0.05;

    private const int Net = 20;

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
            var bears = holding.Select(f => (Facts: f, Places: Borne(f, stage, metal))).ToList();
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
        Subject subject, FindingPlace place, List<(FixtureFacts Facts, List<Point3> Places)> bears, FollowedStage stage, Metal metal)
    {
        if (bears.Count > 0 && bears.All(b => b.Places.Count == 0))
        {
            yield return FindingCatalogue.Grip(place, $"Nothing that holds in holding {stage.Facts.Name} bears on the work", Grade.Halt);
            yield break;
        }

        foreach (var (facts, places) in bears)
        {
            var deep = places.Count == 0 ? 0 : places.Max(p => p.Z) - places.Min(p => p.Z) + ((facts.Most.Z - facts.Least.Z) / Net);
            var isJaw = facts.Name.Contains("jaw", StringComparison.Ordinal);
            if (places.Count == 0)
            {
                yield return FindingCatalogue.Grip(place, $"The {facts.Name} of holding {stage.Facts.Name} bears on nothing", Grade.Caution);
            }
            else if (isJaw && deep < Little)
            {
                yield return FindingCatalogue.Grip(place, $"The {facts.Name} of holding {stage.Facts.Name} holds only {subject.Unit.Told(deep)} deep", Grade.Caution);
            }
        }

        if (bears.Any(b => b.Places.Any(p => Burred(subject, stage, metal, p))))
        {
            yield return FindingCatalogue.Burr(place, $"What holds in holding {stage.Facts.Name} bears on a face that was cut, and no edge was broken since");
        }
    }

    // Places of the work (holding frame) just off the faces of a block.
    private static List<Point3> Borne(FixtureFacts f, FollowedStage stage, Metal metal)
    {
        var toPart = stage.Frame!.WorkToPart;
        if (f.Bore > 0)
        {
            return [.. Inside(f).Where(p => metal.Contains(toPart.Apply(p)))];
        }

        var borne = new List<Point3>();
        Vector3 size = new(f.Most.X - f.Least.X, f.Most.Y - f.Least.Y, f.Most.Z - f.Least.Z);
        for (var i = 0; i < Net; i++)
        {
            for (var j = 0; j < Net; j++)
            {
                double a = (i + 0.5) / Net, b = (j + 0.5) / Net;
                foreach (var p in new[]
                {
                    new Point3(f.Least.X + (a * size.X), f.Least.Y - Off, f.Least.Z + (b * size.Z)),
                    new Point3(f.Least.X + (a * size.X), f.Most.Y + Off, f.Least.Z + (b * size.Z)),
                    new Point3(f.Least.X - Off, f.Least.Y + (a * size.Y), f.Least.Z + (b * size.Z)),
                    new Point3(f.Most.X + Off, f.Least.Y + (a * size.Y), f.Least.Z + (b * size.Z)),
                    new Point3(f.Least.X + (a * size.X), f.Least.Y + (b * size.Y), stage.Frame.Lies && f.Least.Z < stage.Facts.Setup!.Rotary!.Z ? f.Most.Z + Off : f.Least.Z - Off),
                })
                {
                    if (metal.Contains(toPart.Apply(p)))
                    {
                        borne.Add(p);
                    }
                }
            }
        }

        return borne;
    }

    // Places just within the bore of what stands all round the work.
    private static IEnumerable<Point3> Inside(FixtureFacts f)
    {
        for (var i = 0; i < Net; i++)
        {
            var (s, c) = Math.SinCos(2 * Math.PI * i / Net);
            for (var j = 0; j < Net; j++)
            {
                var r = (f.Bore / 2) - Off;
                yield return new Point3(f.Least.X + (r * c), f.Least.Y + (r * s), f.Least.Z + ((j + 0.5) / Net * (f.Most.Z - f.Least.Z)));
            }
        }
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
                    if (Math.Abs(end) <= 2 * Off && metal.StrokeOf(surface) is { } stroke)
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
