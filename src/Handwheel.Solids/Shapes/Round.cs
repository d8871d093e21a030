using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Shapes;

/// <summary>An upright round: a cylinder. Faces: 0 side, 1 bottom, 2 top.</summary>
/// <param name="centre">Its axis seen from above.</param>
/// <param name="radius">Radius, mm.</param>
/// <param name="z0">Lower height, mm.</param>
/// <param name="z1">Upper height, mm.</param>
/// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
public sealed class Round(Point2 centre, double radius, double z0, double z1)
    : RevolvedSolid([ProfilePiece.Straight(z0, radius, z1, radius)], centre.At(0))
{
    /// <summary>Its axis seen from above.</summary>
    public Point2 Centre { get; } = centre;

    /// <summary>Radius, mm.</summary>
    public double Radius { get; } = radius;

    /// <summary>Lower height, mm.</summary>
    public double Z0 { get; } = z0;

    /// <summary>Upper height, mm.</summary>
    public double Z1 { get; } = z1;
}
