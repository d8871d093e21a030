using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Questions;

// Climbs, by soundings alone, to the place of the excess that is farthest from the reference's surface. The excess is bounded by the workpiece's surface:
// from a place of it, the line away from the reference is followed to where the excess ends; then the line is moved aside, along the workpiece's edges
// among other ways, and the corners its faces make are tried.
internal sealed class ExcessRefiner
{
    private const double Golden = 2.399963229728653;

    // Stretches along each axis that a climb may start from, where all are given.
    private const int Seeds = 6;

    // Places measured at most where stretches are given: of 84 gouges and leftovers none came out other with 20000, and eight did with 300.
    private const int ManyPlaces = 3000;
    private readonly Workpiece workpiece;
    private readonly Solid reference;
    private readonly bool outward;
    private readonly NearestPlace nearest;
    private readonly List<Vector3> hints = [];
    private Box3? within;
    private int spent;

    internal ExcessRefiner(Workpiece workpiece, Solid reference, bool outward)
    {
        this.workpiece = workpiece;
        this.reference = reference;
        this.outward = outward;
        nearest = new(reference);
    }

    // A place of the excess, its nearest place on the reference.
    private readonly record struct Spot(Point3 Place, Point3 Foot, double Depth)
    {
        internal Vector3 Away => (Place - Foot).ToUnit();
    }

    internal Excess Refine(ExcessScan scan) =>
        new(Refine(scan.Longest, scan.Spacing, scan.Box), scan.Volume, scan.Box, scan.Guarantee);

    // Stretches of the excess on rays so far apart: the longest along each of the axes, and their box.
    internal DeepPlace Refine(IReadOnlyList<(Point3 From, Point3 To)> stretches, double spacing)
    {
        if (stretches.Count == 0)
        {
            throw new ArgumentException("No stretch to start from.", nameof(stretches));
        }

        var box = Box3.Empty;
        foreach (var (from, to) in stretches)
        {
            box = box.Union(new(from, from)).Union(new(to, to));
        }

        within = box.Grown(spacing);
        return Refine(ExcessScan.LongestOf(stretches, Seeds), spacing, box);
    }

    // Stretches of the excess, longest first, on rays so far apart.
    internal DeepPlace Refine(IReadOnlyList<(Point3 From, Point3 To)> stretches, double spacing, Box3 box)
    {
        var spots = new List<Spot>();
        foreach (var (from, to) in stretches)
        {
            foreach (var share in (ReadOnlySpan<double>)[1e-9, 0.5, 1 - 1e-9])
            {
                if (Measure(from + ((to - from) * share), all: true) is { } spot)
                {
                    spots.Add(spot);
                }
            }
        }

        Spot? best = null;
        var climbed = new List<Point3>();
        foreach (var spot in spots.OrderByDescending(s => s.Depth))
        {
            if (climbed.Count == 4)
            {
                break;
            }

            if (climbed.TrueForAll(c => c.DistanceTo(spot.Place) > spacing))
            {
                climbed.Add(spot.Place);
                var top = Climb(spot, Math.Max(spacing, box.Size.Length / 2));
                climbed.Add(top.Place);
                best = best is { } known && known.Depth >= top.Depth ? known : top;
            }
        }

        var (start, end) = stretches[0];
        var found = best ?? new Spot(start, end, start.DistanceTo(end));
        var line = new Line3(found.Foot, found.Away);
        return new(found.Foot, found.Depth, found.Away, SurfaceAt(line, found.Depth));
    }

    // Aside by a step halved to nothing, sixteen ways turned anew each time.
    private Spot Climb(Spot start, double step)
    {
        var best = Risen(start, step);
        var turn = 0.0;
        for (var h = step; h > 1e-9; h /= 2)
        {
            for (var tries = 0; tries < 24 && !IsSpent; tries++)
            {
                var before = best.Depth;
                var away = best.Away;
                var u = away.Cross(Math.Abs(away.Z) < 0.9 ? Vector3.UnitZ : Vector3.UnitX).ToUnit();
                var v = away.Cross(u);
                turn += Golden;
                for (var k = 0; k < 8; k++)
                {
                    var (s, c) = Math.SinCos(turn + (k * Math.PI / 4));
                    var aside = (u * (h * c)) + (v * (h * s));
                    best = Better(best, best.Place + aside, h);
                    best = Plain(best, best.Place + aside);
                }

                best = Plain(Plain(best, best.Place + (best.Away * h)), best.Place - (best.Away * h));

                best = AlongEdges(best, h);
                if (best.Depth <= before + 1e-12)
                {
                    break;
                }
            }
        }

        // Once more with care: is there a nearer place of the reference after all?
        var close = nearest.FindClosely(best.Place, [.. hints, -best.Away]);
        return close is { } hit && hit.Distance < best.Depth ? best with { Foot = hit.Place, Depth = hit.Distance } : best;
    }

    // Planes of the workpiece met near the spot: their shared lines are gone along, their shared corners tried.
    private Spot AlongEdges(Spot best, double h)
    {
        var back = best.Place - (best.Away * Math.Min(h, 0.5 * best.Depth));
        var planes = PlanesNear(back, 4 * h);
        for (var i = 0; i < planes.Count && !IsSpent; i++)
        {
            for (var j = i + 1; j < planes.Count; j++)
            {
                var along = planes[i].Normal.Cross(planes[j].Normal);
                if (along.Length < 1e-3)
                {
                    continue;
                }

                var edge = Shared(best.Place, planes[i], planes[j]);
                along = along.ToUnit();
                best = Kept(best, edge, back);
                best = Kept(best, edge + (along * h), back);
                best = Kept(best, edge - (along * h), back);
                for (var k = j + 1; k < planes.Count; k++)
                {
                    var rate = along.Dot(planes[k].Normal);
                    if (Math.Abs(rate) > 1e-3)
                    {
                        best = Kept(best, edge - (along * ((edge - planes[k].Place).Dot(planes[k].Normal) / rate)), back);
                    }
                }
            }
        }

        return best;
    }

    private static Point3 Shared(Point3 p, (Point3 Place, Vector3 Normal) a, (Point3 Place, Vector3 Normal) b)
    {
        p -= a.Normal * (p - a.Place).Dot(a.Normal);
        var down = (b.Normal - (a.Normal * a.Normal.Dot(b.Normal))).ToUnit();
        return p - (down * ((p - b.Place).Dot(b.Normal) / down.Dot(b.Normal)));
    }

    // A place a hair back from one on the workpiece's edge or corner, if it is excess and deeper.
    private Spot Kept(Spot best, Point3 at, Point3 back)
    {
        var place = at + ((back - at).ToUnit() * 1e-10);
        return IsExcess(place) ? Deeper(best, place) : best;
    }

    private List<(Point3 Place, Vector3 Normal)> PlanesNear(Point3 p, double within)
    {
        var planes = new List<(Point3 Place, Vector3 Normal)>();
        foreach (var u in (ReadOnlySpan<Vector3>)[Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ, new Vector3(1, 1, 0.1).ToUnit(), new Vector3(1, -1, 0.1).ToUnit(), new Vector3(0.1, 1, 1).ToUnit(), new Vector3(1, 0.1, -1).ToUnit()])
        {
            var line = new Line3(p, u);
            foreach (var span in workpiece.Sound(line))
            {
                Note(line.At(span.From), span.From, span.FromSurface);
                Note(line.At(span.To), span.To, span.ToSurface);
            }
        }

        return planes;

        void Note(Point3 place, double t, SurfaceId surface)
        {
            if (Math.Abs(t) < within && planes.Count < 8)
            {
                var n = workpiece.NormalAt(surface, place);
                if (!planes.Exists(k => (k.Normal - n).Length < 1e-9))
                {
                    planes.Add((place, n));
                }
            }
        }
    }

    private bool IsExcess(Point3 p) => outward
        ? workpiece.Contains(p) && !reference.Contains(p)
        : reference.Contains(p) && !workpiece.Contains(p);

    // A place beside the spot, followed away from the reference to where the excess ends, if that is deeper.
    private Spot Better(Spot best, Point3 beside, double h)
    {
        var line = new Line3(beside, best.Away);
        var end = double.NaN;
        foreach (var span in ExcessAlong(line))
        {
            if (span.From <= 2 * h && span.To >= -2 * h)
            {
                end = span.To;
            }
        }

        return double.IsFinite(end) ? Deeper(best, line.At(end) - (best.Away * 1e-11)) : best;
    }

    // A place beside the spot itself, for where walls on both sides are equally far.
    private Spot Plain(Spot best, Point3 beside) =>
        IsExcess(beside) ? Deeper(best, beside) : best;

    // A place that seems deeper is measured again with care before it is believed.
    private Spot Deeper(Spot best, Point3 place) =>
        Measure(place, all: false) is { } seems && seems.Depth > best.Depth && Measure(place, all: true) is { } spot && spot.Depth > best.Depth ? spot : best;

    // The spot followed away from the reference as far as that goes.
    private Spot Risen(Spot spot, double h)
    {
        for (var i = 0; i < 20; i++)
        {
            var next = Better(spot, spot.Place, h);
            if (next.Depth <= spot.Depth + 1e-12)
            {
                break;
            }

            spot = next;
        }

        return spot;
    }

    private Spans ExcessAlong(in Line3 line)
    {
        Spans metal = workpiece.Sound(line), wanted = reference.Sound(line);
        return outward ? metal.Difference(wanted) : wanted.Difference(metal);
    }

    // Whether so many places were measured that what is known must do.
    private bool IsSpent => within is not null && spent > ManyPlaces;

    private Spot? Measure(Point3 place, bool all)
    {
        spent++;
        if (within is { } box && !box.Contains(place))
        {
            return null;
        }

        var hit = nearest.Find(place, hints, all);
        if (hit is not { } foot)
        {
            return null;
        }

        hints.Clear();
        hints.AddRange(nearest.Normals);
        hints.Add((foot.Place - place).ToUnit());
        return new(place, foot.Place, foot.Distance);
    }

    // The workpiece's surface nearest to a distance along a line.
    private SurfaceId SurfaceAt(in Line3 line, double t)
    {
        var nearestEnd = double.PositiveInfinity;
        SurfaceId face = default;
        foreach (var span in workpiece.Sound(line))
        {
            if (Math.Abs(span.From - t) < nearestEnd)
            {
                (nearestEnd, face) = (Math.Abs(span.From - t), span.FromSurface);
            }

            if (Math.Abs(span.To - t) < nearestEnd)
            {
                (nearestEnd, face) = (Math.Abs(span.To - t), span.ToSurface);
            }
        }

        return face;
    }
}
