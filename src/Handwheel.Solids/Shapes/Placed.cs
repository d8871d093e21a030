using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>A solid put elsewhere. Faces are the solid's own.</summary>
public sealed class Placed : Solid
{
    private readonly Solid solid;
    private readonly Pose back;

    /// <summary>A solid put elsewhere.</summary>
    /// <param name="solid">The solid in its own frame.</param>
    /// <param name="pose">From its own frame to the new one.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public Placed(ISolid solid, Pose pose)
    {
        ArgumentNullException.ThrowIfNull(pose);
        this.solid = From(solid);
        Pose = pose;
        back = pose.Inverse();
        Bounds = this.solid.Bounds.Placed(pose);
    }

    /// <summary>From the solid's own frame to the new one.</summary>
    public Pose Pose { get; }

    /// <inheritdoc/>
    public override Box3 Bounds { get; }

    /// <inheritdoc/>
    public override int SurfaceCount => solid.SurfaceCount;

    /// <inheritdoc/>
    public override bool Contains(Point3 point) => solid.Contains(back.Apply(point));

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point) => Pose.ApplyDirection(solid.NormalAt(surface, back.Apply(point)));

    internal override double Distance(Point3 point) => solid.Distance(back.Apply(point));

    internal override double LeastIn(in Box3 cell) => Math.Max(solid.LeastIn(cell.Placed(back)), base.LeastIn(cell));

    internal override void Sound(in Line3 line, bool closed, SpanList into) => solid.Sound(line.Placed(back), closed, into);
}
