using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Shapes;

/// <summary>Everything on one side of a plane. Face 0 is the plane.</summary>
public sealed class HalfSpace : Solid
{
    private readonly Vector3 outward;

    /// <summary>The side of a plane that its normal points away from.</summary>
    /// <param name="place">A place on the plane.</param>
    /// <param name="outward">Normal of the plane, pointing out of the metal; not zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The normal is zero or not finite.</exception>
    public HalfSpace(Point3 place, Vector3 outward)
    {
        Demand.Finite(place);
        Demand.Positive(outward.Length, nameof(outward));
        Place = place;
        this.outward = outward.ToUnit();
    }

    /// <summary>A place on the plane.</summary>
    public Point3 Place { get; }

    /// <summary>Unit normal of the plane, out of the metal.</summary>
    public Vector3 Outward => outward;

    /// <inheritdoc/>
    public override Box3 Bounds => Box3.Everything;

    /// <inheritdoc/>
    public override int SurfaceCount => 1;

    /// <inheritdoc/>
    public override bool Contains(Point3 point) => (point - Place).Dot(outward) <= 0;

    /// <inheritdoc/>
    public override Vector3 NormalAt(SurfaceId surface, Point3 point) => outward;

    internal override double Distance(Point3 point) => (point - Place).Dot(outward);

    internal override double LeastIn(in Box3 cell)
    {
        var half = cell.Size * 0.5;
        return Distance(cell.Centre) - (half.X * Math.Abs(outward.X)) - (half.Y * Math.Abs(outward.Y)) - (half.Z * Math.Abs(outward.Z));
    }

    internal override void Sound(in Line3 line, bool closed, SpanList into)
    {
        var height = (line.Origin - Place).Dot(outward);
        var rate = line.Direction.Dot(outward);
        if (rate == 0)
        {
            if (height < 0 || (closed && height == 0))
            {
                into.Add(double.NegativeInfinity, double.PositiveInfinity, 0, 0);
            }
        }
        else if (rate > 0)
        {
            into.Add(double.NegativeInfinity, -height / rate, 0, 0);
        }
        else
        {
            into.Add(-height / rate, double.PositiveInfinity, 0, 0);
        }
    }
}
