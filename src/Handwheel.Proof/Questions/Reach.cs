using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Solids.Cutters;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Reach: do the flutes reach? Beside a side cut, metal left standing against a shank as thick as the cutter is a halt; a hole deeper than its drill&#39;s flutes,
/// where chips find no way out, a caution. A boring bar and a fly cutter have one tooth and no flutes. (A shank, chuck or nose that meets metal is a strike.)
/// </summary>
internal static class Reach
{
    private const double Beside = 0.03;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Findings <c>reach</c>, one a step.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var stroke in subject.Trace.Strokes)
        {
            if (stroke is not { Cutting: true, Move: not null, Shape: { } shape, Cutter: { } cutter } || told.Contains(stroke.Step.Id))
            {
                continue;
            }

            if (Look(subject, stroke, shape, cutter) is { } finding && told.Add(stroke.Step.Id))
            {
                yield return finding;
            }
        }
    }

    private static Finding? Look(Subject subject, Stroke stroke, CutterShape shape, Cutter cutter)
    {
        var flute = shape.Pieces.Where(p => p.Cuts).Select(p => p.Z1).DefaultIfEmpty(0).Max();
        var above = shape.Pieces.FirstOrDefault(p => !p.Cuts && p.Z0 >= flute);
        var radius = shape.GreatestRadius;
        if (above is null || flute <= 0 || cutter.Kind is CutterKind.BoringBar or CutterKind.FlyCutter)
        {
            return null;
        }

        var plunges = stroke.Legs.All(l => l.IsAlongZ);
        var top = Top(stroke, radius, plunges ? stroke.Before : stroke.After, flute);
        if (top <= flute + Beside)
        {
            return null;
        }

        if (plunges)
        {
            return FindingCatalogue.Reach(stroke.Place, cutter.Name, "flute length", subject.Unit, flute, top, Grade.Caution);
        }

        return above.Radius0 > radius - Beside
            ? FindingCatalogue.Reach(stroke.Place, cutter.Name, "flute length", subject.Unit, flute, top, Grade.Halt)
            : null;
    }

    // The highest metal right beside the cutter that stands against more than its flutes, above its lowest point.
    private static double Top(Stroke stroke, double radius, Metal metal, double flute)
    {
        var top = 0.0;
        foreach (var station in Station.Along([.. stroke.Legs.Where(l => l.Path.To.Z <= l.Path.From.Z)], 4, 8))
        {
            for (var i = 0; i < 8; i++)
            {
                var (s, c) = Math.SinCos(2 * Math.PI * i / 8);
                var low = station.Leg.Path.To.Z - station.At.Z;
                foreach (var span in metal.Sound(station.Upright((radius + Beside) * c, (radius + Beside) * s)))
                {
                    if (span.From < low + flute + 100 && span.To - low > flute)
                    {
                        top = Math.Max(top, span.To - low);
                    }
                }
            }
        }

        return top;
    }
}
