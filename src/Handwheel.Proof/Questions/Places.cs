using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>Places of findings, on the part and in readings of the holding.</summary>
internal static class Places
{
    /// <summary>The feature nearest to a place.</summary>
    /// <param name="part">The part.</param>
    /// <param name="at">The place, part frame.</param>
    /// <param name="cutsToo">Whether cuts count, or only what is added.</param>
    /// <returns>Its name; <c>part</c> where there is none.</returns>
    public static string Nearest(DrawnPart part, Point3 at, bool cutsToo)
    {
        string? best = null;
        var least = double.PositiveInfinity;
        foreach (var feature in part.Features.Where(f => cutsToo || !f.Feature.IsCut))
        {
            var inView = FeatureView.InView(feature.Feature.View, at);
            var plan = new Point2(inView.X, inView.Y);
            var beside = feature.Outlines.Min(o => o.Contains(plan) ? 0 : o.DistanceTo(plan));
            var past = Math.Max(0, Math.Max(Math.Min(feature.From, feature.To) - inView.Z, inView.Z - Math.Max(feature.From, feature.To)));
            var off = Math.Sqrt((beside * beside) + (past * past));
            if (off < least - 1e-9)
            {
                (best, least) = (feature.Feature.Name, off);
            }
        }

        return best ?? "part";
    }

    /// <summary>A place of the part met by a stroke.</summary>
    /// <param name="stroke">The stroke.</param>
    /// <param name="at">The place, part frame.</param>
    /// <returns>The place of a finding, with the readings there as the axes then stood.</returns>
    public static FindingPlace Of(Stroke stroke, Point3 at)
    {
        if (stroke.Stage.Frame is not { } frame)
        {
            return stroke.Place with { At = at };
        }

        var theta = stroke.Legs.Count > 0 ? stroke.Legs[^1].To.T : 0;
        return stroke.Place with { At = at, AtReading = frame.PartAt(theta).Apply(at) };
    }
}
