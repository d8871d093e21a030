namespace Handwheel.Jobs.Moves;

/// <summary>A place, millimetres, as it stands in a moves file.</summary>
/// <param name="X">X.</param>
/// <param name="Y">Y.</param>
/// <param name="Z">Z.</param>
public readonly record struct Place3(double X, double Y, double Z);
