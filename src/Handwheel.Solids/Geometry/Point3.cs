namespace Handwheel.Solids.Geometry;

/// <summary>A point, millimetres.</summary>
/// <param name="X">X.</param>
/// <param name="Y">Y.</param>
/// <param name="Z">Z.</param>
public readonly record struct Point3(double X, double Y, double Z);
