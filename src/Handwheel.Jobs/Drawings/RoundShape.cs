using Handwheel.Quantities;

namespace Handwheel.Jobs.Drawings;

/// <summary>A circle.</summary>
/// <param name="Across">Its diameter.</param>
public sealed record RoundShape(Limits Across) : FeatureShape;
