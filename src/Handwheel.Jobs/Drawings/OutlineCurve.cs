using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Drawings;

/// <summary>The whole straight line or circle that an edge of an outline lies on, with the way it is gone along.</summary>
/// <param name="Through">A place of the line; the circle&#39;s centre.</param>
/// <param name="Along">The line&#39;s direction, unit length; unused for a circle.</param>
/// <param name="Radius">The circle&#39;s radius; 0: a line.</param>
/// <param name="Counterclockwise">The way round a circle is gone.</param>
internal readonly record struct OutlineCurve(Point2 Through, Point2 Along, double Radius, bool Counterclockwise)
{
    internal bool IsArc => Radius > 0;

    internal static OutlineCurve Line(Point2 from, Point2 to) => new(from, Unit(to - from), 0, false);

    internal static OutlineCurve Circle(Point2 centre, double radius, bool counterclockwise) => new(centre, default, radius, counterclockwise);

    internal static OutlineCurve Of(OutlinePiece piece) => piece.IsArc
        ? Circle(piece.Centre, piece.Radius, piece.Sweep > 0)
        : Line(piece.From, piece.To);

    internal static Point2 Unit(Point2 v) => v.Length > 0 ? v * (1 / v.Length) : default;

    internal static Point2 Right(Point2 v) => new(v.Y, -v.X);

    // Direction gone along at a place.
    internal Point2 TangentAt(Point2 p)
    {
        if (!IsArc)
        {
            return Along;
        }

        var out_ = Unit(p - Through);
        return Counterclockwise ? new(-out_.Y, out_.X) : new(out_.Y, -out_.X);
    }

    // The curve moved to its right; null where a circle would vanish.
    internal OutlineCurve? MovedRight(double by)
    {
        if (!IsArc)
        {
            return this with { Through = Through + (Right(Along) * by) };
        }

        var radius = Counterclockwise ? Radius + by : Radius - by;
        return radius > 1e-9 ? this with { Radius = radius } : null;
    }

    // The nearest place of the curve.
    internal Point2 Foot(Point2 p) => IsArc
        ? Through + (Unit(p - Through) * Radius)
        : Through + (Along * (p - Through).Dot(Along));

    // The meeting of two curves nearest to a place; null where they do not meet.
    internal Point2? Meet(OutlineCurve other, Point2 near)
    {
        if (IsArc && !other.IsArc)
        {
            return other.Meet(this, near);
        }

        if (!IsArc && !other.IsArc)
        {
            var across = Along.Cross(other.Along);
            return Math.Abs(across) < 1e-12 ? null : Through + (Along * ((other.Through - Through).Cross(other.Along) / across));
        }

        return IsArc ? MeetCircles(other, near) : MeetLine(other, near);
    }

    // A piece of this curve from one place to another; null where they are one place.
    internal OutlinePiece? Piece(Point2 from, Point2 to)
    {
        if (from.DistanceTo(to) < 1e-12 && !IsArc)
        {
            return null;
        }

        if (!IsArc)
        {
            return OutlinePiece.Straight(from, to);
        }

        var a = Math.Atan2(from.Y - Through.Y, from.X - Through.X);
        var turn = Math.IEEERemainder(Math.Atan2(to.Y - Through.Y, to.X - Through.X) - a, 2 * Math.PI);
        if (Counterclockwise && turn <= 1e-12)
        {
            turn += 2 * Math.PI;
        }
        else if (!Counterclockwise && turn >= -1e-12)
        {
            turn -= 2 * Math.PI;
        }

        return OutlinePiece.Arc(Through, Radius, a, turn);
    }

    private Point2? MeetLine(OutlineCurve circle, Point2 near)
    {
        var foot = Foot(circle.Through);
        var away = foot.DistanceTo(circle.Through);
        if (away > circle.Radius + 1e-9)
        {
            return null;
        }

        var half = Math.Sqrt(Math.Max(0, (circle.Radius - away) * (circle.Radius + away)));
        return Nearer(foot + (Along * half), foot - (Along * half), near);
    }

    private Point2? MeetCircles(OutlineCurve other, Point2 near)
    {
        var between = other.Through - Through;
        var d = between.Length;
        if (d > Radius + other.Radius + 1e-9 || d < Math.Abs(Radius - other.Radius) - 1e-9 || d < 1e-12)
        {
            return null;
        }

        var u = Unit(between);
        var a = ((d * d) + (Radius * Radius) - (other.Radius * other.Radius)) / (2 * d);
        var h = Math.Sqrt(Math.Max(0, (Radius - a) * (Radius + a)));
        var foot = Through + (u * a);
        return Nearer(foot + (Right(u) * h), foot - (Right(u) * h), near);
    }

    private static Point2 Nearer(Point2 a, Point2 b, Point2 near) => a.DistanceTo(near) <= b.DistanceTo(near) ? a : b;
}
