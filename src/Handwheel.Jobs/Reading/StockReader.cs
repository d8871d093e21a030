using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Stocks;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

// Reads the stock: its heading and the lines under it.
internal sealed class StockReader(FindingBag bag, NumberReader numbers, Evaluator evaluator, Box3? part)
{
    private const string FormMend =
        "Stock is 'bar 14 wide, 30 high, 48 long', 'round 20, 60 long', 'tube 30 bore 10, 60 long', 'hex 17 across flats, 40 long', 'plate' as a bar, 'blank 1 a side, 0.5 on top, 8 below'.";

    private static readonly string[] Words = ["bar", "plate", "blank", "round", "tube", "hex"];
    private readonly Dictionary<string, Typed> nominal = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Typed> measured = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Typed> places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Typed> allowances = new(StringComparer.Ordinal);
    private string along = string.Empty;
    private bool flatsUp = true;

    public Stock? Read(IReadOnlyList<Statement> lines)
    {
        var c = new Cursor(lines[0], bag) { At = 1 };
        var form = c.TakeAny(Words);
        if (form is null)
        {
            var read = c.Peek()?.Text ?? string.Empty;
            c.Fail(FindingCatalogue.UnknownWord(c.Here, read, "a form of stock", Nearest.To(read, Words), FormMend));
        }

        Sizes(c, nominal, form);
        foreach (var line in lines.Skip(1).Where(_ => !bag.Full))
        {
            Line(new Cursor(line, bag), form);
        }

        return c.Failed || form is null ? null : form == "blank" && !nominal.ContainsKey("long") && allowances.Count > 0 ? Blank(lines[0]) : Made(lines[0], form);
    }

    // 14 wide, 30 high, 48 long; a bare first number of a round, tube or hex is its across.
    private void Sizes(Cursor c, Dictionary<string, Typed> into, string? form)
    {
        while (!c.AtEnd)
        {
            c.SkipCommas();
            if (c.TakeAny("along") is not null)
            {
                along = c.TakeAny("x", "y", "z") ?? string.Empty;
                if (along.Length == 0)
                {
                    c.Fail("x, y or z", "Write 'along x': the way a bar runs.");
                }
            }
            else if (c.TakeAny("flats up", "corners up") is { } up)
            {
                flatsUp = up == "flats up";
            }
            else if (!c.AtEnd)
            {
                One(c, into, form);
            }
        }
    }

    private void One(Cursor c, Dictionary<string, Typed> into, string? form)
    {
        if (c.Take("bore"))
        {
            Put(c, into, "bore", numbers.Take(c, "the bore"));
            return;
        }

        if (numbers.Take(c, "a size of the stock") is not { } number)
        {
            return;
        }

        if (c.TakeAny("a side", "on the ends", "on top", "below") is { } side)
        {
            Put(c, allowances, side, number);
            return;
        }

        var word = c.TakeAny("wide", "high", "thick", "long", "across flats", "across");
        word = word switch { "thick" => "high", "across flats" => "across", null when form is "round" or "tube" or "hex" => "across", _ => word };
        if (word is null)
        {
            c.Fail("'wide', 'high' or 'long'", FormMend);
            return;
        }

        Put(c, into, word, number);
    }

    private void Put(Cursor c, Dictionary<string, Typed> into, string word, TypedNumber? number)
    {
        if (evaluator.TypedSize(number) is not { } value)
        {
            c.Quiet();
            return;
        }

        if (!into.TryAdd(word, value))
        {
            bag.Add(FindingCatalogue.SaidTwice(value.Where, $"How {word} the stock is", into[word].Where));
        }
    }

    private void Line(Cursor c, string? form)
    {
        if (c.Take("measured"))
        {
            Sizes(c, measured, form);
            return;
        }

        var axis = c.TakeAny("x", "y", "z");
        var end = axis is null ? null : c.TakeAny("from", "to", "top", "bottom", "middle");
        if (axis is null || end is null)
        {
            c.Fail("'measured', or a place such as 'x from -9', 'y from 0', 'z top 0.5'", "Under the stock stand 'measured 13.96 wide', 'x from -9', 'x middle 0', 'z top 0.5', 'z bottom -20'.");
            return;
        }

        if (evaluator.TypedLength(numbers.Take(c, "where it lies")) is { } at && c.ExpectEnd("One place a line."))
        {
            var key = axis + (end switch { "bottom" => "from", "top" => "to", _ => end });
            if (places.Keys.FirstOrDefault(k => k[0] == axis[0]) is { } said)
            {
                bag.Add(FindingCatalogue.SaidTwice(c.Statement.Where, $"Where the stock lies along {axis}", places[said].Where));
            }

            places.TryAdd(key, at);
        }
    }

    private Stock? Made(Statement heading, string form)
    {
        var kind = form switch { "round" or "tube" => StockForm.Round, "hex" => StockForm.Hex, _ => StockForm.Bar };
        string[] needed = kind == StockForm.Bar ? ["wide", "high", "long"] : form == "tube" ? ["across", "long", "bore"] : ["across", "long"];
        foreach (var word in needed.Where(w => !nominal.ContainsKey(w)))
        {
            bag.Add(FindingCatalogue.Missing(heading.Where, $"How {word} the stock is", FormMend));
        }

        foreach (var (word, typed) in measured.Where(m => !needed.Contains(m.Key)))
        {
            bag.Add(FindingCatalogue.NotThere(typed.Where, $"A {form} has no '{word}'.", $"It has: {string.Join(", ", needed)}."));
        }

        if (needed.Any(w => !nominal.ContainsKey(w)))
        {
            return null;
        }

        Doubtful();
        var axis = along.Length > 0 ? along : "x";
        var size = Box(kind, axis, w => nominal[w].Value);
        var used = Box(kind, axis, w => measured.GetValueOrDefault(w, nominal[w]).Value);
        return new Stock
        {
            Form = kind,
            Nominal = size,
            Used = used,
            Least = new Point3(Lowest("x", used.X, axis, kind), Lowest("y", used.Y, axis, kind), Lowest("z", used.Z, axis, kind)),
            Along = axis,
            FlatsUp = flatsUp,
            Bore = nominal.TryGetValue("bore", out var bore) ? measured.GetValueOrDefault("bore", bore).Value : 0,
            Measured = [.. needed.Where(measured.ContainsKey)],
            Where = heading.Where,
        };
    }

    // The part's own box with so much more a side, on the ends, on top and below.
    private Stock? Blank(Statement heading)
    {
        if (part is not var (least, most))
        {
            bag.Add(FindingCatalogue.NotThere(heading.Where, "There is no part yet that a blank could be larger than.", "Write the drawing, or the blank's sizes."));
            return null;
        }

        double Allowed(string word) => allowances.TryGetValue(word, out var more) ? more.Value : 0;
        var side = Allowed("a side");
        var ends = allowances.ContainsKey("on the ends") ? Allowed("on the ends") : side;
        var low = new Point3(least.X - ends, least.Y - side, least.Z - Allowed("below"));
        var box = new Point3(most.X + ends - low.X, most.Y + side - low.Y, most.Z + Allowed("on top") - low.Z);
        var used = new Point3(Used("long", box.X), Used("wide", box.Y), Used("high", box.Z));
        return new Stock
        {
            Form = StockForm.Bar,
            Nominal = box,
            Used = used,
            Least = new Point3(low.X + ((box.X - used.X) / 2), low.Y + ((box.Y - used.Y) / 2), low.Z + box.Z - used.Z),
            Measured = [.. measured.Keys.Order(StringComparer.Ordinal)],
            Where = heading.Where,
        };
    }

    private double Used(string word, double box) => measured.TryGetValue(word, out var typed) ? typed.Value : box;

    // A measured size a long way off its nominal is a slip of the pen.
    private void Doubtful()
    {
        foreach (var (word, typed) in measured)
        {
            if (nominal.TryGetValue(word, out var meant) && Math.Abs(typed.Value - meant.Value) > Math.Max(1, meant.Value * 0.1))
            {
                bag.Add(FindingCatalogue.Contradiction(typed.Where, $"It measures {typed.Text} {word}, and was said to be {meant.Text}.", "Measure again, or write the size it really has."));
            }
        }
    }

    private Point3 Box(StockForm kind, string axis, Func<string, double> of)
    {
        if (kind == StockForm.Bar)
        {
            return axis switch
            {
                "y" => new Point3(of("wide"), of("long"), of("high")),
                "z" => new Point3(of("wide"), of("high"), of("long")),
                _ => new Point3(of("long"), of("wide"), of("high")),
            };
        }

        var across = of("across");
        var corners = kind == StockForm.Hex ? across / Math.Cos(Math.PI / 6) : across;
        var (first, second) = kind == StockForm.Round ? (across, across) : flatsUp ? (corners, across) : (across, corners);
        return axis switch
        {
            "y" => new Point3(first, of("long"), second),
            "z" => new Point3(first, second, of("long")),
            _ => new Point3(of("long"), first, second),
        };
    }

    // A place typed; else from 0 along a bar's length, its middle at 0 across it, its top at 0.
    private double Lowest(string axis, double size, string run, StockForm kind)
    {
        if (places.TryGetValue(axis + "from", out var from))
        {
            return from.Value;
        }

        if (places.TryGetValue(axis + "to", out var to))
        {
            return to.Value - size;
        }

        if (places.TryGetValue(axis + "middle", out var middle))
        {
            return middle.Value - (size / 2);
        }

        return axis == "z" && (kind == StockForm.Bar || run == "z") ? -size : axis == run ? 0 : -size / 2;
    }
}
