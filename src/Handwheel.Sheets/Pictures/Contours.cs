using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>Traces the edge of a region that can only be asked point by point: squares, with each crossing found by halving and corners drawn out sharp.</summary>
internal sealed class Contours
{
    private const int Halvings = 11;

    private readonly Box2 _box;
    private readonly int _wide;
    private readonly int _tall;
    private readonly Func<Point2, bool> _inside;
    private readonly bool[,] _in;
    private readonly Dictionary<(int X, int Y, bool Upright), Point2> _crossings = [];

    private Contours(Box2 box, int wide, int tall, Func<Point2, bool> inside)
    {
        _box = box;
        _wide = wide;
        _tall = tall;
        _inside = inside;
        _in = new bool[wide + 1, tall + 1];
    }

    private double StepX => _box.Wide / _wide;

    private double StepY => _box.Tall / _tall;

    /// <summary>The edge of a region within a box, as closed loops.</summary>
    /// <param name="box">The box; the region is taken to end at its rim.</param>
    /// <param name="wide">Squares along X.</param>
    /// <param name="tall">Squares along Y.</param>
    /// <param name="inside">Whether a place belongs to the region.</param>
    /// <param name="known">Answers at the grid's places where they are known already; null asks.</param>
    /// <returns>Closed loops.</returns>
    public static IReadOnlyList<IReadOnlyList<Point2>> Of(Box2 box, int wide, int tall, Func<Point2, bool> inside, Func<int, int, bool>? known = null)
    {
        var contours = new Contours(box, wide, tall, inside);
        for (var i = 1; i < wide; i++)
        {
            for (var j = 1; j < tall; j++)
            {
                contours._in[i, j] = known is null ? inside(contours.Grid(i, j)) : known(i, j);
            }
        }

        return contours.Loops();
    }

    private Point2 Grid(int i, int j) => new(_box.Left + (i * StepX), _box.Low + (j * StepY));

    private IReadOnlyList<IReadOnlyList<Point2>> Loops()
    {
        var next = new SortedDictionary<(int X, int Y, bool Upright), (int X, int Y, bool Upright)>();
        for (var i = 0; i < _wide; i++)
        {
            for (var j = 0; j < _tall; j++)
            {
                foreach (var (from, to) in Edges(i, j))
                {
                    next[from] = to;
                }
            }
        }

        var loops = new List<IReadOnlyList<Point2>>();
        while (next.Count > 0)
        {
            var start = next.First().Key;
            var at = start;
            var loop = new List<Point2>();
            while (next.Remove(at, out var onward))
            {
                loop.Add(Crossing(at));
                at = onward;
            }

            if (loop.Count > 2)
            {
                loops.Add(Simplify(Sharpen(loop)));
            }
        }

        return loops;
    }

    // Edges of a square: bottom (i, j, false), right (i + 1, j, true), top (i, j + 1, false), left (i, j, true). The region lies on the left.
    private IEnumerable<((int, int, bool) From, (int, int, bool) To)> Edges(int i, int j)
    {
        var bottom = (i, j, false);
        var right = (i + 1, j, true);
        var top = (i, j + 1, false);
        var left = (i, j, true);
        var kind = (_in[i, j] ? 1 : 0) | (_in[i + 1, j] ? 2 : 0) | (_in[i + 1, j + 1] ? 4 : 0) | (_in[i, j + 1] ? 8 : 0);
        return kind switch
        {
            1 => [(bottom, left)],
            2 => [(right, bottom)],
            3 => [(right, left)],
            4 => [(top, right)],
            5 => [(bottom, right), (top, left)],
            6 => [(top, bottom)],
            7 => [(top, left)],
            8 => [(left, top)],
            9 => [(bottom, top)],
            10 => [(right, top), (left, bottom)],
            11 => [(right, top)],
            12 => [(left, right)],
            13 => [(bottom, right)],
            14 => [(left, bottom)],
            _ => [],
        };
    }

    private Point2 Crossing((int X, int Y, bool Upright) edge)
    {
        if (_crossings.TryGetValue(edge, out var known))
        {
            return known;
        }

        var a = Grid(edge.X, edge.Y);
        var b = edge.Upright ? Grid(edge.X, edge.Y + 1) : Grid(edge.X + 1, edge.Y);
        var inA = _in[edge.X, edge.Y];
        for (var n = 0; n < Halvings; n++)
        {
            var middle = new Point2((a.X + b.X) / 2, (a.Y + b.Y) / 2);
            if (_inside(middle) == inA)
            {
                a = middle;
            }
            else
            {
                b = middle;
            }
        }

        return _crossings[edge] = new((a.X + b.X) / 2, (a.Y + b.Y) / 2);
    }

    // Where the runs before and after a short piece meet in a corner beside it, the corner is put in.
    private List<Point2> Sharpen(List<Point2> loop)
    {
        if (loop.Count < 6)
        {
            return loop;
        }

        var near = 1.6 * Math.Max(StepX, StepY);
        var sharp = new List<Point2>(loop.Count);
        for (var i = 0; i < loop.Count; i++)
        {
            var (p0, p1) = (loop[(i + loop.Count - 1) % loop.Count], loop[i]);
            var (p2, p3) = (loop[(i + 1) % loop.Count], loop[(i + 2) % loop.Count]);
            sharp.Add(p1);
            if (Meet(p0, p1, p2, p3) is { } corner && Away(corner, p1) < near && Away(corner, p2) < near)
            {
                sharp.Add(corner);
            }
        }

        return sharp;
    }

    private static Point2? Meet(Point2 p0, Point2 p1, Point2 p2, Point2 p3)
    {
        var (ux, uy) = (p1.X - p0.X, p1.Y - p0.Y);
        var (vx, vy) = (p3.X - p2.X, p3.Y - p2.Y);
        var cross = (ux * vy) - (uy * vx);
        var dot = (ux * vx) + (uy * vy);
        if (Math.Abs(Math.Atan2(cross, dot)) < 0.6)
        {
            return null;
        }

        var t = (((p2.X - p1.X) * vy) - ((p2.Y - p1.Y) * vx)) / cross;
        var s = (((p2.X - p1.X) * uy) - ((p2.Y - p1.Y) * ux)) / cross;
        return t > 1e-6 && s < -1e-6 ? new(p1.X + (t * ux), p1.Y + (t * uy)) : null;
    }

    private List<Point2> Simplify(List<Point2> loop)
    {
        var slack = Math.Min(StepX, StepY) * 0.02;
        var kept = new List<Point2>(loop.Count);
        foreach (var p in loop)
        {
            while (kept.Count >= 2 && Off(kept[^2], kept[^1], p) < slack)
            {
                kept.RemoveAt(kept.Count - 1);
            }

            kept.Add(p);
        }

        return kept;
    }

    private static double Off(Point2 a, Point2 p, Point2 b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        var along = ((p.X - a.X) * dx) + ((p.Y - a.Y) * dy);
        return length < 1e-12 || along < 0 || along > length * length ? Away(a, p) : Math.Abs((dx * (p.Y - a.Y)) - (dy * (p.X - a.X))) / length;
    }

    private static double Away(Point2 a, Point2 b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
