using Handwheel.Quantities;

namespace Handwheel.Jobs.Drawings;

/// <summary>A cone or taper: a round whose diameter runs straight from one end to the other.</summary>
/// <param name="AcrossLow">Its diameter at the lower end.</param>
/// <param name="AcrossHigh">Its diameter at the upper end.</param>
public sealed record ConeShape(Limits AcrossLow, Limits AcrossHigh) : FeatureShape;
