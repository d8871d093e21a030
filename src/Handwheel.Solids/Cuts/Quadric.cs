using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Cuts;

// A line against x^2 + y^2 <= A + B z + C z^2 within a layer of z: cylinder, cone or ball in one formula.
internal static class Quadric
{
    // Appends the interval of a standing layer.
    internal static void Standing(Slab s, in Ray ray, bool closed, SpanList into)
    {
        if (!InLayer(ray, s, closed, out var clipped))
        {
            return;
        }

        if (ray.U.Z == 0)
        {
            var r = s.RadiusAt(ray.P.Z);
            Inside(r * r, 0, 0, clipped, closed, s.Face, s.Face, s.Face, into);
            return;
        }

        var (low, high) = ray.U.Z > 0 ? (s.Face + 1, s.Face + 2) : (s.Face + 2, s.Face + 1);
        Inside(s.A, s.B, s.C, clipped, closed, low, high, s.Face, into);
    }

    // The part of the ray within the layer's heights; a level ray at the very border counts when closed.
    internal static bool InLayer(in Ray ray, Slab s, bool closed, out Ray clipped)
    {
        clipped = ray;
        if (ray.U.Z == 0)
        {
            return closed ? ray.P.Z >= s.Z0 && ray.P.Z <= s.Z1 : ray.P.Z > s.Z0 && ray.P.Z < s.Z1;
        }

        clipped = ray.Clip(ray.P.Z, ray.U.Z, s.Z0, s.Z1);
        return !clipped.IsEmpty;
    }

    // Appends where the quadric holds within the ray's part; the ends of the part get the faces low and high.
    internal static void Inside(
        double a, double b, double c, in Ray ray, bool closed, int low, int high, int side, SpanList into)
    {
        Vector3 p = ray.P, u = ray.U;
        var aa = (u.X * u.X) + (u.Y * u.Y) - (c * u.Z * u.Z);
        var bb = (p.X * u.X) + (p.Y * u.Y) - (c * p.Z * u.Z) - (b * u.Z / 2);
        var cc = (p.X * p.X) + (p.Y * p.Y) - (((c * p.Z) + b) * p.Z) - a;
        if (aa == 0)
        {
            Linear(bb, cc, ray, closed, low, high, side, into);
            return;
        }

        if (!Quadratic.Roots(aa, bb, cc, out var t0, out var t1))
        {
            if (aa < 0)
            {
                into.Add(ray.Lo, ray.Hi, low, high);
            }

            return;
        }

        if (aa > 0)
        {
            into.Add(Math.Max(t0, ray.Lo), Math.Min(t1, ray.Hi), t0 > ray.Lo ? side : low, t1 < ray.Hi ? side : high);
            return;
        }

        into.Add(ray.Lo, Math.Min(t0, ray.Hi), low, t0 < ray.Hi ? side : high);
        into.Add(Math.Max(t1, ray.Lo), ray.Hi, t1 > ray.Lo ? side : low, high);
    }

    // The layer swept straight from d*0 to d*1: standing at both ends, its two rims, and the envelope between.
    // The union of these is the whole, and it is convex: one interval.
    internal static void Swept(Slab s, Vector3 d, in Ray ray, bool closed, SpanList into)
    {
        var start = into.Count;
        Standing(s, ray, closed, into);
        Standing(s, ray with { P = ray.P - d }, closed, into);
        if (d.Z != 0)
        {
            Rim(s.Z0, s.R0, s.Face + 1, d, ray, closed, into);
            Rim(s.Z1, s.R1, s.Face + 2, d, ray, closed, into);
        }

        Envelope(s, d, ray, closed, into);
        into.Hull(start);
    }

    // A level disc at height z carried along d, d.Z not 0.
    internal static void Rim(double z, double radius, int face, Vector3 d, in Ray ray, bool closed, SpanList into)
    {
        if (!(radius > 0))
        {
            return;
        }

        double s0 = (ray.P.Z - z) / d.Z, s1 = ray.U.Z / d.Z;
        var part = ray.Clip(s0, s1, 0, 1);
        if (!part.IsEmpty)
        {
            var slid = part.Slide(d, s0, s1);
            slid = slid with { P = slid.P with { Z = 0 }, U = slid.U with { Z = 0 } };
            Inside(radius * radius, 0, 0, slid, closed, face, face, face, into);
        }
    }

    // Where the layer's side, carried along d, is touched from within: the place of the path that makes the quadric least.
    private static void Envelope(Slab s, Vector3 d, in Ray ray, bool closed, SpanList into)
    {
        var dd = (d.X * d.X) + (d.Y * d.Y) - (s.C * d.Z * d.Z);
        if (!(dd > 0))
        {
            return;
        }

        Vector3 p = ray.P, u = ray.U;
        var s0 = ((p.X * d.X) + (p.Y * d.Y) - (s.C * p.Z * d.Z) - (s.B * d.Z / 2)) / dd;
        var s1 = ((u.X * d.X) + (u.Y * d.Y) - (s.C * u.Z * d.Z)) / dd;
        var part = ray.Clip(s0, s1, 0, 1);
        if (part.IsEmpty)
        {
            return;
        }

        var slid = part.Slide(d, s0, s1);
        if (d.Z == 0)
        {
            slid = slid with { P = slid.P with { Z = p.Z }, U = slid.U with { Z = u.Z } };
        }

        if (!InLayer(slid, s, closed, out var clipped))
        {
            return;
        }

        if (slid.U.Z == 0 && d.Z == 0)
        {
            var r = s.RadiusAt(slid.P.Z);
            Inside(r * r, 0, 0, clipped, closed, s.Face, s.Face, s.Face, into);
            return;
        }

        var (low, high) = slid.U.Z > 0 ? (s.Face + 1, s.Face + 2) : (s.Face + 2, s.Face + 1);
        Inside(
            s.A, s.B, s.C, clipped, closed, clipped.Lo > part.Lo ? low : s.Face, clipped.Hi < part.Hi ? high : s.Face, s.Face, into);
    }

    private static void Linear(double bb, double cc, in Ray ray, bool closed, int low, int high, int side, SpanList into)
    {
        if (bb == 0)
        {
            if (cc < 0 || (closed && cc == 0))
            {
                into.Add(ray.Lo, ray.Hi, low, high);
            }

            return;
        }

        var t = -cc / (2 * bb);
        if (bb > 0)
        {
            into.Add(ray.Lo, Math.Min(t, ray.Hi), low, t < ray.Hi ? side : high);
        }
        else
        {
            into.Add(Math.Max(t, ray.Lo), ray.Hi, t > ray.Lo ? side : low, high);
        }
    }
}
