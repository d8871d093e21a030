using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Reading;

// Works sums out. Gives nothing, with a finding already made, where a sum cannot be.
internal sealed class Evaluator(LengthUnit unit, FindingBag bag, Func<FeatureDraft, Measure, SourceSpan, Quantity?> measureOf)
{
    private Exact Scale => unit == LengthUnit.Inch ? Exact.Inch : Exact.Ratio(1, 1);

    // A length in millimetres.
    public Exact? Length(TypedNumber number, string? bareUnit = null)
    {
        if (Work(number.Sum) is not { } value)
        {
            return null;
        }

        var length = value.Dimension switch
        {
            Dimension.Bare when bareUnit is "mm" or "in" or "thou" or "um" => Units.Apply(value.Value, bareUnit).Value,
            Dimension.Bare => value.Value * Scale,
            Dimension.Length => value.Value,
            _ => (Exact?)null,
        };
        if (length is null)
        {
            bag.Add(FindingCatalogue.WrongUnit(number.Where, number.Text, "a length (mm or in)"));
            return null;
        }

        return Sound(number, length.Value, ReadingLimits.Length, "lengths here are under 100 m");
    }

    // A length above 0.
    public Exact? Size(TypedNumber number)
    {
        if (Length(number) is not { } value)
        {
            return null;
        }

        if (value.ToDouble() >= 1e-4)
        {
            return value;
        }

        bag.Add(FindingCatalogue.AbsurdNumber(number.Where, number.Text, value.ToDouble() < 0 ? "a size is not negative" : "a size is above 0", "Write the size as measured, above 0."));
        return null;
    }

    // An angle in degrees.
    public Exact? Angle(TypedNumber number)
    {
        if (Work(number.Sum) is not { } value)
        {
            return null;
        }

        if (value.Dimension is not (Dimension.Bare or Dimension.Angle))
        {
            bag.Add(FindingCatalogue.WrongUnit(number.Where, number.Text, "an angle (deg)"));
            return null;
        }

        return Sound(number, value.Value, 36_000, "angles here are under a hundred turns");
    }

    // A bare number.
    public Exact? Bare(TypedNumber number)
    {
        if (Work(number.Sum) is not { } value)
        {
            return null;
        }

        if (value.Dimension != Dimension.Bare)
        {
            bag.Add(FindingCatalogue.WrongUnit(number.Where, number.Text, "a bare number, without a unit"));
            return null;
        }

        return Sound(number, value.Value, 1e9, "numbers here are under a thousand million");
    }

    public Typed? TypedLength(TypedNumber? number) =>
        number is not null && Length(number) is { } value ? new Typed(value.ToDouble(), number.Text, number.Where) : null;

    public Typed? TypedSize(TypedNumber? number) =>
        number is not null && Size(number) is { } value ? new Typed(value.ToDouble(), number.Text, number.Where) : null;

    public Typed? TypedAngle(TypedNumber? number) =>
        number is not null && Angle(number) is { } value ? new Typed(value.ToDouble() * Math.PI / 180, number.Text, number.Where) : null;

    private Exact? Sound(TypedNumber number, Exact value, double most, string why)
    {
        var size = Math.Abs(value.ToDouble());
        if (size <= most)
        {
            return value;
        }

        bag.Add(FindingCatalogue.AbsurdNumber(number.Where, Short(number.Text), double.IsFinite(size) ? why : "this has no value", "Write the number that is meant."));
        return null;
    }

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "...";

    private Quantity? Work(Expression sum) => sum switch
    {
        Expression.Literal literal => literal.Value,
        Expression.Minus minus => Work(minus.Of) is { } value ? value with { Value = -value.Value } : null,
        Expression.Reference reference => measureOf(reference.Feature, reference.Measure, reference.Where),
        Expression.Called called => Work(called.Of) is { } value ? Function(called, value) : null,
        Expression.Joined joined => Joined(joined),
        _ => null,
    };

    // A long sum leans to the left: walked in a loop, so that its length is no depth.
    private Quantity? Joined(Expression.Joined joined)
    {
        var rest = new Stack<Expression.Joined>();
        Expression first = joined;
        while (first is Expression.Joined more)
        {
            rest.Push(more);
            first = more.Left;
        }

        var value = Work(first);
        while (value is not null && rest.TryPop(out var next))
        {
            value = Work(next.Right) is { } right ? Join(next, value.Value, right) : null;
        }

        return value;
    }

    private Quantity? Join(Expression.Joined joined, Quantity left, Quantity right) => joined.Sign switch
    {
        '+' or '-' => Added(joined, left, right),
        '*' => Multiplied(joined, left, right),
        _ => Divided(joined, left, right),
    };

    private Quantity? Added(Expression.Joined joined, Quantity left, Quantity right)
    {
        (left, right) = (Like(left, right), Like(right, left));
        if (left.Dimension != right.Dimension)
        {
            return Mixed(joined, $"{Said(left)} and {Said(right)} cannot be added");
        }

        return left with { Value = joined.Sign == '+' ? left.Value + right.Value : left.Value - right.Value };
    }

    // A bare number takes the kind of what it is added to.
    private Quantity Like(Quantity bare, Quantity other) => (bare.Dimension, other.Dimension) switch
    {
        (Dimension.Bare, Dimension.Length) => new Quantity(bare.Value * Scale, Dimension.Length),
        (Dimension.Bare, Dimension.Area) => new Quantity(bare.Value * Scale * Scale, Dimension.Area),
        (Dimension.Bare, Dimension.Angle) => new Quantity(bare.Value, Dimension.Angle),
        _ => bare,
    };

    private Quantity? Multiplied(Expression.Joined joined, Quantity left, Quantity right)
    {
        var value = left.Value * right.Value;
        return (left.Dimension, right.Dimension) switch
        {
            (Dimension.Bare, var other) => new Quantity(value, other),
            (var other, Dimension.Bare) => new Quantity(value, other),
            (Dimension.Length, Dimension.Length) => new Quantity(value, Dimension.Area),
            _ => Mixed(joined, $"{Said(left)} times {Said(right)} is nothing that can be set"),
        };
    }

    private Quantity? Divided(Expression.Joined joined, Quantity left, Quantity right)
    {
        if (right.Value.ToDouble() == 0)
        {
            return Mixed(joined, "nothing can be divided by 0");
        }

        var value = left.Value / right.Value;
        return (left.Dimension, right.Dimension) switch
        {
            (var other, Dimension.Bare) => new Quantity(value, other),
            (Dimension.Area, Dimension.Length) => new Quantity(value, Dimension.Length),
            var (over, under) when over == under => new Quantity(value, Dimension.Bare),
            _ => Mixed(joined, $"{Said(left)} divided by {Said(right)} is nothing that can be set"),
        };
    }

    private Quantity? Function(Expression.Called called, Quantity value)
    {
        if (called.Name == "sqrt")
        {
            return value switch
            {
                _ when value.Value.ToDouble() < 0 => Mixed(called, "a negative number has no root"),
                { Dimension: Dimension.Bare } => value with { Value = value.Value.Root() },
                { Dimension: Dimension.Area } => new Quantity(value.Value.Root(), Dimension.Length),
                _ => Mixed(called, $"{Said(value)} has no root that can be set"),
            };
        }

        if (value.Dimension is not (Dimension.Bare or Dimension.Angle))
        {
            return Mixed(called, $"{called.Name} takes an angle");
        }

        var angle = value.Value.ToDouble() * Math.PI / 180;
        var result = called.Name switch { "sin" => Math.Sin(angle), "cos" => Math.Cos(angle), _ => Math.Tan(angle) };
        return new Quantity(Exact.FromDouble(result), Dimension.Bare);
    }

    private Quantity? Mixed(Expression at, string why)
    {
        bag.Add(FindingCatalogue.AbsurdNumber(at.Where, "this sum", why, "Write the sum so that it gives one length or one angle."));
        return null;
    }

    private static string Said(Quantity value) => value.Dimension switch
    {
        Dimension.Length => "a length",
        Dimension.Area => "an area",
        Dimension.Angle => "an angle",
        _ => "a bare number",
    };
}
