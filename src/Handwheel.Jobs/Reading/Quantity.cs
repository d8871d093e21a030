namespace Handwheel.Jobs.Reading;

/// <summary>A worked-out number with its dimension; angles in degrees, lengths in millimetres.</summary>
/// <param name="Value">Its value.</param>
/// <param name="Dimension">What it is.</param>
internal readonly record struct Quantity(Exact Value, Dimension Dimension);
