using Handwheel.Proof.Following;
using Handwheel.Solids.Geometry;

namespace Handwheel.Proof.Questions;

/// <summary>Thin metal left standing beside a cut. Millimetres, part frame.</summary>
/// <param name="Thick">Its thickness at its thinnest, or on the whole.</param>
/// <param name="At">Its middle there.</param>
/// <param name="Leg">The piece of the move beside which it stands.</param>
/// <param name="Across">Unit direction across it.</param>
/// <param name="Long">How far along the cut it is thin.</param>
internal sealed record ThinMetal(double Thick, Point3 At, Leg Leg, Vector3 Across, double Long)
{
    /// <summary>Its least thickness, where <see cref="Thick"/> is that on the whole.</summary>
    public double Least { get; init; } = Thick;
}
