using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>Heights asked once over a grid, gathered into the few levels that a picture tints.</summary>
internal sealed class HeightMap
{
    private readonly double?[,] _heights;
    private readonly Func<Point2, double?> _top;

    /// <summary>Initializes a new instance of the <see cref="HeightMap"/> class.</summary>
    /// <param name="box">What is looked at.</param>
    /// <param name="wide">Squares along X.</param>
    /// <param name="tall">Squares along Y.</param>
    /// <param name="top">The highest metal at a place.</param>
    public HeightMap(Box2 box, int wide, int tall, Func<Point2, double?> top)
    {
        (Box, Wide, Tall, _top) = (box, wide, tall, top);
        _heights = new double?[wide + 1, tall + 1];
        for (var i = 0; i <= wide; i++)
        {
            for (var j = 0; j <= tall; j++)
            {
                _heights[i, j] = top(Place(i, j));
            }
        }
    }

    /// <summary>What is looked at.</summary>
    public Box2 Box { get; }

    /// <summary>Squares along X.</summary>
    public int Wide { get; }

    /// <summary>Squares along Y.</summary>
    public int Tall { get; }

    /// <summary>The height at a place of the grid.</summary>
    /// <param name="i">Along X.</param>
    /// <param name="j">Along Y.</param>
    /// <returns>The height; null: no metal.</returns>
    public double? this[int i, int j] => _heights[i, j];

    /// <summary>A place of the grid.</summary>
    /// <param name="i">Along X.</param>
    /// <param name="j">Along Y.</param>
    /// <returns>The place.</returns>
    public Point2 Place(int i, int j) => new(Box.Left + (Box.Wide * i / Wide), Box.Low + (Box.Tall * j / Tall));

    /// <summary>The levels there are, highest first, each with the height that divides it from the one above; at most six.</summary>
    /// <returns>Level and its lower divide.</returns>
    public IReadOnlyList<(double Level, double Divide)> Levels()
    {
        var all = _heights.Cast<double?>().Where(h => h.HasValue).Select(h => h!.Value).Order().ToArray();
        if (all.Length == 0)
        {
            return [];
        }

        var groups = new List<(double Low, double High, int Count)> { (all[0], all[0], 0) };
        foreach (var h in all)
        {
            var last = groups[^1];
            if (h - last.High > 0.04)
            {
                groups.Add((h, h, 1));
            }
            else
            {
                groups[^1] = (last.Low, h, last.Count + 1);
            }
        }

        var kept = groups.SelectMany(Bands).Where(g => g.Count > all.Length / 150).OrderByDescending(g => g.Count).Take(6).OrderByDescending(g => g.High).ToArray();
        return kept.Length == 0 ? [(all[^1], double.NegativeInfinity)] : [.. kept.Select((g, i) => ((g.Low + g.High) / 2, i + 1 < kept.Length ? (g.Low + kept[i + 1].High) / 2 : double.NegativeInfinity))];
    }

    /// <summary>The edge of what lies above a height.</summary>
    /// <param name="divide">The height.</param>
    /// <returns>Closed loops.</returns>
    public IReadOnlyList<IReadOnlyList<Point2>> Above(double divide) => Contours.Of(Box, Wide, Tall, p => _top(p) >= divide, (i, j) => _heights[i, j] >= divide);

    /// <summary>The edge of the metal for which something else holds too.</summary>
    /// <param name="holds">What must hold at a place.</param>
    /// <returns>Closed loops.</returns>
    public IReadOnlyList<IReadOnlyList<Point2>> Where(Func<Point2, bool> holds) =>
        Contours.Of(Box, Wide, Tall, p => holds(p) && _top(p).HasValue, (i, j) => _heights[i, j].HasValue && holds(Place(i, j)));

    /// <summary>The edge of what another map no longer has.</summary>
    /// <param name="after">The same place afterwards, same grid.</param>
    /// <returns>Closed loops.</returns>
    public IReadOnlyList<IReadOnlyList<Point2>> Taken(HeightMap after) =>
        Contours.Of(Box, Wide, Tall, p => IsTaken(_top(p), after._top(p)), (i, j) => IsTaken(_heights[i, j], after._heights[i, j]));

    /// <summary>The place deepest within a level, for its figure.</summary>
    /// <param name="low">The level's lower divide.</param>
    /// <param name="high">Its upper divide.</param>
    /// <param name="free">Whether a place may be written on.</param>
    /// <returns>The place and how far it is from the level's edge, in squares; null where there is none.</returns>
    public (Point2 At, double Room)? Middle(double low, double high, Func<Point2, bool> free)
    {
        var room = new int[Wide + 1, Tall + 1];
        var best = (At: default(Point2), Room: 0);
        // Squares to the nearest place that does not belong, by two sweeps.
        for (var i = 0; i <= Wide; i++)
        {
            for (var j = 0; j <= Tall; j++)
            {
                var belongs = _heights[i, j] >= low && _heights[i, j] < high && free(Place(i, j));
                room[i, j] = !belongs || i == 0 || j == 0 ? 0 : 1 + Math.Min(room[i - 1, j], Math.Min(room[i, j - 1], room[i - 1, j - 1]));
            }
        }

        for (var i = Wide; i >= 0; i--)
        {
            for (var j = Tall; j >= 0; j--)
            {
                room[i, j] = i == Wide || j == Tall ? 0 : Math.Min(room[i, j], 1 + Math.Min(room[i + 1, j], Math.Min(room[i, j + 1], room[i + 1, j + 1])));
                if (room[i, j] > best.Room)
                {
                    best = (Place(i, j), room[i, j]);
                }
            }
        }

        return best.Room > 0 ? best : null;
    }

    private static bool IsTaken(double? before, double? after) => before is { } b && (after is not { } a || b - a > 0.004);

    private static IEnumerable<(double Low, double High, int Count)> Bands((double Low, double High, int Count) group)
    {
        if (group.High - group.Low < 0.6)
        {
            return [group];
        }

        var step = (group.High - group.Low) / 4;
        return Enumerable.Range(0, 4).Select(n => (group.Low + (n * step), group.Low + ((n + 1) * step), Math.Max(1, group.Count / 4)));
    }
}
