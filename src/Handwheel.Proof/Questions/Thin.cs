using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Proof.Following;
using Handwheel.Proof.Loads;
using Handwheel.Solids.Cuts;

namespace Handwheel.Proof.Questions;

/// <summary>
/// Web and wall: the metal a saw leaves standing beside it, how thick on the whole, and the thinnest wall of the part that a milling cut leaves beside itself, each against
/// the force of the cuts that it must stand. Measured on level lines across the cutter at stations along the move. One of each a step.
/// </summary>
internal static class Thin
{
    private const double Apart = 2.5;
    private const int Most = 16;

    // So many times what counts as thin still is the web, where another part of it is thin.
    private const double Thick = 4;

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
            var isWeb = stroke.Cutter!.Kind == CutterKind.Saw;
            if ((isWeb ? Left(subject, stroke) : Beside(stroke, subject.Shop.ThinUnder)) is not { } found)
            {
                continue;
            }

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

    // What a saw leaves in all, however often it is stopped on its way: how thick on the whole, as a web runs out to nothing where the outline turns away.
    private static ThinMetal? Left(Subject subject, Stroke stroke)
    {
        var own = subject.Trace.Strokes.Where(s => s.Step.Id == stroke.Step.Id && s is { Cutting: true, Move: not null, Shape: not null } && s.Legs.Any(l => !l.IsAlongZ)).ToList();
        if (!ReferenceEquals(own[^1], stroke))
        {
            return null;
        }

        var last = stroke.Legs[^1];
        var along = own.SelectMany(s => s.Legs).Where(l => !l.IsTurning && OneLine(l, last)).ToList();
        var whole = along.Count > 1 && !last.IsTurning
            ? stroke with { Legs = [last with { Path = CutterPath.Straight(along[0].Path.From, last.Path.To), From = along[0].From }] }
            : stroke;
        return Beside(whole, Thick * subject.Shop.ThinUnder, onTheWhole: true) is { } web && web.Least < subject.Shop.ThinUnder ? web : null;
    }

    private static bool OneLine(Leg one, Leg other)
    {
        const double Same = 1e-6;
        var way = (other.Path.To - other.Path.From).ToUnit();
        return one.To.T == other.To.T && !one.IsAlongZ && new[] { one.Path.From, one.Path.To }.All(p =>
        {
            var off = p - other.Path.To;
            return (off - (way * off.Dot(way))).Length < Same;
        });
    }

    /// <summary>The thinnest metal left standing right beside the cutter, where it is under a thickness.</summary>
    /// <param name="stroke">The stroke.</param>
    /// <param name="under">The thickness, millimetres.</param>
    /// <param name="onTheWhole">Whether its mean thickness is told, not its least.</param>
    /// <returns>What it is; null where all is thicker.</returns>
    public static ThinMetal? Beside(Stroke stroke, double under, bool onTheWhole = false)
    {
        ThinMetal? thinnest = null;
        var radius = stroke.Shape!.GreatestRadius;
        if (stroke.Shape.Pieces.FirstOrDefault(p => p.Cuts) is not { } edge)
        {
            return null;
        }

        double runs = 0, area = 0;
        List<ThinMetal> all = [];
        foreach (var station in Station.Along(stroke.Legs, Apart, Most))
        {
            var line = station.Across((edge.Z0 + Math.Min(edge.Z1, edge.Z0 + 1)) / 2);
            var least = double.PositiveInfinity;
            foreach (var span in stroke.After.Sound(line))
            {
                var touches = Math.Abs(span.From - radius) < 0.05 || Math.Abs(span.To + radius) < 0.05;
                if (!touches || span.Length >= under)
                {
                    continue;
                }

                var here = new ThinMetal(span.Length, line.At(span.Middle), station.Leg, line.Direction, 0);
                if (span.Length < least)
                {
                    least = span.Length;
                    all.Add(here);
                }

                thinnest = thinnest is null || span.Length < thinnest.Thick ? here : thinnest;
            }

            var count = Math.Clamp(Math.Ceiling(station.Leg.Path.Length / Apart), 3, Most);
            var share = double.IsFinite(least) ? station.Leg.Path.Length / count : 0;
            (runs, area) = (runs + share, area + (share > 0 ? share * least : 0));
        }

        if (onTheWhole && runs > 0)
        {
            var mean = area / runs;
            return all.MinBy(m => Math.Abs(m.Thick - mean))! with { Thick = mean, Least = thinnest!.Thick, Long = runs };
        }

        return thinnest is null ? null : thinnest with { Long = runs };
    }

    private static Finding Web(Subject subject, CutLoads? loads, ThinMetal metal, Stroke stroke, FindingPlace place)
    {
        var plain = FindingCatalogue.Web(place, subject.Unit, metal.Thick, metal.Least, subject.Shop.ThinUnder);
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
