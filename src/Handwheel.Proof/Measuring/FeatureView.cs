using Handwheel.Jobs.Drawings;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Measuring;

/// <summary>Places and directions of a feature&#39;s view (plan u, v and depth w) in the part frame: top (X, Y; Z), front (X, Z; Y), right (Y, Z; X).</summary>
internal static class FeatureView
{
    /// <summary>A place of the view in the part frame.</summary>
    /// <param name="view">The view.</param>
    /// <param name="plan">Plan place.</param>
    /// <param name="depth">Place along the view&#39;s axis.</param>
    /// <returns>The part-frame place.</returns>
    public static Point3 Place(View view, Point2 plan, double depth) => view switch
    {
        View.Front => new Point3(plan.X, depth, plan.Y),
        View.Right => new Point3(depth, plan.X, plan.Y),
        _ => new Point3(plan.X, plan.Y, depth),
    };

    /// <summary>A direction of the view in the part frame.</summary>
    /// <param name="view">The view.</param>
    /// <param name="plan">Plan direction.</param>
    /// <param name="depth">Along the view&#39;s axis.</param>
    /// <returns>The part-frame direction.</returns>
    public static Vector3 Direction(View view, Point2 plan, double depth)
    {
        var p = Place(view, plan, depth);
        return new Vector3(p.X, p.Y, p.Z);
    }

    /// <summary>A part-frame place in the view.</summary>
    /// <param name="view">The view.</param>
    /// <param name="p">The place.</param>
    /// <returns>Plan u, v and depth w.</returns>
    public static Point3 InView(View view, Point3 p) => view switch
    {
        View.Front => new Point3(p.X, p.Z, p.Y),
        View.Right => new Point3(p.Y, p.Z, p.X),
        _ => p,
    };
}
