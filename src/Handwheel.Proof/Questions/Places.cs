using Handwheel.Jobs.Drawings;
using Handwheel.Jobs.Findings;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>Places of findings, on the part and in readings of the holding.</summary>
internal static class Places
{
    // Within limits as wide as this of a feature a place still counts as in it, millimetres.
    private const double Touching = 0.05;

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
            var off = Off(feature, at);
            if (off < least - 1e-9)
            {
                (best, least) = (feature.Feature.Name, off);
            }
        }

        return best ?? "part";
    }

    /// <summary>The feature that metal left outside the part belongs to: where it stands in what was added, the last cut that takes it away there; else what was added nearest to it.</summary>
    /// <param name="part">The part.</param>
    /// <param name="at">The place, part frame.</param>
    /// <returns>Its name; <c>part</c> where there is none.</returns>
    public static string Left(DrawnPart part, Point3 at) =>
        part.Features.Where(f => !f.Feature.IsCut).Any(f => Off(f, at) < Touching) && part.Features.LastOrDefault(f => f.Feature.IsCut && Off(f, at) < Touching) is { } cut
            ? cut.Feature.Name
            : Nearest(part, at, cutsToo: false);

    // Zero in a feature between its ends.
    private static double Off(DrawnFeature feature, Point3 at)
    {
        var inView = FeatureView.InView(feature.Feature.View, at);
        var plan = new Point2(inView.X, inView.Y);
        var beside = feature.Outlines.Min(o => o.Contains(plan) ? 0 : o.DistanceTo(plan));
        var past = Math.Max(0, Math.Max(Math.Min(feature.From, feature.To) - inView.Z, inView.Z - Math.Max(feature.From, feature.To)));
        return Math.Sqrt((beside * beside) + (past * past));
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
