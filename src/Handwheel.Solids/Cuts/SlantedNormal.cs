using Handwheel.Solids.Cutters;
using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cuts;

// Outward unit normals of a cutter carried along a straight path that climbs or falls. Every surface that can bound the sweep is asked how far it
// misses the place: the layer's own at both ends, its rims carried along, its side where the path only touches it. The nearest one counts that has the
// solid on one side and not on the other.
internal readonly struct SlantedNormal(Vector3 d, Point3 at, Func<Point3, bool> holds)
{
    private const double Near = 1e-5;
    private readonly List<(double Miss, Vector3 Normal)> found = [];

    internal static Vector3 Of(ReadOnlySpan<Slab> slabs, CutterPath path, int piece, Point3 at, Func<Point3, bool> holds)
    {
        var search = new SlantedNormal(path.To - path.From, at, holds);
        foreach (var slab in slabs)
        {
            if (slab.Face / 4 == piece)
            {
                search.Layer(slab, at - path.From);
            }
        }

        return search.Best();
    }

    private Vector3 Best() =>
        NearestNormal.Of(found, holds, at) is { } best ? best.Normal : found.Count > 0 ? found.MinBy(f => f.Miss).Normal : new(0, 0, 1);

    private void Layer(Slab s, Vector3 q)
    {
        Standing(s, q);
        Standing(s, q - d);
        if (d.Z != 0)
        {
            Rim(q, s.Z0, s.R0);
            Rim(q, s.Z1, s.R1);
            Rim(q, s.Z0, s.Inner0);
            Rim(q, s.Z1, s.Inner1);
        }

        var share = s.IsTorus ? TorusContact(s, q) : QuadricContact(s, q);
        if (share is >= 0 and <= 1)
        {
            Side(s, q - (d * share));
        }
    }

    private void Standing(Slab s, Vector3 g)
    {
        Side(s, g);
        Keep(Math.Abs(g.Z - s.Z0), new(0, 0, -1));
        Keep(Math.Abs(g.Z - s.Z1), new(0, 0, 1));
        if (s.IsHollow && Within(s, g.Z))
        {
            var k = s.InnerSlopeAt(g.Z);
            Keep(Math.Abs(Rho(g) - s.InnerAt(g.Z)) / Math.Sqrt(1 + (k * k)), -SweepNormal.Flank(new(g.X, g.Y), k));
        }
    }

    private void Side(Slab s, Vector3 g)
    {
        if (!Within(s, g.Z))
        {
            return;
        }

        if (s.IsTorus || s.C == -1)
        {
            double e = Rho(g) - s.CentreRadius, h = g.Z - s.CentreZ, away = Math.Sqrt((e * e) + (h * h));
            var rho = Math.Max(Rho(g), double.Epsilon);
            var n = new Vector3(g.X / rho * e, g.Y / rho * e, h).ToUnit();
            Keep(Math.Abs(away - s.ArcRadius), s.Bulges ? n : -n);
            return;
        }

        var k = s.SlopeAt(g.Z);
        Keep(Math.Abs(Rho(g) - s.RadiusAt(g.Z)) / Math.Sqrt(1 + (k * k)), SweepNormal.Flank(new(g.X, g.Y), k));
    }

    // A level circle carried along d: the normal is square to its tangent and to d.
    private void Rim(Vector3 q, double z, double radius)
    {
        var share = (q.Z - z) / d.Z;
        if (radius > 0 && share is > -1e-9 and < 1 + 1e-9)
        {
            var g = q - (d * share);
            Keep(Math.Abs(Rho(g) - radius), new Vector3(-g.Y, g.X, 0).Cross(d).ToUnit());
        }
    }

    private void Keep(double miss, Vector3 normal)
    {
        if (miss < Near && normal.Length > 0.5)
        {
            found.Add((miss, normal));
        }
    }

    private static bool Within(Slab s, double z) => z >= s.Z0 - 1e-9 && z <= s.Z1 + 1e-9;

    private static double Rho(Vector3 g) => Math.Sqrt((g.X * g.X) + (g.Y * g.Y));

    // The place of the path that makes the quadric least.
    private double QuadricContact(Slab s, Vector3 q)
    {
        var dd = (d.X * d.X) + (d.Y * d.Y) - (s.C * d.Z * d.Z);
        return dd > 0 ? ((q.X * d.X) + (q.Y * d.Y) - (s.C * q.Z * d.Z) - (s.B * d.Z / 2)) / dd : double.NaN;
    }

    // The place of the path nearest to the corner's core disc: the squared distance's slope grows.
    private double TorusContact(Slab s, Vector3 q)
    {
        double a = 0, b = 1;
        for (var i = 0; i < 60; i++)
        {
            var m = (a + b) / 2;
            var g = q - (d * m);
            double rho = Rho(g), e = rho - s.CentreRadius;
            var slope = (-(g.Z - s.CentreZ) * d.Z) - (e > 0 ? e / rho * ((g.X * d.X) + (g.Y * d.Y)) : 0);
            (a, b) = slope < 0 ? (m, b) : (a, m);
        }

        return (a + b) / 2;
    }
}
