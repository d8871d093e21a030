using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// A closed outline in plan, counterclockwise. Immutable.
internal sealed class PlanOutline
{
    private readonly PlanEdge[] edges;

    internal PlanOutline(IReadOnlyList<PlanEdge> edges) => this.edges = [.. edges.Where(e => e.IsArc || Plane.Distance(e.From, e.To) > 1e-9)];

    internal IReadOnlyList<PlanEdge> Edges => edges;

    internal static PlanOutline Circle(Point2 centre, double radius, string name)
    {
        Point2 start = new(centre.X + radius, centre.Y);
        return new([new(start, start, centre, radius, true, name)]);
    }

    internal static PlanOutline Polyline(IReadOnlyList<Point2> corners, IReadOnlyList<string>? names = null) => new(
        [.. corners.Select((c, i) => new PlanEdge(c, corners[(i + 1) % corners.Count], default, 0, false, names is null ? string.Empty : names[i]))]);

    internal static PlanOutline Rectangle(Point2 centre, double wide, double deep, double turn, double corner = 0)
    {
        if (corner > 0)
        {
            return Rounded(wide / 2, deep / 2, corner).Mapped(p => Plane.Turned(new(centre.X + p.X, centre.Y + p.Y), centre, turn), mirrored: false);
        }

        double w = wide / 2, d = deep / 2;
        Point2[] corners = [new(-w, -d), new(w, -d), new(w, d), new(-w, d)];
        return Polyline([.. corners.Select(c => Plane.Turned(new(centre.X + c.X, centre.Y + c.Y), centre, turn))]);
    }

    private static PlanOutline Rounded(double w, double d, double r)
    {
        Point2[] centres = [new(w - r, r - d), new(w - r, d - r), new(r - w, d - r), new(r - w, r - d)];
        var round = new List<PlanEdge>();
        for (var i = 0; i < 4; i++)
        {
            double start = (i - 1) * Math.PI / 2, end = i * Math.PI / 2;
            Point2 from = Plane.Polar(centres[i], r, start), to = Plane.Polar(centres[i], r, end);
            round.Add(new(from, to, centres[i], r, true, "corner"));
            round.Add(new(to, Plane.Polar(centres[(i + 1) % 4], r, end), default, 0, false, string.Empty));
        }

        return new(round);
    }

    // Tight round two rounds; pieces run: first round, near flank, second round, far flank (seen along first to second: right, then left).
    internal static PlanOutline Tangent(Point2 first, double r1, string name1, Point2 second, double r2, string name2)
    {
        var apart = Plane.Distance(first, second);
        if (apart <= Math.Abs(r1 - r2))
        {
            return r1 >= r2 ? Circle(first, r1, name1) : Circle(second, r2, name2);
        }

        var axis = Plane.Angle(first, second);
        var touch = Trade.Geometry.Tangency.TouchAngle(r1, r2, apart);
        Point2 left1 = Plane.Polar(first, r1, axis + touch), right1 = Plane.Polar(first, r1, axis - touch);
        Point2 left2 = Plane.Polar(second, r2, axis + touch), right2 = Plane.Polar(second, r2, axis - touch);
        return new(
        [
            new(left1, right1, first, r1, true, name1),
            new(right1, right2, default, 0, false, "flank"),
            new(right2, left2, second, r2, true, name2),
            new(left2, left1, default, 0, false, "flank"),
        ]);
    }

    internal PlanOutline Mapped(Func<Point2, Point2> map, bool mirrored)
    {
        var mapped = edges.Select(e => e.Mapped(map, mirrored)).ToList();
        if (mirrored)
        {
            mapped.Reverse();
        }

        return new(mapped);
    }

    internal bool Contains(Point2 p)
    {
        // Winding by the nearest edge is fragile at corners; crossings to the right of a ray tilted off round numbers are not.
        var inside = false;
        foreach (var e in edges)
        {
            inside ^= Crosses(e, p);
        }

        return inside;
    }

    // Distance to the curve; negative inside.
    internal double Distance(Point2 p)
    {
        var d = edges.Min(e => Plane.Distance(p, e.Nearest(p)));
        return Contains(p) ? -d : d;
    }

    internal (Point2 Least, Point2 Most) Extent()
    {
        double x0 = double.PositiveInfinity, y0 = x0, x1 = double.NegativeInfinity, y1 = x1;
        foreach (var p in edges.SelectMany(Ends))
        {
            (x0, y0, x1, y1) = (Math.Min(x0, p.X), Math.Min(y0, p.Y), Math.Max(x1, p.X), Math.Max(y1, p.Y));
        }

        return (new(x0, y0), new(x1, y1));
    }

    private static IEnumerable<Point2> Ends(PlanEdge e)
    {
        yield return e.From;
        yield return e.To;
        if (!e.IsArc)
        {
            yield break;
        }

        for (var q = 0; q < 4; q++)
        {
            var p = Plane.Polar(e.Centre, e.Radius, q * Math.PI / 2);
            if (Plane.Distance(p, e.Nearest(p)) < 1e-9)
            {
                yield return p;
            }
        }
    }

    private static bool Crosses(PlanEdge e, Point2 p)
    {
        if (!e.IsArc)
        {
            return (e.From.Y > p.Y) != (e.To.Y > p.Y) && p.X < e.From.X + ((p.Y - e.From.Y) * (e.To.X - e.From.X) / (e.To.Y - e.From.Y));
        }

        // An arc counts by its chord, and by the segment between chord and arc.
        var chord = Plane.Distance(e.From, e.To) > 1e-12
            && (e.From.Y > p.Y) != (e.To.Y > p.Y) && p.X < e.From.X + ((p.Y - e.From.Y) * (e.To.X - e.From.X) / (e.To.Y - e.From.Y));
        return chord ^ InSegment(e, p);
    }

    private static bool InSegment(PlanEdge e, Point2 p)
    {
        if (Plane.Distance(p, e.Centre) >= e.Radius)
        {
            return false;
        }

        if (Plane.Distance(e.From, e.To) < 1e-12)
        {
            return true;
        }

        var side = ((e.To.X - e.From.X) * (p.Y - e.From.Y)) - ((e.To.Y - e.From.Y) * (p.X - e.From.X));
        return e.Counterclockwise ? side < 0 : side > 0;
    }
}
