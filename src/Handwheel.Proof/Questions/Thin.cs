using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Proof.Loads;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Web and wall: the thinnest metal a saw leaves standing beside it, and the thinnest wall of the part that a milling cut leaves beside itself, each against
/// the force of the cuts that it must stand. Measured on level lines across the cutter at stations along the move. One of each a step.
/// </summary>
internal static class Thin
{
    private const double Apart = 2.5;
    private const int Most = 16;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <param name="loads">The forces; null: none are known.</param>
    /// <returns>Findings <c>web</c> and <c>wall</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject, CutLoads? loads)
    {
        var thinnest = new Dictionary<string, (ThinMetal Metal, Stroke Stroke)>(StringComparer.Ordinal);
        var order = new List<string>();
        foreach (var stroke in subject.Trace.Strokes.Where(s => s is { Cutting: true, Move: not null, Shape: not null } && s.Legs.Any(l => !l.IsAlongZ)))
        {
            if (Beside(stroke, subject.Shop.ThinUnder) is not { } found)
            {
                continue;
            }

            var isWeb = stroke.Cutter!.Kind == CutterKind.Saw;
            if (!isWeb && !subject.Aimed.Solid.Contains(found.At))
            {
                continue;
            }

            if (!thinnest.TryGetValue(stroke.Step.Id, out var known))
            {
                order.Add(stroke.Step.Id);
                thinnest[stroke.Step.Id] = (found, stroke);
            }
            else if (found.Thick <= known.Metal.Thick + 1e-6)
            {
                thinnest[stroke.Step.Id] = (found, stroke);
            }
        }

        foreach (var (metal, stroke) in order.Select(o => thinnest[o]))
        {
            var place = Places.Of(stroke, metal.At);
            yield return stroke.Cutter!.Kind == CutterKind.Saw
                ? Web(subject, loads, metal, stroke, place)
                : Wall(subject, loads, metal, stroke, place);
        }
    }

    /// <summary>The thinnest metal left standing right beside the cutter, where it is under a thickness.</summary>
    /// <param name="stroke">The stroke.</param>
    /// <param name="under">The thickness, millimetres.</param>
    /// <returns>What it is; null where all is thicker.</returns>
    public static ThinMetal? Beside(Stroke stroke, double under)
    {
        ThinMetal? thinnest = null;
        var radius = stroke.Shape!.GreatestRadius;
        if (stroke.Shape.Pieces.FirstOrDefault(p => p.Cuts) is not { } edge)
        {
            return null;
        }

        var runs = 0.0;
        foreach (var station in Station.Along(stroke.Legs, Apart, Most))
        {
            var line = station.Across((edge.Z0 + Math.Min(edge.Z1, edge.Z0 + 1)) / 2);
            var thin = false;
            foreach (var span in stroke.After.Sound(line))
            {
                var touches = Math.Abs(span.From - radius) < 0.05 || Math.Abs(span.To + radius) < 0.05;
                if (!touches || span.Length >= under)
                {
                    continue;
                }

                thin = true;
                if (thinnest is null || span.Length < thinnest.Thick)
                {
                    thinnest = new ThinMetal(span.Length, line.At(span.Middle), station.Leg, line.Direction, 0);
                }
            }

            var count = Math.Clamp(Math.Ceiling(station.Leg.Path.Length / Apart), 3, Most);
            runs += thin ? station.Leg.Path.Length / count : 0;
        }

        return thinnest is null ? null : thinnest with { Long = runs };
    }

    private static Finding Web(Subject subject, CutLoads? loads, ThinMetal metal, Stroke stroke, FindingPlace place)
    {
        var plain = FindingCatalogue.Web(place, subject.Unit, metal.Thick, subject.Shop.ThinUnder);
        return loads is not null && WebStrength.Of(subject, loads, metal, stroke) is { } strength
            ? FindingCatalogue.WebStands(plain, strength.Told, strength.Margin)
            : plain;
    }

    private static Finding Wall(Subject subject, CutLoads? loads, ThinMetal metal, Stroke stroke, FindingPlace place)
    {
        var plain = FindingCatalogue.Wall(place, subject.Unit, metal.Thick);
        return loads is not null && WallStrength.Of(subject, loads, metal, stroke) is { } strength
            ? FindingCatalogue.WallStands(plain, strength.Told, strength.Margin)
            : plain;
    }
}
