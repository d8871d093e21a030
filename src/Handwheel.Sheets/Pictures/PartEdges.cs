using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>The edges of the finished part as seen from above: those seen, and those hidden.</summary>
/// <param name="Seen">Runs of points, part frame.</param>
/// <param name="Hidden">The same for edges under metal.</param>
internal sealed record PartEdges(IReadOnlyList<IReadOnlyList<Point2>> Seen, IReadOnlyList<IReadOnlyList<Point2>> Hidden)
{
    private const double Beside = 0.012;

    /// <summary>Looks at either side of every line of every feature: where the top differs an edge is seen; where only what lies below differs it is hidden.</summary>
    /// <param name="part">The part.</param>
    /// <returns>The edges.</returns>
    public static PartEdges FromAbove(PartColumns part) => Look(part, fromBelow: false);

    /// <summary>The same from above or from below.</summary>
    /// <param name="part">The part.</param>
    /// <param name="fromBelow">Whether it is looked at from below (a part turned over).</param>
    /// <returns>The edges.</returns>
    public static PartEdges Look(PartColumns part, bool fromBelow)
    {
        var seen = new List<IReadOnlyList<Point2>>();
        var hidden = new List<IReadOnlyList<Point2>>();
        foreach (var (feature, loops) in part.Features)
        {
            foreach (var run in Runs(feature, loops))
            {
                Sort(part, fromBelow, run, seen, hidden);
            }
        }

        return new(seen, hidden);
    }

    /// <summary>The places of one feature's own lines that a drawing shows, seen or hidden.</summary>
    /// <param name="part">The part.</param>
    /// <param name="name">The feature's name.</param>
    /// <returns>Places, part frame; none where nothing of it shows.</returns>
    public static IEnumerable<Point2> Lines(PartColumns part, string name)
    {
        var seen = new List<IReadOnlyList<Point2>>();
        var hidden = new List<IReadOnlyList<Point2>>();
        foreach (var (feature, loops) in part.Features.Where(f => string.Equals(f.Drawn.Feature.Name, name, StringComparison.Ordinal)))
        {
            foreach (var run in Runs(feature, loops))
            {
                Sort(part, fromBelow: false, run, seen, hidden);
            }
        }

        return seen.Count > 0 ? seen.SelectMany(r => r) : hidden.SelectMany(r => r);
    }

    private static IEnumerable<IReadOnlyList<Point2>> Runs(DrawnFeature drawn, IReadOnlyList<IReadOnlyList<Point2>> loops)
    {
        var feature = drawn.Feature;
        if (feature.View == View.Top)
        {
            return loops.Select(l => (IReadOnlyList<Point2>)[.. Fine([.. l, l[0]])]);
        }

        var runs = new List<IReadOnlyList<Point2>>();
        var (from, to) = (drawn.From, drawn.To);
        foreach (var loop in loops)
        {
            var box = Box2.Around(loop);
            var ends = loop.Where((p, i) => Corner(loop, i) || p.X <= box.Left || p.X >= box.Right).Select(p => p.X).Distinct();
            runs.AddRange(ends.Select(x => Line(feature.View, x, from, x, to)));
            runs.Add(Line(feature.View, box.Left, from, box.Right, from));
            runs.Add(Line(feature.View, box.Left, to, box.Right, to));
        }

        return runs;
    }

    private static IReadOnlyList<Point2> Line(View view, double x1, double y1, double x2, double y2) => view == View.Front
        ? [.. Fine([new(x1, y1), new(x2, y2)])]
        : [.. Fine([new(y1, x1), new(y2, x2)])];

    private static bool Corner(IReadOnlyList<Point2> loop, int i)
    {
        var (a, b, c) = (loop[(i + loop.Count - 1) % loop.Count], loop[i], loop[(i + 1) % loop.Count]);
        var (ux, uy, vx, vy) = (b.X - a.X, b.Y - a.Y, c.X - b.X, c.Y - b.Y);
        return Math.Abs(Math.Atan2((ux * vy) - (uy * vx), (ux * vx) + (uy * vy))) > 0.2;
    }

    private static IEnumerable<Point2> Fine(IReadOnlyList<Point2> run)
    {
        yield return run[0];
        for (var i = 1; i < run.Count; i++)
        {
            var (a, b) = (run[i - 1], run[i]);
            var length = Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));
            var pieces = Math.Clamp((int)Math.Ceiling(length / 0.4), 1, 200);
            for (var n = 1; n <= pieces; n++)
            {
                yield return new(a.X + ((b.X - a.X) * n / pieces), a.Y + ((b.Y - a.Y) * n / pieces));
            }
        }
    }

    private static void Sort(PartColumns part, bool fromBelow, IReadOnlyList<Point2> run, List<IReadOnlyList<Point2>> seen, List<IReadOnlyList<Point2>> hidden)
    {
        List<Point2>? open = null;
        var kind = 0;
        for (var i = 1; i < run.Count; i++)
        {
            var now = Kind(part, fromBelow, run[i - 1], run[i]);
            if (now != kind || open is null)
            {
                Keep(open, kind, seen, hidden);
                open = [run[i - 1]];
                kind = now;
            }

            open.Add(run[i]);
        }

        Keep(open, kind, seen, hidden);
    }

    private static void Keep(List<Point2>? run, int kind, List<IReadOnlyList<Point2>> seen, List<IReadOnlyList<Point2>> hidden)
    {
        if (run is not null && kind > 0)
        {
            (kind == 2 ? seen : hidden).Add(run);
        }
    }

    // 2 seen, 1 hidden, 0 no edge.
    private static int Kind(PartColumns part, bool fromBelow, Point2 a, Point2 b)
    {
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length < 1e-9)
        {
            return 0;
        }

        var (mx, my) = ((a.X + b.X) / 2, (a.Y + b.Y) / 2);
        var left = part.At(mx - (dy / length * Beside), my + (dx / length * Beside));
        var right = part.At(mx + (dy / length * Beside), my - (dx / length * Beside));
        if (left.Count == 0 != (right.Count == 0) || (left.Count > 0 && Math.Abs(fromBelow ? left[0].From - right[0].From : left[^1].To - right[^1].To) > 0.03))
        {
            return 2;
        }

        return left.Count != right.Count || left.Zip(right).Any(p => Math.Abs(p.First.From - p.Second.From) > 0.03 || Math.Abs(p.First.To - p.Second.To) > 0.03) ? 1 : 0;
    }
}
