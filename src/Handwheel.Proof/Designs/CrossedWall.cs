using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Designs;

/// <summary>
/// What is left between two features drawn from different sides, mm. Two cuts (or two adds): the least way from one prism to the other, each as far as the part
/// reaches. A cut in an add: from the cut&#39;s outermost places to the add&#39;s sides, half way along the cut, and under a bottom that is no way through.
/// </summary>
internal static class CrossedWall
{
    private const int Round = 16;
    private const int Turns = 400;

    /// <summary>The thinnest.</summary>
    /// <param name="first">The one.</param>
    /// <param name="second">The other.</param>
    /// <param name="part">The box of the part.</param>
    /// <returns>It; less than 0 where a cut comes out of the add&#39;s side.</returns>
    public static double Thinnest(DrawnFeature first, DrawnFeature second, Box3 part)
    {
        if (first.Feature.IsCut != second.Feature.IsCut)
        {
            return first.Feature.IsCut ? Within(first, second) : Within(second, first);
        }

        var least = double.PositiveInfinity;
        foreach (var a in first.Outlines)
        {
            foreach (var b in second.Outlines)
            {
                least = Math.Min(least, Apart((first.Feature.View, a, Ends(first, part)), (second.Feature.View, b, Ends(second, part))));
            }
        }

        return least;
    }

    private static (double From, double To) Ends(DrawnFeature f, Box3 part)
    {
        var (low, high) = FeatureView.Ends(f.Feature.View, part);
        return (Math.Clamp(f.From, low, high), Math.Clamp(f.To, low, high));
    }

    // From places all round one, at three heights, to the nearest of the other and back until nothing changes.
    private static double Apart((View View, Outline Outline, (double From, double To) Ends) a, (View View, Outline Outline, (double From, double To) Ends) b)
    {
        var middle = new Point2((a.Outline.Min.X + a.Outline.Max.X) / 2, (a.Outline.Min.Y + a.Outline.Max.Y) / 2);
        var reach = a.Outline.Min.DistanceTo(a.Outline.Max);
        var least = double.PositiveInfinity;
        for (var i = 0; i < 3 * Round; i++)
        {
            var depth = a.Ends.From + ((a.Ends.To - a.Ends.From) * (i % 3) / 2);
            var p = FeatureView.Place(a.View, a.Outline.Nearest(Point2.Polar(middle, reach, Math.Tau * (i / 3) / Round)).Place, depth);
            for (var n = 0; n < Turns; n++)
            {
                var q = Nearest(b, p);
                var back = Nearest(a, q);
                least = Math.Min(least, back.DistanceTo(q));
                if (back.DistanceTo(p) < 1e-10)
                {
                    break;
                }

                p = back;
            }
        }

        return least;
    }

    // The nearest place of a prism, inside counted.
    private static Point3 Nearest((View View, Outline Outline, (double From, double To) Ends) of, Point3 p)
    {
        var seen = FeatureView.InView(of.View, p);
        var plan = new Point2(seen.X, seen.Y);
        return FeatureView.Place(of.View, of.Outline.Contains(plan) ? plan : of.Outline.Nearest(plan).Place, Math.Clamp(seen.Z, of.Ends.From, of.Ends.To));
    }

    private static double Within(DrawnFeature cut, DrawnFeature add)
    {
        var view = cut.Feature.View;
        var (low, high) = FeatureView.Ends(view, add.Solid.Bounds);
        double from = Math.Max(cut.From, low), to = Math.Min(cut.To, high);
        var least = double.PositiveInfinity;
        foreach (var outline in cut.Outlines.Where(_ => to > from))
        {
            var middle = new Point2((outline.Min.X + outline.Max.X) / 2, (outline.Min.Y + outline.Max.Y) / 2);
            var half = new Point2((outline.Max.X - outline.Min.X) / 2, (outline.Max.Y - outline.Min.Y) / 2);
            foreach (var (way, reach) in new[] { (new Point2(1, 0), half.X), (new Point2(-1, 0), half.X), (new Point2(0, 1), half.Y), (new Point2(0, -1), half.Y) })
            {
                if (Metal(add.Solid, new Line3(FeatureView.Place(view, middle, (from + to) / 2), FeatureView.Direction(view, way, 0))) is { } ends)
                {
                    least = Math.Min(least, ends - reach);
                }
            }

            foreach (var (end, sign) in new[] { (cut.From, -1), (cut.To, 1) })
            {
                if (Metal(add.Solid, new Line3(FeatureView.Place(view, middle, end), FeatureView.Direction(view, default, sign))) is { } under)
                {
                    least = Math.Min(least, under);
                }
            }
        }

        return least;
    }

    // How far metal goes on from a line's beginning; null where it begins in none.
    private static double? Metal(ISolid solid, Line3 line)
    {
        foreach (var span in solid.Sound(line))
        {
            if (span.From <= 1e-9 && span.To > 1e-9)
            {
                return span.To;
            }
        }

        return null;
    }
}
