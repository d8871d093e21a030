using Handwheel.Jobs.Designs;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

// Reads the lines below 'design'.
internal sealed class DesignReader(FindingBag bag, FeatureNames names, NumberReader numbers, DrawingWorker worker)
{
    private const string Words = "Lines of a design are screw, drawbar, taper, fit, press, wall, drive and bend.";

    private static readonly string[] Verbs = ["screw", "drawbar", "taper", "fit", "press", "wall", "drive", "bend"];

    private readonly DesignSizes sizes = new(bag, names, numbers, worker);

    private readonly DesignClauseReader clauses = new(names, numbers, worker.Evaluator);

    public IReadOnlyList<DesignLine> Read(IEnumerable<Statement> lines)
    {
        var read = new List<DesignLine>();
        foreach (var line in lines.TakeWhile(_ => !bag.Full))
        {
            if (One(new Cursor(line, bag)) is { } design)
            {
                read.Add(design);
            }
        }

        return read;
    }

    private DesignLine? One(Cursor c)
    {
        switch (c.TakeAny(Verbs))
        {
            case "screw":
                return Screw(c);
            case "drawbar":
                return Drawbar(c);
            case "taper":
                return Taper(c);
            case "fit":
                return Fit(c);
            case "press":
                return Press(c);
            case "wall":
                return Wall(c);
            case "drive":
                return Drive(c);
            case "bend":
                return Bend(c);
            default:
                var word = c.Statement.Tokens[0].Text;
                c.Fail(FindingCatalogue.UnknownWord(c.Here, word, "a line of a design", Nearest.To(word, Verbs), Words));
                return null;
        }
    }

    private static string TextOf(Cursor c) => string.Join(' ', c.Statement.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private ScrewDesign? Screw(Cursor c)
    {
        const string example = "screw jack, 10 engaged, torque 6 N m, grade 8.8, oiled";
        var where = c.Here;
        var feature = names.TryTake(c);
        if (feature is null && !IsThread(c))
        {
            _ = names.Take(c);
            return null;
        }

        var thread = feature is null ? ThreadWords.Take(c) : feature.Thread;
        var said = new DesignClauses();
        if (c.Failed || !clauses.Read(c, said, example, "engaged", "pull", "torque", "grade", "surface", "in"))
        {
            return null;
        }

        if (thread is null)
        {
            c.Fail(FindingCatalogue.NotThere(where, $"'{feature!.Name}' has no thread.", "Give its hole one in the drawing ('thread M6'), or name the thread here: 'screw M6, 12 engaged, pull 1 kN'."));
            return null;
        }

        if (TapSizes.Of(thread) is null)
        {
            c.Fail(FindingCatalogue.UnknownWord(where, thread, "a thread of the standards", null, "Write 'M6', 'M8x1' or '1/4-20 UNC'."));
            return null;
        }

        if (!Need(c, said, "The pull or the torque on the screw", example, "pull", "torque") || (feature is null && !Need(c, said, "The length of thread engaged", example, "engaged")))
        {
            return null;
        }

        return new ScrewDesign
        {
            Text = TextOf(c),
            Where = c.Statement.Where,
            Thread = thread,
            Feature = feature?.Name,
            Engaged = said.Value("engaged"),
            Pull = said.Value("pull"),
            Torque = said.Value("torque"),
            Grade = said.Word("grade"),
            Surface = said.Word("surface"),
            Metal = said.Word("in"),
        };
    }

    // A size's digit stands in every thread's first two characters: M6, #10-32, 1/4-20.
    private static bool IsThread(Cursor c) => ThreadWords.Sees(c) && c.Peek() is { } first && (first.Text.Take(2).Any(char.IsAsciiDigit) || first.Text == "#");

    // drawbar M10 on Morse 2, torque 20 N m, drives 8 N m
    private TaperDesign? Drawbar(Cursor c)
    {
        const string example = "drawbar M10 on Morse 2, torque 20 N m, drives 8 N m";
        var where = c.Here;
        if (ThreadWords.Take(c) is not { } thread || !c.Expect("on", $"Such as: '{example}'."))
        {
            return null;
        }

        if (TapSizes.Of(thread) is null)
        {
            c.Fail(FindingCatalogue.UnknownWord(where, thread, "a thread of the standards", null, "Write 'M10' or '3/8-16 UNC'."));
            return null;
        }

        return Seated(c, example, thread, "torque", "pull", "drives", "grade", "surface");
    }

    private TaperDesign? Taper(Cursor c) => Seated(c, "taper Morse 2, pull 4 kN, drives 12 N m", null, "pull", "drives", "surface");

    private TaperDesign? Seated(Cursor c, string example, string? drawbar, params string[] taken)
    {
        var where = c.Here;
        var feature = names.TryTake(c);
        if (feature is { Shape: not ShapeForm.Cone })
        {
            c.Fail(FindingCatalogue.NotThere(where, $"'{feature.Name}' is no cone.", "Name a cone of the drawing, or a taper of the trade: 'Morse 2', '7/24 30', 'R8'."));
            return null;
        }

        var named = feature is null ? TaperWords.Take(c) : null;
        var said = new DesignClauses();
        if (c.Failed || !clauses.Read(c, said, example, taken))
        {
            return null;
        }

        if (drawbar is not null && !Need(c, said, "The drawbar's torque or pull", example, "torque", "pull"))
        {
            return null;
        }

        return new TaperDesign
        {
            Text = TextOf(c),
            Where = c.Statement.Where,
            Family = named?.Family,
            Number = named?.Number ?? string.Empty,
            Feature = feature?.Name,
            Drawbar = drawbar,
            Torque = said.Value("torque"),
            Grade = said.Word("grade"),
            Pull = said.Value("pull"),
            Drives = said.Value("drives"),
            Surface = said.Word("surface"),
        };
    }

    private FitDesign? Fit(Cursor c)
    {
        const string example = "fit pin with dowel 3 m6, to press";
        if (sizes.Sized(c) is not { } own)
        {
            return null;
        }

        var zones = c.Peek() is { Kind: TokenKind.Word } && !c.Sees("with") ? DesignSizes.Zones(c, own) : null;
        var other = zones is null && !c.Failed && c.Expect("with", $"Such as: '{example}'.") ? sizes.Counter(c, own.IsHole) : zones is { } z ? (z.Text, z.Limits) : null;
        var said = new DesignClauses();
        if (other is not { } counter || c.Failed || !clauses.Read(c, said, example, "wanted", "clear"))
        {
            return null;
        }

        return new FitDesign
        {
            Text = TextOf(c),
            Where = c.Statement.Where,
            Own = own.Name,
            OwnLimits = own.Limits,
            OwnIsHole = own.IsHole,
            OwnZone = zones?.Own,
            Counter = counter.Text,
            CounterLimits = counter.Limits,
            Wanted = said.Word("wanted"),
            Clear = said.Clear,
        };
    }

    private PressDesign? Press(Cursor c)
    {
        const string example = "press pin with dowel 3 m6, 4 long, of steel, drives 0.5 N m";
        if (sizes.Sized(c) is not { } own || !c.Expect("with", $"Such as: '{example}'.") || sizes.Counter(c, own.IsHole) is not { } counter)
        {
            return null;
        }

        var said = new DesignClauses();
        return !clauses.Read(c, said, example, "long", "outside", "of", "drives", "pull") ? null : new PressDesign
        {
            Text = TextOf(c),
            Where = c.Statement.Where,
            Feature = own.Feature.Name,
            OwnLimits = own.Limits,
            OwnIsHole = own.IsHole,
            Counter = counter.Text,
            CounterLimits = counter.Limits,
            Long = said.Value("long"),
            Outside = said.Value("outside"),
            Of = said.Word("of"),
            Drives = said.Value("drives"),
            Pull = said.Value("pull"),
        };
    }

    private WallDesign? Wall(Cursor c)
    {
        const string example = "wall pin to eye, at least 2";
        if (names.Take(c) is not { } first || !c.Expect("to", $"Such as: '{example}'.") || names.Take(c) is not { } second)
        {
            return null;
        }

        var said = new DesignClauses();
        return !clauses.Read(c, said, example, "least", "holds") || !Need(c, said, "The thickness the wall needs, or the pressure it holds", example, "least", "holds") ? null : new WallDesign
        {
            Text = TextOf(c),
            Where = c.Statement.Where,
            Feature = first.Name,
            Other = second.Name,
            AtLeast = said.Value("least"),
            Holds = said.Value("holds"),
        };
    }

    private DriveDesign? Drive(Cursor c)
    {
        const string example = "drive socket, torque 1.5 N m, shaft of mild steel";
        var where = c.Here;
        if (names.Take(c) is not { } socket)
        {
            return null;
        }

        if (!socket.Broken && (socket is not { Shape: ShapeForm.Polygon, IsCut: true } || socket.Sides is not (4 or 6)))
        {
            c.Fail(FindingCatalogue.NotThere(where, $"'{socket.Name}' is no square or hexagon socket.", "Name one that is cut square or as a hexagon."));
            return null;
        }

        var said = new DesignClauses();
        if (!clauses.Read(c, said, example, "torque", "long", "of") || !Need(c, said, "The torque it takes", example, "torque")
            || worker.LimitsOf(socket, Measure.Flats, where) is not { } flats)
        {
            return null;
        }

        return new DriveDesign
        {
            Text = TextOf(c),
            Where = c.Statement.Where,
            Feature = socket.Name,
            Sides = socket.Sides,
            Flats = flats.ToLimits(),
            Torque = said.Value("torque")!,
            Long = said.Value("long"),
            Of = said.Word("of"),
        };
    }

    private BendDesign? Bend(Cursor c)
    {
        const string example = "bend under 40 N at pin, held at hub";
        _ = c.Take("under");
        if (clauses.Force(c, "the load") is not { } load || !c.Expect("at", $"Such as: '{example}'.") || names.Take(c) is not { } at)
        {
            return null;
        }

        var said = new DesignClauses();
        return !clauses.Read(c, said, example, "held", "rests", "across") || !Need(c, said, "What it is held at, or rests on,", example, "held", "rests") ? null : new BendDesign
        {
            Text = TextOf(c),
            Where = c.Statement.Where,
            Load = load,
            At = at.Name,
            Held = said.Word("held"),
            Rests = said.Rests,
            Across = said.Word("across") is not null,
        };
    }

    private static bool Need(Cursor c, DesignClauses said, string what, string example, params string[] any)
    {
        if (c.Failed || any.Any(said.Said.ContainsKey))
        {
            return !c.Failed;
        }

        c.Fail(FindingCatalogue.Missing(c.Statement.Where, what, $"Such as: '{example}'."));
        return false;
    }
}
