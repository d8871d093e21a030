using Handwheel.Jobs.Findings;
using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>Places of findings, on the part and in readings of the holding.</summary>
internal static class Places
{
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
