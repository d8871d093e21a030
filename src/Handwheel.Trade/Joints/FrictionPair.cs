namespace Handwheel.Trade.Joints;

/// <summary>Coefficient of static friction of a pair of faces.</summary>
/// <param name="Pair">The faces and how they are.</param>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
/// <param name="Basis">Where from.</param>
public sealed record FrictionPair(string Pair, double Low, double High, Basis Basis);
