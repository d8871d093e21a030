using Handwheel.Quantities;

namespace Handwheel.Jobs.Drawings;

/// <summary>A slot with round ends about its centre.</summary>
/// <param name="Wide">Its width, the diameter of its ends.</param>
/// <param name="Long">Its whole length, over the ends.</param>
/// <param name="Turn">The direction of its length from plan X, radians.</param>
public sealed record SlotShape(Limits Wide, Limits Long, double Turn) : FeatureShape;
