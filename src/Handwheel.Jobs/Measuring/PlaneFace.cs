using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Measuring;

/// <summary>One straight side of a feature&#39;s outline, in the feature&#39;s own plan at one of its places.</summary>
/// <param name="Middle">Its middle.</param>
/// <param name="Normal">Unit, out of the outline.</param>
/// <param name="Half">Half its length, millimetres.</param>
internal readonly record struct PlaneFace(Point2 Middle, Point2 Normal, double Half);
