using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>A box in plan, millimetres.</summary>
/// <param name="Left">Least X.</param>
/// <param name="Low">Least Y.</param>
/// <param name="Right">Greatest X.</param>
/// <param name="High">Greatest Y.</param>
internal readonly record struct Box2(double Left, double Low, double Right, double High)
{
    /// <summary>Its width.</summary>
    public double Wide => Right - Left;

    /// <summary>Its height.</summary>
    public double Tall => High - Low;

    /// <summary>The box round points.</summary>
    /// <param name="points">At least one point.</param>
    /// <returns>The box; a unit box round the origin where there is no point.</returns>
    public static Box2 Around(IEnumerable<Point2> points)
    {
        var box = new Box2(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);
        foreach (var p in points)
        {
            box = new(Math.Min(box.Left, p.X), Math.Min(box.Low, p.Y), Math.Max(box.Right, p.X), Math.Max(box.High, p.Y));
        }

        return box.Left > box.Right ? new(0, 0, 1, 1) : box;
    }

    /// <summary>The box round both.</summary>
    /// <param name="other">The other.</param>
    /// <returns>The box.</returns>
    public Box2 With(Box2 other) => new(Math.Min(Left, other.Left), Math.Min(Low, other.Low), Math.Max(Right, other.Right), Math.Max(High, other.High));

    /// <summary>What both share; never turned inside out.</summary>
    /// <param name="other">The other.</param>
    /// <returns>The box.</returns>
    public Box2 Shared(Box2 other)
    {
        var (left, low) = (Math.Max(Left, other.Left), Math.Max(Low, other.Low));
        return new(left, low, Math.Max(left, Math.Min(Right, other.Right)), Math.Max(low, Math.Min(High, other.High)));
    }

    /// <summary>The box grown on every side.</summary>
    /// <param name="by">How much.</param>
    /// <returns>The box.</returns>
    public Box2 Grown(double by) => new(Left - by, Low - by, Right + by, High + by);

    /// <summary>Whether a place lies in it.</summary>
    /// <param name="x">X.</param>
    /// <param name="y">Y.</param>
    /// <returns>True inside.</returns>
    public bool Holds(double x, double y) => x >= Left && x <= Right && y >= Low && y <= High;

    /// <summary>Whether a straight line runs through it (clipped side by side, as Liang and Barsky 1984 have it).</summary>
    /// <param name="a">One end.</param>
    /// <param name="b">The other.</param>
    /// <returns>True where any of the line lies within.</returns>
    public bool Crosses(Point2 a, Point2 b)
    {
        var (from, to) = (0.0, 1.0);
        foreach (var (way, room) in new[] { (a.X - b.X, a.X - Left), (b.X - a.X, Right - a.X), (a.Y - b.Y, a.Y - Low), (b.Y - a.Y, High - a.Y) })
        {
            if (Math.Abs(way) < 1e-12)
            {
                if (room < 0)
                {
                    return false;
                }
            }
            else if (way < 0)
            {
                from = Math.Max(from, room / way);
            }
            else
            {
                to = Math.Min(to, room / way);
            }
        }

        return from <= to;
    }
}
