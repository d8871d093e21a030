namespace Handwheel.Solids.Cutters;

// One monotone layer of a solid of revolution: rho <= r(z) for z in Z0..Z1, r straight (a quadric A + B z + C z^2 for r^2) or circular.
internal sealed class Slab
{
    internal required double Z0 { get; init; }

    internal required double Z1 { get; init; }

    internal required double R0 { get; init; }

    internal required double R1 { get; init; }

    // r(z)^2 = A + B z + C z^2 for straight pieces and balls.
    internal double A { get; init; }

    internal double B { get; init; }

    internal double C { get; init; }

    // Circular with its centre off the axis, or bulging inwards: not a quadric.
    internal bool IsTorus { get; init; }

    internal double CentreRadius { get; init; }

    internal double CentreZ { get; init; }

    internal double ArcRadius { get; init; }

    internal bool Bulges { get; init; }

    internal double Inner0 { get; init; }

    internal double Inner1 { get; init; }

    // A circular inner side; its radius 0 when straight.
    internal double InnerArcRadius { get; init; }

    internal double InnerCentreRadius { get; init; }

    internal double InnerCentreZ { get; init; }

    internal bool InnerBulges { get; init; }

    internal bool InnerIsArc => InnerArcRadius > 0;

    // Faces of the slab: Face outer side, +1 bottom, +2 top, +3 inner side.
    internal int Face { get; init; }

    internal bool IsHollow => Inner0 > 0 || Inner1 > 0 || InnerIsArc;

    internal bool IsConvex => !IsHollow && (!IsTorus || Bulges);

    internal double GreatestRadius => Math.Max(R0, R1);

    internal double RadiusAt(double z)
    {
        if (IsTorus || C == -1)
        {
            var h = z - CentreZ;
            var x = Math.Sqrt(Math.Max(0, (ArcRadius - h) * (ArcRadius + h)));
            return Bulges ? CentreRadius + x : CentreRadius - x;
        }

        return R0 == R1 ? R0 : R0 + ((R1 - R0) * ((z - Z0) / (Z1 - Z0)));
    }

    internal double InnerAt(double z)
    {
        if (InnerIsArc)
        {
            var h = z - InnerCentreZ;
            var x = Math.Sqrt(Math.Max(0, (InnerArcRadius - h) * (InnerArcRadius + h)));
            return InnerBulges ? InnerCentreRadius + x : InnerCentreRadius - x;
        }

        return Inner0 == Inner1 ? Inner0 : Inner0 + ((Inner1 - Inner0) * ((z - Z0) / (Z1 - Z0)));
    }

    // The slope of the inner radius over height; infinite at a pole.
    internal double InnerSlopeAt(double z)
    {
        if (InnerIsArc)
        {
            var h = z - InnerCentreZ;
            var x = Math.Sqrt(Math.Max(0, (InnerArcRadius - h) * (InnerArcRadius + h)));
            return (InnerBulges ? -h : h) / x;
        }

        return (Inner1 - Inner0) / (Z1 - Z0);
    }

    // dr/dz at a height; infinite at a pole.
    internal double SlopeAt(double z)
    {
        if (IsTorus || C == -1)
        {
            var h = z - CentreZ;
            var x = Math.Sqrt(Math.Max(0, (ArcRadius - h) * (ArcRadius + h)));
            return (Bulges ? -h : h) / x;
        }

        return (R1 - R0) / (Z1 - Z0);
    }

    // Whether a slanted path has no exact form for the layer: an inward arc, or a ring with a rounded side.
    internal bool WantsChords => IsHollow ? IsTorus || InnerIsArc : IsTorus && !Bulges;

    // The layer's arcs as frusta that stay within a distance of it: the sagitta of a chord over angle a is R (1 - cos(a/2)).
    internal IEnumerable<Slab> InChords(double error)
    {
        if (!WantsChords)
        {
            yield return this;
            yield break;
        }

        var heights = new SortedSet<double> { Z0, Z1 };
        if (IsTorus)
        {
            Divide(CentreZ, ArcRadius, error, heights);
        }

        if (InnerIsArc)
        {
            Divide(InnerCentreZ, InnerArcRadius, error, heights);
        }

        var low = Z0;
        foreach (var high in heights.Skip(1))
        {
            double r0 = RadiusAt(low), r1 = RadiusAt(high), k = (r1 - r0) / (high - low), r = r0 - (k * low);
            var ball = C == -1;
            yield return new Slab
            {
                Z0 = low,
                Z1 = high,
                R0 = r0,
                R1 = r1,
                A = ball ? A : r * r,
                B = ball ? B : 2 * r * k,
                C = ball ? C : k * k,
                CentreZ = CentreZ,
                ArcRadius = ball ? ArcRadius : 0,
                Bulges = Bulges,
                Inner0 = IsHollow ? InnerAt(low) : 0,
                Inner1 = IsHollow ? InnerAt(high) : 0,
                Face = Face,
            };
            low = high;
        }
    }

    // How far the chords of InChords are really off: more than asked where an arc is so large that there would be too many.
    internal double ChordsOff(double error) => !WantsChords ? 0
        : Math.Max(IsTorus ? Off(CentreZ, ArcRadius, error) : 0, InnerIsArc ? Off(InnerCentreZ, InnerArcRadius, error) : 0);

    private double Off(double centre, double radius, double error)
    {
        var (a0, a1, n) = Chords(centre, radius, error);
        var half = Math.Sin((a1 - a0) / n / 4);
        return Math.Max(error, 2 * radius * half * half);
    }

    private (double From, double To, int Count) Chords(double centre, double radius, double error)
    {
        const int most = 20_000;
        double a0 = Math.Asin(Math.Clamp((Z0 - centre) / radius, -1, 1)), a1 = Math.Asin(Math.Clamp((Z1 - centre) / radius, -1, 1));
        var step = 2 * Math.Acos(1 - (Math.Min(error, radius) / radius));
        return (a0, a1, step > 0 ? (int)Math.Clamp(Math.Ceiling((a1 - a0) / step), 1, most) : most);
    }

    private void Divide(double centre, double radius, double error, SortedSet<double> into)
    {
        var (a0, a1, n) = Chords(centre, radius, error);
        for (var i = 1; i < n; i++)
        {
            var z = centre + (radius * Math.Sin(a0 + ((a1 - a0) * i / n)));
            if (z > Z0 && z < Z1)
            {
                into.Add(z);
            }
        }
    }

    // The layer as cylinders stacked, each with the radii at its middle: how far one may be off, measured along the profile's normal, comes with it.
    // The corner of a step dz by dr lies dz dr / (2 sqrt(dz^2 + dr^2)) off the chord through the steps' middles, and the arc at most its sagitta off that.
    internal IEnumerable<(Slab Step, double Off)> InSteps(double error)
    {
        const int most = 4000;
        if (!IsHollow && (C == -1 || (R0 == R1 && !IsTorus)))
        {
            yield return (this, 0);
            yield break;
        }

        for (double z = Z0, dz = Z1 - Z0; z < Z1;)
        {
            // Halved until it is near enough, then twice as much is tried for the next.
            dz = Math.Min(dz * 2, Z1 - z);
            while (OffOver(z, z + dz) > error && dz > (Z1 - Z0) / most)
            {
                dz /= 2;
            }

            var top = Z1 - z - dz < 1e-3 * dz ? Z1 : z + dz;
            double r = RadiusAt((z + top) / 2), inner = IsHollow ? InnerAt((z + top) / 2) : 0;
            yield return (new Slab { Z0 = z, Z1 = top, R0 = r, R1 = r, A = r * r, Inner0 = inner, Inner1 = inner, Face = Face }, OffOver(z, top));
            z = top;
        }
    }

    private double OffOver(double low, double high) => Math.Max(Off(low, high, RadiusAt), IsHollow ? Off(low, high, InnerAt) : 0);

    private static double Off(double low, double high, Func<double, double> radius)
    {
        double middle = radius((low + high) / 2), half = (high - low) / 2;
        double a = Math.Abs(radius(low) - middle), b = Math.Abs(radius(high) - middle);
        return Math.Max(a * half / Math.Sqrt((a * a) + (half * half)), b * half / Math.Sqrt((b * b) + (half * half)));
    }

    internal static Slab[] Of(IReadOnlyList<ProfilePiece> pieces, bool cuttingOnly)
    {
        var slabs = new List<Slab>();
        for (var i = 0; i < pieces.Count; i++)
        {
            var p = pieces[i];
            if (cuttingOnly && !p.Cuts)
            {
                continue;
            }

            // Cut where an arc turns back, so that radii only grow or only shrink within a layer.
            var low = p.Z0;
            var outer = p.IsArc ? p.CentreZ : p.Z1;
            var inner = p.InnerArcRadius > 0 ? p.InnerCentreZ : p.Z1;
            foreach (var high in (ReadOnlySpan<double>)[Math.Min(outer, inner), Math.Max(outer, inner), p.Z1])
            {
                if (high > low && high <= p.Z1)
                {
                    slabs.Add(Of(p, low, high, i * 4));
                    low = high;
                }
            }
        }

        return [.. slabs];
    }

    private static Slab Of(ProfilePiece p, double z0, double z1, int face)
    {
        var k = p.IsArc ? 0 : (p.Radius1 - p.Radius0) / (p.Z1 - p.Z0);
        var r = p.Radius0 - (k * p.Z0);
        var ball = p is { IsArc: true, Bulges: true, CentreRadius: 0 };
        return new Slab
        {
            Z0 = z0,
            Z1 = z1,
            R0 = p.RadiusAt(z0),
            R1 = p.RadiusAt(z1),
            A = ball ? (p.ArcRadius * p.ArcRadius) - (p.CentreZ * p.CentreZ) : r * r,
            B = ball ? 2 * p.CentreZ : 2 * r * k,
            C = ball ? -1 : k * k,
            IsTorus = p.IsArc && !ball,
            CentreRadius = p.CentreRadius,
            CentreZ = p.CentreZ,
            ArcRadius = p.ArcRadius,
            Bulges = p.Bulges,
            Inner0 = p.IsHollow ? p.InnerAt(z0) : 0,
            Inner1 = p.IsHollow ? p.InnerAt(z1) : 0,
            InnerArcRadius = p.InnerArcRadius,
            InnerCentreRadius = p.InnerCentreRadius,
            InnerCentreZ = p.InnerCentreZ,
            InnerBulges = p.InnerBulges,
            Face = face,
        };
    }
}
