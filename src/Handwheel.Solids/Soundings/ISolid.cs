using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Soundings;

/// <summary>A closed solid that answers soundings exactly. Right-handed frame, millimetres; immutable.</summary>
public interface ISolid
{
    /// <summary>A box that holds the solid, not always the smallest.</summary>
    Box3 Bounds { get; }

    /// <summary>Number of faces; the faces of <see cref="SurfaceId"/> run from 0 to one less.</summary>
    int SurfaceCount { get; }

    /// <summary>Where a line lies in the solid: exact intervals, ends within 1e-9 mm or, where the line grazes the surface, within 1e-9 mm of the surface.</summary>
    /// <param name="line">The line; its direction of unit length.</param>
    Spans Sound(in Line3 line);

    /// <summary>Whether a place lies in the solid, surface counted.</summary>
    /// <param name="point">The place.</param>
    bool Contains(Point3 point);

    /// <summary>The unit normal, pointing out of the metal, at a place of a surface.</summary>
    /// <param name="surface">A surface that a sounding of this solid named.</param>
    /// <param name="point">A place on it.</param>
    Vector3 NormalAt(SurfaceId surface, Point3 point);
}
