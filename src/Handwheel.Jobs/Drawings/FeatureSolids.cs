using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Drawings;

/// <summary>One place of a feature as a solid, part frame.</summary>
internal static class FeatureSolids
{
    // Height below which two ends count as one: such a feature is left a film thin rather than refused.
    private const double Thinnest = 1e-6;

    internal static ISolid Of(Feature feature, FeatureOutlines outlines, (Outline Outer, Outline? Inner, Point2 Centre) at, double from, double to)
    {
        to = Math.Max(to, from + Thinnest);
        var (low, high) = feature.View == View.Front ? (-to, -from) : (from, to);
        ISolid solid = feature.Shape is ConeShape
            ? Cone(outlines.ConeAt(feature, from, to), at.Centre, low, high, feature.View == View.Front)
            : Body(feature, outlines, at.Outer, low, high);
        if (at.Inner is { } bore)
        {
            solid = new Difference(solid, new Prism(bore, low - 1, high + 1));
        }

        if (feature is { PointAngle: { } angle, Through: false } && outlines.Across(feature) is { } across && angle < Math.PI)
        {
            // Down to the lower end in the view's own frame, whose Z points at the viewer; from its far side up to the higher.
            var deep = across / 2 / Math.Tan(angle / 2);
            solid = new Union(solid, feature.Behind ? new Frustum(at.Centre, across / 2, 0, high, high + deep) : new Frustum(at.Centre, 0, across / 2, low - deep, low));
        }

        return ToPart(feature.View) is { } pose ? new Placed(solid, pose) : solid;
    }

    private static ISolid Body(Feature feature, FeatureOutlines outlines, Outline outer, double low, double high)
    {
        var (above, below) = feature.Behind ? (feature.ChamferBelow, feature.ChamferAbove) : (feature.ChamferAbove, feature.ChamferBelow);
        return above > 0 || below > 0 ? ChamferedSolids.Of(outer, low, high, outlines.Leg(above), outlines.Leg(below)) : new Prism(outer, low, high);
    }

    // From the frame whose X, Y are the view's plan and whose Z points at the viewer.
    internal static Pose? ToPart(View view) => view switch
    {
        View.Front => Pose.TurnAboutX(Math.PI / 2),
        View.Right => Pose.TurnAboutY(Math.PI / 2).Then(Pose.TurnAboutX(Math.PI / 2)),
        _ => null,
    };

    private static ISolid Cone((double Low, double High) across, Point2 centre, double low, double high, bool flipped)
    {
        var (bottom, top) = flipped ? (across.High, across.Low) : across;
        return new Frustum(centre, bottom / 2, top / 2, low, high);
    }
}
