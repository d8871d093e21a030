using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Questions;

/// <summary>Whether a moved cutter meets something it should not.</summary>
/// <param name="Verdict">Clear, strikes, or undecided.</param>
/// <param name="Clearance">Certified least distance, mm; 0 unless clear.</param>
/// <param name="Depth">How deep a place of the obstacle lies inside the mover, mm, at least; 0 unless it strikes.</param>
/// <param name="Place">The place of the obstacle that is nearest or deepest, of those looked at.</param>
public readonly record struct StrikeResult(StrikeVerdict Verdict, double Clearance, double Depth, Point3 Place);
