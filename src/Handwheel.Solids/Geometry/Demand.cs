using System.Runtime.CompilerServices;

namespace Handwheel.Solids.Geometry;

// What the engine asks of numbers given to it; a caller's mistake throws.
internal static class Demand
{
    // Sizes beyond this are no workshop's: ten thousand kilometres, and squares still far from overflow.
    private const double Largest = 1e10;

    internal static void Finite(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        if (!(Math.Abs(value) <= Largest))
        {
            throw new ArgumentOutOfRangeException(name, value, "A number of at most 1e10 is wanted.");
        }
    }

    internal static void Finite(Point3 p, [CallerArgumentExpression(nameof(p))] string? name = null)
    {
        Finite(p.X, name);
        Finite(p.Y, name);
        Finite(p.Z, name);
    }

    internal static void Finite(Point2 p, [CallerArgumentExpression(nameof(p))] string? name = null)
    {
        Finite(p.X, name);
        Finite(p.Y, name);
    }

    internal static void Positive(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        Finite(value, name);
        if (!(value > 0))
        {
            throw new ArgumentOutOfRangeException(name, value, "A number above 0 is wanted.");
        }
    }

    internal static void NotNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null)
    {
        Finite(value, name);
        if (!(value >= 0))
        {
            throw new ArgumentOutOfRangeException(name, value, "A number not below 0 is wanted.");
        }
    }

    internal static void Ordered(double lower, double upper, [CallerArgumentExpression(nameof(upper))] string? name = null)
    {
        Finite(lower, name);
        Finite(upper, name);
        if (!(upper > lower))
        {
            throw new ArgumentOutOfRangeException(name, upper, "The upper end must lie above the lower.");
        }
    }
}
