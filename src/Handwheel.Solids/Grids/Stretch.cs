using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Handwheel.Solids.Grids;

// An open interval on each of four neighbouring lines; empty where From is not below To. Lines lie at distances h from a centre, along them runs t.
internal readonly struct Stretch
{
    internal Stretch(Vector256<double> from, Vector256<double> to)
    {
        From = from;
        To = to;
    }

    internal Vector256<double> From { get; }

    internal Vector256<double> To { get; }

    internal static Stretch None
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => new(Vector256.Create(double.PositiveInfinity), Vector256.Create(double.NegativeInfinity));
    }

    // The chord of a circle about t = x: none where the line passes by or touches.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Stretch Chord(double x, Vector256<double> h, double radius)
    {
        var half = HalfChord(h, radius);
        var centre = Vector256.Create(x);
        return new Stretch(centre - half, centre + half).Where(Vector256.GreaterThan(half, Vector256<double>.Zero));
    }

    // Half the chord of a circle, 0 where there is none.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector256<double> HalfChord(Vector256<double> h, double radius)
    {
        var r = Vector256.Create(radius);
        var meets = Vector256.LessThan(Vector256.Abs(h), r);
        return Vector256.Sqrt((r - h) * (r + h)) & meets;
    }

    // Where least <= c0 + c1 t <= most.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Stretch Between(Vector256<double> c0, double c1, double least, double most)
    {
        Vector256<double> lo = Vector256.Create(least), hi = Vector256.Create(most);
        if (c1 == 0)
        {
            return new Stretch(Vector256.Create(double.NegativeInfinity), Vector256.Create(double.PositiveInfinity))
                .Where(Vector256.GreaterThanOrEqual(c0, lo) & Vector256.LessThanOrEqual(c0, hi));
        }

        var slope = Vector256.Create(c1);
        Vector256<double> a = (lo - c0) / slope, b = (hi - c0) / slope;
        return c1 > 0 ? new(a, b) : new(b, a);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Stretch Where(Vector256<double> mask) => new(
        Vector256.ConditionalSelect(mask, From, None.From),
        Vector256.ConditionalSelect(mask, To, None.To));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Stretch And(Stretch other) => new(Vector256.Max(From, other.From), Vector256.Min(To, other.To));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Stretch Hull(Stretch other) => new(Vector256.Min(From, other.From), Vector256.Max(To, other.To));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Stretch Moved(double from, double to) => new(From + Vector256.Create(from), To + Vector256.Create(to));

    // Infinite the wrong way round where nothing lies between the ends.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Stretch Proper() => Where(Vector256.LessThan(From, To));
}
