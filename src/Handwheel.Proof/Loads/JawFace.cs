using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Loads;

/// <summary>One face of a block that presses on the work, as far as the work reaches: the nearest metal before each of its places. Holding frame, mm.</summary>
/// <param name="corner">The corner of the face where both its coordinates are 0.</param>
/// <param name="along">Unit direction of the first coordinate.</param>
/// <param name="up">Unit direction of the second.</param>
/// <param name="outward">Unit direction out of the block.</param>
/// <param name="size">How far each coordinate goes.</param>
/// <param name="metal">The metal, part frame.</param>
/// <param name="toPart">From the holding frame to the part frame.</param>
internal sealed class JawFace(Point3 corner, Vector3 along, Vector3 up, Vector3 outward, (double Along, double Up) size, ISolid metal, Pose toPart)
{
    /// <summary>How far off a face metal still counts as borne on, mm.</summary>
    public const double Off = 0.05;

    private const int Net = 20;

    // A face is looked for this far beside a place; what falls away by more than this there is no face, mm.
    private const double Beside = 1;
    private const double Flat = 1e-3;
    private const double Finest = 1e-7;

    private readonly List<(double A, double B, double Gap)> net = [];

    /// <summary>Looks.</summary>
    /// <returns>The places borne on, how, the nearest place, its second coordinate, and whether the face&#39;s upper edge bears alone under an overhang.</returns>
    public (List<Point3> Places, ContactKind Kind, Point3? Nearest, double At, bool IsUnderOverhang) Look()
    {
        for (var i = 0; i < Net; i++)
        {
            for (var j = 0; j < Net; j++)
            {
                double a = (i + 0.5) / Net * size.Along, b = (j + 0.5) / Net * size.Up;
                net.Add((a, b, Gap(a, b)));
            }
        }

        var nearest = net.MinBy(p => p.Gap);
        if (!double.IsFinite(nearest.Gap))
        {
            return ([], ContactKind.None, null, 0, false);
        }

        nearest = Closer(nearest, isAlong: true, isUp: true);
        var borne = net.Where(p => p.Gap <= Off).ToList();
        foreach (var row in net.GroupBy(p => p.B).Concat(net.GroupBy(p => p.A)))
        {
            if (row.Any(p => p.Gap <= Off) || row.All(p => !double.IsFinite(p.Gap)))
            {
                continue;
            }

            var isRow = row.All(p => p.B == row.First().B);
            if (Closer(row.MinBy(p => p.Gap), isRow, !isRow) is { Gap: <= Off } found)
            {
                borne.Add(found);
            }
        }

        if (nearest.Gap <= Off)
        {
            borne.Add(nearest);
        }

        var kind = borne.Count == 0 ? ContactKind.None : KindOf(nearest);
        var overhung = kind is not (ContactKind.None or ContactKind.Face) && nearest.B >= size.Up - 1e-3 && Gap(nearest.A, size.Up + 0.1) <= nearest.Gap - (0.1 * GripStrength.LineFriction);
        return (borne.ConvertAll(p => At(p.A, p.B)), kind, At(nearest.A, nearest.B), nearest.B, overhung);
    }

    private ContactKind KindOf((double A, double B, double Gap) nearest)
    {
        foreach (var p in net.Where(p => p.Gap <= nearest.Gap + 1e-4).Append(nearest))
        {
            if (IsFlat(p, Beside, 0) && IsFlat(p, 0, Beside))
            {
                return ContactKind.Face;
            }
        }

        return (IsFlat(nearest, Beside, 0), IsFlat(nearest, 0, Beside)) switch
        {
            (true, _) => ContactKind.LyingLine,
            (_, true) => ContactKind.UprightLine,
            _ => ContactKind.Point,
        };
    }

    // Whether the metal goes on level, to one side at least.
    private bool IsFlat((double A, double B, double Gap) p, double a, double b) =>
        Math.Abs(Gap(p.A + a, p.B + b) - p.Gap) <= Flat || Math.Abs(Gap(p.A - a, p.B - b) - p.Gap) <= Flat;

    // Step by step to where metal is nearer, by ever smaller steps; the face's edges are not left.
    private (double A, double B, double Gap) Closer((double A, double B, double Gap) from, bool isAlong, bool isUp)
    {
        var best = from;
        for (var share = 1.0 / Net; share * Math.Max(size.Along, size.Up) > Finest; share /= 2)
        {
            foreach (var (a, b) in new[] { (1, 0), (-1, 0), (0, 1), (0, -1) })
            {
                if ((a != 0 && !isAlong) || (b != 0 && !isUp))
                {
                    continue;
                }

                var (x, y) = (Math.Clamp(best.A + (a * share * size.Along), 0, size.Along), Math.Clamp(best.B + (b * share * size.Up), 0, size.Up));
                var gap = Gap(x, y);
                best = gap < best.Gap - 1e-12 ? (x, y, gap) : best;
            }
        }

        return best;
    }

    private Point3 At(double a, double b) => corner + (along * a) + (up * b) + (outward * Off);

    // How far before a place of the face the metal begins; less than nothing where it reaches into the block, infinite where there is none.
    private double Gap(double a, double b)
    {
        var gap = double.PositiveInfinity;
        foreach (var span in metal.Sound(new Line3(corner + (along * a) + (up * b), outward).Placed(toPart)))
        {
            if (span.To > Off)
            {
                gap = Math.Min(gap, span.From);
            }
        }

        return gap;
    }
}
