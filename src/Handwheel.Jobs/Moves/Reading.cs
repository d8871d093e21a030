namespace Handwheel.Jobs.Moves;

/// <summary>Where the axes stand, as readings of a holding: X, Y, Z millimetres, T degrees of theta (counterclockwise from above, not wrapped, 0 at the holding&#39;s zero); rounded, before any printed flip.</summary>
/// <param name="X">Long travel.</param>
/// <param name="Y">Cross travel.</param>
/// <param name="Z">Depth; the cutter&#39;s lowest cutting point.</param>
/// <param name="T">Theta, degrees.</param>
public readonly record struct Reading(double X, double Y, double Z, double T);
