using Handwheel.Solids.Geometry;
using Handwheel.Solids.Shapes;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Cuts;

/// <summary>The solid a broach removes: its section pushed along Z, turned to an angle. Exact, immutable.</summary>
public sealed class BroachCut : Solid
{
    private readonly Placed solid;

    /// <summary>A broach pushed through a range of heights.</summary>
    /// <param name="section">Section of the broach about its own axis.</param>
    /// <param name="z0">Lower end of the push, mm.</param>
    /// <param name="z1">Upper end of the push, mm.</param>
    /// <param name="angle">Turn of the section about its axis, radians, counterclockwise from above.</param>
    /// <param name="pose">From the broach's frame to the part's; the identity when null.</param>
    /// <exception cref="ArgumentNullException"><paramref name="section"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The heights are out of order.</exception>
    public BroachCut(Outline section, double z0, double z1, double angle = 0, Pose? pose = null)
    {
        Section = section;
        Angle = angle;
        solid = new Placed(new Prism(section, z0, z1), Pose.TurnAboutZ(angle).Then(pose ?? Pose.Identity));
    }

    /// <summary>Section of the broach about its own axis.</summary>
    public Outline Section { get; }

    /// <summary>Turn of the section, radians.</summary>
    public double Angle { get; }

    /// <inheritdoc/>
    public override Box3 Bounds => solid.Bounds;

    /// <inheritdoc/>
    public override int SurfaceCount => solid.SurfaceCount;

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point) => solid.NormalAt(surface, point);

    internal override double Distance(Point3 point) => solid.Distance(point);

    internal override double LeastIn(in Box3 cell) => solid.LeastIn(cell);

    internal override void Sound(in Line3 line, bool closed, SpanList into) => solid.Sound(line, closed, into);
}
