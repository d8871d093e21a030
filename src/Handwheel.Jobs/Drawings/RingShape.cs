using Handwheel.Quantities;

namespace Handwheel.Jobs.Drawings;

/// <summary>A ring.</summary>
/// <param name="Across">Its outer diameter.</param>
/// <param name="Bore">Its inner diameter.</param>
public sealed record RingShape(Limits Across, Limits Bore) : FeatureShape;
