using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Measuring;

/// <summary>
/// Sizes of a regular polygon that no two opposite sides give: across flats of an odd one (twice from its middle to a side), and across corners. The middle is
/// that of all its sides at the level, by least squares, so a polygon that only stands elsewhere keeps its size.
/// </summary>
internal static class PolygonSizes
{
    private static readonly double[] Shares = [-0.8, -0.4, 0, 0.4, 0.8];

    /// <summary>Across flats where no side has one opposite.</summary>
    /// <param name="one">The polygon.</param>
    /// <param name="tally">Takes twice the distance of every place found from the middle.</param>
    public static void OddFlats(FeatureProbe one, Tally tally)
    {
        var planes = one.Faces.Planes;
        foreach (var level in one.Levels)
        {
            if (Found(one, level, tally) is not { } found)
            {
                continue;
            }

            var middle = Middle(planes, found);
            for (var i = 0; i < planes.Count; i++)
            {
                foreach (var offset in found[i])
                {
                    tally.Add(2 * (planes[i].Middle.Dot(planes[i].Normal) + offset - middle.Dot(planes[i].Normal)));
                }
            }
        }
    }

    /// <summary>Across corners: between opposite corners, or twice from the middle to one where none is opposite. A corner is where the lines of its two sides meet.</summary>
    /// <param name="one">The polygon.</param>
    /// <param name="tally">Takes the values.</param>
    public static void Corners(FeatureProbe one, Tally tally)
    {
        var planes = one.Faces.Planes;
        foreach (var level in one.Levels)
        {
            if (Found(one, level, tally) is not { } found)
            {
                continue;
            }

            var corners = new List<Point2>();
            for (var i = 0; i < planes.Count; i++)
            {
                var j = (i + 1) % planes.Count;
                corners.Add(Meet(planes[i], found[i].Average(), planes[j], found[j].Average()));
            }

            var middle = Middle(planes, found);
            for (var i = 0; i < corners.Count; i++)
            {
                tally.Add(corners.Count % 2 == 0 ? (corners[i] - corners[(i + (corners.Count / 2)) % corners.Count]).Length : 2 * (corners[i] - middle).Length);
            }
        }
    }

    // How far each side stands out of where it is aimed, at places along it; null where a side is not found at all.
    private static List<List<double>>? Found(FeatureProbe one, double level, Tally tally)
    {
        var all = new List<List<double>>();
        foreach (var plane in one.Faces.Planes)
        {
            var found = new List<double>();
            foreach (var share in Shares)
            {
                if (one.Side(plane, level, share * plane.Half) is { } probed && tally.Sees(probed))
                {
                    found.Add(probed.Offset!.Value);
                }
            }

            if (found.Count == 0)
            {
                return null;
            }

            all.Add(found);
        }

        return all.Count < 3 ? null : all;
    }

    // The point as far from every side as its mean: of a regular polygon, two Nths of the sum of each distance along its normal.
    private static Point2 Middle(IReadOnlyList<PlaneFace> planes, List<List<double>> found)
    {
        var middle = default(Point2);
        for (var i = 0; i < planes.Count; i++)
        {
            middle += planes[i].Normal * (2.0 / planes.Count * (planes[i].Middle.Dot(planes[i].Normal) + found[i].Average()));
        }

        return middle;
    }

    private static Point2 Meet(PlaneFace a, double outA, PlaneFace b, double outB)
    {
        double da = a.Middle.Dot(a.Normal) + outA, db = b.Middle.Dot(b.Normal) + outB;
        var det = (a.Normal.X * b.Normal.Y) - (a.Normal.Y * b.Normal.X);
        return new Point2(((da * b.Normal.Y) - (db * a.Normal.Y)) / det, ((db * a.Normal.X) - (da * b.Normal.X)) / det);
    }
}
