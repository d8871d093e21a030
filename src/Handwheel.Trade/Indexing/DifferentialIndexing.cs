namespace Handwheel.Trade.Indexing;

/// <summary>A division through change gears from the spindle to the plate.</summary>
/// <param name="NearDivisions">The division the crank is set for.</param>
/// <param name="Choice">Circle and spaces for it.</param>
/// <param name="Turns">Whole crank turns for it.</param>
/// <param name="Drivers">Gears on the spindle side.</param>
/// <param name="Driven">Gears on the plate (worm) side.</param>
/// <param name="PlateWithCrank">True where the plate must turn the same way as the crank (one idler in a simple train of the usual head).</param>
public sealed record DifferentialIndexing(
    int NearDivisions, CircleChoice Choice, long Turns, IReadOnlyList<int> Drivers, IReadOnlyList<int> Driven, bool PlateWithCrank);
