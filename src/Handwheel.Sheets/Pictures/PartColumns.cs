using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Sheets.Pictures;

/// <summary>The finished part at its aimed sizes, asked along upright lines: what a drawing's views and sections are traced from.</summary>
internal sealed class PartColumns
{
    private readonly List<(Feature Feature, IReadOnlyList<IReadOnlyList<Point2>> Loops, Box2 Box)> _features = [];

    /// <summary>Initializes a new instance of the <see cref="PartColumns"/> class.</summary>
    /// <param name="drawing">The drawing.</param>
    public PartColumns(Drawing drawing)
    {
        Box2? box = null;
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var feature in drawing.Features)
        {
            var loops = FeatureLoops.Of(drawing, feature);
            if (loops.Count == 0)
            {
                continue;
            }

            var plan = Box2.Around(loops.SelectMany(l => l));
            _features.Add((feature, loops, plan));
            if (feature.IsCut)
            {
                continue;
            }

            var (from, to) = (feature.From.Middle, feature.To.Middle);
            var (part, z) = feature.View switch
            {
                View.Front => (new Box2(plan.Left, from, plan.Right, to), new Span(plan.Low, plan.High)),
                View.Right => (new Box2(from, plan.Left, to, plan.Right), new Span(plan.Low, plan.High)),
                _ => (plan, new Span(from, to)),
            };
            box = box is { } b ? b.With(part) : part;
            low = Math.Min(low, z.Low);
            high = Math.Max(high, z.High);
        }

        Box = box ?? new Box2(0, 0, 1, 1);
        (Low, High) = low <= high ? (low, high) : (0, 1);
    }

    /// <summary>The part's box in plan.</summary>
    public Box2 Box { get; }

    /// <summary>Its lowest Z.</summary>
    public double Low { get; }

    /// <summary>Its highest Z.</summary>
    public double High { get; }

    /// <summary>Every feature with its outline.</summary>
    public IEnumerable<(Feature Feature, IReadOnlyList<IReadOnlyList<Point2>> Loops)> Features => _features.Select(f => (f.Feature, f.Loops));

    /// <summary>The metal along Z at a place in plan, part frame.</summary>
    /// <param name="x">X.</param>
    /// <param name="y">Y.</param>
    /// <returns>Runs of metal from below.</returns>
    public IReadOnlyList<Span> At(double x, double y)
    {
        IReadOnlyList<Span> metal = [];
        foreach (var (feature, loops, box) in _features)
        {
            foreach (var span in Along(feature, loops, box, x, y))
            {
                metal = feature.IsCut ? Spans.Cut(metal, span) : Spans.Add(metal, span);
            }
        }

        return metal;
    }

    /// <summary>The highest metal at a place in plan; null where there is none.</summary>
    /// <param name="at">The place, part frame.</param>
    /// <returns>Z.</returns>
    public double? Top(Point2 at) => At(at.X, at.Y) is { Count: > 0 } metal ? metal[^1].High : null;

    private static IEnumerable<Span> Along(Feature feature, IReadOnlyList<IReadOnlyList<Point2>> loops, Box2 box, double x, double y)
    {
        var (from, to) = (feature.From.Middle, feature.To.Middle);
        switch (feature.View)
        {
            case View.Front:
                return y >= from && y <= to && x > box.Left && x < box.Right ? Crossings(loops, x) : [];
            case View.Right:
                return x >= from && x <= to && y > box.Left && y < box.Right ? Crossings(loops, y) : [];
            default:
                return box.Holds(x, y) && Inside(loops, x, y) ? [Upright(feature, from, to, x, y)] : [];
        }
    }

    private static Span Upright(Feature feature, double from, double to, double x, double y)
    {
        var place = feature.Places.Count == 0 ? feature.Centre : feature.Places.MinBy(p => Square(p.Centre.X - x) + Square(p.Centre.Y - y)).Centre;
        var away = Math.Sqrt(Square(place.X - x) + Square(place.Y - y));
        if (feature.Shape is ConeShape cone)
        {
            var (low, high) = (cone.AcrossLow.Middle / 2, cone.AcrossHigh.Middle / 2);
            var meets = high == low ? from : from + ((to - from) * (away - low) / (high - low));
            return high > low ? new(Math.Clamp(meets, from, to), to) : high < low ? new(from, Math.Clamp(meets, from, to)) : new(from, to);
        }

        return feature.PointAngle is { } angle && !feature.Through && feature.Shape is RoundShape round && angle > 0.01
            ? new(from - (((round.Across.Middle / 2) - away) / Math.Tan(angle / 2)), to)
            : new(from, to);
    }

    private static bool Inside(IReadOnlyList<IReadOnlyList<Point2>> loops, double x, double y)
    {
        var inside = false;
        foreach (var loop in loops)
        {
            for (int i = 0, j = loop.Count - 1; i < loop.Count; j = i++)
            {
                var (a, b) = (loop[i], loop[j]);
                if (a.Y > y != b.Y > y && x < a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y)))
                {
                    inside = !inside;
                }
            }
        }

        return inside;
    }

    private static List<Span> Crossings(IReadOnlyList<IReadOnlyList<Point2>> loops, double across)
    {
        var at = new List<double>();
        foreach (var loop in loops)
        {
            for (int i = 0, j = loop.Count - 1; i < loop.Count; j = i++)
            {
                var (a, b) = (loop[i], loop[j]);
                if (a.X > across != b.X > across)
                {
                    at.Add(a.Y + ((b.Y - a.Y) * (across - a.X) / (b.X - a.X)));
                }
            }
        }

        at.Sort();
        var spans = new List<Span>();
        for (var i = 0; i + 1 < at.Count; i += 2)
        {
            spans.Add(new(at[i], at[i + 1]));
        }

        return spans;
    }

    private static double Square(double value) => value * value;
}
