using Handwheel.Solids.Cutters;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

// The plan section {distance to a level path < r} of a sweep on up to 16 neighbouring lines along X (or along Y):
// worked out once and used for every height at which the cutter has that radius.
internal sealed class Laterals
{
    private readonly SpanList scratch = new();

    internal double[] From { get; } = new double[RaySet.BlockSize];

    internal double[] To { get; } = new double[RaySet.BlockSize];

    // A second and third interval where an arc leaves one (line, from, to).
    internal List<(int Line, double From, double To)> More { get; } = [];

    internal double Least { get; private set; }

    internal double Most { get; private set; }

    internal bool IsEmpty => !(Least < Most);

    // Lines across at the given coordinates: along X at y (alongY false), or along Y at x.
    internal void Work(Slab slab, double radius, CutterPath path, bool alongY, ReadOnlySpan<double> lines)
    {
        Least = double.PositiveInfinity;
        Most = double.NegativeInfinity;
        More.Clear();
        for (var i = 0; i < lines.Length; i++)
        {
            if (path.Kind == PathKind.Arc)
            {
                OnArc(slab, radius, path, alongY, lines[i], i);
            }
            else
            {
                OnStraight(radius, path, alongY, lines[i], i);
            }

            if (From[i] < To[i])
            {
                Least = Math.Min(Least, From[i]);
                Most = Math.Max(Most, To[i]);
            }
        }

        foreach (var (_, a, b) in More)
        {
            Least = Math.Min(Least, a);
            Most = Math.Max(Most, b);
        }
    }

    // Two discs and the band between them: a convex section, one interval.
    private void OnStraight(double r, CutterPath path, bool alongY, double line, int i)
    {
        double ax = path.From.X, ay = path.From.Y, bx = path.To.X, by = path.To.Y;
        if (alongY)
        {
            (ax, ay, bx, by) = (ay, ax, by, bx);
        }

        double lo = double.PositiveInfinity, hi = double.NegativeInfinity;
        Disc(ax, line - ay, r, ref lo, ref hi);
        double dx = bx - ax, dy = by - ay;
        if (dx != 0 || dy != 0)
        {
            Disc(bx, line - by, r, ref lo, ref hi);
            Band(ax, line - ay, dx, dy, r, ref lo, ref hi);
        }

        From[i] = lo;
        To[i] = hi;
    }

    private static void Disc(double x, double h, double r, ref double lo, ref double hi)
    {
        var c = (r - h) * (r + h);
        if (c > 0 && Math.Abs(h) < r)
        {
            var half = Math.Sqrt(c);
            lo = Math.Min(lo, x - half);
            hi = Math.Max(hi, x + half);
        }
    }

    // Places x on the line with |across| < r and 0 <= along <= length.
    private static void Band(double ax, double h, double dx, double dy, double r, ref double lo, ref double hi)
    {
        var n = Math.Sqrt((dx * dx) + (dy * dy));
        double ex = dx / n, ey = dy / n, a = double.NegativeInfinity, b = double.PositiveInfinity;
        if (!Box3.Slab(h * ey, ex, 0, n, ref a, ref b))
        {
            return;
        }

        // across = ex * h - ey * x
        if (ey == 0)
        {
            if (!(Math.Abs(ex * h) < r))
            {
                return;
            }
        }
        else if (!Box3.Slab(ex * h, -ey, -r, r, ref a, ref b))
        {
            return;
        }

        lo = Math.Min(lo, ax + a);
        hi = Math.Max(hi, ax + b);
    }

    private void OnArc(Slab slab, double r, CutterPath path, bool alongY, double line, int i)
    {
        From[i] = double.PositiveInfinity;
        To[i] = double.NegativeInfinity;
        var near = Math.Abs(line - (alongY ? path.Centre.X : path.Centre.Y));
        if (near >= path.Radius + r)
        {
            return;
        }

        scratch.Clear();
        var height = path.From.Z;
        var disc = new Slab { Z0 = -1, Z1 = 1, R0 = r, R1 = r, A = r * r, Face = slab.Face };
        Sweep.Sound(disc, path, alongY ? Line3.AlongY(line, height) : Line3.AlongX(line, height), closed: false, scratch);
        scratch.Normalise();
        for (var k = 0; k < scratch.Count; k++)
        {
            if (k == 0)
            {
                (From[i], To[i]) = (scratch[0].From, scratch[0].To);
            }
            else
            {
                More.Add((i, scratch[k].From, scratch[k].To));
            }
        }
    }
}
