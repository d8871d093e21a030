using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

// Reads the rotary and the indexer.
internal sealed class RotaryReader(ShopNumbers numbers)
{
    private const string RotaryMend = "A rotary is 'rotary worm 72, dial by 1 minute, reads clockwise, table 160'; also: high 80, backlash 2 min, crank clockwise turns counterclockwise, plates 15, 16, 17.";
    private const string IndexerMend = "An indexer is 'indexer worm 40, plates 15, 16, 17, centre 60 high, takes 25', or 'dial by 1 deg'.";

    public Rotary? Rotary(Cursor c)
    {
        var r = new Rotary { Worm = 0, DialStep = 0, Sense = 0, Across = 0, Where = c.Statement.Where };
        while (!c.AtEnd)
        {
            c.SkipCommas();
            r = c.TakeAny("worm", "dial by", "table", "high", "backlash") is { } word ? Number(c, r, word)
                : c.TakeAny("reads clockwise", "reads counterclockwise") is { } reads ? r with { Sense = reads == "reads clockwise" ? -1 : 1 }
                : c.TakeAny("crank clockwise turns clockwise", "crank clockwise turns counterclockwise") is { } crank
                    ? r with { CrankClockwiseTurnsClockwise = crank.EndsWith(" clockwise", StringComparison.Ordinal) }
                : c.Take("plates") ? r with { Circles = Plates(c) }
                : Unknown(c, r, RotaryMend);
        }

        if (!c.Failed)
        {
            Need(c, r.Worm > 0, "its worm: turns of the crank for one of the table");
            Need(c, r.DialStep > 0, "its dial: 'dial by 1 minute'");
            Need(c, r.Sense != 0, "which way it reads: 'reads clockwise' or 'reads counterclockwise'");
            Need(c, r.Across > 0, "the diameter of its table: 'table 160'");
        }

        return c.Failed ? null : r;
    }

    public Indexer? Indexer(Cursor c)
    {
        var i = new Indexer { Worm = 0, Where = c.Statement.Where };
        while (!c.AtEnd)
        {
            c.SkipCommas();
            i = c.Take("worm") ? i with { Worm = numbers.Bare(c, "turns of the crank for one of the spindle") ?? 0 }
                : c.Take("plates") ? i with { Circles = Plates(c) }
                : c.Take("dial by") ? i with { DialStep = numbers.Angle(c, "the dial's step") ?? 0 }
                : c.Take("takes") ? i with { Takes = numbers.Size(c, "the greatest diameter it takes") ?? 0 }
                : c.Take("centre") || c.Take("center") ? Centre(c, i)
                : Unknown(c, i, IndexerMend);
        }

        if (!c.Failed)
        {
            Need(c, i.Worm > 0, "its worm: 'worm 40', or 'worm 1' for direct indexing");
        }

        return c.Failed ? null : i;
    }

    private Indexer Centre(Cursor c, Indexer i)
    {
        var high = numbers.Size(c, "the height of its axis") ?? 0;
        _ = c.Take("high");
        return i with { CentreHigh = high };
    }

    private Rotary Number(Cursor c, Rotary r, string word) => word switch
    {
        "worm" => r with { Worm = numbers.Bare(c, "turns of the crank for one of the table") ?? 0 },
        "dial by" => r with { DialStep = numbers.Angle(c, "the dial's step, such as 1 minute") ?? 0 },
        "table" => r with { Across = numbers.Size(c, "the diameter of its table") ?? 0 },
        "high" => r with { High = numbers.Size(c, "its height") ?? 0 },
        _ => r with { Backlash = numbers.Angle(c, "the slack of its crank, such as 2 min") ?? 0 },
    };

    private List<int> Plates(Cursor c)
    {
        var circles = new List<int>();
        while (c.Peek() is { Kind: TokenKind.Number } && Counts.Take(c, 1, 1000, "the holes of a circle") is { } holes)
        {
            circles.Add(holes);
            if (c.Peek() is { Text: "," } && c.Peek(1) is { Kind: TokenKind.Number })
            {
                c.At++;
            }
        }

        return circles;
    }

    private static T Unknown<T>(Cursor c, T same, string mend)
    {
        if (!c.AtEnd)
        {
            c.Fail("what belongs to it", mend);
        }

        return same;
    }

    private static void Need(Cursor c, bool has, string what)
    {
        if (!has)
        {
            c.Report(Findings.FindingCatalogue.Missing(c.Statement.Where, char.ToUpperInvariant(what[0]) + what[1..], "Add it to the line."));
        }
    }
}
