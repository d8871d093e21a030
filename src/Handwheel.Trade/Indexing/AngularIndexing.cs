namespace Handwheel.Trade.Indexing;

/// <summary>Crank turns and spaces nearest to an angle, on one circle.</summary>
/// <param name="Turns">Whole turns of the crank.</param>
/// <param name="Spaces">Spaces beyond them.</param>
/// <param name="Circle">Hole circle.</param>
/// <param name="ErrorDeg">Angle reached minus angle wanted, degrees.</param>
public readonly record struct AngularIndexing(long Turns, int Spaces, int Circle, double ErrorDeg);
