using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

// A solid from outside the engine, used through its public questions.
internal sealed class ForeignSolid(ISolid solid) : Solid
{
    public override Box3 Bounds => solid.Bounds;

    public override int SurfaceCount => solid.SurfaceCount;

    public override bool Contains(Point3 point) => solid.Contains(point);

    public override Vector3 NormalAt(SurfaceId surface, Point3 point) => solid.NormalAt(surface, point);

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        foreach (var span in solid.Sound(line))
        {
            into.Add(span);
        }
    }
}
