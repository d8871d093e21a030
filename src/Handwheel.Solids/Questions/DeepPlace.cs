using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>Where metal of one solid that another has not lies farthest from the other's surface.</summary>
/// <param name="Place">The place on the reference's surface, where the depth is measured from.</param>
/// <param name="Depth">Distance to the nearest place of the reference's surface, mm, refined off the rays.</param>
/// <param name="Direction">The unit direction of the depth: into the metal for a gouge, out of it for leftover.</param>
/// <param name="Surface">The workpiece's surface at the bottom of the gouge, or on top of the leftover.</param>
public sealed record DeepPlace(Point3 Place, double Depth, Vector3 Direction, SurfaceId Surface)
{
    /// <summary>The far end of the depth: the bottom of the gouge, the top of the leftover.</summary>
    public Point3 End => Place + (Direction * Depth);
}
