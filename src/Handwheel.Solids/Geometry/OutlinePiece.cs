namespace Handwheel.Solids.Geometry;

/// <summary>One straight or circular piece of an <see cref="Outline"/>, run from its start to its end.</summary>
/// <remarks>A straight piece has <see cref="Sweep"/> 0. A circular one turns counterclockwise when <see cref="Sweep"/> is positive.</remarks>
public readonly record struct OutlinePiece
{
    private OutlinePiece(Point2 from, Point2 to, Point2 centre, double radius, double startAngle, double sweep)
    {
        From = from;
        To = to;
        Centre = centre;
        Radius = radius;
        StartAngle = startAngle;
        Sweep = sweep;
    }

    /// <summary>Start of the piece.</summary>
    public Point2 From { get; }

    /// <summary>End of the piece.</summary>
    public Point2 To { get; }

    /// <summary>Centre of a circular piece.</summary>
    public Point2 Centre { get; }

    /// <summary>Radius of a circular piece, mm; 0 for a straight one.</summary>
    public double Radius { get; }

    /// <summary>Angle of the start seen from the centre, radians from +X.</summary>
    public double StartAngle { get; }

    /// <summary>Angle turned from start to end, radians; 0 for a straight piece.</summary>
    public double Sweep { get; }

    /// <summary>Whether the piece is circular.</summary>
    public bool IsArc => Sweep != 0;

    /// <summary>Length along the piece, mm.</summary>
    public double Length => IsArc ? Radius * Math.Abs(Sweep) : From.DistanceTo(To);

    /// <summary>A straight piece.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    public static OutlinePiece Straight(Point2 from, Point2 to) => new(from, to, default, 0, 0, 0);

    /// <summary>A circular piece.</summary>
    /// <param name="centre">Centre.</param>
    /// <param name="radius">Radius, mm, above 0.</param>
    /// <param name="startAngle">Angle of the start, radians from +X.</param>
    /// <param name="sweep">Angle turned, radians, counterclockwise positive, not 0, at most a full turn.</param>
    /// <exception cref="ArgumentOutOfRangeException">Radius or sweep is outside its range.</exception>
    public static OutlinePiece Arc(Point2 centre, double radius, double startAngle, double sweep)
    {
        Demand.Positive(radius);
        Demand.Finite(startAngle);
        if (!(Math.Abs(sweep) > 0 && Math.Abs(sweep) <= Turn.Full * (1 + 1e-12)))
        {
            throw new ArgumentOutOfRangeException(nameof(sweep), sweep, "An arc turns by more than 0 and at most a full turn.");
        }

        return new(Point2.Polar(centre, radius, startAngle), Point2.Polar(centre, radius, startAngle + sweep), centre, radius, startAngle, sweep);
    }

    /// <summary>The place a share of the way along.</summary>
    /// <param name="share">0 at the start, 1 at the end.</param>
    public Point2 At(double share) => IsArc
        ? Point2.Polar(Centre, Radius, StartAngle + (share * Sweep))
        : From + ((To - From) * share);

    /// <summary>The nearest place of the piece.</summary>
    /// <param name="p">From where.</param>
    public Point2 Nearest(Point2 p)
    {
        if (!IsArc)
        {
            var d = To - From;
            var n = d.Dot(d);
            var s = n > 0 ? Math.Clamp((p - From).Dot(d) / n, 0, 1) : 0;
            return From + (d * s);
        }

        var v = p - Centre;
        if (v.Length > 0 && Reaches(Math.Atan2(v.Y, v.X), 0))
        {
            return Centre + (v * (Radius / v.Length));
        }

        return p.DistanceTo(From) <= p.DistanceTo(To) ? From : To;
    }

    // Whether the piece passes the angle, give or take a little.
    internal bool Reaches(double angle, double slack)
    {
        var turned = Sweep > 0 ? Turn.Positive(angle - StartAngle) : Turn.Positive(StartAngle - angle);
        return turned <= Math.Abs(Sweep) + slack || turned >= Turn.Full - slack;
    }

    internal OutlinePiece Reversed() => IsArc ? new(To, From, Centre, Radius, StartAngle + Sweep, -Sweep) : new(To, From, default, 0, 0, 0);

    // The same curve with ends given exactly, so that neighbours share them to the last bit.
    internal OutlinePiece WithEnds(Point2 from, Point2 to) => new(from, to, Centre, Radius, StartAngle, Sweep);

    // Outward normal at a place of the piece, the outline running counterclockwise.
    internal Point2 Outward(Point2 p)
    {
        if (IsArc)
        {
            var v = p - Centre;
            var n = v.Length;
            return n > 0 ? v * (Math.Sign(Sweep) / n) : new Point2(1, 0);
        }

        var d = To - From;
        return new Point2(d.Y, -d.X) * (1 / Math.Max(d.Length, double.Epsilon));
    }

    // Twice the signed area between the piece and the origin.
    internal double TwiceArea() => IsArc
        ? Centre.Cross(To - From) + (Radius * Radius * Sweep)
        : From.Cross(To);
}
