using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Holdings;
using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

// Reads the heading of a holding: 'holding A in small vise on rotary, bar along jaws on parallels 6, jaws at -19'.
internal sealed class HoldingReader(NumberReader numbers, Evaluator evaluator, Shop? shop)
{
    private const string Mend =
        "A holding is 'holding A in small vise on rotary, bar along jaws on parallels 6, jaws at -19'; also: underside up, stood on left end, turned 90 deg, tilted 30 deg about x, bar slid along the jaw, jaws along y, jaws at .., middle of jaws at .., clamped at x, y on z.";

    private readonly List<ClampAt> clamps = [];

    // The holding without its steps; null, with a finding made, where it is not understood.
    public Holding? Read(Cursor c)
    {
        c.At = 1;
        if (c.Sees("in") || c.TakePiece() is not { } name)
        {
            c.Fail("the holding's letter", Mend);
            return null;
        }

        var onRotary = c.TakeAny("on the rotary", "on rotary") is not null;
        if (!c.Expect("in", Mend) || Holder(c) is not { } holding)
        {
            return null;
        }

        holding = holding with { Name = name.Text, OnRotary = onRotary };
        while (!c.AtEnd)
        {
            c.SkipCommas();
            if (!c.AtEnd && Clause(c, holding) is { } more)
            {
                holding = more;
            }
        }

        return c.Failed ? null : holding with { Clamps = clamps };
    }

    private Holding? Holder(Cursor c)
    {
        var start = c.At;
        var where = c.Here;
        _ = c.TakeAny("the", "a");
        var first = c.TakePiece();
        var kind = c.TakeAny("vise", "chuck", "clamps");
        var name = first?.Text ?? string.Empty;
        if (name is "vise" or "chuck" or "clamps")
        {
            name = kind is null && c.TakePiece() is { } second && shop?.Holders.ContainsKey(second.Text) == true ? second.Text : Only(name);
        }

        if (name == "indexer" || c.Take("in indexer"))
        {
            return Bare(c, "indexer") with { InIndexer = true };
        }

        if (shop is null || shop.Holders.ContainsKey(name))
        {
            return Bare(c, name);
        }

        var known = shop.Holders.Keys;
        c.At = start;
        c.Fail(FindingCatalogue.UnknownWord(where, name, "a holder of the shop", Nearest.To(name, known), Nearest.Listed("The shop has", known)));
        return null;
    }

    // 'vise' alone means the shop's only one.
    private string Only(string kind)
    {
        var wanted = kind switch { "vise" => HolderKind.Vise, "chuck" => HolderKind.ThreeJawChuck, _ => HolderKind.Clamps };
        var all = shop?.Holders.Values.Where(h => h.Kind == wanted).ToList() ?? [];
        return all.Count == 1 ? all[0].Name : kind;
    }

    private static Holding Bare(Cursor c, string holder) =>
        new() { Name = string.Empty, Holder = holder, Steps = [], Where = c.Statement.Where, Text = c.Statement.Text };

    private Holding? Clause(Cursor c, Holding h) =>
        c.TakeAny("on the rotary", "on rotary", "on the table", "on table") is { } on ? h with { OnRotary = on.EndsWith("rotary", StringComparison.Ordinal) }
        : c.TakeAny("bar along jaws", "along jaws", "bar along the jaws") is not null ? h
        : c.TakeAny("bar slid along the jaw", "slid along the jaw", "slid along") is not null ? h with { Slid = true }
        : c.TakeAny("jaws along y", "jaws along x") is { } jaws ? h with { JawsAlongY = jaws.EndsWith('y') }
        : c.TakeAny("on parallels", "jaws at", "middle of jaws at", "jaws middle at") is { } word ? Placed(c, h, word)
        : c.TakeAny("turned over", "underside up", "top up", "front up", "back up", "left end up", "right end up", "stood on left end", "stood on right end") is { } up ? h with { Up = Up(up) }
        : c.TakeAny("turned", "tilted") is { } turn ? Turned(c, h, turn)
        : c.TakeAny("with soft jaws", "soft jaws") is not null ? h with { SoftJaws = true }
        : c.Take("clamped at") ? Clamped(c, h)
        : Unknown(c);

    private static Holding? Unknown(Cursor c)
    {
        c.Fail("how the work is held", Mend);
        return null;
    }

    private static FaceUp Up(string word) => word switch
    {
        "turned over" or "underside up" => FaceUp.Underside,
        "front up" => FaceUp.Front,
        "back up" => FaceUp.Back,
        "left end up" or "stood on right end" => FaceUp.Left,
        "right end up" or "stood on left end" => FaceUp.Right,
        _ => FaceUp.Top,
    };

    private Holding? Placed(Cursor c, Holding h, string word)
    {
        var number = numbers.Take(c, word == "on parallels" ? "their height" : "a reading");
        var value = word == "on parallels" ? evaluator.TypedSize(number) : evaluator.TypedLength(number);
        if (value is null)
        {
            c.Quiet();
            return null;
        }

        return word switch
        {
            "on parallels" => h with { Parallels = value },
            "jaws at" => h with { JawsAt = value },
            _ => h with { JawsMiddle = value },
        };
    }

    private Holding? Turned(Cursor c, Holding h, string word)
    {
        if (evaluator.TypedAngle(numbers.Take(c, "an angle")) is not { } angle)
        {
            c.Quiet();
            return null;
        }

        if (word == "turned")
        {
            return h with { Turn = angle.Value };
        }

        if (!c.Expect("about", "Write 'tilted 30 deg about x'.") || c.TakeAny("x", "y") is not { } axis)
        {
            c.Fail("x or y", "Write 'tilted 30 deg about x'.");
            return null;
        }

        return axis == "x" ? h with { TiltX = angle.Value } : h with { TiltY = angle.Value };
    }

    // clamped at x, y on z
    private Holding? Clamped(Cursor c, Holding h)
    {
        const string mend = "A clamp is 'clamped at 20, 10 on -8': its middle and the face it presses on, readings.";
        var x = evaluator.TypedLength(numbers.Take(c, "X of the clamp's middle"));
        if (x is null || !c.Expect(",", mend) || evaluator.TypedLength(numbers.Take(c, "Y of the clamp's middle")) is not { } y
            || !c.Expect("on", mend) || evaluator.TypedLength(numbers.Take(c, "the height of the face it presses on")) is not { } top)
        {
            c.Quiet();
            return null;
        }

        clamps.Add(new ClampAt(x, y, top));
        return h;
    }
}
