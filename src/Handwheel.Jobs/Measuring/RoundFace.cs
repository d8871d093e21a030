using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Measuring;

/// <summary>One round side of a feature&#39;s outline, in plan: which part of the circle is a side the drawn part itself decides.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Its radius, millimetres.</param>
/// <param name="Inner">Whether the outline lies outside it (a ring&#39;s bore, an inside fillet).</param>
internal readonly record struct RoundFace(Point2 Centre, double Radius, bool Inner);
