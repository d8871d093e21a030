using Handwheel.Jobs.Findings;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Reading;

// Numbers of a shop: no features stand in its sums. Null, with a finding made, where one is not understood.
internal sealed class ShopNumbers
{
    private readonly NumberReader numbers = new(new FeatureNames());
    private readonly Evaluator evaluator;

    public ShopNumbers(FindingBag bag, LengthUnit unit)
    {
        Unit = unit;
        evaluator = new Evaluator(unit, bag, (_, _, _) => null);
    }

    /// <summary>The shop's unit.</summary>
    public LengthUnit Unit { get; }

    public bool Sees(Cursor c) => numbers.Sees(c);

    public TypedNumber? Take(Cursor c, string expected) => numbers.Take(c, expected);

    public double? Length(Cursor c, string expected) => Checked(c, numbers.Take(c, expected), evaluator.Length);

    public double? Size(Cursor c, string expected) => Checked(c, numbers.Take(c, expected), evaluator.Size);

    public double? SizeOf(Cursor c, TypedNumber number) => Checked(c, number, evaluator.Size);

    public double? Count(Cursor c, TypedNumber number) => Checked(c, number, evaluator.Bare);

    // A bare number above 0.
    public double? Bare(Cursor c, string expected)
    {
        var number = numbers.Take(c, expected);
        var value = Checked(c, number, evaluator.Bare);
        if (value <= 0)
        {
            c.Fail(FindingCatalogue.AbsurdNumber(number!.Where, number.Text, $"{expected} is above 0", "Write it as it is."));
            return null;
        }

        return value;
    }

    // Radians.
    public double? Angle(Cursor c, string expected) => Checked(c, numbers.Take(c, expected), evaluator.Angle) * Math.PI / 180;

    public double? AngleOf(Cursor c, TypedNumber number) => Checked(c, number, evaluator.Angle) * Math.PI / 180;

    // Newtons; the unit is always written.
    public double? Force(Cursor c, string expected) => WithUnit(c, expected, ("N", 1), ("kN", 1000));

    // Watts.
    public double? Power(Cursor c, string expected) => WithUnit(c, expected, ("W", 1), ("kW", 1000));

    private double? WithUnit(Cursor c, string expected, params (string Word, double Factor)[] units)
    {
        var value = Bare(c, expected);
        if (value is null)
        {
            return null;
        }

        foreach (var (word, factor) in units)
        {
            if (c.Take(word))
            {
                return value * factor;
            }
        }

        c.Fail(FindingCatalogue.WrongUnit(c.Here, c.Peek()?.Text ?? string.Empty, string.Join(" or ", units.Select(u => u.Word))));
        return null;
    }

    private static double? Checked(Cursor c, TypedNumber? number, Func<TypedNumber, Exact?> work)
    {
        if (number is null)
        {
            return null;
        }

        var value = work(number);
        if (value is null)
        {
            c.Quiet();
        }

        return value?.ToDouble();
    }

    private static double? Checked(Cursor c, TypedNumber? number, Func<TypedNumber, string?, Exact?> work) => Checked(c, number, n => work(n, null));
}
