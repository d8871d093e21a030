using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Web and wall, as measured: the thinnest metal a saw leaves standing beside it, and the thinnest wall of the part that a milling cut leaves beside itself.
/// Measured on level lines across the cutter at stations along the move. One of each a step.
/// </summary>
internal static class Thin
{
    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Findings <c>web</c> and <c>wall</c>.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var thinnest = new Dictionary<string, (double Thick, Point3 At, Stroke Stroke)>(StringComparer.Ordinal);
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
                thinnest[stroke.Step.Id] = (found.Thick, found.At, stroke);
            }
            else if (found.Thick < known.Thick)
            {
                thinnest[stroke.Step.Id] = (found.Thick, found.At, stroke);
            }
        }

        foreach (var (thick, at, stroke) in order.Select(o => thinnest[o]))
        {
            var place = Places.Of(stroke, at);
            yield return stroke.Cutter!.Kind == CutterKind.Saw
                ? FindingCatalogue.Web(place, subject.Unit, thick, subject.Shop.ThinUnder)
                : FindingCatalogue.Wall(place, subject.Unit, thick);
        }
    }

    /// <summary>The thinnest metal left standing right beside the cutter, where it is under a thickness.</summary>
    /// <param name="stroke">The stroke.</param>
    /// <param name="under">The thickness, millimetres.</param>
    /// <returns>Its thickness and middle, part frame; null where all is thicker.</returns>
    public static (double Thick, Point3 At)? Beside(Stroke stroke, double under)
    {
        (double Thick, Point3 At)? thinnest = null;
        var radius = stroke.Shape!.GreatestRadius;
        if (stroke.Shape.Pieces.FirstOrDefault(p => p.Cuts) is not { } edge)
        {
            return null;
        }

        foreach (var station in Station.Along(stroke.Legs, 2.5, 16))
        {
            var line = station.Across((edge.Z0 + Math.Min(edge.Z1, edge.Z0 + 1)) / 2);
            foreach (var span in stroke.After.Sound(line))
            {
                var touches = Math.Abs(span.From - radius) < 0.05 || Math.Abs(span.To + radius) < 0.05;
                if (touches && span.Length < under && (thinnest is null || span.Length < thinnest.Value.Thick))
                {
                    thinnest = (span.Length, line.At(span.Middle));
                }
            }
        }

        return thinnest;
    }
}
