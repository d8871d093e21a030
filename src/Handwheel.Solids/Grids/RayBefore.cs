using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Grids;

/// <summary>A ray that the last cut changed, as it was before.</summary>
/// <param name="Axis">The axis it runs along: 0 X, 1 Y, 2 Z.</param>
/// <param name="Ray">Its index.</param>
/// <param name="Before">Its metal before the cut; surfaces are not named.</param>
public readonly record struct RayBefore(int Axis, int Ray, Spans Before);
