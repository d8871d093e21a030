namespace Handwheel.Solids.Cuts;

// Roots between brackets: the ITP-like mix of secant and halving that never leaves its bracket.
internal static class Bracket
{
    // A sign change of f between lo and hi; false when both ends have one sign. Ends at the last bits of t.
    internal static bool Root<T>(double lo, double hi, in T on, Func<T, double, double> f, out double t)
    {
        double a = lo, b = hi, fa = f(on, a), fb = f(on, b);
        t = a;
        if (fa == 0)
        {
            return true;
        }

        if (fb == 0)
        {
            t = b;
            return true;
        }

        if (!(fa < 0 != fb < 0) || double.IsNaN(fa + fb))
        {
            return false;
        }

        for (var i = 0; i < 200; i++)
        {
            var middle = 0.5 * (a + b);
            if (middle <= a || middle >= b)
            {
                break;
            }

            var guess = (i & 1) == 0 ? a - (fa * (b - a) / (fb - fa)) : middle;
            if (!(guess > a && guess < b))
            {
                guess = middle;
            }

            var fg = f(on, guess);
            if (fg == 0)
            {
                t = guess;
                return true;
            }

            if (fg < 0 == fa < 0)
            {
                a = guess;
                fa = fg;
            }
            else
            {
                b = guess;
                fb = fg;
            }
        }

        t = Math.Abs(fa) <= Math.Abs(fb) ? a : b;
        return true;
    }
}
