using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Sheets.Pictures;

/// <summary>The part cut through along a plane upright and along X, where most of its axes lie.</summary>
internal static class SectionLoops
{
    /// <summary>The plane's Y: where most features have their centres, the nearest to the origin of equals.</summary>
    /// <param name="part">The part.</param>
    /// <param name="drawing">The drawing.</param>
    /// <returns>Y, part frame.</returns>
    public static double PlaneY(PartColumns part, Drawing drawing)
    {
        var places = drawing.Features.Where(f => f.View == View.Top).SelectMany(f => f.Places.Count == 0 ? [f.Centre] : f.Places.Select(p => p.Centre)).ToArray();
        var best = places.GroupBy(p => Math.Round(p.Y, 6)).OrderByDescending(g => g.Count()).ThenBy(g => Math.Abs(g.Key)).ThenBy(g => g.Key).Select(g => g.Key).FirstOrDefault();
        return part.Box.Low < best && best < part.Box.High ? best : (part.Box.Low + part.Box.High) / 2;
    }

    /// <summary>The cut faces' loops as points of the part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="drawing">The drawing.</param>
    /// <param name="scale">Paper to world, for how finely it is looked at.</param>
    /// <returns>Closed loops, part frame.</returns>
    public static IReadOnlyList<IReadOnlyList<Point3>> Middle(PartColumns part, Drawing drawing, double scale)
    {
        var y = PlaneY(part, drawing);
        var box = new Box2(part.Box.Left, part.Low, part.Box.Right, part.High).Grown(0.5);
        var wide = Math.Clamp((int)(box.Wide * scale / 0.3), 60, 420);
        var tall = Math.Clamp((int)(box.Tall * scale / 0.3), 30, 300);
        var columns = Enumerable.Range(0, wide + 1).Select(i => part.At(box.Left + (box.Wide * i / wide), y)).ToArray();
        return [.. Contours.Of(box, wide, tall, p => Holds(part.At(p.X, y), p.Y), (i, j) => Holds(columns[i], box.Low + (box.Tall * j / tall)))
            .Select(l => (IReadOnlyList<Point3>)[.. l.Select(p => new Point3(p.X, y, p.Y))])];
    }

    private static bool Holds(Spans metal, double z) => metal.Any(s => z > s.From && z < s.To);
}
