using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cuts;

/// <summary>
/// The path of a cutter's lowest cutting point in a frame whose Z is the cutter's axis: a place, a straight line, or an arc at constant Z.
/// The frame is fixed to the work: where a rotary turns the work, the cutter moves on an arc the other way. Right-handed, mm, immutable.
/// </summary>
public sealed class CutterPath
{
    private CutterPath(PathKind kind, Point3 from, Point3 to, Point2 centre, double sweep)
    {
        Demand.Finite(from);
        Demand.Finite(to);
        Demand.Finite(centre);
        Demand.Finite(sweep);
        Kind = kind;
        From = from;
        To = to;
        Centre = centre;
        Sweep = sweep;
        Radius = kind == PathKind.Arc ? from.Plan.DistanceTo(centre) : 0;
        var spoke = from.Plan - centre;
        StartSpoke = Radius > 0 ? spoke * (1 / Radius) : new Point2(1, 0);
        var end = to.Plan - centre;
        EndSpoke = Radius > 0 ? end * (1 / Radius) : new Point2(1, 0);
    }

    /// <summary>Place, straight line or arc.</summary>
    public PathKind Kind { get; }

    /// <summary>Where the path starts.</summary>
    public Point3 From { get; }

    /// <summary>Where the path ends.</summary>
    public Point3 To { get; }

    /// <summary>Centre of an arc seen from above.</summary>
    public Point2 Centre { get; }

    /// <summary>Angle of an arc, radians, counterclockwise from above positive; 0 for the others.</summary>
    public double Sweep { get; }

    /// <summary>Radius of an arc, mm; 0 for the others.</summary>
    public double Radius { get; }

    /// <summary>Length of the path, mm.</summary>
    public double Length => Kind == PathKind.Arc ? Radius * Math.Abs(Sweep) : From.DistanceTo(To);

    // Unit vectors from the centre to the ends of an arc.
    internal Point2 StartSpoke { get; }

    internal Point2 EndSpoke { get; }

    internal bool IsFullTurn => Kind == PathKind.Arc && Math.Abs(Sweep) >= Turn.Full;

    internal bool IsLevel => From.Z == To.Z;

    /// <summary>The cutter stands at one place.</summary>
    /// <param name="place">Its lowest cutting point.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not a number of at most 1e10.</exception>
    public static CutterPath At(Point3 place) => new(PathKind.Place, place, place, default, 0);

    /// <summary>The cutter goes straight from one place to another, its axis staying along Z; equal places make a path of no length.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not a number of at most 1e10.</exception>
    public static CutterPath Straight(Point3 from, Point3 to) => from == to ? At(from) : new(PathKind.Straight, from, to, default, 0);

    /// <summary>The cutter goes round a vertical axis at constant Z.</summary>
    /// <param name="centre">The axis seen from above.</param>
    /// <param name="from">Start.</param>
    /// <param name="sweep">Angle turned, radians, counterclockwise from above positive; a full turn or more closes the ring.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite or absurdly large.</exception>
    public static CutterPath Arc(Point2 centre, Point3 from, double sweep)
    {
        Demand.Finite(sweep);
        var spoke = from.Plan - centre;
        if (sweep == 0 || spoke.Length == 0)
        {
            return At(from);
        }

        var (s, c) = Turn.SinCos(sweep);
        var end = new Point2(centre.X + (c * spoke.X) - (s * spoke.Y), centre.Y + (s * spoke.X) + (c * spoke.Y));
        return new(PathKind.Arc, from, end.At(from.Z), centre, sweep);
    }

    /// <summary>The place a share of the way along.</summary>
    /// <param name="share">0 at the start, 1 at the end.</param>
    public Point3 At(double share)
    {
        if (Kind != PathKind.Arc)
        {
            return From + ((To - From) * share);
        }

        var (s, c) = Turn.SinCos(Sweep * share);
        var r = StartSpoke * Radius;
        return new(Centre.X + (c * r.X) - (s * r.Y), Centre.Y + (s * r.X) + (c * r.Y), From.Z);
    }

    /// <summary>The direction of travel at a share of the way along, of unit length; zero for a place.</summary>
    /// <param name="share">0 at the start, 1 at the end.</param>
    public Vector3 DirectionAt(double share)
    {
        if (Kind != PathKind.Arc)
        {
            return (To - From).ToUnit();
        }

        var p = At(share).Plan - Centre;
        return new Vector3(-p.Y, p.X, 0).ToUnit() * Math.Sign(Sweep);
    }

    /// <summary>The same path run the other way.</summary>
    public CutterPath Reversed() => new(Kind, To, From, Centre, -Sweep);

    /// <summary>The path's own bounds.</summary>
    public Box3 Bounds
    {
        get
        {
            var box = new Box3(From, From).Union(new Box3(To, To));
            if (Kind != PathKind.Arc)
            {
                return box;
            }

            ReadOnlySpan<Point2> spokes = [new(1, 0), new(0, 1), new(-1, 0), new(0, -1)];
            foreach (var spoke in spokes)
            {
                if (Reaches(spoke))
                {
                    var p = (Centre + (spoke * Radius)).At(From.Z);
                    box = box.Union(new Box3(p, p));
                }
            }

            return box;
        }
    }

    // The path in a frame whose Z is the same.
    internal CutterPath Turned(Pose pose) => pose.Equals(Pose.Identity)
        ? this
        : new(Kind, pose.Apply(From), pose.Apply(To), pose.Apply(Centre.At(0)).Plan, Sweep);

    // Whether the arc's angles hold the direction of a vector from its centre; borders counted.
    internal bool Reaches(Point2 v)
    {
        var turn = Math.Abs(Sweep);
        if (turn >= Turn.Full)
        {
            return true;
        }

        var (first, last) = Sweep > 0 ? (StartSpoke, EndSpoke) : (EndSpoke, StartSpoke);
        var afterFirst = first.Cross(v) >= 0;
        var beforeLast = v.Cross(last) >= 0;
        return turn <= Math.PI
            ? afterFirst && beforeLast && (turn > 1 || v.Dot(first) >= 0)
            : afterFirst || beforeLast;
    }

    // Least distance seen from above of a place to the path.
    internal double LeastDistance(Point2 p) => p.DistanceTo(NearestInPlan(p));

    // Greatest distance seen from above of a place to the path.
    internal double GreatestDistance(Point2 p)
    {
        var far = Math.Max(p.DistanceTo(From.Plan), p.DistanceTo(To.Plan));
        if (Kind == PathKind.Arc)
        {
            var v = p - Centre;
            if (Reaches(v * -1))
            {
                far = Math.Max(far, v.Length + Radius);
            }
        }

        return far;
    }

    // The path's nearest place seen from above.
    internal Point2 NearestInPlan(Point2 p)
    {
        Point2 a = From.Plan, b = To.Plan;
        if (Kind == PathKind.Arc)
        {
            var v = p - Centre;
            var n = v.Length;
            if (n > 0 && Reaches(v))
            {
                return Centre + (v * (Radius / n));
            }

            return p.DistanceTo(a) <= p.DistanceTo(b) ? a : b;
        }

        var d = b - a;
        var dd = d.Dot(d);
        var s = dd > 0 ? Math.Clamp((p - a).Dot(d) / dd, 0, 1) : 0;
        return a + (d * s);
    }
}
