namespace Handwheel.Jobs.Moves;

/// <summary>The rotary as set up: its vertical axis stands at (X, Y) in the holding frame (an indexer&#39;s lies along X through (Y, Z)).</summary>
/// <param name="X">Its axis, X.</param>
/// <param name="Y">Its axis, Y.</param>
/// <param name="Z">An indexer&#39;s axis, Z; the rotary&#39;s table top else.</param>
/// <param name="Lies">Whether the axis lies along X (indexer).</param>
/// <param name="Sense">The shop&#39;s s: printed reading = T0 + s * theta.</param>
/// <param name="ZeroReading">T0, degrees: printed reading at theta 0.</param>
/// <param name="DialStep">Degrees.</param>
public sealed record RotaryFacts(double X, double Y, double Z, bool Lies, int Sense, double ZeroReading, double DialStep);
