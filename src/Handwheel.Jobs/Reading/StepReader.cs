using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Reading;

// Reads the steps of a holding.
internal sealed class StepReader(FeatureNames names, NumberReader numbers, Evaluator evaluator, Func<string, bool> isSize, int sense)
{
    public static readonly string[] Verbs =
    [
        "zero", "face", "side", "slot", "pocket", "round", "bites", "spot", "drill", "ream", "bore", "counterbore", "countersink", "tap", "broach", "chamfer",
        "saw", "flats", "measure", "move", "cut", "plunge", "turn",
    ];

    private readonly ClauseReader clauses = new(names, numbers, evaluator);
    private readonly ZeroReader zeros = new(names, numbers, evaluator);

    // Null, with a finding made, where the line is not understood.
    public Step? Read(Cursor c, StepHead head)
    {
        var verb = c.TakeAny(Verbs);
        switch (verb)
        {
            case null:
                var read = c.Peek()?.Text ?? string.Empty;
                c.Fail(FindingCatalogue.UnknownWord(c.Here, read, "a step", Nearest.To(read, Verbs), OtherWords.Hint(read) + Nearest.Listed("A step starts with one of", Verbs)));
                return null;
            case "zero":
                return zeros.Read(c, head);
            case "face" or "side" or "slot" or "pocket" or "round" or "bites":
                return Milled(c, head, verb);
            case "measure":
                return Measured(c, head);
            case "move" or "cut" or "plunge" or "turn":
                return Typed(c, head, verb);
            case "saw":
                return Saw(c, head);
            case "flats":
                return Flats(c, head);
            case "chamfer" or "broach":
                return verb == "chamfer" ? Chamfer(c, head) : Broach(c, head);
            default:
                return Hole(c, head, Enum.Parse<HoleWork>(verb, true));
        }
    }

    private Step? Milled(Cursor c, StepHead head, string verb)
    {
        FeatureDraft? feature = null;
        if (verb == "face" && names.Length(c) == 0)
        {
            _ = c.TakeAny("the top", "top", "all");
        }

        if (verb != "face" || names.Length(c) > 0 || (c.Peek() is { Kind: TokenKind.Word } && !c.Sees("to")))
        {
            feature = names.Take(c);
            if (feature is null)
            {
                return null;
            }
        }
        return verb switch
        {
            "face" => Face(c, head, feature),
            "side" => Side(c, head, feature!),
            "round" => Round(c, head, feature!),
            _ => Hollow(c, head, feature!, verb),
        };
    }

    private FaceStep? Face(Cursor c, StepHead head, FeatureDraft? feature)
    {
        var said = new Clauses();
        return clauses.Read(c, said, "face", "to", "with", "pass", "clear", "from", "allow", "speed") && Needs(c, said.To, "the height it is faced to", "to -8") ? new FaceStep
        {
            Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
            Feature = feature?.Name, To = said.To!, PerPass = said.PerPass, Clear = said.Clear, From = said.From, Allow = said.Allow,
        } : null;
    }

    private SideStep? Side(Cursor c, StepHead head, FeatureDraft feature)
    {
        var said = new Clauses();
        if (!clauses.Read(c, said, "side", "edges", "to", "with", "pass", "allow", "speed") || !Needs(c, said.To, "the height it is cut to", "to -13.4"))
        {
            return null;
        }

        return new SideStep
        {
            Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
            Feature = feature.Name, Edges = said.Edges.Count > 0 ? said.Edges : ["all"], To = said.To!, PerPass = said.PerPass, Allow = said.Allow,
        };
    }

    private RoundStep? Round(Cursor c, StepHead head, FeatureDraft feature)
    {
        FeatureDraft? of = null;
        if (c.Take("end of"))
        {
            of = names.Take(c);
            if (of is null)
            {
                return null;
            }
        }

        var said = new Clauses();
        return clauses.Read(c, said, "round", "to", "with", "pass", "allow", "inside", "speed") && Needs(c, said.To, "the height it is cut to", "to -8") ? new RoundStep
        {
            Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
            Feature = feature.Name, EndOf = of?.Name, To = said.To!, PerPass = said.PerPass, Allow = said.Allow, Inside = said.Inside,
        } : null;
    }

    private Step? Hollow(Cursor c, StepHead head, FeatureDraft feature, string verb)
    {
        var said = new Clauses();
        var read = verb == "bites"
            ? clauses.Read(c, said, verb, "to", "through", "with", "pass", "speed")
            : clauses.Read(c, said, verb, "to", "through", "with", "pass", "allow", "speed");
        return !read ? null : verb switch
        {
            "slot" => new SlotStep
            {
                Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
                Feature = feature.Name, To = said.To, Through = said.Through, PerPass = said.PerPass, Allow = said.Allow,
            },
            "pocket" => new PocketStep
            {
                Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
                Feature = feature.Name, To = said.To, Through = said.Through, PerPass = said.PerPass, Allow = said.Allow,
            },
            _ => new BitesStep
            {
                Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
                Feature = feature.Name, To = said.To, Through = said.Through, PerPass = said.PerPass,
            },
        };
    }

    private HoleStep? Hole(Cursor c, StepHead head, HoleWork work)
    {
        var features = new List<string>();
        do
        {
            if (names.Take(c) is not { } feature)
            {
                return null;
            }

            features.Add(feature.Name);
        }
        while (!c.AtEnd && c.TakeAny(",", "and") is not null && names.Length(c) > 0);
        var said = new Clauses();
        string[] taken = work == HoleWork.Bore ? ["to", "through", "across", "with", "pass", "allow", "speed"] : ["to", "through", "across", "with", "peck", "allow", "speed"];
        return clauses.Read(c, said, work.ToString().ToLowerInvariant(), taken) ? new HoleStep
        {
            Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
            Work = work, Features = features, To = said.To, Through = said.Through, Peck = said.Peck, ToAcross = said.Across, PerPass = said.PerPass, Allow = said.Allow,
        } : null;
    }

    private SawStep? Saw(Cursor c, StepHead head)
    {
        var below = c.Take("under");
        var named = below || !c.Sees("at") ? names.Take(c) : null;
        if (c.Failed)
        {
            return null;
        }

        var (under, slit) = below ? (named, null) : ((FeatureDraft?)null, named);

        var said = new Clauses();
        if (!clauses.Read(c, said, "saw", "at", "with", "from", "web", "allow", "speed"))
        {
            return null;
        }

        if (slit is null ? under is null == said.At is null : said.At is not null || said.Web is not null || said.Allow is not null)
        {
            c.Fail(FindingCatalogue.Missing(head.Where, "Where the saw cuts", "Write 'saw under arm ...', 'saw at -12 ...' for the height of its upper face, or 'saw split with saw1, from far side' for a slit of the drawing."));
            return null;
        }

        return Needs(c, said.From, "the side it comes from", "from near side") ? new SawStep
        {
            Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
            Under = under?.Name, Slit = slit?.Name, At = said.At, From = said.From!, Web = said.Web, WebAlong = said.WebAlong, Allow = said.Allow,
        } : null;
    }

    private ChamferStep? Chamfer(Cursor c, StepHead head)
    {
        FeatureDraft? of = null;
        if (names.Take(c) is not { } feature || (c.Take("end of") && (of = names.Take(c)) is null)
            || evaluator.TypedSize(numbers.Take(c, "how wide the chamfer is")) is not { } wide)
        {
            c.Quiet();
            return null;
        }

        var said = new Clauses();
        return clauses.Read(c, said, "chamfer", "edges", "with", "speed") ? new ChamferStep
        {
            Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
            Feature = feature.Name, EndOf = of?.Name, Edges = said.Edges, Wide = wide,
        } : null;
    }

    private FlatsStep? Flats(Cursor c, StepHead head)
    {
        if (names.Take(c) is not { } feature)
        {
            return null;
        }

        var said = new Clauses();
        return clauses.Read(c, said, "flats", "with", "pass", "allow", "speed") ? new FlatsStep
        {
            Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed,
            Feature = feature.Name, PerPass = said.PerPass, Allow = said.Allow,
        } : null;
    }

    private BroachStep? Broach(Cursor c, StepHead head)
    {
        if (names.Take(c) is not { } feature)
        {
            return null;
        }

        var said = new Clauses();
        return clauses.Read(c, said, "broach", "to", "through", "with") ? new BroachStep
        {
            Id = head.Id, Text = head.Text, Where = head.Where, Cutter = said.Cutter, CutterWhere = said.CutterWhere, Feature = feature.Name, To = said.To, Through = said.Through,
        } : null;
    }

    // measure hub across, then last pass at full depth
    private MeasureStep? Measured(Cursor c, StepHead head)
    {
        var start = c.At;
        while (!c.AtEnd && !c.Sees(","))
        {
            c.At++;
        }

        var size = FeatureNames.Name(c.Statement.Tokens.Skip(start).Take(c.At - start));
        if (size.Length == 0 || !isSize(size))
        {
            c.Fail(FindingCatalogue.NotThere(c.At > start ? c.Statement.SpanOf(start, c.At - 1) : c.Here, $"The drawing has no size '{size}'.", "Name a size of the drawing as it is written there: 'measure hub across'."));
            return null;
        }

        c.SkipCommas();
        var last = c.Take("then last pass") || c.Take("last pass");
        var full = last && c.Take("at full depth");
        return c.ExpectEnd("After the size may stand ', then last pass' or ', then last pass at full depth'.")
            ? new MeasureStep { Id = head.Id, Text = head.Text, Where = head.Where, Size = size, ThenLastPass = last, FullDepth = full } : null;
    }

    private Step? Typed(Cursor c, StepHead head, string verb) => new MoveReader(numbers, evaluator, clauses, sense).Read(c, head, verb);

    private static bool Needs(Cursor c, object? value, string what, string example)
    {
        if (value is null && !c.Failed)
        {
            c.Fail(FindingCatalogue.NotUnderstood(c.Here, c.Peek()?.Text ?? string.Empty, what, $"Write '{example}'."));
        }

        return value is not null;
    }
}
