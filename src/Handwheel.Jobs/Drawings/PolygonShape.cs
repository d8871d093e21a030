using Handwheel.Quantities;

namespace Handwheel.Jobs.Drawings;

/// <summary>A regular polygon; a square has four sides.</summary>
/// <param name="Sides">How many sides, 3 or more.</param>
/// <param name="AcrossFlats">Across flats (twice the distance from the centre to a side).</param>
/// <param name="Turn">The direction of one side&#39;s normal from plan X, radians.</param>
public sealed record PolygonShape(int Sides, Limits AcrossFlats, double Turn) : FeatureShape;
