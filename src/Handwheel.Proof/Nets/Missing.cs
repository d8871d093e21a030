using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Nets;

/// <summary>One interval of a ray that one solid has and another has not.</summary>
/// <param name="Axis">The axis of its ray.</param>
/// <param name="Ray">The ray&#39;s index.</param>
/// <param name="Line">The ray.</param>
/// <param name="Span">The interval; an end whose owner is not 0 lies on a cut of the metal compared.</param>
internal readonly record struct Missing(int Axis, int Ray, Line3 Line, Span Span)
{
    /// <summary>Its middle.</summary>
    public Point3 Middle => Line.At(Span.Middle);

    /// <summary>Its two ends.</summary>
    public (Point3 From, Point3 To) Ends => (Line.At(Span.From), Line.At(Span.To));
}
