using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Cuts;

// One layer of a cutter, a cylinder (solid or a ring) or a slice of a ball, carried about the X axis of the frame through an angle.
// In a plane across the axis the layer is a strip z0..z1 within a width (a ball: within a circle); a place of that plane is met when the
// part of its own circle about the axis that the turn passes has a place in the layer. Whatever can bound the answer is met in closed form
// (a rim about the axis by bracketed roots) and each stretch between two crossings judged at its middle by that very rule.
internal sealed class TurnedLayer
{
    private readonly Slab slab;
    private readonly double y;
    private readonly double z0;
    private readonly double z1;
    private readonly double first;
    private readonly double span;
    private readonly (double Sin, double Cos) start;
    private readonly (double Sin, double Cos) end;

    // The cutter's lowest cutting point stands at (0, at.Y, at.Z) when the angle is 0; the turn runs from first to first + span, span >= 0.
    internal TurnedLayer(Slab slab, Point3 at, double first, double span)
    {
        this.slab = slab;
        (y, z0, z1) = (at.Y, at.Z + slab.Z0, at.Z + slab.Z1);
        (this.first, this.span) = (first, Math.Min(span, Turn.Full));
        start = Turn.SinCos(first);
        end = Turn.SinCos(first + this.span);
        Bounds = BoxOf();
    }

    internal Box3 Bounds { get; }

    internal int Piece => slab.Face / 4;

    private bool IsBall => slab.C == -1;

    private double CentreZ => z0 + (slab.CentreZ - slab.Z0);

    private double Radius => IsBall ? slab.ArcRadius : slab.R0;

    internal void Sound(in Line3 line, bool closed, SpanList into)
    {
        var u = line.Direction;
        var p = line.Origin.ToVector();
        var shift = -p.Dot(u) / u.Dot(u);
        var at = p + (u * shift);
        at = new(u.X == 0 ? p.X : at.X, u.Y == 0 ? p.Y : at.Y, u.Z == 0 ? p.Z : at.Z);
        var ray = new Ray(at, u, double.NegativeInfinity, double.PositiveInfinity);
        Breaks breaks = new(stackalloc (double, int)[80]);
        Standing(Back(ray, start), ref breaks);
        Standing(Back(ray, end), ref breaks);
        Revolved(ray, ref breaks);
        breaks.Sort();
        var items = breaks.Items;
        for (var i = 0; i + 1 < items.Length; i++)
        {
            var (lo, hi) = (items[i].T, items[i + 1].T);
            if (lo < hi && Holds(ray.At(Breaks.Within(lo, hi)), closed))
            {
                into.Add(lo + shift, hi + shift, items[i].Face, items[i + 1].Face);
            }
        }
    }

    // Whether some angle of the turn puts the place in the layer.
    internal bool Holds(Vector3 q, bool closed)
    {
        if (In(q.X, Back(q, start), closed) || In(q.X, Back(q, end), closed))
        {
            return true;
        }

        var rho = Math.Sqrt((q.Y * q.Y) + (q.Z * q.Z));
        if (rho == 0 || span == 0)
        {
            return false;
        }

        // Angles gone back from the place, at which its circle meets the layer's border.
        Span<double> turns = stackalloc double[20];
        Span<(double Y, double Z)> meets = stackalloc (double, double)[18];
        var n = 0;
        var here = Math.Atan2(q.Z, q.Y) - first;
        turns[n++] = 0;
        turns[n++] = span;
        foreach (ref readonly var meet in meets[..Crossings(q.X, rho, meets)])
        {
            var turned = Turn.Positive(here - Math.Atan2(meet.Z, meet.Y));
            if (turned <= span)
            {
                if (closed && In(q.X, meet, closed: true))
                {
                    return true;
                }

                turns[n++] = turned;
            }
        }

        turns[..n].Sort();
        for (var i = 0; i + 1 < n; i++)
        {
            var (sin, cos) = Math.SinCos(here - ((turns[i] + turns[i + 1]) / 2));
            if (turns[i] < turns[i + 1] && In(q.X, (rho * cos, rho * sin), closed))
            {
                return true;
            }
        }

        return false;
    }

    // Outward normal of the surface nearest to a place.
    internal (Vector3 Normal, double Miss) NormalAt(Vector3 q)
    {
        var found = new List<(double Miss, Vector3 Normal)>();
        foreach (var (sin, cos) in (ReadOnlySpan<(double, double)>)[start, end])
        {
            var (b, c) = Back(q, (sin, cos));
            foreach (var (n, miss) in StandingNormals(new(q.X, b, c)))
            {
                found.Add((miss, new(n.X, (cos * n.Y) - (sin * n.Z), (sin * n.Y) + (cos * n.Z))));
            }
        }

        foreach (var (n, miss) in RevolvedNormals(q))
        {
            found.Add((miss, n));
        }

        return NearestNormal.Of(found, p => Holds(p.ToVector(), closed: true), default(Point3) + q) ?? (Vector3.UnitX, double.PositiveInfinity);
    }

    // A signed distance that never claims too much at one angle.
    internal double DistanceAt(Vector3 q, double angle)
    {
        var (b, c) = Back(q, Math.SinCos(angle));
        var rho = Math.Sqrt((q.X * q.X) + ((b - y) * (b - y)));
        return SlabDistance.OfStack([slab], rho, rho, c - z0 + slab.Z0);
    }

    internal double Least(Vector3 q, double close) => LeastValue.Over(
        first, first + span, Math.Sqrt((q.Y * q.Y) + (q.Z * q.Z)), close, a => DistanceAt(q, a));

    private static Ray Back(in Ray ray, (double Sin, double Cos) turn)
    {
        var (p, u) = (Back(ray.P, turn), Back(ray.U, turn));
        return ray with { P = new(ray.P.X, p.Y, p.Z), U = new(ray.U.X, u.Y, u.Z) };
    }

    private static (double Y, double Z) Back(Vector3 v, (double Sin, double Cos) turn) =>
        ((turn.Cos * v.Y) + (turn.Sin * v.Z), (turn.Cos * v.Z) - (turn.Sin * v.Y));

    private bool In(double x, (double Y, double Z) q, bool closed)
    {
        double b = q.Y - y, c = IsBall ? q.Z - CentreZ : 0, rho2 = (x * x) + (b * b) + (c * c), r2 = Radius * Radius, i2 = slab.Inner0 * slab.Inner0;
        return closed
            ? q.Z >= z0 && q.Z <= z1 && rho2 <= r2 && rho2 >= i2
            : q.Z > z0 && q.Z < z1 && rho2 < r2 && (i2 == 0 || rho2 > i2);
    }

    // Where the circle of a radius about the axis meets the lines of the layer's border in the plane x.
    private int Crossings(double x, double rho, Span<(double Y, double Z)> into)
    {
        var n = 0;
        AtHeight(z0, into);
        AtHeight(z1, into);
        if (IsBall)
        {
            Circles(into);
            return n;
        }

        AtWidth(slab.R0, into);
        if (slab.IsHollow)
        {
            AtWidth(slab.Inner0, into);
        }

        return n;

        void AtHeight(double z, Span<(double Y, double Z)> list)
        {
            var b = Math.Sqrt((rho - z) * (rho + z));
            if (!double.IsNaN(b))
            {
                list[n++] = (b, z);
                list[n++] = (-b, z);
            }
        }

        void AtWidth(double r, Span<(double Y, double Z)> list)
        {
            var half = Math.Sqrt((r - x) * (r + x));
            foreach (var b in (ReadOnlySpan<double>)[y - half, y + half])
            {
                var c = Math.Sqrt((rho - b) * (rho + b));
                if (!double.IsNaN(c))
                {
                    list[n++] = (b, c);
                    list[n++] = (b, -c);
                }
            }
        }

        void Circles(Span<(double Y, double Z)> list)
        {
            double c = CentreZ, far = Math.Sqrt((y * y) + (c * c)), s2 = (Radius - x) * (Radius + x);
            var along = ((rho * rho) - s2 + (far * far)) / (2 * far);
            var aside = Math.Sqrt((rho - along) * (rho + along));
            if (s2 >= 0 && !double.IsNaN(aside) && far > 0)
            {
                double cy = y / far, cz = c / far;
                list[n++] = ((along * cy) - (aside * cz), (along * cz) + (aside * cy));
                list[n++] = ((along * cy) + (aside * cz), (along * cz) - (aside * cy));
            }
        }
    }

    // The layer's own surfaces at one end of the turn.
    private void Standing(in Ray ray, ref Breaks into)
    {
        if (ray.U.Z != 0)
        {
            into.Add((z0 - ray.P.Z) / ray.U.Z, slab.Face + 1);
            into.Add((z1 - ray.P.Z) / ray.U.Z, slab.Face + 2);
        }

        Vector3 p = ray.P - new Vector3(0, y, IsBall ? CentreZ : 0), u = ray.U;
        var keep = IsBall ? 1 : 0;
        Sphere(p with { Z = keep * p.Z }, u with { Z = keep * u.Z }, Radius, slab.Face, ref into);
        if (slab.IsHollow)
        {
            Sphere(p with { Z = 0 }, u with { Z = 0 }, slab.Inner0, slab.Face + 3, ref into);
        }
    }

    // What the layer's borders sweep about the axis: its flat ends cylinders, its rims and its waist (where the side runs square to the
    // spoke) the surface of a circle turned, its widest line a plane.
    private void Revolved(in Ray ray, ref Breaks into)
    {
        Vector3 p = new(ray.P.Y, ray.P.Z, ray.P.X), u = new(ray.U.Y, ray.U.Z, ray.U.X);
        Sphere(p with { Z = 0 }, u with { Z = 0 }, Math.Abs(z0), slab.Face + 1, ref into);
        Sphere(p with { Z = 0 }, u with { Z = 0 }, Math.Abs(z1), slab.Face + 2, ref into);
        Rim(p, u, IsBall ? slab.R0 : Radius, z0, slab.Face + 1, ref into);
        Rim(p, u, IsBall ? slab.R1 : Radius, z1, slab.Face + 2, ref into);
        if (IsBall)
        {
            Rim(p, u, Math.Sqrt((y * y) + (CentreZ * CentreZ)), Radius, 0, slab.Face, ref into);
            return;
        }

        Rim(p, u, Radius, 0, slab.Face, ref into);
        if (slab.IsHollow)
        {
            Rim(p, u, slab.Inner0, z0, slab.Face + 3, ref into);
            Rim(p, u, slab.Inner0, z1, slab.Face + 3, ref into);
            Rim(p, u, slab.Inner0, 0, slab.Face + 3, ref into);
        }

        if (u.Z != 0)
        {
            into.Add((-Radius - p.Z) / u.Z, slab.Face);
            into.Add((Radius - p.Z) / u.Z, slab.Face);
        }
    }

    private void Rim(Vector3 p, Vector3 u, double radius, double z, int face, ref Breaks into) => Rim(p, u, Math.Abs(y), radius, z, face, ref into);

    private static void Rim(Vector3 p, Vector3 u, double centre, double radius, double z, int face, ref Breaks into)
    {
        if (centre == 0)
        {
            Sphere(p, u, Math.Sqrt((radius * radius) + (z * z)), face, ref into);
        }
        else if (radius > 0)
        {
            Quartic.Lifted(p, u, centre, radius, z, face, ref into);
        }
    }

    private static void Sphere(Vector3 p, Vector3 u, double r, int face, ref Breaks into)
    {
        var aa = u.Dot(u);
        var near = aa > 0 ? -p.Dot(u) / aa : 0;
        var m = p + (u * near);
        if (Quadratic.Roots(aa, 0, (m.Length - r) * (m.Length + r), out var t0, out var t1))
        {
            into.Add(near + t0, face);
            into.Add(near + t1, face);
        }
    }

    private IEnumerable<(Vector3 Normal, double Miss)> StandingNormals(Vector3 q)
    {
        var away = new Vector3(q.X, q.Y - y, IsBall ? q.Z - CentreZ : 0);
        yield return (away.ToUnit(), Math.Abs(away.Length - Radius));
        yield return (new(0, 0, -1), Math.Abs(q.Z - z0));
        yield return (new(0, 0, 1), Math.Abs(q.Z - z1));
        if (slab.IsHollow)
        {
            yield return (-away.ToUnit(), Math.Abs(away.Length - slab.Inner0));
        }
    }

    private IEnumerable<(Vector3 Normal, double Miss)> RevolvedNormals(Vector3 q)
    {
        var rho = Math.Sqrt((q.Y * q.Y) + (q.Z * q.Z));
        var spoke = new Vector3(0, q.Y, q.Z).ToUnit();
        yield return (spoke, Math.Abs(rho - Math.Abs(z0)));
        yield return (spoke, Math.Abs(rho - Math.Abs(z1)));
        yield return (Vector3.UnitX, Math.Abs(Math.Abs(q.X) - Radius));
        var centre = Math.Abs(y);
        var rims = IsBall
            ? (List<(double C, double R, double Z)>)[(centre, slab.R0, z0), (centre, slab.R1, z1), (Math.Sqrt((y * y) + (CentreZ * CentreZ)), Radius, 0)]
            : [(centre, Radius, z0), (centre, Radius, z1), (centre, Radius, 0), (centre, slab.Inner0, z0), (centre, slab.Inner0, z1), (centre, slab.Inner0, 0)];
        foreach (var (c, r, z) in rims)
        {
            var w = Math.Sqrt(Math.Max(0, (rho * rho) - (z * z)));
            foreach (var e in (double[])[w - c, w + c])
            {
                // The gradient of sqrt(e^2 + x^2) - r, as dw/drho = rho / w.
                var tube = Math.Sqrt((e * e) + (q.X * q.X));
                var g = new Vector3(q.X, 0, 0) + (spoke * (w > 0 ? e * rho / w : 0));
                if (tube > 0 && r > 0 && g.Length > 0)
                {
                    yield return (g.ToUnit(), Math.Abs(tube - r) * tube / g.Length);
                }
            }
        }
    }

    // The corners of the widest section, each on its arc about the axis.
    private Box3 BoxOf()
    {
        var r = Math.Max(slab.R0, slab.R1);
        var box = Box3.Empty;
        foreach (var b in (ReadOnlySpan<double>)[y - r, y + r])
        {
            foreach (var c in (ReadOnlySpan<double>)[z0, z1])
            {
                var rho = Math.Sqrt((b * b) + (c * c));
                var at = Math.Atan2(c, b) + first;
                var (s, k) = Math.SinCos(at);
                box = box.Union(new(new(-r, rho * k, rho * s), new(r, rho * k, rho * s)));
                (s, k) = Math.SinCos(at + span);
                box = box.Union(new(new(-r, rho * k, rho * s), new(r, rho * k, rho * s)));
                for (var quarter = 0; quarter < 4; quarter++)
                {
                    if (Turn.Positive((quarter * Math.PI / 2) - at) <= span)
                    {
                        (s, k) = Turn.SinCos(quarter * Math.PI / 2);
                        box = box.Union(new(new(-r, rho * k, rho * s), new(r, rho * k, rho * s)));
                    }
                }
            }
        }

        return box.Grown(1e-9 * (1 + box.Size.Length));
    }
}
