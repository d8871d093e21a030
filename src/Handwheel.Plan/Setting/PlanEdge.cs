using Handwheel.Solids.Geometry;

namespace Handwheel.Plan.Setting;

// One straight or circular piece of an outline in plan, counterclockwise round the metal: the metal lies to its left.
// A circular piece has a radius; Counterclockwise tells whether it bulges out of the metal.
internal readonly record struct PlanEdge(Point2 From, Point2 To, Point2 Centre, double Radius, bool Counterclockwise, string Name)
{
    internal bool IsArc => Radius > 0;

    internal double Length => IsArc ? Radius * Math.Abs(Sweep) : Plane.Distance(From, To);

    // Radians turned from start to end; a full circle where they coincide.
    internal double Sweep
    {
        get
        {
            var a = Plane.Positive(Plane.Angle(Centre, To) - Plane.Angle(Centre, From));
            a = a < 1e-12 ? 2 * Math.PI : a;
            return Counterclockwise ? a : a >= 2 * Math.PI ? -a : a - (2 * Math.PI);
        }
    }

    // Outward normal of a straight piece: to the right of its run.
    internal Point2 Normal
    {
        get
        {
            var l = Plane.Distance(From, To);
            return new((To.Y - From.Y) / l, (From.X - To.X) / l);
        }
    }

    internal PlanEdge Mapped(Func<Point2, Point2> map, bool mirrored) => mirrored
        ? new(map(To), map(From), map(Centre), Radius, Counterclockwise, Name)
        : new(map(From), map(To), map(Centre), Radius, Counterclockwise, Name);

    internal Point2 Nearest(Point2 p)
    {
        if (!IsArc)
        {
            double dx = To.X - From.X, dy = To.Y - From.Y;
            var l = (dx * dx) + (dy * dy);
            var t = l > 0 ? Math.Clamp((((p.X - From.X) * dx) + ((p.Y - From.Y) * dy)) / l, 0, 1) : 0;
            return new(From.X + (t * dx), From.Y + (t * dy));
        }

        var sweep = Sweep;
        var a = Plane.Angle(Centre, p) - Plane.Angle(Centre, From);
        var along = Counterclockwise ? Plane.Positive(a) : Plane.Positive(-a);
        if (along <= Math.Abs(sweep) + 1e-12 || Plane.Distance(From, To) < 1e-12)
        {
            return Plane.Polar(Centre, Radius, Plane.Angle(Centre, p));
        }

        return Plane.Distance(p, From) <= Plane.Distance(p, To) ? From : To;
    }
}
