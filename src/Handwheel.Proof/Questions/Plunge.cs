using System.Globalization;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Plunge: is a cutter that has no edge at its centre plunged into solid metal? Does a drill start on a slope, across an edge, or unspotted? Looked at in the
/// metal as it is before the stroke: on the axis, and at sixteen places round the drill.
/// </summary>
internal static class Plunge
{
    // Metal on the axis shorter than this is no plunge: what a drill's rounding leaves, millimetres.
    private const double Little = 0.02;

    // A face leaning more than this is a slope to a drill, degrees (common practice, no source).
    private const double Slope = 5;

    private const int Round = 16;

    /// <summary>Asks.</summary>
    /// <param name="subject">What is looked at.</param>
    /// <returns>Halts and cautions <c>plunge</c>, at most one a step.</returns>
    public static IEnumerable<Finding> Ask(Subject subject)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var stroke in subject.Trace.Strokes)
        {
            if (stroke is not { Cutter: { } cutter, Move: not null } || told.Contains(stroke.Step.Id))
            {
                continue;
            }

            foreach (var leg in stroke.Legs.Where(l => l.IsAlongZ && l.Path.To.Z < l.Path.From.Z))
            {
                if (Look(stroke, leg, cutter) is { } finding && told.Add(stroke.Step.Id))
                {
                    yield return finding;
                }
            }
        }
    }

    private static Finding? Look(Stroke stroke, Leg leg, Cutter cutter)
    {
        if (WithoutCentre(stroke, cutter))
        {
            var solid = Column(stroke.Before, leg, 0, 0).Sum(s => s.Length);
            return solid > Little ? FindingCatalogue.PlungeWithoutCentre(stroke.Place, cutter.Name) : null;
        }

        return cutter.Kind == CutterKind.Drill ? Start(stroke, leg, cutter) : null;
    }

    // A tap takes nothing: whether it goes into its hole is asked for itself.
    private static bool WithoutCentre(Stroke stroke, Cutter cutter) =>
        stroke.Shape is { CutsToCentre: false } && cutter.Kind is not (CutterKind.Drill or CutterKind.SpottingDrill or CutterKind.CentreDrill or CutterKind.Tap);

    private static Finding? Start(Stroke stroke, Leg leg, Cutter cutter)
    {
        var radius = 0.9 * cutter.TrueAcross / 2;
        var tops = new double?[Round];
        for (var i = 0; i < Round; i++)
        {
            var (s, c) = Math.SinCos(2 * Math.PI * i / Round);
            tops[i] = Top(Column(stroke.Before, leg, radius * c, radius * s));
        }

        if (tops.All(t => t is null) || IsGuided(stroke, leg, cutter, tops.Max()!.Value))
        {
            return null;
        }

        if (tops.Any(t => t is null))
        {
            return FindingCatalogue.PlungeDrill(stroke.Place, cutter.Name, "across an edge", Grade.Halt);
        }

        // A round bar drilled on its crest falls away alike on both sides: only opposite places that differ make a slope.
        var steepest = 0.0;
        for (var i = 0; i < Round / 2; i++)
        {
            steepest = Math.Max(steepest, Math.Abs(tops[i]!.Value - tops[i + (Round / 2)]!.Value));
        }

        var lean = Math.Atan2(steepest, 2 * radius) * 180 / Math.PI;
        if (lean > Slope)
        {
            var how = lean > 60 ? "across an edge" : string.Create(CultureInfo.InvariantCulture, $"on a slope of {lean:F0} deg");
            return FindingCatalogue.PlungeDrill(stroke.Place, cutter.Name, how, Grade.Halt);
        }

        var centre = Top(Column(stroke.Before, leg, 0, 0));
        var flat = centre is { } c0 && c0 > tops.Max() - Little;
        return flat ? FindingCatalogue.PlungeDrill(stroke.Place, cutter.Name, "unspotted", Grade.Caution) : null;
    }

    // A drill that goes on in the hole it has begun stands in its wall, half its diameter or more up, nearly all round: how it leaves the work is no start.
    private static bool IsGuided(Stroke stroke, Leg leg, Cutter cutter, double meets)
    {
        var beside = 1.1 * cutter.TrueAcross / 2;
        var walls = Enumerable.Range(0, Round).Count(i =>
        {
            var (s, c) = Math.SinCos(2 * Math.PI * i / Round);
            return Top(Column(stroke.Before, leg, beside * c, beside * s)) is { } wall && wall > meets + (cutter.TrueAcross / 2);
        });
        return walls >= 0.7 * Round;
    }

    private static double? Top(IReadOnlyList<Span> spans) => spans.Count == 0 ? null : spans[^1].To;

    // Metal on an upright line beside the axis within what the plunge passes.
    private static IReadOnlyList<Span> Column(ISolid metal, Leg leg, double x, double y)
    {
        var line = new Line3(new Point3(leg.Path.To.X + x, leg.Path.To.Y + y, 0), Vector3.UnitZ).Placed(leg.ToPart);
        var (low, high) = (leg.Path.To.Z, leg.Path.From.Z);
        return [.. metal.Sound(line).Where(s => s.To > low && s.From < high).Select(s => s with { From = Math.Max(s.From, low), To = Math.Min(s.To, high) })];
    }
}
