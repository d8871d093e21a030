namespace Handwheel.Solids.Geometry;

/// <summary>A closed plan curve of straight and circular pieces, counterclockwise, that does not cross itself. Immutable.</summary>
public sealed class Outline
{
    private const double Joint = 1e-6;
    private readonly OutlinePiece[] pieces;
    private readonly OutlinePiece[] rising;

    private Outline(OutlinePiece[] pieces)
    {
        this.pieces = pieces;
        rising = [.. pieces.SelectMany(Monotone)];
        for (var i = 0; i < rising.Length; i++)
        {
            var next = (i + 1) % rising.Length;
            rising[next] = rising[next].WithEnds(rising[i].To, rising[next].To);
        }

        Min = new(rising.Min(p => Math.Min(p.From.X, p.To.X)), rising.Min(p => Math.Min(p.From.Y, p.To.Y)));
        Max = new(rising.Max(p => Math.Max(p.From.X, p.To.X)), rising.Max(p => Math.Max(p.From.Y, p.To.Y)));
        Area = pieces.Sum(p => p.TwiceArea()) / 2;
    }

    /// <summary>The pieces in order, counterclockwise.</summary>
    public IReadOnlyList<OutlinePiece> Pieces => pieces;

    /// <summary>Corner of the bounds with the least coordinates.</summary>
    public Point2 Min { get; }

    /// <summary>Corner of the bounds with the greatest coordinates.</summary>
    public Point2 Max { get; }

    /// <summary>The bounds as a box of no height at Z 0.</summary>
    public Box3 Bounds => new(Min.At(0), Max.At(0));

    /// <summary>Area enclosed, mm2.</summary>
    public double Area { get; }

    /// <summary>A circle.</summary>
    /// <param name="centre">Centre.</param>
    /// <param name="radius">Radius, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not above 0.</exception>
    public static Outline Circle(Point2 centre, double radius) => new([OutlinePiece.Arc(centre, radius, 0, Turn.Full)]);

    /// <summary>A rectangle with its sides along X and Y.</summary>
    /// <param name="min">Corner with the least coordinates.</param>
    /// <param name="max">Corner with the greatest coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is not above 0.</exception>
    public static Outline Rectangle(Point2 min, Point2 max)
    {
        Demand.Ordered(min.X, max.X, nameof(max));
        Demand.Ordered(min.Y, max.Y, nameof(max));
        return Polyline([min, new(max.X, min.Y), max, new(min.X, max.Y)]);
    }

    /// <summary>A rectangle of any angle.</summary>
    /// <param name="centre">Centre.</param>
    /// <param name="length">Side along the angle, mm.</param>
    /// <param name="width">Side across the angle, mm.</param>
    /// <param name="angle">Angle of the length, radians from +X.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is not above 0.</exception>
    public static Outline Rectangle(Point2 centre, double length, double width, double angle)
    {
        Demand.Positive(length);
        Demand.Positive(width);
        var (s, c) = Turn.SinCos(angle);
        Point2 a = new(c * length / 2, s * length / 2), b = new(-s * width / 2, c * width / 2);
        return Polyline([centre - a - b, centre + a - b, centre + a + b, centre - a + b]);
    }

    /// <summary>A regular polygon.</summary>
    /// <param name="centre">Centre.</param>
    /// <param name="acrossFlats">Twice the distance from the centre to a flat, mm.</param>
    /// <param name="sides">Number of sides, 3 or more.</param>
    /// <param name="turn">Angle of the normal of the first flat, radians from +X.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 3 sides, or a size not above 0.</exception>
    public static Outline RegularPolygon(Point2 centre, double acrossFlats, int sides, double turn = 0)
    {
        Demand.Positive(acrossFlats);
        if (sides is < 3 or > 100_000)
        {
            throw new ArgumentOutOfRangeException(nameof(sides), sides, "A polygon has 3 sides or more.");
        }

        var corner = acrossFlats / 2 / Math.Cos(Math.PI / sides);
        return Polyline([.. Enumerable.Range(0, sides).Select(i => Point2.Polar(centre, corner, turn + (((2 * i) - 1) * Math.PI / sides)))]);
    }

    /// <summary>The outline drawn tight round two circles: both rounds and their two outer tangents. A circle inside the other leaves the greater one.</summary>
    /// <param name="centre1">Centre of the first.</param>
    /// <param name="radius1">Radius of the first, mm.</param>
    /// <param name="centre2">Centre of the second.</param>
    /// <param name="radius2">Radius of the second, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A radius is not above 0.</exception>
    /// <remarks>Tangent points stand at acos((r1 - r2)/L) either side of the line of centres (plane trigonometry).</remarks>
    public static Outline TangentHull(Point2 centre1, double radius1, Point2 centre2, double radius2)
    {
        Demand.Positive(radius1);
        Demand.Positive(radius2);
        var d = centre2 - centre1;
        if (d.Length <= Math.Abs(radius1 - radius2))
        {
            return radius1 >= radius2 ? Circle(centre1, radius1) : Circle(centre2, radius2);
        }

        var axis = Math.Atan2(d.Y, d.X);
        var half = Math.Acos((radius1 - radius2) / d.Length);
        var round1 = OutlinePiece.Arc(centre1, radius1, axis + half, Turn.Full - (2 * half));
        var round2 = OutlinePiece.Arc(centre2, radius2, axis - half, 2 * half);
        return new([round1, OutlinePiece.Straight(round1.To, round2.From), round2, OutlinePiece.Straight(round2.To, round1.From)]);
    }

    /// <summary>A slot with round ends.</summary>
    /// <param name="from">Centre of one end.</param>
    /// <param name="to">Centre of the other end.</param>
    /// <param name="width">Width, mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is not above 0.</exception>
    public static Outline Slot(Point2 from, Point2 to, double width) => TangentHull(from, width / 2, to, width / 2);

    /// <summary>A closed run of straight pieces.</summary>
    /// <param name="corners">The corners, three or more, either way round.</param>
    /// <exception cref="ArgumentNullException"><paramref name="corners"/> is null.</exception>
    /// <exception cref="ArgumentException">Fewer than three corners, or no area.</exception>
    public static Outline Polyline(IReadOnlyList<Point2> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        return FromPieces([.. corners.Select((c, i) => OutlinePiece.Straight(c, corners[(i + 1) % corners.Count]))]);
    }

    /// <summary>A closed run of pieces, each starting where the one before ended.</summary>
    /// <param name="pieces">The pieces, either way round.</param>
    /// <exception cref="ArgumentNullException"><paramref name="pieces"/> is null.</exception>
    /// <exception cref="ArgumentException">The run does not close within 1e-6 mm, or encloses no area.</exception>
    public static Outline FromPieces(IReadOnlyList<OutlinePiece> pieces)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        var run = pieces.Where(p => p.Length > 0).ToArray();
        for (var i = 0; i < run.Length; i++)
        {
            Demand.Finite(run[i].From, nameof(pieces));
            if (run[i].To.DistanceTo(run[(i + 1) % run.Length].From) > Joint)
            {
                throw new ArgumentException("A piece does not end where the next one starts.", nameof(pieces));
            }
        }

        var area = run.Sum(p => p.TwiceArea());
        if (run.Length == 0 || !(Math.Abs(area) > 0))
        {
            throw new ArgumentException("An outline encloses an area.", nameof(pieces));
        }

        return new(area > 0 ? run : [.. run.Reverse().Select(p => p.Reversed())]);
    }

    /// <summary>Whether a place lies inside, or on the outline within 1e-12 mm.</summary>
    /// <param name="p">The place.</param>
    public bool Contains(Point2 p) => IsInside(p) || DistanceTo(p) <= 1e-12;

    /// <summary>Distance from a place to the curve itself, mm, never negative.</summary>
    /// <param name="p">The place.</param>
    public double DistanceTo(Point2 p) => Nearest(p).Distance;

    /// <summary>The nearest place of the curve, the index of its piece and the distance.</summary>
    /// <param name="p">From where.</param>
    public (Point2 Place, int Piece, double Distance) Nearest(Point2 p)
    {
        var best = (Place: default(Point2), Piece: -1, Distance: double.PositiveInfinity);
        for (var i = 0; i < pieces.Length; i++)
        {
            var q = pieces[i].Nearest(p);
            var d = p.DistanceTo(q);
            if (d < best.Distance)
            {
                best = (q, i, d);
            }
        }

        return best;
    }

    // Membership by counting crossings to the right; what lies on the curve falls either way.
    internal bool IsInside(Point2 p)
    {
        var inside = false;
        foreach (ref readonly var piece in rising.AsSpan())
        {
            if ((piece.From.Y <= p.Y) != (piece.To.Y <= p.Y) && CrossingX(piece, p.Y) > p.X)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    // Distances along a plan line (o + t u) at which it meets the curve, with the piece met; extra ones are harmless.
    internal void Crossings(Point2 o, Point2 u, List<(double T, int Piece)> into)
    {
        for (var i = 0; i < pieces.Length; i++)
        {
            ref readonly var piece = ref pieces[i];
            if (piece.IsArc)
            {
                ArcCrossings(o, u, i, into);
                continue;
            }

            var d = piece.To - piece.From;
            var across = u.Cross(d);
            var w = piece.From - o;
            if (across == 0)
            {
                continue;
            }

            var s = w.Cross(u) / across;
            if (s is >= -1e-9 and <= 1 + 1e-9)
            {
                into.Add((w.Cross(d) / across, i));
            }
        }
    }

    private static double CrossingX(in OutlinePiece piece, double y)
    {
        if (!piece.IsArc)
        {
            return piece.From.X + ((y - piece.From.Y) * (piece.To.X - piece.From.X) / (piece.To.Y - piece.From.Y));
        }

        var h = y - piece.Centre.Y;
        var x = Math.Sqrt(Math.Max(0, (piece.Radius - h) * (piece.Radius + h)));
        var middle = piece.At(0.5).X;
        return middle >= piece.Centre.X ? piece.Centre.X + x : piece.Centre.X - x;
    }

    // Cut where an arc turns from rising to falling or from right to left.
    private static IEnumerable<OutlinePiece> Monotone(OutlinePiece piece)
    {
        if (!piece.IsArc)
        {
            yield return piece;
            yield break;
        }

        var cuts = new List<double> { 0, piece.Sweep };
        for (var q = -8; q <= 8; q++)
        {
            var turned = (q * Math.PI / 2) - Math.IEEERemainder(piece.StartAngle, Turn.Full);
            if (turned * Math.Sign(piece.Sweep) > 1e-12 && Math.Abs(turned) < Math.Abs(piece.Sweep) - 1e-12)
            {
                cuts.Add(turned);
            }
        }

        var ordered = cuts.OrderBy(Math.Abs).ToArray();
        for (var i = 0; i + 1 < ordered.Length; i++)
        {
            yield return OutlinePiece.Arc(piece.Centre, piece.Radius, piece.StartAngle + ordered[i], ordered[i + 1] - ordered[i]);
        }
    }

    private void ArcCrossings(Point2 o, Point2 u, int i, List<(double T, int Piece)> into)
    {
        var w = o - pieces[i].Centre;
        var r = pieces[i].Radius;
        double a = u.Dot(u), b = w.Dot(u), c = (w.Length - r) * (w.Length + r);
        if (Quadratic.Roots(a, b, c, out var t0, out var t1))
        {
            into.Add((t0, i));
            into.Add((t1, i));
        }
    }
}
