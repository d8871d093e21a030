namespace Handwheel.Solids.Geometry;

/// <summary>A point, millimetres.</summary>
/// <param name="X">X.</param>
/// <param name="Y">Y.</param>
public readonly record struct Point2(double X, double Y);
