using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Drawings;

/// <summary>Places and directions of a feature&#39;s view (plan u, v and depth w) in the part frame: top (X, Y; Z), front (X, Z; Y), right (Y, Z; X).</summary>
public static class FeatureView
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

    /// <summary>The side in words.</summary>
    /// <param name="view">The view.</param>
    /// <param name="behind">Whether it is the far side of it.</param>
    /// <returns>Such as <c>front</c>, or <c>below</c>.</returns>
    public static string Said(View view, bool behind) => (view, behind) switch
    {
        (View.Front, false) => "front",
        (View.Front, true) => "back",
        (View.Right, false) => "right",
        (View.Right, true) => "left",
        (_, false) => "top",
        _ => "below",
    };

    /// <summary>The part's axis that the view looks along.</summary>
    /// <param name="view">The view.</param>
    /// <returns>0 X, 1 Y, 2 Z.</returns>
    public static int Axis(View view) => view switch
    {
        View.Front => 1,
        View.Right => 0,
        _ => 2,
    };

    /// <summary>How far a box of the part frame reaches along the view&#39;s axis.</summary>
    /// <param name="view">The view.</param>
    /// <param name="box">The box.</param>
    /// <returns>Least and greatest depth.</returns>
    public static (double Low, double High) Ends(View view, Box3 box) => (InView(view, box.Min).Z, InView(view, box.Max).Z);

    /// <summary>A box over a plan between two depths, in the part frame.</summary>
    /// <param name="view">The view.</param>
    /// <param name="low">Least plan place.</param>
    /// <param name="high">Greatest plan place.</param>
    /// <param name="depths">Least and greatest depth.</param>
    /// <returns>The box.</returns>
    public static Box3 Over(View view, Point2 low, Point2 high, (double Low, double High) depths) =>
        new(Place(view, low, depths.Low), Place(view, high, depths.High));
}
