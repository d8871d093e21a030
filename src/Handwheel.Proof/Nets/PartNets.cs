namespace Handwheel.Proof.Nets;

/// <summary>The nets of one proof, all on one lattice.</summary>
/// <param name="Bare">The bare stock.</param>
/// <param name="Last">The metal in the end.</param>
/// <param name="Least">Least metal.</param>
/// <param name="Most">Most metal.</param>
/// <param name="Aimed">The part as aimed.</param>
internal sealed record PartNets(RayNet Bare, RayNet Last, RayNet Least, RayNet Most, RayNet Aimed);
