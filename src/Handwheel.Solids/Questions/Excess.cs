using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>The deepest place of what one solid has and another has not.</summary>
/// <param name="Place">The place on the reference's surface, where the depth is measured from.</param>
/// <param name="Depth">Greatest depth along the reference's normal, mm, refined off the rays.</param>
/// <param name="Direction">The unit direction of the depth: into the metal for a gouge, out of it for leftover.</param>
/// <param name="Volume">Estimate of the whole excess, mm3.</param>
/// <param name="Surface">The workpiece's surface at the bottom of the gouge, or on top of the leftover.</param>
/// <param name="Box">A box round all places found on the rays.</param>
/// <param name="Guarantee">Diameter of the disc that no excess casts a shadow of without being found, mm.</param>
public sealed record Excess(Point3 Place, double Depth, Vector3 Direction, double Volume, SurfaceId Surface, Box3 Box, double Guarantee)
{
    /// <summary>Index of the cut at the deepest place; -1 for the bare stock.</summary>
    public int Cut => Surface.Cut;
}
