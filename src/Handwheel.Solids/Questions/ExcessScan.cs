using Handwheel.Solids.Geometry;
using Handwheel.Solids.Grids;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Solids.Questions;

// What one grid has and another, on the same rays, has not: stretches longer than the thinnest metal, their extent and volume.
internal sealed class ExcessScan
{
    private const int Kept = 24;
    private readonly List<(Point3 From, Point3 To)> settled = [];
    private List<(Point3 From, Point3 To)> longest = [];
    private readonly Func<Point3, bool>? where;
    private double shortestKept;

    internal ExcessScan(RayGrid a, RayGrid b, Func<Point3, bool>? where)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        if (!ReferenceEquals(a.Xs, b.Xs) || !ReferenceEquals(a.Ys, b.Ys) || !ReferenceEquals(a.Zs, b.Zs))
        {
            throw new ArgumentException("Both grids must lie on the same rays.", nameof(b));
        }

        this.where = where;
        Guarantee = a.Guarantee;
        Spacing = a.Spacing;
        double cx = RayGrid.Step(a.Ys) * RayGrid.Step(a.Zs), cy = RayGrid.Step(a.Xs) * RayGrid.Step(a.Zs), cz = RayGrid.Step(a.Xs) * RayGrid.Step(a.Ys);
        Scan(a.AlongX, b.AlongX, cx, (row, column, t) => new(t, a.Ys[column], a.Zs[row]));
        Scan(a.AlongY, b.AlongY, cy, (row, column, t) => new(a.Xs[column], t, a.Zs[row]));
        Scan(a.AlongZ, b.AlongZ, cz, (row, column, t) => new(a.Xs[row], a.Ys[column], t));
        longest = settled;
        longest.Sort((p, q) => q.From.DistanceTo(q.To).CompareTo(p.From.DistanceTo(p.To)));
    }

    internal bool IsEmpty => longest.Count == 0;

    internal double Volume { get; private set; }

    internal Box3 Box { get; private set; } = Box3.Empty;

    internal double Guarantee { get; }

    internal double Spacing { get; }

    // The longest stretches, well apart in length only; a bounded number.
    internal IReadOnlyList<(Point3 From, Point3 To)> Longest => longest;

    // So many of the longest along each of the axes, longest first.
    internal static IReadOnlyList<(Point3 From, Point3 To)> LongestOf(IReadOnlyList<(Point3 From, Point3 To)> stretches, int each)
    {
        static int Axis((Point3 From, Point3 To) s)
        {
            var d = s.To - s.From;
            return Math.Abs(d.X) >= Math.Max(Math.Abs(d.Y), Math.Abs(d.Z)) ? 0 : Math.Abs(d.Y) >= Math.Abs(d.Z) ? 1 : 2;
        }

        return [.. stretches.GroupBy(Axis).OrderBy(g => g.Key).SelectMany(g => g.OrderByDescending(s => s.From.DistanceTo(s.To)).Take(each)).OrderByDescending(s => s.From.DistanceTo(s.To))];
    }

    private void Scan(RaySet a, RaySet b, double cell, Func<int, int, double, Point3> place)
    {
        for (var ray = 0; ray < a.Lo.Length; ray++)
        {
            if (a.IsEmpty(ray) || (a.More[ray] is null && b.More[ray] is null && b.Lo[ray] <= a.Lo[ray] && b.Hi[ray] >= a.Hi[ray]))
            {
                continue;
            }

            for (var i = 0; i < a.CountOf(ray); i++)
            {
                var (lo, hi) = a.IntervalOf(ray, i);
                for (var k = 0; k < b.CountOf(ray) && lo < hi; k++)
                {
                    var (from, to) = b.IntervalOf(ray, k);
                    if (to < lo)
                    {
                        continue;
                    }

                    Note(a, ray, lo, Math.Min(from, hi), cell, place);
                    lo = Math.Max(lo, to);
                }

                Note(a, ray, lo, hi, cell, place);
            }
        }

        Settle();
    }

    // The longest of this set of rays are kept apart from those of the next.
    private void Settle()
    {
        longest.Sort((p, q) => q.From.DistanceTo(q.To).CompareTo(p.From.DistanceTo(p.To)));
        settled.AddRange(longest.Take(Kept));
        longest.Clear();
        shortestKept = 0;
    }

    private void Note(RaySet set, int ray, double lo, double hi, double cell, Func<int, int, double, Point3> place)
    {
        if (!(hi - lo > Workpiece.Thinnest))
        {
            return;
        }

        int row = ray / set.Columns, column = ray % set.Columns;
        if (where is not null && !where(place(row, column, (lo + hi) / 2)))
        {
            return;
        }

        Point3 from = place(row, column, lo), to = place(row, column, hi);
        Volume += (hi - lo) * cell / 3;
        Box = Box.Union(new(from, from)).Union(new(to, to));
        if (longest.Count < Kept || hi - lo > shortestKept)
        {
            longest.Add((from, to));
            if (longest.Count > 4 * Kept)
            {
                longest.Sort((p, q) => q.From.DistanceTo(q.To).CompareTo(p.From.DistanceTo(p.To)));
                longest.RemoveRange(Kept, longest.Count - Kept);
                shortestKept = longest[^1].From.DistanceTo(longest[^1].To);
            }
        }
    }
}
