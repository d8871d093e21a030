using Handwheel.Jobs.Moves;
using Handwheel.Plan.Setting;
using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Cranking;

// One swept cut as planned: a cutter from one reading to another in a holding, the work turning with theta about the rotary's axis.
internal sealed class PlannedCut
{
    private readonly Placement placement;
    private readonly Point2 centre;
    private readonly Reading from;
    private readonly Reading to;
    private readonly CutterProfile cutter;

    internal PlannedCut(Placement placement, Point2 centre, Reading from, Reading to, CutterProfile cutter)
    {
        this.placement = placement;
        this.centre = centre;
        this.from = from;
        this.to = to;
        this.cutter = cutter;
    }

    internal Placement Placement => placement;

    internal double LowZ => Math.Min(from.Z, to.Z);

    internal double TopZ => Math.Max(from.Z, to.Z) + cutter.Top;

    internal bool Covers(Point3 part)
    {
        var h = placement.Apply(part);
        if (h.Z <= LowZ + 1e-9 || h.Z > TopZ)
        {
            return false;
        }

        var r = cutter.Greatest(h.Z - Math.Max(from.Z, to.Z), h.Z - LowZ);
        return r > 0 && DistanceTo(new(h.X, h.Y)) < r - 1e-9;
    }

    // From the point, as the work lies at theta 0, to the path of the spindle's axis over the work.
    private double DistanceTo(Point2 p)
    {
        Point2 a = new(from.X, from.Y), b = new(to.X, to.Y);
        var start = Plane.Turned(a, centre, -from.T / Plane.ToDegrees);
        if (from.T == to.T)
        {
            var end = Plane.Turned(b, centre, -from.T / Plane.ToDegrees);
            return Plane.Distance(p, new PlanEdge(start, end, default, 0, false, string.Empty).Nearest(p));
        }

        var radius = Plane.Distance(a, centre);
        var turned = -(to.T - from.T) / Plane.ToDegrees;
        var angle = Plane.Angle(centre, p) - Plane.Angle(centre, start);
        var along = turned > 0 ? Plane.Positive(angle) : Plane.Positive(-angle);
        if (along <= Math.Abs(turned))
        {
            return Math.Abs(Plane.Distance(p, centre) - radius);
        }

        return Math.Min(Plane.Distance(p, start), Plane.Distance(p, Plane.Turned(start, centre, turned)));
    }
}
