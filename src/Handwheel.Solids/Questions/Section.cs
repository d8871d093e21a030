using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>The thinnest section of metal found: an exact distance between two surfaces.</summary>
/// <param name="From">Its one end.</param>
/// <param name="To">Its other end.</param>
/// <param name="FromSurface">The surface at the one end.</param>
/// <param name="ToSurface">The surface at the other end.</param>
public sealed record Section(Point3 From, Point3 To, SurfaceId FromSurface, SurfaceId ToSurface)
{
    /// <summary>Its thickness, mm.</summary>
    public double Thickness => From.DistanceTo(To);
}
