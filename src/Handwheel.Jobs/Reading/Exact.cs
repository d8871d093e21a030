using System.Globalization;
using System.Numerics;

namespace Handwheel.Jobs.Reading;

/// <summary>A number kept as it was typed: a ratio of whole numbers, so that 1.5 in is exactly 38.1 mm. Roots and very long ratios fall back to double.</summary>
internal readonly record struct Exact
{
    private const int MostBits = 512;
    private readonly BigInteger top;
    private readonly BigInteger bottom;
    private readonly double rough;

    private Exact(BigInteger top, BigInteger bottom)
    {
        var shared = BigInteger.GreatestCommonDivisor(top, bottom);
        this.top = bottom.Sign < 0 ? -top / shared : top / shared;
        this.bottom = BigInteger.Abs(bottom / shared);
        rough = 0;
    }

    private Exact(double value)
    {
        top = BigInteger.Zero;
        bottom = BigInteger.Zero;
        rough = value;
    }

    /// <summary>Nothing.</summary>
    public static Exact Zero => new(BigInteger.Zero, BigInteger.One);

    /// <summary>25.4, the millimetres of an inch.</summary>
    public static Exact Inch => Ratio(254, 10);

    /// <summary>Whether it is a whole number.</summary>
    public bool IsWhole => bottom.IsOne;

    private bool IsRatio => bottom.Sign > 0;

    public static Exact Ratio(long top, long bottom) => new(top, bottom);

    public static Exact FromDouble(double value) => new(value);

    // Digits with at most one point, as the lexer lets through.
    public static Exact FromDecimal(string digits)
    {
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        if (point < 0)
        {
            return new Exact(BigInteger.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture), BigInteger.One);
        }

        var all = digits.Remove(point, 1);
        return new Exact(BigInteger.Parse(all, NumberStyles.None, CultureInfo.InvariantCulture), BigInteger.Pow(10, digits.Length - point - 1));
    }

    public static Exact operator +(Exact a, Exact b) =>
        Both(a, b) ? Kept(new Exact((a.top * b.bottom) + (b.top * a.bottom), a.bottom * b.bottom)) : new Exact(a.ToDouble() + b.ToDouble());

    public static Exact operator -(Exact a, Exact b) => a + (-b);

    public static Exact operator -(Exact a) => a.IsRatio ? new Exact(-a.top, a.bottom) : new Exact(-a.rough);

    public static Exact operator *(Exact a, Exact b) =>
        Both(a, b) ? Kept(new Exact(a.top * b.top, a.bottom * b.bottom)) : new Exact(a.ToDouble() * b.ToDouble());

    // A divisor of 0 gives what double gives: an infinity, which the reader answers with a finding.
    public static Exact operator /(Exact a, Exact b) =>
        Both(a, b) && !b.top.IsZero ? Kept(new Exact(a.top * b.bottom, a.bottom * b.top)) : new Exact(a.ToDouble() / b.ToDouble());

    // The root, exact where the ratio is a square of one.
    public Exact Root()
    {
        var root = Math.Sqrt(ToDouble());
        if (IsRatio && top.Sign >= 0 && root is >= 0 and < 1e15)
        {
            var (over, under) = (RoundedRoot(top), RoundedRoot(bottom));
            if (over * over == top && under * under == bottom)
            {
                return new Exact(over, under);
            }
        }

        return new Exact(root);
    }

    // The nearest double.
    public double ToDouble()
    {
        if (!IsRatio)
        {
            return rough;
        }

        if (top.IsZero)
        {
            return 0;
        }

        var shift = 66 - (int)(BigInteger.Abs(top).GetBitLength() - bottom.GetBitLength());
        var over = BigInteger.Abs(top);
        var quotient = shift >= 0
            ? BigInteger.DivRem(over << shift, bottom, out var rest)
            : BigInteger.DivRem(over, bottom << -shift, out rest);
        var spare = (int)quotient.GetBitLength() - 64;
        var sticky = !rest.IsZero || (quotient & ((BigInteger.One << spare) - 1)) != 0;
        var head = (ulong)(quotient >> spare) | (sticky ? 1UL : 0UL);
        var value = Math.ScaleB((double)head, spare - shift);
        return top.Sign < 0 ? -value : value;
    }

    private static bool Both(Exact a, Exact b) => a.IsRatio && b.IsRatio;

    private static Exact Kept(Exact value) =>
        value.top.GetBitLength() > MostBits || value.bottom.GetBitLength() > MostBits ? new Exact(value.ToDouble()) : value;

    private static BigInteger RoundedRoot(BigInteger value) => new(Math.Round(Math.Sqrt((double)value)));
}
