using Handwheel.Solids.Soundings;

namespace Handwheel.Jobs.Measuring;

/// <summary>What a probe at one place of a face found.</summary>
/// <param name="Offset">How far out of the feature&#39;s outline the face stands from where it is aimed, millimetres; null where no face stands near.</param>
/// <param name="Surface">The surface met.</param>
internal readonly record struct Probed(double? Offset, SurfaceId Surface);
