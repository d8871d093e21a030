using Handwheel.Quantities;

namespace Handwheel.Jobs.Drawings;

/// <summary>A rectangle about its centre.</summary>
/// <param name="Wide">Along plan X before turning.</param>
/// <param name="Deep">Along plan Y before turning.</param>
/// <param name="Turn">How far it is turned, radians, counterclockwise.</param>
public sealed record BlockShape(Limits Wide, Limits Deep, double Turn) : FeatureShape
{
    /// <summary>Radius of its four corners in plan, millimetres; 0 sharp.</summary>
    public double CornerRadius { get; init; }
}
