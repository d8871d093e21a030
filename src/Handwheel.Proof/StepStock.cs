using Handwheel.Solids.Geometry;

namespace Handwheel.Proof;

/// <summary>The stock before and after one step. Part frame.</summary>
/// <param name="Step">The step&#39;s id.</param>
/// <param name="TopBefore">Highest metal along holding Z at a holding plan place (theta 0, reading), before the step; null: none.</param>
/// <param name="TopAfter">The same after it.</param>
public sealed record StepStock(string Step, Func<Point2, double?> TopBefore, Func<Point2, double?> TopAfter);
