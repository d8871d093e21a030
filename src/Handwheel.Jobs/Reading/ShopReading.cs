using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

// One reading of a shop.
internal sealed class ShopReading(SourceText source, FindingBag bag)
{
    private static readonly string[] Heads =
        ["shop", "unit", "mill", "rotary", "indexer", "vise", "chuck", "clamps", "parallels", "press", "paper", "small", "thin"];

    private static readonly string[] MillLines = ["readout", "handwheel", "speeds", "quill", "knee", "nose", "power", "throat", "daylight"];

    private static readonly string[] GaugeKinds = ["finder", "edge finder", "pin", "block", "inside micrometer", "bore gauge", "micrometer", "caliper", "indicator", "plug"];

    private readonly SortedDictionary<string, Holder> holders = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, Cutter> cutters = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, Gauge> gauges = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SourceSpan> said = new(StringComparer.Ordinal);
    private readonly List<double> parallels = [];
    private readonly List<Statement> mill = [];
    private Shop shop = new() { Title = string.Empty };
    private ShopNumbers numbers = null!;

    /// <summary>The document.</summary>
    public SourceText Source => source;

    public Shop? Read()
    {
        if (!Sections.IsText(source, bag, "shop"))
        {
            return null;
        }

        var lines = Sections.Statements(source, bag);
        var unit = HeadReader.Unit(lines.Find(l => l.Tokens[0].Is("unit")), bag, source.Span(1, 0, 1));
        numbers = new ShopNumbers(bag, unit);
        Statement? before = null;
        foreach (var line in lines.TakeWhile(_ => !bag.Full))
        {
            before = Line(line, before);
        }

        if (shop.Title.Length == 0)
        {
            bag.Add(FindingCatalogue.Missing(source.Span(1, 0, 1), "The shop's name", "Start with 'shop' and its name."));
        }

        return shop with
        {
            Mill = mill.Count > 0 ? new MillReader(numbers, bag).Read(mill) : null,
            Holders = holders,
            Cutters = cutters,
            Gauges = gauges,
            Parallels = [.. parallels.Order()],
        };
    }

    // The machine's lines stand below 'mill'; every other thing has one line.
    private Statement? Line(Statement line, Statement? before)
    {
        var first = line.Tokens[0];
        if (before is not null && before.Tokens[0].Is("mill") && Array.Exists(MillLines, first.Is) && !Kinded(line))
        {
            mill.Add(line);
            return before;
        }

        var c = new Cursor(line, bag);
        var word = Array.Find(Heads, first.Is);
        if (word is null)
        {
            Named(c);
        }
        else
        {
            c.At = 1;
            Head(c, word);
        }

        return line;
    }

    private static bool Kinded(Statement line)
    {
        var c = new Cursor(line, new FindingBag()) { At = 1 };
        return Array.Exists(CutterWords.All, w => c.Sees(w.Word));
    }

    private void Head(Cursor c, string word)
    {
        if (word is "shop" or "unit" or "mill" or "rotary" or "indexer" or "press" && !said.TryAdd(word, c.Statement.Where))
        {
            bag.Add(FindingCatalogue.SaidTwice(c.Statement.SpanOf(0, 0), $"'{word}'", said[word]));
            return;
        }

        switch (word)
        {
            case "shop":
                shop = shop with { Title = HeadReader.Title(c.Statement) };
                break;
            case "unit":
                break;
            case "mill":
                mill.Add(c.Statement);
                break;
            case "rotary":
                shop = shop with { Rotary = new RotaryReader(numbers).Rotary(c) };
                break;
            case "indexer":
                shop = shop with { Indexer = new RotaryReader(numbers).Indexer(c) };
                break;
            case "parallels":
                Parallels(c);
                break;
            case "vise" or "chuck" or "clamps":
                Holder(c, word);
                break;
            default:
                Small(c, word);
                break;
        }
    }

    private void Small(Cursor c, string word)
    {
        switch (word)
        {
            case "press":
                _ = c.Take("pushes");
                shop = shop with { PressPush = numbers.Force(c, "what the press pushes") };
                break;
            case "paper":
                if (numbers.Size(c, "the paper's thickness") is { } thick)
                {
                    gauges["paper"] = new Gauge("paper", "paper", thick);
                }

                break;
            case "small":
                _ = c.TakeAny("cutters under", "under");
                shop = shop with { SmallUnder = numbers.Size(c, "under which a cutter is small") ?? shop.SmallUnder };
                break;
            default:
                _ = c.TakeAny("webs under", "under");
                shop = shop with { ThinUnder = numbers.Size(c, "under which a web is thin") ?? shop.ThinUnder };
                break;
        }

        _ = c.ExpectEnd("One thing a line.");
    }

    private void Parallels(Cursor c)
    {
        while (!c.AtEnd)
        {
            if (numbers.Size(c, "the height of a pair of parallels") is { } high)
            {
                parallels.Add(high);
            }

            c.SkipCommas();
        }
    }

    private void Holder(Cursor c, string word)
    {
        if (c.TakePiece() is not { } name)
        {
            c.Fail($"the name of the {word}", $"Write '{word} small jaws 40 wide, open 30, deep 16.5'.");
            return;
        }

        if (!said.TryAdd("holder " + name.Text, name.Where))
        {
            bag.Add(FindingCatalogue.SaidTwice(name.Where, $"The holder '{name.Text}'", said["holder " + name.Text]));
            return;
        }

        if (new HolderReader(numbers).Read(c, name.Text, word) is { } holder)
        {
            holders[name.Text] = holder;
        }
    }

    // em10 end mill 10, ...; f10 finder 10.
    private void Named(Cursor c)
    {
        if (c.TakePiece() is not { } name)
        {
            c.Fail("a name", "A line of the shop starts with a name or a heading.");
            return;
        }

        if (!said.TryAdd("cutter " + name.Text, name.Where))
        {
            bag.Add(FindingCatalogue.SaidTwice(name.Where, $"'{name.Text}'", said["cutter " + name.Text]));
            return;
        }

        if (Array.Find(GaugeKinds, c.Take) is { } kind)
        {
            Gauge(c, name.Text, kind == "edge finder" ? "finder" : kind);
            return;
        }

        if (new CutterReader(numbers).Read(c, name.Text, Heads) is { } cutter)
        {
            cutters[name.Text] = cutter;
        }
    }

    private void Gauge(Cursor c, string name, string kind)
    {
        List<double> sizes = [];
        while (!c.AtEnd)
        {
            _ = c.TakeAny("to", "by", ",");
            sizes.Add(Math.Max(0, numbers.Length(c, "its size") ?? 0));
        }

        gauges[name] = new Gauge(name, kind, sizes.Append(0).Max()) { Least = sizes.Count > 1 ? sizes.Min() : 0 };
    }
}
