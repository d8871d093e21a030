using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Questions;

/// <summary>One connected piece of metal as the rays see it.</summary>
/// <param name="Inside">A place in its metal, the middle of its longest interval along X.</param>
/// <param name="Box">A box round its intervals along X.</param>
/// <param name="Volume">Estimate, mm3.</param>
public sealed record Piece(Point3 Inside, Box3 Box, double Volume);
