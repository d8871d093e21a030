using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Drawings;

/// <summary>One corner of an outline and how the outline leaves it.</summary>
/// <param name="At">The corner, plan.</param>
/// <param name="Fillet">Radius the corner is rounded with, tangent to both neighbours, millimetres; 0 sharp.</param>
/// <param name="Chamfer">Leg of the chamfer, millimetres; 0 none.</param>
/// <param name="ArcCentre">Centre of the arc from here to the next corner; null for a straight line.</param>
/// <param name="ArcCounterclockwise">The way round the arc goes.</param>
public readonly record struct OutlineCorner(Point2 At, double Fillet, double Chamfer, Point2? ArcCentre, bool ArcCounterclockwise);
