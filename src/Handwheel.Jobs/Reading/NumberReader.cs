using System.Globalization;
using Handwheel.Jobs.Findings;
using Handwheel.Trade.Drills;
using Handwheel.Trade.Fits;

namespace Handwheel.Jobs.Reading;

// Reads typed numbers: decimals, fractions, mixed numbers, units, sums in parentheses, limits. Nothing is worked out here.
internal sealed class NumberReader(FeatureNames names)
{
    private const string NumberMend = "Write a number (12.5, .094, 3/32, 1 1/2, a drill's #21), with or without a unit, or a sum in parentheses.";

    public bool Sees(Cursor c) => c.Peek() switch
    {
        { Kind: TokenKind.Number or TokenKind.Comma or TokenKind.Broken } => true,
        { Text: "(" } => true,
        { Kind: TokenKind.Word, Text: ['#', ..] } => true,
        { Text: "+" or "-" } => c.Peek(1) is { Kind: TokenKind.Number or TokenKind.Comma or TokenKind.Broken } or { Text: "(" },
        _ => false,
    };

    // A number; null with a finding where none stands.
    public TypedNumber? Take(Cursor c, string expected)
    {
        var start = c.At;
        var minus = c.TakeAny("-", "+") == "-";
        var sum = c.Sees("(") ? Parenthesis(c, 0, expected) : Literal(c, expected, true);
        if (sum is null)
        {
            return null;
        }

        var where = c.Statement.SpanOf(start, c.At - 1);
        var value = minus ? new Expression.Minus(where, sum.Value.Sum) : sum.Value.Sum;
        return new TypedNumber(value, c.Statement.TextOf(start, c.At - 1), where, sum.Value.Unit);
    }

    // Limits after a number; null where none stand (or, with Failed set, where they are wrong).
    public LimitsDraft? TakeLimits(Cursor c, bool rangeToo)
    {
        var start = c.At;
        LimitsDraft Made(LimitsForm form, TypedNumber? first, TypedNumber? second, string? zone) =>
            new(c.Statement.SpanOf(start, c.At - 1), form, first, second, zone);
        if (c.Take("+/-"))
        {
            return Take(c, "how far the value may lie off") is { } by ? Made(LimitsForm.Around, by, null, null) : null;
        }

        if (rangeToo && c.Take("to"))
        {
            return Take(c, "the greatest value allowed") is { } most ? Made(LimitsForm.Range, null, most, null) : null;
        }

        if (rangeToo && c.Take("at most"))
        {
            return Made(LimitsForm.AtMost, null, null, null);
        }

        if (c.Peek() is { Kind: TokenKind.Word } word && Iso286.IsZone(word.Text))
        {
            c.At++;
            return Made(LimitsForm.Fit, null, null, word.Text);
        }

        return SeesSigned(c) ? Signed(c) is var (first, second) ? Made(LimitsForm.Deviations, first, second, null) : null : null;
    }

    private static bool SeesSigned(Cursor c) => c.Peek() is { Text: "+" or "-" } && c.Peek(1) is { Kind: TokenKind.Number or TokenKind.Comma or TokenKind.Broken };

    private (TypedNumber First, TypedNumber Second)? Signed(Cursor c)
    {
        if (Take(c, "a deviation") is not { } first)
        {
            return null;
        }

        if (!SeesSigned(c))
        {
            c.Fail("a second deviation with its sign", "Limits are two deviations, '+0 -0.05', or one both ways, '+/-0.05'.");
            return null;
        }

        return Take(c, "a second deviation with its sign") is { } second ? (first, second) : null;
    }

    private (Expression Sum, string? Unit)? Parenthesis(Cursor c, int depth, string expected)
    {
        if (depth > ReadingLimits.Depth)
        {
            c.Fail(FindingCatalogue.TooMuch(c.Here, FormattableString.Invariant($"Parentheses stand more than {ReadingLimits.Depth} deep here."), "Write the sum with fewer."));
            return null;
        }

        c.At++;
        if (Sum(c, depth, expected) is not { } sum || !c.Expect(")", "Every '(' has its ')'."))
        {
            return null;
        }

        var start = c.At;
        if (Units.Take(c) is not { } unit)
        {
            return (sum, null);
        }

        var one = new Expression.Literal(c.Statement.SpanOf(start, c.At - 1), Units.One(unit));
        return (new Expression.Joined(sum.Where, '*', sum, one), unit);
    }

    private Expression? Sum(Cursor c, int depth, string expected)
    {
        var left = Product(c, depth, expected);
        while (left is not null && c.TakeAny("+", "-") is { } sign)
        {
            left = Product(c, depth, expected) is { } right ? new Expression.Joined(left.Where, sign[0], left, right) : null;
        }

        return left;
    }

    private Expression? Product(Cursor c, int depth, string expected)
    {
        var left = Factor(c, depth, expected, true);
        while (left is not null && c.TakeAny("*", "/") is { } sign)
        {
            left = Factor(c, depth, expected, sign == "*") is { } right ? new Expression.Joined(left.Where, sign[0], left, right) : null;
        }

        return left;
    }

    private Expression? Factor(Cursor c, int depth, string expected, bool fraction)
    {
        if (c.Peek() is { Text: "-" })
        {
            return Negative(c, depth, expected, fraction);
        }

        if (c.Sees("("))
        {
            return Parenthesis(c, depth + 1, expected)?.Sum;
        }

        if (c.Peek() is { Kind: TokenKind.Word } word)
        {
            return c.Peek(1) is { Text: "(" } && IsFunction(word.Text) ? Called(c, depth, expected) : Reference(c);
        }

        return Literal(c, expected, fraction)?.Sum;
    }

    private Expression? Negative(Cursor c, int depth, string expected, bool fraction)
    {
        var where = c.Here;
        if (depth > ReadingLimits.Depth)
        {
            c.Fail(FindingCatalogue.TooMuch(where, "Too many signs stand one after another here.", "Write the sum with fewer."));
            return null;
        }

        c.At++;
        return Factor(c, depth + 1, expected, fraction) is { } of ? new Expression.Minus(where, of) : null;
    }

    private static bool IsFunction(string word) => word.ToLowerInvariant() is "sqrt" or "sin" or "cos" or "tan";

    private Expression? Called(Cursor c, int depth, string expected)
    {
        var where = c.Here;
        var name = c.Statement.Tokens[c.At++].Text.ToLowerInvariant();
        return Parenthesis(c, depth + 1, expected) is { } of ? new Expression.Called(where, name, of.Sum) : null;
    }

    private Expression? Reference(Cursor c)
    {
        var start = c.At;
        if (names.Take(c) is not { } feature)
        {
            return null;
        }

        var measure = Measures.TakeInSum(c, feature);
        return new Expression.Reference(c.Statement.SpanOf(start, c.At - 1), feature, measure);
    }

    private (Expression Sum, string? Unit)? Literal(Cursor c, string expected, bool fraction)
    {
        var start = c.At;
        if (Drill(c, expected) is { } drill)
        {
            return (new Expression.Literal(c.Statement.SpanOf(start, c.At - 1), Units.Apply(Exact.FromDecimal(drill.DiameterIn.ToString("0.0000", CultureInfo.InvariantCulture)), "in")), "in");
        }

        if (Plain(c, expected, fraction) is not { } value)
        {
            return null;
        }

        if (c.Peek() is { Kind: TokenKind.Word } word && Units.Other.Contains(word.Text.ToLowerInvariant()) && c.Peek(1)?.Is("lbf") != true)
        {
            c.At++;
            c.Fail(FindingCatalogue.WrongUnit(c.Statement.SpanOf(start, c.At - 1), c.Statement.TextOf(start, c.At - 1), "a length in mm, in, thou or um, or an angle in deg"));
            return null;
        }

        var quantity = new Quantity(value, Dimension.Bare);
        var unit = Units.Take(c);
        if (unit is not null)
        {
            quantity = Units.Apply(value, unit);
            quantity = unit == "deg" ? Minutes(c, quantity) : quantity;
        }

        return (new Expression.Literal(c.Statement.SpanOf(start, c.At - 1), quantity), unit);
    }

    // A drill by its number, #21, or where a diameter is asked for by its letter, F.
    private static DrillSize? Drill(Cursor c, string expected)
    {
        if (c.Peek() is not { Kind: TokenKind.Word, Text: var word } || !(word.StartsWith('#') || (word.Length == 1 && expected.StartsWith("its diameter", StringComparison.Ordinal))))
        {
            return null;
        }

        var drill = DrillTable.Find(word);
        c.At += drill is null ? 0 : 1;
        return drill;
    }

    // Minutes and seconds of arc after degrees: 87 deg 57' 30".
    private static Quantity Minutes(Cursor c, Quantity degrees)
    {
        var value = degrees.Value;
        if (c.Peek() is { Kind: TokenKind.Number } minutes && c.Peek(1) is { } mark && (mark.Text == "'" || mark.Is("min")))
        {
            value += Exact.FromDecimal(minutes.Text.TrimEnd('.')) / Exact.Ratio(60, 1);
            c.At += 2;
            if (c.Peek() is { Kind: TokenKind.Number } seconds && c.Peek(1) is { Text: "\"" })
            {
                value += Exact.FromDecimal(seconds.Text.TrimEnd('.')) / Exact.Ratio(3600, 1);
                c.At += 2;
            }
        }

        return degrees with { Value = value };
    }

    private static Exact? Plain(Cursor c, string expected, bool fraction)
    {
        switch (c.Peek())
        {
            case { Kind: TokenKind.Comma } comma:
                c.Fail(FindingCatalogue.Comma(c.Here, comma.Text));
                return null;
            case { Kind: TokenKind.Broken } broken:
                c.Fail(FindingCatalogue.AbsurdNumber(c.Here, broken.Text, "a number is digits with at most one point and no exponent", NumberMend));
                return null;
            case { Kind: TokenKind.Number } number:
                return fraction ? Fraction(c, number) : Digits(c, number);
            default:
                c.Fail(expected, NumberMend);
                return null;
        }
    }

    private static Exact Digits(Cursor c, Token number)
    {
        c.At++;
        return Exact.FromDecimal(number.Text.TrimEnd('.'));
    }

    // 3/32 and 1 1/2 are one number; the stroke stands without spaces.
    private static Exact? Fraction(Cursor c, Token number)
    {
        var start = c.At;
        var value = Digits(c, number);
        if (!value.IsWhole)
        {
            return value;
        }

        if (Stroke(c, 0))
        {
            return Divided(c, start, value);
        }

        // Nobody writes 0 1/2: a fraction after a nought is a number of its own.
        if (value.ToDouble() != 0 && c.Peek() is { Kind: TokenKind.Number, Spaced: true } top && Stroke(c, 1))
        {
            var over = Digits(c, top);
            return Divided(c, start, over) is { } part ? value + part : null;
        }

        return value;
    }

    private static bool Stroke(Cursor c, int ahead) =>
        c.Peek(ahead) is { Text: "/", Spaced: false } && c.Peek(ahead + 1) is { Kind: TokenKind.Number, Spaced: false };

    private static Exact? Divided(Cursor c, int start, Exact top)
    {
        c.At++;
        var under = Digits(c, c.Statement.Tokens[c.At]);
        if (under.ToDouble() == 0)
        {
            c.At--;
            c.Fail(FindingCatalogue.AbsurdNumber(c.Statement.SpanOf(start, c.At), c.Statement.TextOf(start, c.At), "nothing can be divided by 0", NumberMend));
            return null;
        }

        return top / under;
    }
}
