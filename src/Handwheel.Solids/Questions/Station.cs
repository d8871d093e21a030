using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Questions;

/// <summary>How a cutter is engaged at one place of its path.</summary>
/// <param name="Share">Where on the path, 0 at the start, 1 at the end.</param>
/// <param name="Place">Its lowest cutting point there, in the frame of the cut.</param>
/// <param name="Depth">Greatest height of metal before the cutter along its axis, mm.</param>
/// <param name="Width">Width of metal before the cutter across the feed, mm.</param>
/// <param name="Arc">Angle of the front half of the cutter that meets metal, radians, 0 to half a turn.</param>
/// <param name="Left">Share of the quarter on the left of the feed that meets metal, 0 to 1.</param>
/// <param name="Right">Share of the quarter on the right of the feed that meets metal, 0 to 1.</param>
/// <param name="Below">Share of the end face that has metal under it, 0 to 1.</param>
public readonly record struct Station(
    double Share, Point3 Place, double Depth, double Width, double Arc, double Left, double Right, double Below);
