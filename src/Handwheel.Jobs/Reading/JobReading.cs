using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;
using Handwheel.Jobs.Stocks;
using Handwheel.Solids.Geometry;

namespace Handwheel.Jobs.Reading;

// One reading of a job: its sections in the order they need each other.
internal sealed class JobReading(SourceText source, FindingBag bag, Func<string, string?> openShop)
{
    private static readonly string[] Heads = ["job", "unit", "metal", "shop", "make", "drawing", "design", "stock", "holding", "by"];
    private readonly Dictionary<string, Statement> heads = new(StringComparer.Ordinal);
    private readonly List<Statement> drawing = [];
    private readonly List<Statement> design = [];
    private readonly List<Statement> stock = [];
    private readonly List<(Statement Heading, List<Statement> Lines)> stages = [];

    /// <summary>The shop, where it could be read.</summary>
    public Shop? Shop { get; private set; }

    /// <summary>The shop's document.</summary>
    public IReadOnlyList<SourceText> ShopSources { get; private set; } = [];

    private SourceSpan Start => source.Span(1, 0, 1);

    public Job? Read()
    {
        Sort();
        var unit = HeadReader.Unit(heads.GetValueOrDefault("unit"), bag, Start);
        var names = new FeatureNames();
        var numbers = new NumberReader(names);
        var worker = new DrawingWorker(unit, bag);
        ReadShop();
        var reader = new DrawingReader(bag, names, numbers, worker);
        var drawn = reader.Read(drawing);
        drawn = drawn with { Designs = new DesignReader(bag, names, numbers, worker).Read(design) };
        var held = stock.Count > 0 ? new StockReader(bag, numbers, worker.Evaluator, Extents.Of(drawn.Features)).Read(stock) : null;
        var steps = new StageReader(bag, names, numbers, worker.Evaluator, reader.SizeNames, Shop).Read(stages);
        Missing();
        if (drawing.Count == 0 && stages.Count == 0)
        {
            return null;
        }

        var job = new Job
        {
            Title = HeadReader.Title(heads.GetValueOrDefault("job")),
            File = source.FileName,
            Unit = unit,
            Metal = HeadReader.Title(heads.GetValueOrDefault("metal")),
            ShopFile = HeadReader.Title(heads.GetValueOrDefault("shop")),
            ToMake = ToMake(),
            Drawing = drawn,
            Stock = (held ?? NoStock()) with { Metal = HeadReader.Title(heads.GetValueOrDefault("metal")) },
            Stages = steps,
        };
        var sound = !bag.Halts && drawn.Features.Count > 0;
        var cuts = new CutChecks(bag);
        if (sound && cuts.Follow(drawn))
        {
            cuts.Meet(drawn);
        }

        if (held is not null)
        {
            new JobChecks(bag, Shop).Check(job);
        }

        return job;
    }

    private Stock NoStock() => new() { Form = StockForm.Bar, Nominal = default, Used = default, Least = default(Point3), Where = Start };

    private int ToMake()
    {
        if (!heads.TryGetValue("make", out var line))
        {
            return 1;
        }

        var c = new Cursor(line, bag) { At = 1 };
        var count = Counts.Take(c, 1, 1000, "how many are made");
        _ = c.ExpectEnd("Write 'make 2'.");
        return count ?? 1;
    }

    private void Sort()
    {
        List<Statement>? section = null;
        foreach (var statement in Sections.Statements(source, bag))
        {
            var first = statement.Tokens[0];
            var word = Heads.FirstOrDefault(first.Is);
            if (word is "by" && !(statement.Tokens.Count > 1 && statement.Tokens[1].Is("hand")))
            {
                word = null;
            }

            if (word is null)
            {
                Body(statement, section);
            }
            else
            {
                section = Head(statement, word, section);
            }
        }
    }

    private void Body(Statement statement, List<Statement>? section)
    {
        if (section is not null)
        {
            section.Add(statement);
            return;
        }

        var first = statement.Tokens[0];
        bag.Add(FindingCatalogue.UnknownWord(
            statement.SpanOf(0, 0), first.Text, "a heading of a job", Nearest.To(first.Text, Heads), "Headings are job, unit, metal, shop, make, drawing, design, stock, holding and 'by hand'."));
    }

    private List<Statement>? Head(Statement statement, string word, List<Statement>? section)
    {
        if (word is "holding" or "by")
        {
            stages.Add((statement, []));
            return stages[^1].Lines;
        }

        if (!heads.TryAdd(word, statement))
        {
            bag.Add(FindingCatalogue.SaidTwice(statement.SpanOf(0, 0), $"'{word}'", heads[word].Where));
        }

        if (word == "stock")
        {
            stock.AddRange(stock.Count == 0 ? [statement] : []);
            return stock;
        }

        if (word is "drawing" or "design")
        {
            _ = new Cursor(statement, bag) { At = 1 }.ExpectEnd($"{(word == "drawing" ? "Features stand" : "What the part must stand is told")} on the lines below '{word}'.");
        }

        return word == "drawing" ? drawing : word == "design" ? design : section is null || word is "job" or "unit" or "metal" or "shop" or "make" ? null : section;
    }

    private void ReadShop()
    {
        if (!heads.TryGetValue("shop", out var line) || line.Tokens.Count < 2)
        {
            return;
        }

        var name = line.TextOf(1, line.Tokens.Count - 1);
        if (openShop(name) is not { } text)
        {
            bag.Add(FindingCatalogue.Missing(line.SpanOf(1, line.Tokens.Count - 1), $"The shop '{name}'", "Write the shop's file as it lies beside the job, such as 'shop home.handwheel'."));
            return;
        }

        var read = new ShopReading(new SourceText(name, text), bag);
        Shop = read.Read();
        ShopSources = [read.Source];
    }

    private void Missing()
    {
        Need("job", "The job's title", "Start with 'job' and what is made.");
        Need("metal", "The metal", "Write 'metal brass, free-cutting' or what the stock is.");
        Need("shop", "The shop", "Write 'shop home.handwheel': the file that says what is on hand.");
        Need("drawing", "The drawing", "Write 'drawing' and the part's features below it.");
        Need("stock", "The stock", "Write 'stock bar 14 wide, 30 high, 48 long'.");
        if (stages.Count == 0)
        {
            bag.Add(FindingCatalogue.Missing(source.Span(LastLine(), 0, 1), "A holding", "Write 'holding A in ...' and the steps below it."));
        }
    }

    private int LastLine()
    {
        var line = source.Lines.Count;
        while (line > 1 && string.IsNullOrWhiteSpace(source.LineAt(line)))
        {
            line--;
        }

        return line;
    }

    private void Need(string word, string what, string mend)
    {
        if (!heads.TryGetValue(word, out var line))
        {
            bag.Add(FindingCatalogue.Missing(Start, what, mend));
        }
        else if (line.Tokens.Count < 2 && word != "drawing" && word != "stock")
        {
            bag.Add(FindingCatalogue.Missing(line.Where, what, mend));
        }
    }
}
