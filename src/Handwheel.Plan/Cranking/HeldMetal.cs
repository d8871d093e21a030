using Handwheel.Jobs.Moves;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;
using Handwheel.Solids.Workpieces;

namespace Handwheel.Plan.Cranking;

// The stock as the plan has cut it so far, sounded as it lies in a holding. It finds entries, tops to touch on and where a pass begins; it proves nothing.
internal sealed class HeldMetal(Workpiece piece, SetupFacts setup)
{
    private const double Least = 1e-6;

    private (double Low, double High)? heights;
    private double standing;

    internal Workpiece Piece { get; private set; } = piece;

    internal SetupFacts Setup => setup;

    // How an indexer stands, degrees: every theta asked for is told from there.
    internal double Standing
    {
        get => standing;
        set
        {
            standing = value;
            heights = null;
        }
    }

    internal void Cut(ISolid volume)
    {
        Piece = Piece.After(volume);
        heights = null;
    }

    // The box of the bare stock as it lies: no metal is outside it.
    internal Box3 Box(double theta) => Piece.Bare.Bounds.Placed(Poses.At(setup, theta + standing));

    internal Spans Sound(Line3 line, double theta) => Piece.Sound(line.Placed(Poses.At(setup, theta + standing).Inverse())).Cleaned(Least);

    // Height of the highest metal under a place; null where there is none.
    internal double? TopAt(Point2 p, double theta)
    {
        var spans = Sound(Line3.AlongZ(p.X, p.Y), theta);
        return spans.Count == 0 ? null : spans[^1].To;
    }

    // Whether metal stands above a height at a place.
    internal bool Above(Point2 p, double z, double theta) => TopAt(p, theta) > z + 1e-6;

    // Greatest and least place of metal above a height along X (or Y) within a band of the other axis; null where there is none.
    internal (double Low, double High)? Extent(bool alongX, double from, double to, double z, double theta, double? upTo = null)
    {
        double top = Math.Min(upTo ?? double.PositiveInfinity, Box(theta).Max.Z), low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (var height in Levels(z, top))
        {
            for (var i = 0; i <= 24; i++)
            {
                var across = from + ((to - from) * ((i * 0.998 / 24) + 0.001));
                foreach (var span in Sound(alongX ? Line3.AlongX(across, height) : Line3.AlongY(across, height), theta))
                {
                    (low, high) = (Math.Min(low, span.From), Math.Max(high, span.To));
                }
            }
        }

        return low <= high ? (low, high) : null;
    }

    // Radius of the widest pin that goes down a hole between two heights; null where there is metal in its middle, or none round it.
    internal double? HoleRadius(Point2 centre, double low, double high)
    {
        double? least = null;
        foreach (var height in Levels(low, high))
        {
            for (var i = 0; i < 32; i++)
            {
                var (s, c) = Math.SinCos((i * Math.PI / 16) + 0.0137);
                var spans = Sound(new(new(centre.X, centre.Y, height), new(c, s, 0)), 0);
                if (spans.Contains(0))
                {
                    return null;
                }

                for (var k = 0; k < spans.Count; k++)
                {
                    if (spans[k].From > 0)
                    {
                        least = Math.Min(least ?? spans[k].From, spans[k].From);
                        break;
                    }
                }
            }
        }

        return least;
    }

    // The same between two heights, gone to closely: the side of a round lies between two of the lines looked along.
    internal (double Low, double High)? Widest(bool alongX, double from, double to, double low, double high)
    {
        double across = (to - from) / 24, top = Math.Min(high, Heights().High);
        (double Place, double At, double Height)? least = null, most = null;
        void Look(double at, double height)
        {
            foreach (var span in Sound(alongX ? Line3.AlongX(at, height) : Line3.AlongY(at, height), 0))
            {
                least = least is { } l && l.Place <= span.From + 1e-12 ? l : (span.From, at, height);
                most = most is { } m && m.Place >= span.To - 1e-12 ? m : (span.To, at, height);
            }
        }

        foreach (var height in Levels(Math.Max(low, Heights().Low), top))
        {
            for (var i = 0; i <= 24; i++)
            {
                Look(from + ((to - from) * ((i * 0.998 / 24) + 0.001)), height);
            }
        }

        for (var step = across; step > 1e-7 && least is not null && most is not null; step /= 2)
        {
            foreach (var (_, at, height) in new[] { least.Value, most.Value })
            {
                Look(Math.Max(from, at - step), height);
                Look(Math.Min(to, at + step), height);
            }
        }

        return least is { } a && most is { } b ? (a.Place, b.Place) : null;
    }

    // Greatest distance from a centre, in one direction within a half width to each side, of metal above a height; null where there is none.
    internal double? Reach(Point2 centre, double half, double z, double theta)
    {
        var box = Box(theta);
        double? far = null;
        foreach (var height in Levels(z, box.Max.Z))
        {
            for (var i = -8; i <= 8; i++)
            {
                var spans = Sound(Line3.AlongX(centre.Y + (half * i / 8.02), height), theta);
                if (spans.Count > 0 && spans[^1].To > centre.X)
                {
                    far = Math.Max(far ?? 0, spans[^1].To - centre.X);
                }
            }
        }

        return far;
    }

    // Heights of the lowest and highest metal, whichever way the rotary stands; the box's where none was met.
    internal (double Low, double High) Heights() => heights ??= Looked();

    private (double Low, double High) Looked()
    {
        const double theta = 0;
        var box = Box(theta);
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (var i = 0; i <= 40; i++)
        {
            for (var j = 0; j <= 40; j++)
            {
                var spans = Sound(Line3.AlongZ(Share(box.Min.X, box.Max.X, i), Share(box.Min.Y, box.Max.Y, j)), theta);
                if (spans.Count > 0)
                {
                    (low, high) = (Math.Min(low, spans[0].From), Math.Max(high, spans[^1].To));
                }
            }
        }

        return low <= high ? (low, high) : (box.Min.Z, box.Max.Z);
    }

    private static double Share(double low, double high, int i) => low + 1e-6 + ((high - low - 2e-6) * i / 40);

    private static IEnumerable<double> Levels(double z, double top)
    {
        if (top - z < 1e-6)
        {
            yield break;
        }

        for (var i = 0; i < 9; i++)
        {
            yield return z + 1e-4 + ((top - z - 2e-4) * i / 8);
        }
    }
}
