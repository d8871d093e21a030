namespace Handwheel.Trade.Asking;

/// <summary>A number with its unit.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">mm, in, N, lbf, deg, ...; empty for a plain number.</param>
public readonly record struct Measure(double Value, string Unit);
