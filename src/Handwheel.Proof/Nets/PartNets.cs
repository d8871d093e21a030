using Handwheel.Solids.Grids;

namespace Handwheel.Proof.Nets;

/// <summary>The grids of one proof, all on the same rays.</summary>
/// <param name="Bare">The bare stock.</param>
/// <param name="Last">The metal in the end.</param>
/// <param name="Least">Least metal.</param>
/// <param name="Most">Most metal.</param>
internal sealed record PartNets(RayGrid Bare, RayGrid Last, RayGrid Least, RayGrid Most);
