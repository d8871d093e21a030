using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Shapes;

/// <summary>An upright cone cut level at both ends. Faces: 0 side, 1 bottom, 2 top.</summary>
/// <param name="centre">Its axis seen from above.</param>
/// <param name="radius0">Radius at the lower end, mm; 0 for a point.</param>
/// <param name="radius1">Radius at the upper end, mm; 0 for a point.</param>
/// <param name="z0">Lower height, mm.</param>
/// <param name="z1">Upper height, mm.</param>
/// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
public sealed class Frustum(Point2 centre, double radius0, double radius1, double z0, double z1)
    : RevolvedSolid([ProfilePiece.Straight(z0, radius0, z1, radius1)], centre.At(0));
