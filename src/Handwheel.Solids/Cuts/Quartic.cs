using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cuts;

// Where a line meets a torus about Z through the origin of p: (rho - c)^2 + z^2 = R^2, c >= 0.
// With a lift h, the surface a circle sweeps about an axis that its plane misses by h: the same with sqrt(rho^2 - h^2) for rho.
internal static class Quartic
{
    internal static void Torus(Vector3 p, Vector3 u, double c, double radius, int face, ref Breaks into) => Lifted(p, u, c, radius, 0, face, ref into);

    // Every crossing, as breaks; roots are bracketed between the quartic's turning points and polished to the last bits.
    internal static void Lifted(Vector3 p, Vector3 u, double c, double radius, double lift, int face, ref Breaks into)
    {
        var uu = u.Dot(u);
        if (!(uu > 0))
        {
            return;
        }

        var shift = -p.Dot(u) / uu;
        var m = p + (u * shift);
        var h2 = lift * lift;
        var reach = lift == 0 ? c + radius : Math.Sqrt(((c + radius) * (c + radius)) + h2);
        var left = ((reach - m.Length) * (reach + m.Length)) / uu;
        if (!(left > 0))
        {
            return;
        }

        var end = Math.Sqrt(left) * (1 + 1e-9);
        var k = m.Dot(m) - h2 + ((c - radius) * (c + radius));
        var four = 4 * c * c;
        double alpha = (u.X * u.X) + (u.Y * u.Y), beta = (m.X * u.X) + (m.Y * u.Y), gamma = (m.X * m.X) + (m.Y * m.Y);
        var curve = new Curve(uu * uu, (2 * uu * k) - (four * alpha), -2 * four * beta, (k * k) - (four * (gamma - h2)));
        Span<double> stops = stackalloc double[8];
        var n = curve.TurningPoints(stops, end);
        for (var i = 0; i + 1 < n; i++)
        {
            if (curve.Root(stops[i], stops[i + 1], out var t))
            {
                into.Add(shift + Polish(m, u, c, radius, h2, t, stops[i], stops[i + 1]), face);
            }
        }
    }

    // Newton on the distance itself, which loses fewer bits than the quartic.
    private static double Polish(Vector3 m, Vector3 u, double c, double radius, double h2, double t, double lo, double hi)
    {
        for (var i = 0; i < 3; i++)
        {
            var q = m + (u * t);
            var rho = Math.Sqrt(Math.Max(0, (q.X * q.X) + (q.Y * q.Y) - h2));
            var near = Math.Abs(Tube(rho - c, q.Z) - radius) <= Math.Abs(Tube(rho + c, q.Z) - radius);
            var e = near ? rho - c : rho + c;
            var tube = Math.Sqrt((e * e) + (q.Z * q.Z));
            var slope = rho > 0 && tube > 0 ? ((e / rho * ((q.X * u.X) + (q.Y * u.Y))) + (q.Z * u.Z)) / tube : 0;
            var step = (tube - radius) / slope;
            var next = t - step;
            if (!(next >= lo && next <= hi) || Math.Abs(step) > 1e-3)
            {
                break;
            }

            t = next;
        }

        return t;
    }

    private static double Tube(double e, double z) => Math.Sqrt((e * e) + (z * z));

    // a t^4 + b t^2 + c t + d.
    private readonly record struct Curve(double A, double B, double C, double D)
    {
        internal int TurningPoints(Span<double> stops, double end)
        {
            // Roots of the derivative 4a t^3 + 2b t + c, bracketed between its own turning points.
            Span<double> edges = stackalloc double[4];
            var n = 0;
            edges[n++] = -end;
            var inner = -B / (6 * A);
            if (inner > 0)
            {
                var e = Math.Sqrt(inner);
                if (e < end)
                {
                    edges[n++] = -e;
                    edges[n++] = e;
                }
            }

            edges[n++] = end;
            var count = 0;
            stops[count++] = -end;
            for (var i = 0; i + 1 < n; i++)
            {
                if (Bracket.Root(edges[i], edges[i + 1], this, static (c, t) => (((4 * c.A * t * t) + (2 * c.B)) * t) + c.C, out var t))
                {
                    stops[count++] = t;
                }
            }

            stops[count++] = end;
            return count;
        }

        internal bool Root(double lo, double hi, out double t) =>
            Bracket.Root(lo, hi, this, static (c, t) => (((((c.A * t * t) + c.B) * t) + c.C) * t) + c.D, out t);
    }
}
