namespace Handwheel.Solids.Tests.Oracle;

/// <summary>
/// Interval arithmetic in doubles, rounded outwards by one unit in the last place: what is worked out of enclosures encloses what is worked out of any numbers in them.
/// (R. E. Moore, Interval Analysis, 1966; from memory.)
/// </summary>
internal readonly record struct Enclosure(double Lo, double Hi)
{
    public double Middle => Lo + ((Hi - Lo) / 2);

    public double Width => Hi - Lo;

    public static implicit operator Enclosure(double value) => new(value, value);

    public static Enclosure Of(decimal value) => Out((double)value, (double)value);

    public static Enclosure operator +(Enclosure a, Enclosure b) => Out(a.Lo + b.Lo, a.Hi + b.Hi);

    public static Enclosure operator -(Enclosure a, Enclosure b) => Out(a.Lo - b.Hi, a.Hi - b.Lo);

    public static Enclosure operator -(Enclosure a) => new(-a.Hi, -a.Lo);

    public static Enclosure operator *(Enclosure a, Enclosure b)
    {
        double p = a.Lo * b.Lo, q = a.Lo * b.Hi, r = a.Hi * b.Lo, s = a.Hi * b.Hi;
        return Out(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)));
    }

    public static Enclosure operator /(Enclosure a, Enclosure b)
    {
        if (b.Lo <= 0 && b.Hi >= 0)
        {
            return new(double.NegativeInfinity, double.PositiveInfinity);
        }

        double p = a.Lo / b.Lo, q = a.Lo / b.Hi, r = a.Hi / b.Lo, s = a.Hi / b.Hi;
        return Out(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)));
    }

    public Enclosure Square()
    {
        double a = Lo * Lo, b = Hi * Hi;
        var all = Out(Math.Min(a, b), Math.Max(a, b));
        return new(Lo <= 0 && Hi >= 0 ? 0 : Math.Max(0, all.Lo), all.Hi);
    }

    public Enclosure Sqrt()
    {
        var all = Out(Math.Sqrt(Math.Max(0, Lo)), Math.Sqrt(Math.Max(0, Hi)));
        return all with { Lo = Math.Max(0, all.Lo) };
    }

    public Enclosure Abs() => Lo >= 0 ? this : Hi <= 0 ? -this : new(0, Math.Max(-Lo, Hi));

    public static Enclosure Min(Enclosure a, Enclosure b) => new(Math.Min(a.Lo, b.Lo), Math.Min(a.Hi, b.Hi));

    public static Enclosure Max(Enclosure a, Enclosure b) => new(Math.Max(a.Lo, b.Lo), Math.Max(a.Hi, b.Hi));

    public static Enclosure Hull(Enclosure a, Enclosure b) => new(Math.Min(a.Lo, b.Lo), Math.Max(a.Hi, b.Hi));

    public static Enclosure Hypot(Enclosure a, Enclosure b) => (a.Square() + b.Square()).Sqrt();

    public Enclosure Clamp(double lo, double hi) => new(Math.Clamp(Lo, lo, hi), Math.Clamp(Hi, lo, hi));

    /// <summary>Sine and cosine of every angle in it, from the decimals at its ends and the tops between.</summary>
    public (Enclosure Sin, Enclosure Cos) SinCos()
    {
        var (a, b) = (Exact.SinCos(Lo), Exact.SinCos(Hi));
        var sin = Hull(Of(a.Sin), Of(b.Sin));
        var cos = Hull(Of(a.Cos), Of(b.Cos));
        for (var quarter = Math.Floor(Lo / (Math.PI / 2)) - 1; quarter <= Math.Ceiling(Hi / (Math.PI / 2)) + 1; quarter++)
        {
            var top = quarter * Math.PI / 2;
            if (top >= Lo - 1e-9 && top <= Hi + 1e-9)
            {
                switch ((((int)quarter % 4) + 4) % 4)
                {
                    case 0: cos = cos with { Hi = 1 }; break;
                    case 1: sin = sin with { Hi = 1 }; break;
                    case 2: cos = cos with { Lo = -1 }; break;
                    default: sin = sin with { Lo = -1 }; break;
                }
            }
        }

        return (sin, cos);
    }

    private static Enclosure Out(double lo, double hi) => new(Math.BitDecrement(lo), Math.BitIncrement(hi));
}
