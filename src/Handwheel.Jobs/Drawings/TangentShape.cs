namespace Handwheel.Jobs.Drawings;

/// <summary>The outline that runs round two rounds and straight between them, tangent to both. Least and most are rebuilt from the rounds, not offset.</summary>
/// <param name="First">The first round's name.</param>
/// <param name="Second">The second round's name.</param>
public sealed record TangentShape(string First, string Second) : FeatureShape;
