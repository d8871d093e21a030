using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Cuts;

// A layer carried along a path at constant height. At height z the section is
// { least distance to the path <= r(z) and greatest distance >= inner(z) }; candidates are met in closed form (a torus by bracketed roots),
// and each stretch between two of them is judged at its middle by that very rule.
internal static class LevelSweep
{
    private static readonly CutterPath AtOrigin = CutterPath.At(Point3.Origin);

    // The ray is relative to the path's start; origin is that start seen from above.
    internal static void Sound(Slab s, CutterPath path, in Ray ray, Vector3 origin, bool closed, SpanList into)
    {
        if (!Quadric.InLayer(ray, s, closed, out var part))
        {
            return;
        }

        Breaks breaks = new(stackalloc (double, int)[64]);
        var (low, high) = ray.U.Z > 0 ? (s.Face + 1, s.Face + 2) : (s.Face + 2, s.Face + 1);
        if (ray.U.Z != 0)
        {
            breaks.Add(part.Lo, low);
            breaks.Add(part.Hi, high);
        }

        Surfaces(s, path, ray, origin, ref breaks);
        breaks.Sort();
        Judge(s, path, part, origin, closed, breaks.Items, into);
    }

    // The layer standing with the path's start at the ray's own origin.
    internal static void SoundStanding(Slab s, in Ray ray, bool closed, SpanList into)
    {
        if (!s.IsTorus)
        {
            Quadric.Standing(s, ray, closed, into);
        }
        else if (ray.U.X == 0 && ray.U.Y == 0)
        {
            Upright(s, ray.P.Plan().Length, ray, closed, into);
        }
        else
        {
            Sound(s, AtOrigin, ray, default, closed, into);
        }
    }

    // A line along the cutter's axis: the path's distances are constant on it.
    internal static void SoundAlongAxis(Slab s, CutterPath path, in Ray ray, Vector3 origin, bool closed, SpanList into)
    {
        var at = (origin + ray.P).Plan();
        var near = path.LeastDistance(at);
        var start = into.Count;
        Upright(s, near, ray, closed, into);
        if (!s.IsHollow || into.Count == start)
        {
            return;
        }

        var cut = BeyondInner(s, path.GreatestDistance(at), ray);
        if (cut.IsEmpty)
        {
            into.Clip(start, 1, 0, 0, 0);
        }
        else
        {
            into.Clip(start, cut.Lo, cut.Hi, s.Face + 3, s.Face + 3);
        }
    }

    // The part of an upright line at which the inner radius is at most a distance: a linear rule in z, or one end of an arc.
    private static Ray BeyondInner(Slab s, double far, in Ray ray)
    {
        if (!s.InnerIsArc)
        {
            var k = (s.Inner1 - s.Inner0) / (s.Z1 - s.Z0);
            return ray.Clip(s.Inner0 + (k * (ray.P.Z - s.Z0)), k * ray.U.Z, double.NegativeInfinity, far);
        }

        double z0 = s.Z0, z1 = s.Z1;
        if (far < Math.Min(s.Inner0, s.Inner1))
        {
            return ray with { Lo = 1, Hi = 0 };
        }

        if (far < Math.Max(s.Inner0, s.Inner1))
        {
            var e = far - s.InnerCentreRadius;
            var h = Math.Sqrt(Math.Max(0, (s.InnerArcRadius - e) * (s.InnerArcRadius + e)));
            var z = (z0 + z1) / 2 < s.InnerCentreZ ? s.InnerCentreZ - h : s.InnerCentreZ + h;
            (z0, z1) = s.Inner1 > s.Inner0 ? (z0, z) : (z, z1);
        }

        return ray.Clip(ray.P.Z, ray.U.Z, z0, z1);
    }

    // The heights of a layer at which its radius exceeds a distance.
    internal static void Upright(Slab s, double distance, in Ray ray, bool closed, SpanList into)
    {
        if (!s.IsTorus)
        {
            Quadric.Standing(s, ray with { P = new(distance, 0, ray.P.Z), U = new(0, 0, ray.U.Z) }, closed, into);
            return;
        }

        double z0 = s.Z0, z1 = s.Z1;
        bool side0 = false, side1 = false;
        var (most, least) = (s.GreatestRadius, Math.Min(s.R0, s.R1));
        if (distance > most || (distance == most && !closed))
        {
            return;
        }

        if (distance > least)
        {
            var e = distance - s.CentreRadius;
            var h = Math.Sqrt(Math.Max(0, (s.ArcRadius - e) * (s.ArcRadius + e)));
            var z = (z0 + z1) / 2 < s.CentreZ ? s.CentreZ - h : s.CentreZ + h;
            if (s.R1 > s.R0)
            {
                (z0, side0) = (z, true);
            }
            else
            {
                (z1, side1) = (z, true);
            }
        }

        double a = (z0 - ray.P.Z) / ray.U.Z, b = (z1 - ray.P.Z) / ray.U.Z;
        int face0 = side0 ? s.Face : s.Face + 1, face1 = side1 ? s.Face : s.Face + 2;
        if (ray.U.Z > 0)
        {
            into.Add(a, b, face0, face1);
        }
        else
        {
            into.Add(b, a, face1, face0);
        }
    }

    private static Point2 Plan(this Vector3 v) => new(v.X, v.Y);

    private static void Judge(
        Slab s, CutterPath path, in Ray part, Vector3 origin, bool closed, ReadOnlySpan<(double T, int Face)> breaks, SpanList into)
    {
        for (var i = 0; i + 1 < breaks.Length; i++)
        {
            var (lo, hi) = (breaks[i].T, breaks[i + 1].T);
            if (lo < hi && hi <= part.Hi && lo >= part.Lo && Holds(s, path, part.At(Breaks.Within(lo, hi)), origin, closed))
            {
                into.Add(lo, hi, breaks[i].Face, breaks[i + 1].Face);
            }
        }
    }

    private static bool Holds(Slab s, CutterPath path, Vector3 q, Vector3 origin, bool closed)
    {
        var at = (origin + q).Plan();
        var near = path.LeastDistance(at);
        var r = s.RadiusAt(q.Z);
        if (closed ? near > r : near >= r)
        {
            return false;
        }

        if (!s.IsHollow)
        {
            return true;
        }

        var far = path.GreatestDistance(at);
        var inner = s.InnerAt(q.Z);
        return closed ? far >= inner : far > inner;
    }

    private static void Surfaces(Slab s, CutterPath path, in Ray ray, Vector3 origin, ref Breaks into)
    {
        Round(s, ray, ref into);
        if (path.Kind == PathKind.Place)
        {
            return;
        }

        Round(s, ray with { P = ray.P - (path.To - path.From) }, ref into);
        if (path.Kind == PathKind.Straight)
        {
            Flanks(s, path, ray, ref into);
            return;
        }

        var about = ray with { P = ray.P + origin - new Vector3(path.Centre.X, path.Centre.Y, 0) };
        Ring(s, path.Radius, about, ref into);
    }

    // Outer and inner surface standing at a place.
    private static void Round(Slab s, in Ray ray, ref Breaks into)
    {
        if (s.IsTorus && ray.U.Z != 0)
        {
            Quartic.Torus(ray.P with { Z = ray.P.Z - s.CentreZ }, ray.U, s.CentreRadius, s.ArcRadius, s.Face, ref into);
        }
        else if (ray.U.Z == 0)
        {
            Circle(s.RadiusAt(ray.P.Z), ray, s.Face, ref into);
        }
        else
        {
            Roots(s.A, s.B, s.C, ray, s.Face, ref into);
        }

        if (s.IsHollow)
        {
            Inner(s, 0, ray, ref into);
        }
    }

    // Where the greatest distance is the inner radius: the inner side standing at a place, or about an arc's axis, the path's radius less.
    private static void Inner(Slab s, double less, in Ray ray, ref Breaks into)
    {
        if (ray.U.Z == 0)
        {
            Circle(s.InnerAt(ray.P.Z) - less, ray, s.Face + 3, ref into);
        }
        else if (s.InnerIsArc)
        {
            var p = ray.P with { Z = ray.P.Z - s.InnerCentreZ };
            Quartic.Torus(p, ray.U, Math.Abs(s.InnerCentreRadius - less), s.InnerArcRadius, s.Face + 3, ref into);
        }
        else
        {
            Cone(s.InnerAt(0) - less, (s.Inner1 - s.Inner0) / (s.Z1 - s.Z0), ray, s.Face + 3, ref into);
        }
    }

    // The surfaces of revolution about an arc's axis.
    private static void Ring(Slab s, double path, in Ray ray, ref Breaks into)
    {
        if (ray.U.Z == 0)
        {
            var r = s.RadiusAt(ray.P.Z);
            Circle(path + r, ray, s.Face, ref into);
            Circle(path - r, ray, s.Face, ref into);
        }
        else if (s.IsTorus || s.C == -1)
        {
            var about = ray.P with { Z = ray.P.Z - s.CentreZ };
            Quartic.Torus(about, ray.U, path + s.CentreRadius, s.ArcRadius, s.Face, ref into);
            if (s.CentreRadius > 0)
            {
                Quartic.Torus(about, ray.U, Math.Abs(path - s.CentreRadius), s.ArcRadius, s.Face, ref into);
            }
        }
        else
        {
            var k = (s.R1 - s.R0) / (s.Z1 - s.Z0);
            var r = s.R0 - (k * s.Z0);
            Cone(path + r, k, ray, s.Face, ref into);
            Cone(path - r, -k, ray, s.Face, ref into);
        }

        if (s.IsHollow)
        {
            Inner(s, path, ray, ref into);
        }
    }

    // Both flanks of a straight level path.
    private static void Flanks(Slab s, CutterPath path, in Ray ray, ref Breaks into)
    {
        var d = (path.To - path.From) with { Z = 0 };
        var along = d * (1 / d.Length);
        double across = (along.X * ray.P.Y) - (along.Y * ray.P.X), rate = (along.X * ray.U.Y) - (along.Y * ray.U.X);
        var flat = ray with { P = new(across, 0, ray.P.Z), U = new(rate, 0, ray.U.Z) };
        if (ray.U.Z == 0)
        {
            Circle(s.RadiusAt(ray.P.Z), flat, s.Face, ref into);
        }
        else if (s.IsTorus)
        {
            // Two round bars of the arc's radius along the path, the arc's centre either side of it.
            foreach (var side in (ReadOnlySpan<double>)[-s.CentreRadius, s.CentreRadius])
            {
                var p = new Vector3(across - side, ray.P.Z - s.CentreZ, 0);
                Circle(s.ArcRadius, flat with { P = p, U = new(rate, ray.U.Z, 0) }, s.Face, ref into);
            }
        }
        else
        {
            Roots(s.A, s.B, s.C, flat, s.Face, ref into);
        }
    }

    private static void Cone(double r, double k, in Ray ray, int face, ref Breaks into) => Roots(r * r, 2 * r * k, k * k, ray, face, ref into);

    private static void Circle(double r, in Ray ray, int face, ref Breaks into) => Roots(r * r, 0, 0, ray, face, ref into);

    private static void Roots(double a, double b, double c, in Ray ray, int face, ref Breaks into)
    {
        Vector3 p = ray.P, u = ray.U;
        var aa = (u.X * u.X) + (u.Y * u.Y) - (c * u.Z * u.Z);
        var bb = (p.X * u.X) + (p.Y * u.Y) - (c * p.Z * u.Z) - (b * u.Z / 2);
        var cc = (p.X * p.X) + (p.Y * p.Y) - (((c * p.Z) + b) * p.Z) - a;
        if (Quadratic.Roots(aa, bb, cc, out var t0, out var t1))
        {
            into.Add(t0, face);
            into.Add(t1, face);
        }
        else if (aa == 0 && bb != 0)
        {
            into.Add(-cc / (2 * bb), face);
        }
    }
}
