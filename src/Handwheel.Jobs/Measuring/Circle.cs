using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Measuring;

/// <summary>A circle through measured places, by least squares of the algebraic distance (I. Kasa, IEEE Trans. Instrum. Meas. 25, 1976): exact where the places lie on one.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Its radius, millimetres.</param>
internal readonly record struct Circle(Point2 Centre, double Radius)
{
    /// <summary>Fits a circle.</summary>
    /// <param name="places">Three places or more, not on one line.</param>
    /// <returns>The circle; null where there are too few or they lie on a line.</returns>
    public static Circle? Through(IReadOnlyList<Point2> places)
    {
        if (places.Count < 3)
        {
            return null;
        }

        double mx = places.Average(p => p.X), my = places.Average(p => p.Y);
        double uu = 0, uv = 0, vv = 0, uw = 0, vw = 0, w = 0;
        foreach (var p in places)
        {
            double u = p.X - mx, v = p.Y - my, q = (u * u) + (v * v);
            uu += u * u;
            uv += u * v;
            vv += v * v;
            uw += u * q;
            vw += v * q;
            w += q;
        }

        var det = (uu * vv) - (uv * uv);
        if (det <= 1e-9 * uu * vv || det <= 0)
        {
            return null;
        }

        double cx = ((uw * vv) - (vw * uv)) / (2 * det), cy = ((vw * uu) - (uw * uv)) / (2 * det);
        return new Circle(new Point2(mx + cx, my + cy), Math.Sqrt((cx * cx) + (cy * cy) + (w / places.Count)));
    }
}
