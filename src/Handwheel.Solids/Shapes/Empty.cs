using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>The solid with no metal.</summary>
public sealed class Empty : Solid
{
    private Empty()
    {
    }

    /// <summary>The only one.</summary>
    public static Empty Instance { get; } = new();

    /// <inheritdoc/>
    public override Box3 Bounds => Box3.Empty;

    /// <inheritdoc/>
    public override int SurfaceCount => 0;

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point) => default;

    internal override double Distance(Point3 point) => double.PositiveInfinity;

    internal override double LeastIn(in Box3 cell) => double.PositiveInfinity;

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        // No metal, no interval.
    }
}
