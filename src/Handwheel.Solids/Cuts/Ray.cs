using Handwheel.Solids.Geometry;

namespace Handwheel.Solids.Cuts;

// A line p + t u in the cutter's frame, relative to a place of the path, with the part of it that counts.
internal readonly record struct Ray(Vector3 P, Vector3 U, double Lo, double Hi)
{
    internal Vector3 At(double t) => P + (U * t);

    // The part where c0 + c1 t lies in min..max.
    internal Ray Clip(double c0, double c1, double min, double max)
    {
        double lo = Lo, hi = Hi;
        return Box3.Slab(c0, c1, min, max, ref lo, ref hi) ? this with { Lo = lo, Hi = hi } : this with { Lo = 1, Hi = 0 };
    }

    internal bool IsEmpty => !(Lo <= Hi);

    internal Ray Slide(Vector3 d, double s0, double s1) => this with { P = P - (d * s0), U = U - (d * s1) };
}
