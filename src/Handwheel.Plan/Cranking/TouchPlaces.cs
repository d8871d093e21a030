using Handwheel.Jobs.Shops;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Cranking;

// Where a cutter may be touched off on the metal as it stands: a flat place at the top with nothing higher under the cutter.
internal static class TouchPlaces
{
    private const int Grid = 30;
    private const double Same = 1e-7;

    // So that no place of a ring stands just on an edge drawn at a round number, where rounding would decide.
    private const double OffAxes = 1e-4;

    // The place of the spindle and the height met; null where there is no metal.
    internal static (Point2 At, double Top)? OnTop(HeldMetal metal, Cutter cutter, CutterShape shape, double theta, Point2? pilot)
    {
        if (pilot is { } hole)
        {
            var round = Ring(hole, cutter.TrueAcross / 2 * 0.9, 24).Select(p => metal.TopAt(p, theta)).OfType<double>().ToList();
            return round.Count > 0 ? (hole, round.Max()) : null;
        }

        var found = Candidates(metal, theta).ToList();
        if (found.Count == 0)
        {
            return null;
        }

        var top = found.Max(c => c.Top);
        var level = found.Where(c => c.Top > top - 1e-3).OrderByDescending(c => Flatness(metal, c.At, c.Top, shape, theta)).ThenBy(c => Math.Round((c.At.X * c.At.X) + (c.At.Y * c.At.Y), 6)).ToList();
        var best = Refined(metal, level[0], theta);
        if (cutter.Kind == CutterKind.Saw)
        {
            return Beside(metal, cutter, best, theta);
        }

        return cutter.Kind is CutterKind.BoringBar or CutterKind.FlyCutter ? Edged(metal, shape, best, theta) : best;
    }

    // The same on one face: places of it where nothing beside it stands higher under the cutter; null where it has none.
    internal static (Point2 At, double Top)? OnFace(HeldMetal metal, Cutter cutter, CutterShape shape, double theta, Func<Point2, double, bool> isOn)
    {
        bool IsFree((Point2 At, double Top) c) => Ring(c.At, shape.GreatestRadius, 16).Concat(Ring(c.At, shape.GreatestRadius / 2, 8)).All(q => metal.TopAt(q, theta) is not { } t || t < c.Top + 1e-3);
        var found = Candidates(metal, theta).Where(c => isOn(c.At, c.Top) && (IsFree(c) || cutter.Kind is CutterKind.BoringBar or CutterKind.FlyCutter or CutterKind.Saw))
            .OrderByDescending(c => Flatness(metal, c.At, c.Top, shape, theta)).ThenBy(c => Math.Round((c.At.X * c.At.X) + (c.At.Y * c.At.Y), 6)).Take(1).ToList();
        return found.Count == 0 ? null
            : cutter.Kind switch
            {
                CutterKind.Saw => Beside(metal, cutter, found[0], theta),
                CutterKind.BoringBar or CutterKind.FlyCutter => Edged(metal, shape, found[0], theta),
                _ => found[0],
            };
    }

    private static IEnumerable<(Point2 At, double Top)> Candidates(HeldMetal metal, double theta)
    {
        var box = metal.Box(theta);
        for (var i = 1; i < Grid; i++)
        {
            for (var j = 1; j < Grid; j++)
            {
                Point2 p = new(box.Min.X + ((box.Max.X - box.Min.X) * i / Grid), box.Min.Y + ((box.Max.Y - box.Min.Y) * j / Grid));
                if (metal.TopAt(p, theta) is { } top)
                {
                    yield return (p, top);
                }
            }
        }
    }

    // How much of what lies under the cutter's point and edge is level with the place: a point wants its middle level, an edge its rim.
    private static int Flatness(HeldMetal metal, Point2 p, double top, CutterShape shape, double theta) =>
        Ring(p, Math.Min(1, shape.GreatestRadius), 8, OffAxes).Concat(Ring(p, shape.GreatestRadius * 0.95, 8, OffAxes)).Count(q => metal.TopAt(q, theta) is { } t && Math.Abs(t - top) < Same);

    private static IEnumerable<Point2> Ring(Point2 p, double r, int n, double first = 0) =>
        Enumerable.Range(0, n).Select(i => new Point2(p.X + (r * Math.Cos(first + (2 * Math.PI * i / n))), p.Y + (r * Math.Sin(first + (2 * Math.PI * i / n)))));

    // Climbs from a place of the net to the true top near it: an edge or corner that lies between.
    private static (Point2 At, double Top) Refined(HeldMetal metal, (Point2 At, double Top) start, double theta)
    {
        var (at, top) = start;
        for (var step = 1.0; step > 1e-9; step /= 2)
        {
            foreach (var q in new[] { new Point2(at.X + step, at.Y), new Point2(at.X - step, at.Y), new Point2(at.X, at.Y + step), new Point2(at.X, at.Y - step) })
            {
                if (metal.TopAt(q, theta) is { } t && t > top + 1e-12)
                {
                    (at, top) = (q, t);
                }
            }
        }

        return (at, top);
    }

    // A saw reaches over the place from the side where its screw hangs in the air.
    private static (Point2 At, double Top)? Beside(HeldMetal metal, Cutter saw, (Point2 At, double Top) on, double theta)
    {
        var screw = (saw.ScrewAcross > 0 ? saw.ScrewAcross : saw.Arbor) / 2;
        for (var d = (saw.TrueAcross / 2) - 2; d > screw + 1; d -= 2)
        {
            foreach (var turn in new[] { -4, -3, -5, -2, -6, 4, 3, 5, 2, 6, 8, 0, 7, -7, 1, -1 })
            {
                var a = turn * Math.PI / 8;
                Point2 p = new(on.At.X + (d * Math.Cos(a)), on.At.Y + (d * Math.Sin(a)));
                if (Ring(p, screw + 1, 12).Append(p).All(q => metal.TopAt(q, theta) is not { } t || t < on.Top - saw.ScrewBelow - 0.5))
                {
                    return (p, on.Top);
                }
            }
        }

        return null;
    }

    // A single tooth sweeps a ring: the spindle stands beside the place by the ring's radius.
    private static (Point2 At, double Top) Edged(HeldMetal metal, CutterShape shape, (Point2 At, double Top) on, double theta)
    {
        var r = shape.GreatestRadius * 0.97;
        foreach (var p in Ring(on.At, r, 16))
        {
            if (Ring(p, r, 24).All(q => metal.TopAt(q, theta) is not { } t || t <= on.Top + Same))
            {
                return (p, on.Top);
            }
        }

        return on;
    }
}
