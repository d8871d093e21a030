using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Drawings;

/// <summary>One place of a feature.</summary>
/// <param name="Centre">Its centre in plan, the feature's view.</param>
/// <param name="Turn">How far it is turned about its centre, radians, counterclockwise.</param>
/// <param name="Mirrored">Whether it is the mirror image (about its own plan Y axis before turning).</param>
public readonly record struct Place(Point2 Centre, double Turn, bool Mirrored);
