using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Questions;

/// <summary>The deepest place of what one solid has and another has not.</summary>
/// <param name="Deepest">The deepest place.</param>
/// <param name="Volume">Estimate of the whole excess, mm3.</param>
/// <param name="Box">A box round all places found on the rays.</param>
/// <param name="Guarantee">Diameter of the disc that no excess casts a shadow of without being found, mm.</param>
public sealed record Excess(DeepPlace Deepest, double Volume, Box3 Box, double Guarantee)
{
    /// <summary>The place on the reference's surface, where the depth is measured from.</summary>
    public Point3 Place => Deepest.Place;

    /// <summary>Greatest depth, mm.</summary>
    public double Depth => Deepest.Depth;

    /// <summary>The unit direction of the depth.</summary>
    public Vector3 Direction => Deepest.Direction;

    /// <summary>The workpiece's surface there.</summary>
    public SurfaceId Surface => Deepest.Surface;

    /// <summary>Index of the cut at the deepest place; -1 for the bare stock.</summary>
    public int Cut => Surface.Cut;
}
