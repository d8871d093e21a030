namespace Handwheel.Jobs.Moves;

/// <summary>The axes of a holding as set up.</summary>
/// <param name="X">Long travel.</param>
/// <param name="Y">Cross travel.</param>
/// <param name="Z">Depth.</param>
/// <param name="T">Rotary or indexer (degrees).</param>
public sealed record AxesFacts(AxisFacts X, AxisFacts Y, AxisFacts Z, AxisFacts T);
