using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// What a grid holds, ray by ray. Rays of an axis are numbered from 0; a distance along a ray is the coordinate on its axis. Intervals name no surfaces:
// a sounding of the workpiece along the ray's line does.
public sealed partial class RayGrid
{
    /// <summary>How many rays run along an axis.</summary>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axis.</exception>
    public int RaysAlong(int axis) => Set(axis).Lo.Length;

    /// <summary>Where the rays of the two other axes cross an axis, rising.</summary>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axis.</exception>
    public IReadOnlyList<double> Lattice(int axis) => axis switch
    {
        0 => Xs,
        1 => Ys,
        2 => Zs,
        _ => throw new ArgumentOutOfRangeException(nameof(axis), axis, "An axis is 0, 1 or 2."),
    };

    /// <summary>The line of a ray.</summary>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <param name="ray">The ray.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axis.</exception>
    public Line3 RayLine(int axis, int ray)
    {
        var columns = Set(axis).Columns;
        int row = ray / columns, column = ray % columns;
        return axis switch
        {
            0 => Line3.AlongX(Ys[column], Zs[row]),
            1 => Line3.AlongY(Xs[column], Zs[row]),
            _ => Line3.AlongZ(Xs[row], Ys[column]),
        };
    }

    /// <summary>How many rays stand side by side in one row of an axis: ray <c>r</c> is in row <c>r / count</c>, column <c>r % count</c>.</summary>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axis.</exception>
    public int RaysInRow(int axis) => Set(axis).Columns;

    /// <summary>The ray along an axis nearest to a place.</summary>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <param name="place">The place; outside the box the nearest ray at its edge.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axis.</exception>
    public int RayNear(int axis, Point3 place)
    {
        var columns = Set(axis).Columns;
        return axis switch
        {
            0 => (Nearest(Zs, place.Z) * columns) + Nearest(Ys, place.Y),
            1 => (Nearest(Zs, place.Z) * columns) + Nearest(Xs, place.X),
            _ => (Nearest(Xs, place.X) * columns) + Nearest(Ys, place.Y),
        };
    }

    /// <summary>How many intervals of metal a ray has.</summary>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <param name="ray">The ray.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axis.</exception>
    public int IntervalCount(int axis, int ray) => Set(axis).CountOf(ray);

    /// <summary>One interval of metal of a ray.</summary>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <param name="ray">The ray.</param>
    /// <param name="index">From 0, rising along the ray.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axis.</exception>
    public (double From, double To) Interval(int axis, int ray, int index) => Set(axis).IntervalOf(ray, index);

    /// <summary>Whether a ray is metal all the way from one place to another.</summary>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <param name="ray">The ray.</param>
    /// <param name="from">The one place along it.</param>
    /// <param name="to">The other, not below it.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axis.</exception>
    public bool Covers(int axis, int ray, double from, double to)
    {
        var set = Set(axis);
        var index = set.IndexAt(ray, from);
        return index >= 0 && set.IntervalOf(ray, index).Hi >= to;
    }

    /// <summary>All metal of a ray, its surfaces not named.</summary>
    /// <param name="axis">0 X, 1 Y, 2 Z.</param>
    /// <param name="ray">The ray.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axis.</exception>
    public Spans Ray(int axis, int ray)
    {
        var set = Set(axis);
        return SpansOf(set.Lo[ray], set.Hi[ray], set.More[ray]);
    }

    /// <summary>
    /// The rays that the last cut changed, each as it was before, strip by strip and so always in the same order; none when the last cut was one of many, or
    /// taken back.
    /// </summary>
    public IEnumerable<RayBefore> Changed()
    {
        var told = new HashSet<(int Axis, int Ray)>();
        foreach (var strip in undo ?? [])
        {
            foreach (var change in strip)
            {
                if (told.Add((change.Set, change.Ray)))
                {
                    yield return new RayBefore(change.Set, change.Ray, SpansOf(change.Lo, change.Hi, change.More));
                }
            }
        }
    }

    /// <summary>The same metal on the same rays, which can be cut further without changing this.</summary>
    public RayGrid Copy() => new(this);

    private static Spans SpansOf(double lo, double hi, double[]? more)
    {
        if (more is null)
        {
            return lo < hi ? Spans.Take([new Span(lo, hi, default, default)]) : Spans.None;
        }

        var spans = new Span[more.Length / 2];
        for (var i = 0; i < spans.Length; i++)
        {
            spans[i] = new Span(more[2 * i], more[(2 * i) + 1], default, default);
        }

        return Spans.Take(spans);
    }

    private RaySet Set(int axis) => axis switch
    {
        0 => AlongX,
        1 => AlongY,
        2 => AlongZ,
        _ => throw new ArgumentOutOfRangeException(nameof(axis), axis, "An axis is 0, 1 or 2."),
    };
}
