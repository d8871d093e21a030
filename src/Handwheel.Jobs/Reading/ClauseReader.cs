using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Reading;

// Reads the clauses of a step's line; each verb says which it takes.
internal sealed class ClauseReader(FeatureNames names, NumberReader numbers, Evaluator evaluator)
{
    // Reads to the end of the line. False, with a finding made, where something does not belong.
    public bool Read(Cursor c, Clauses into, string verb, params string[] taken)
    {
        while (!c.AtEnd)
        {
            c.SkipCommas();
            _ = into.Said.Count > 0 && c.Take("and");
            if (c.AtEnd)
            {
                break;
            }

            var where = c.Here;
            var start = c.At;
            var said = One(c, into);
            if (c.Failed)
            {
                return false;
            }

            if (said is null || !taken.Contains(said))
            {
                c.At = start;
                c.Fail(Expected(taken), $"Such as: '{Example(verb)}'.");
                return false;
            }

            if (!into.Said.TryAdd(said, where) && said is not ("clear" or "edges"))
            {
                c.Report(FindingCatalogue.SaidTwice(where, $"'{said}'", into.Said[said]));
            }
        }

        return !c.Failed;
    }

    private static string Expected(string[] taken) => taken.Length == 0 ? "nothing more" : string.Join(", ", taken.Select(Shown));

    private static string Example(string verb) => verb switch
    {
        "face" => "face arm to -8 with em10, 1.0 a pass, 0.3 clear of hub, from the bar's end",
        "side" => "side arm, both flanks, to -13.4 with em10, 1.0 a pass",
        "slot" or "pocket" => $"{verb} seat to -4 with em6, 0.5 a pass, allow 0.1",
        "round" => "round hub to -8 with em10, 1.0 a pass, allow 0.2",
        "flats" => "flats head with em16, 1.0 a pass",
        "bites" => "bites grips to -12 with em6, 0.5 a pass",
        "spot" => "spot hub, pin",
        "drill" => "drill pin to -14.5 with d2.9, peck 1.5",
        "ream" => "ream pin through with r3",
        "bore" => "bore pin to 8 across with bar8, 0.3 a pass, allow 0.1",
        "countersink" => "countersink pin to 8 across with cs10",
        "counterbore" => "counterbore head to -6 with cb11",
        "tap" => "tap screw through with tap6",
        "saw" => "saw under arm with saw1, from near side, web 0.3 along far flank, allow 0.1",
        "chamfer" => "chamfer hub 0.5 with ch8",
        "broach" => "broach socket to -6 with sq4",
        "press" => "press socket with sq4, square to the bar's side",
        "turn" => "turn rotary clockwise once at x 9.99, y 0, z -8 with em10",
        _ => $"{verb} x to 12.5 with em10",
    };

    private static string Shown(string clause) => clause switch
    {
        "to" => "'to' a height",
        "with" => "'with' a cutter",
        "pass" => "'1.0 a pass'",
        "allow" => "'allow 0.2'",
        "clear" => "'0.3 clear of' a feature",
        "from" => "'from' a side",
        "across" => "'to 8 across'",
        "edges" => "'both flanks', 'near side' or other edges",
        "web" => "'web 0.3 along far flank'",
        "square" => "'square to'",
        "peck" => "'peck 2'",
        "speed" => "'at 900 rpm'",
        _ => $"'{clause}'",
    };

    private string? One(Cursor c, Clauses into) =>
        c.TakeAny("to", "through", "with", "allow", "peck", "inside", "at", "web", "square to", "from") is { } word ? Worded(c, into, word)
        : c.TakeAny("both flanks", "near flank", "far flank", "near side", "far side", "left end", "right end", "all sides", "all round", "all") is { } edge ? Edge(into, edge)
        : numbers.Sees(c) ? Numbered(c, into) : null;

    private string? Worded(Cursor c, Clauses into, string word)
    {
        switch (word)
        {
            case "to":
                return To(c, into);
            case "through":
                into.Through = true;
                return "through";
            case "with":
                return With(c, into);
            case "allow":
                return (into.Allow = Value(c, "the metal left")) is null ? null : "allow";
            case "peck":
                return (into.Peck = Value(c, "the depth of one peck")) is null ? null : "peck";
            case "inside":
                into.Inside = true;
                return "inside";
            case "at":
                return At(c, into);
            case "web":
                return Web(c, into);
            case "square to":
                return SquareTo(c, into);
            default:
                return From(c, into);
        }
    }

    private string? To(Cursor c, Clauses into)
    {
        var number = numbers.Take(c, "a height");
        if (!c.AtEnd && c.Take("across"))
        {
            return (into.Across = Checked(c, evaluator.TypedSize(number))) is null ? null : "across";
        }

        return (into.To = Checked(c, evaluator.TypedLength(number))) is null ? null : "to";
    }

    private static string? With(Cursor c, Clauses into)
    {
        if (c.TakePiece() is not { } piece)
        {
            c.Fail("the name of a cutter", "Write 'with' and a cutter of the shop.");
            return null;
        }

        (into.Cutter, into.CutterWhere) = (piece.Text, piece.Where);
        return "with";
    }

    private string? At(Cursor c, Clauses into)
    {
        var number = numbers.Take(c, "a height, or a speed in rpm");
        if (number is not null && c.Take("rpm"))
        {
            into.Speed = evaluator.Bare(number) is { } speed ? new Typed(speed.ToDouble(), number.Text, number.Where) : null;
            return "speed";
        }

        return (into.At = Checked(c, evaluator.TypedLength(number))) is null ? null : "at";
    }

    private string? Web(Cursor c, Clauses into)
    {
        into.Web = Value(c, "how thick a web is left");
        if (into.Web is null || !c.Expect("along", "Write 'web 0.3 along far flank'."))
        {
            return null;
        }

        _ = c.Take("the");
        into.WebAlong = c.TakeAny("far flank", "near flank", "far side", "near side", "left end", "right end");
        if (into.WebAlong is null)
        {
            c.Fail("'far flank', 'near flank', 'far side', 'near side', 'left end' or 'right end'", "Write where the web stays: 'web 0.3 along far flank'.");
        }

        return "web";
    }

    private static string? From(Cursor c, Clauses into)
    {
        _ = c.Take("the");
        into.From = c.TakeAny("bar's end", "end of the bar", "end", "near side", "near", "far side", "far", "left end", "left", "right end", "right") switch
        {
            "bar's end" or "end of the bar" or "end" => "end",
            "near side" or "near" => "near",
            "far side" or "far" => "far",
            "left end" or "left" => "left",
            "right end" or "right" => "right",
            _ => null,
        };
        if (into.From is null)
        {
            c.Fail("'the bar's end', 'near side', 'far side', 'left end' or 'right end'", "Write the side it comes in from: 'from near side'.");
        }

        return "from";
    }

    private static string? SquareTo(Cursor c, Clauses into)
    {
        var start = c.At;
        while (!c.AtEnd && !c.Sees(","))
        {
            c.At++;
        }

        into.SquareTo = c.Statement.TextOf(start, c.At - 1);
        if (into.SquareTo.Length == 0)
        {
            c.Fail("what it is set square to", "Write 'square to the bar's side'.");
        }

        return "square";
    }

    private static string Edge(Clauses into, string edge)
    {
        into.Edges.AddRange(edge switch
        {
            "both flanks" => ["near flank", "far flank"],
            "near side" => ["near"],
            "far side" => ["far"],
            "left end" => ["left"],
            "right end" => ["right"],
            "all sides" or "all round" or "all" => ["all"],
            _ => [edge],
        });
        return "edges";
    }

    // 1.0 a pass; 0.3 clear of hub and eye; 2-3 as an edge of an outline.
    private string? Numbered(Cursor c, Clauses into)
    {
        if (c.Peek() is { Kind: TokenKind.Number } first && c.Peek(1) is { Text: "-", Spaced: false } && c.Peek(2) is { Kind: TokenKind.Number, Spaced: false } second)
        {
            c.At += 3;
            into.Edges.Add($"{first.Text}-{second.Text}");
            return "edges";
        }

        var number = numbers.Take(c, "a number");
        if (number is null)
        {
            return null;
        }

        if (c.TakeAny("a pass", "per pass", "each pass") is not null)
        {
            return (into.PerPass = Checked(c, evaluator.TypedSize(number))) is null ? null : "pass";
        }

        return c.Take("clear of") ? Clear(c, into, number) : null;
    }

    private string? Clear(Cursor c, Clauses into, TypedNumber number)
    {
        if (Checked(c, evaluator.TypedSize(number)) is not { } by)
        {
            return null;
        }

        do
        {
            if (names.Take(c) is not { } feature)
            {
                return null;
            }

            into.Clear.Add(new ClearOf(feature.Name, by));
        }
        while (c.Take("and"));
        return "clear";
    }

    private Typed? Value(Cursor c, string expected) => Checked(c, evaluator.TypedSize(numbers.Take(c, expected)));

    private static Typed? Checked(Cursor c, Typed? value)
    {
        if (value is null)
        {
            c.Quiet();
        }

        return value;
    }
}
