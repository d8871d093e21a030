namespace Handwheel.Jobs.Drawings;

/// <summary>A closed outline of lines and arcs, counterclockwise; corners may be filleted or chamfered.</summary>
/// <param name="Corners">Its corners and arcs in order.</param>
public sealed record OutlineShape(IReadOnlyList<OutlineCorner> Corners) : FeatureShape;
