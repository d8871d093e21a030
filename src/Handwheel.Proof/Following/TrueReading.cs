namespace Handwheel.Proof.Following;

/// <summary>Where the axes truly stand: holding frame as planned, millimetres; T degrees, counterclockwise from above.</summary>
/// <param name="X">Long travel.</param>
/// <param name="Y">Cross travel.</param>
/// <param name="Z">Depth: the cutter&#39;s lowest cutting point.</param>
/// <param name="T">Theta, degrees.</param>
internal readonly record struct TrueReading(double X, double Y, double Z, double T);
