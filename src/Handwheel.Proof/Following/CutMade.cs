using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Following;

/// <summary>One volume taken away.</summary>
/// <param name="Solid">The volume, part frame; it counts as open.</param>
/// <param name="Stroke">The stroke that took it.</param>
internal sealed record CutMade(ISolid Solid, int Stroke);
