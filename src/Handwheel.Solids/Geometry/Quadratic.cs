namespace Handwheel.Solids.Geometry;

// a t^2 + 2 b t + c, solved without cancellation.
internal static class Quadratic
{
    // The two roots in order; false when there are none or a double one (a touch), or when a is 0.
    internal static bool Roots(double a, double b, double c, out double t0, out double t1)
    {
        var d = Discriminant(a, b, c);
        if (!(d > 0) || a == 0)
        {
            t0 = t1 = double.NaN;
            return false;
        }

        var q = b >= 0 ? -(b + Math.Sqrt(d)) : Math.Sqrt(d) - b;
        var first = q / a;
        var second = c / q;
        t0 = Math.Min(first, second);
        t1 = Math.Max(first, second);
        return true;
    }

    // b^2 - a c with the error of the products carried (Kahan's formula).
    internal static double Discriminant(double a, double b, double c)
    {
        var ac = a * c;
        var slip = Math.FusedMultiplyAdd(-a, c, ac);
        return Math.FusedMultiplyAdd(b, b, -ac) + slip;
    }
}
