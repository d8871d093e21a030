using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;
using Handwheel.Solids.Soundings;

namespace Handwheel.Solids.Cuts;

// A layer carried along a straight path that climbs or falls. Quadrics are closed form (Quadric.Swept);
// here are the two that are not one quadratic: a hollow layer, and a rounded corner (a torus) on a slant.
internal static class SlantedSweep
{
    // Hollow and straight: every surface that may bound the answer in closed form, each stretch judged at its middle.
    internal static void SoundHollow(Slab s, Vector3 d, in Ray ray, bool closed, SpanList into)
    {
        using var rented = SpanPool.Rent(out var pieces);
        Quadric.Swept(s, d, ray, closed: true, pieces);
        if (pieces.Count == 0)
        {
            return;
        }

        Breaks breaks = new(stackalloc (double, int)[40]);
        breaks.Add(pieces[0].From, pieces[0].FromSurface.Face);
        breaks.Add(pieces[0].To, pieces[0].ToSurface.Face);
        var (lo, hi) = (pieces[0].From, pieces[0].To);
        pieces.Clear();
        var core = InnerOf(s);
        Quadric.Standing(core, ray, closed: true, pieces);
        Quadric.Standing(core, ray with { P = ray.P - d }, closed: true, pieces);
        Quadric.Rim(s.Z0, s.Inner0, core.Face, d, ray, closed: true, pieces);
        Quadric.Rim(s.Z1, s.Inner1, core.Face, d, ray, closed: true, pieces);
        foreach (ref readonly var span in pieces.Items)
        {
            breaks.Add(span.From, core.Face);
            breaks.Add(span.To, core.Face);
        }

        breaks.Sort();
        for (var i = 0; i + 1 < breaks.Count; i++)
        {
            var (a, b) = (breaks.Items[i], breaks.Items[i + 1]);
            if (a.T < b.T && a.T >= lo && b.T <= hi && HollowHolds(s, d, ray.At(Breaks.Within(a.T, b.T))))
            {
                into.Add(a.T, b.T, a.Face, b.Face);
            }
        }
    }

    // A bulging torus layer, which is convex: rims and both ends in closed or quartic form, then the envelope by bracketed roots
    // of the least distance to the corner's core disc over the path.
    internal static void SoundTorus(Slab s, Vector3 d, in Ray ray, bool closed, SpanList into)
    {
        var start = into.Count;
        LevelSweep.SoundStanding(s, ray, closed, into);
        LevelSweep.SoundStanding(s, ray with { P = ray.P - d }, closed, into);
        Quadric.Rim(s.Z0, s.R0, s.Face + 1, d, ray, closed, into);
        Quadric.Rim(s.Z1, s.R1, s.Face + 2, d, ray, closed, into);
        if (d.X == 0 && d.Y == 0)
        {
            // Plunged: both ends and the rims between are all of it, bulging or not.
            into.Normalise(start);
            return;
        }

        into.Hull(start);

        var sweep = new Corner(s, d, ray);
        if (!sweep.Reach(out var lo, out var hi))
        {
            return;
        }

        double inside;
        if (into.Count > start)
        {
            inside = Math.Clamp(into[start].Middle, lo, hi);
        }
        else if (!sweep.Deepest(lo, hi, out inside))
        {
            return;
        }

        if (sweep.Outside(inside) >= 0)
        {
            return;
        }

        var from = sweep.Outside(lo) <= 0 || !Bracket.Root(lo, inside, sweep, static (c, t) => c.Outside(t), out var a) ? lo : a;
        var to = sweep.Outside(hi) <= 0 || !Bracket.Root(inside, hi, sweep, static (c, t) => c.Outside(t), out var b) ? hi : b;
        into.Add(from, to, s.Face, s.Face);
        into.Hull(start);
    }

    private static Slab InnerOf(Slab s)
    {
        var k = (s.Inner1 - s.Inner0) / (s.Z1 - s.Z0);
        var r = s.Inner0 - (k * s.Z0);
        return new() { Z0 = s.Z0, Z1 = s.Z1, R0 = s.Inner0, R1 = s.Inner1, A = r * r, B = 2 * r * k, C = k * k, Face = s.Face + 3 };
    }

    // Whether a place of the path puts the point between inner and outer radius: one of the ends of the stretch of
    // path that has the point in the layer, or a place where the outer surface passes it.
    private static bool HollowHolds(Slab s, Vector3 d, Vector3 q)
    {
        double lo = 0, hi = 1;
        if (!Box3.Slab(q.Z, -d.Z, s.Z0, s.Z1, ref lo, ref hi))
        {
            return false;
        }

        if (Ring(s, q - (d * lo)) || Ring(s, q - (d * hi)))
        {
            return true;
        }

        var aa = (d.X * d.X) + (d.Y * d.Y) - (s.C * d.Z * d.Z);
        var bb = -((q.X * d.X) + (q.Y * d.Y) - (s.C * q.Z * d.Z) - (s.B * d.Z / 2));
        var cc = (q.X * q.X) + (q.Y * q.Y) - (((s.C * q.Z) + s.B) * q.Z) - s.A;
        return Quadratic.Roots(aa, bb, cc, out var s0, out var s1) && ((s0 > lo && s0 < hi) || (s1 > lo && s1 < hi));
    }

    private static bool Ring(Slab s, Vector3 q)
    {
        var z = Math.Clamp(q.Z, s.Z0, s.Z1);
        var rho = Math.Sqrt((q.X * q.X) + (q.Y * q.Y));
        return rho <= s.RadiusAt(z) && rho >= s.InnerAt(z);
    }

    // The signed distance outside a rounded corner carried along d, as a convex function along the ray.
    private readonly record struct Corner(Slab S, Vector3 D, Ray Ray)
    {
        // The part of the ray that some place of the path has within the layer's heights.
        internal bool Reach(out double lo, out double hi)
        {
            lo = Ray.Lo;
            hi = Ray.Hi;
            double least = Math.Min(0, D.Z) + S.Z0, most = Math.Max(0, D.Z) + S.Z1;
            if (!Box3.Slab(Ray.P.Z, Ray.U.Z, least, most, ref lo, ref hi))
            {
                return false;
            }

            // And within the plan's bounds, so that brackets stay short.
            var r = S.GreatestRadius;
            return Box3.Slab(Ray.P.X, Ray.U.X, Math.Min(0, D.X) - r, Math.Max(0, D.X) + r, ref lo, ref hi)
                && Box3.Slab(Ray.P.Y, Ray.U.Y, Math.Min(0, D.Y) - r, Math.Max(0, D.Y) + r, ref lo, ref hi);
        }

        internal double Outside(double t)
        {
            var q = Ray.At(t);
            double a = 0, b = 1;
            if (!Box3.Slab(q.Z, -D.Z, S.Z0, S.Z1, ref a, ref b))
            {
                return 1;
            }

            // The slope of the squared distance along the path grows: halve to its zero.
            for (var i = 0; i < 60 && b - a > 1e-15; i++)
            {
                var m = 0.5 * (a + b);
                var g = q - (D * m);
                var rho = Math.Sqrt((g.X * g.X) + (g.Y * g.Y));
                var e = rho - S.CentreRadius;
                var slope = -(g.Z - S.CentreZ) * D.Z;
                slope -= e > 0 ? e / rho * ((g.X * D.X) + (g.Y * D.Y)) : 0;
                if (slope < 0)
                {
                    a = m;
                }
                else
                {
                    b = m;
                }
            }

            var at = q - (D * (0.5 * (a + b)));
            var out2 = Math.Max(0, Math.Sqrt((at.X * at.X) + (at.Y * at.Y)) - S.CentreRadius);
            var h = at.Z - S.CentreZ;
            return Math.Sqrt((out2 * out2) + (h * h)) - S.ArcRadius;
        }

        // Golden section down to the deepest place, or the first one found inside.
        internal bool Deepest(double lo, double hi, out double t)
        {
            const double golden = 0.6180339887498949;
            double a = lo, b = hi;
            double x = b - (golden * (b - a)), y = a + (golden * (b - a));
            double fx = Outside(x), fy = Outside(y);
            for (var i = 0; i < 80 && b - a > 1e-9; i++)
            {
                if (fx < 0 || fy < 0)
                {
                    break;
                }

                if (fx < fy)
                {
                    (b, y, fy) = (y, x, fx);
                    x = b - (golden * (b - a));
                    fx = Outside(x);
                }
                else
                {
                    (a, x, fx) = (x, y, fy);
                    y = a + (golden * (b - a));
                    fy = Outside(y);
                }
            }

            t = fx < fy ? x : y;
            return Math.Min(fx, fy) < 0;
        }
    }
}
