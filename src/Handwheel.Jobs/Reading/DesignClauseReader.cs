using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;
using Handwheel.Trade.Joints;
using Handwheel.Trade.Metals;

namespace Handwheel.Jobs.Reading;

// Reads the clauses of a design's line; each statement says which it takes.
internal sealed class DesignClauseReader(FeatureNames names, NumberReader numbers, Evaluator evaluator)
{
    private static readonly (string Word, double Factor)[] Forces = [("N", 1), ("kN", 1000), ("lbf", 4.4482216152605)];

    private static readonly (string Word, double Factor)[] Torques =
    [
        ("N m", 1000), ("Nm", 1000), ("N mm", 1), ("ft lbf", 1355.8179483314), ("lbf ft", 1355.8179483314), ("in lbf", 112.9848290276), ("lbf in", 112.9848290276),
    ];

    private static readonly (string Word, double Factor)[] Pressures = [("MPa", 1), ("bar", 0.1), ("psi", 0.00689475729)];

    // Reads to the end of the line. False, with a finding made, where something does not belong.
    public bool Read(Cursor c, DesignClauses into, string example, params string[] taken)
    {
        while (!c.AtEnd)
        {
            c.SkipCommas();
            if (c.AtEnd)
            {
                break;
            }

            var (where, start) = (c.Here, c.At);
            var said = One(c, into);
            if (c.Failed)
            {
                return false;
            }

            if (said is null || !taken.Contains(said, StringComparer.Ordinal))
            {
                c.At = start;
                c.Fail(string.Join(", ", taken.Select(Shown)), $"Such as: '{example}'.");
                return false;
            }

            if (!into.Said.TryAdd(said, where))
            {
                c.Report(FindingCatalogue.SaidTwice(where, $"'{said}'", into.Said[said]));
            }
        }

        return !c.Failed;
    }

    // A force after a word: newtons.
    public Typed? Force(Cursor c, string expected) => WithUnit(c, expected, Forces);

    // A torque: newton millimetres.
    public Typed? Torque(Cursor c, string expected) => WithUnit(c, expected, Torques);

    private static string Shown(string clause) => clause switch
    {
        "pull" => "'pull 1.2 kN'",
        "torque" => "'torque 6 N m'",
        "drives" => "'drives 8 N m'",
        "grade" => "'grade 8.8'",
        "surface" => "'oiled', 'dry', 'plated'",
        "in" => "'in' a metal",
        "of" => "'of' a metal",
        "least" => "'at least 2'",
        "holds" => "'holds 2 MPa'",
        "held" => "'held at' a feature",
        "rests" => "'resting on' two features",
        "engaged" => "'12 engaged'",
        "long" => "'10 long'",
        "outside" => "'outside 20'",
        "wanted" => "'to slide', 'to press'",
        "clear" => "'clear 0.01 to 0.05'",
        _ => $"'{clause}'",
    };

    private string? One(Cursor c, DesignClauses into) => c.TakeAny("pull", "torque", "drives", "grade", "in", "shaft of", "pin of", "dowel of", "of", "at least", "holds") is { } word
        ? Worded(c, into, word)
        : numbers.Sees(c) ? Numbered(c, into) : Placed(c, into);

    private string? Worded(Cursor c, DesignClauses into, string word)
    {
        switch (word)
        {
            case "pull":
                return Kept(into, word, Force(c, "the pull"));
            case "torque" or "drives":
                return Kept(into, word, Torque(c, "the torque"));
            case "grade":
                return Grade(c, into);
            case "at least":
                return Kept(into, "least", Checked(c, evaluator.TypedSize(numbers.Take(c, "the thickness needed"))));
            case "holds":
                return Kept(into, word, WithUnit(c, "the pressure", Pressures));
            default:
                return Metal(c, into, word == "in" ? "in" : "of");
        }
    }

    private static string? Kept(DesignClauses into, string clause, Typed? value)
    {
        if (value is null)
        {
            return null;
        }

        into.Values.TryAdd(clause, value);
        return clause;
    }

    private static string Kept(DesignClauses into, string clause, string word)
    {
        into.Words.TryAdd(clause, word);
        return clause;
    }

    private static string? Grade(Cursor c, DesignClauses into)
    {
        var where = c.Here;
        var piece = c.TakePiece()?.Text ?? string.Empty;
        var found = BoltGrades.All.FirstOrDefault(g => string.Equals(g.Name, piece, StringComparison.OrdinalIgnoreCase) || string.Equals(g.Name, "grade " + piece, StringComparison.OrdinalIgnoreCase));
        if (found is not null)
        {
            return Kept(into, "grade", found.Name);
        }

        c.Fail(FindingCatalogue.UnknownWord(where, piece, "a grade of screws", null, Nearest.Listed("Grades are", BoltGrades.All.Select(g => g.Name).Distinct(StringComparer.Ordinal))));
        return null;
    }

    // The longest words that name a metal; its name may hold a comma.
    private static string? Metal(Cursor c, DesignClauses into, string clause)
    {
        var start = c.At;
        for (var words = 6; words > 0; words--)
        {
            if (c.Peek(words - 1) is not null && c.Statement.TextOf(start, start + words - 1) is var text && !text.EndsWith(',') && MetalTable.Find(text) is { } metal)
            {
                c.At += words;
                return Kept(into, clause, metal.Name);
            }
        }

        var read = c.Peek()?.Text ?? string.Empty;
        c.Fail(FindingCatalogue.UnknownWord(c.Here, read, "a metal that is known", Nearest.To(read, MetalTable.Names), "Write it as the reference has it: 'mild steel', '6061', 'brass, free-cutting'; ./handwheel ask metal lists them."));
        return null;
    }

    private string? Numbered(Cursor c, DesignClauses into)
    {
        if (Checked(c, evaluator.TypedSize(numbers.Take(c, "a length"))) is not { } value)
        {
            return null;
        }

        return c.TakeAny("engaged", "long") is { } word ? Kept(into, word, value) : null;
    }

    private string? Placed(Cursor c, DesignClauses into)
    {
        switch (c.TakeAny("oiled", "dry", "plated", "black", "outside", "to slide", "to press", "clear", "held at", "resting on", "across"))
        {
            case null:
                return null;
            case "outside":
                return Kept(into, "outside", Checked(c, evaluator.TypedSize(numbers.Take(c, "the outside of the hub"))));
            case "clear":
                return Clear(c, into);
            case "held at":
                return names.Take(c) is { } held ? Kept(into, "held", held.Name) : null;
            case "resting on":
                return Rests(c, into);
            case "to slide":
                return Kept(into, "wanted", "slide");
            case "to press":
                return Kept(into, "wanted", "press");
            case "across":
                return Kept(into, "across", "across");
            case var surface:
                return Kept(into, "surface", surface == "black" ? "dry" : surface);
        }
    }

    private string? Rests(Cursor c, DesignClauses into)
    {
        if (names.Take(c) is not { } first || !c.Expect("and", "Write the two it rests on: 'resting on jack and nose'.") || names.Take(c) is not { } second)
        {
            return null;
        }

        into.Rests.AddRange([first.Name, second.Name]);
        return "rests";
    }

    private string? Clear(Cursor c, DesignClauses into)
    {
        if (Checked(c, evaluator.TypedLength(numbers.Take(c, "the least clearance"))) is not { } least || !c.Expect("to", "Write 'clear 0.01 to 0.05'; what is tight is negative.")
            || numbers.Take(c, "the greatest clearance") is not { } second || Checked(c, evaluator.TypedLength(second)) is not { } most)
        {
            return null;
        }

        if (most.Value <= least.Value)
        {
            c.Fail(FindingCatalogue.LimitsWrong(second.Where, "The greatest clearance is not above the least.", "Write the least first: 'clear 0.01 to 0.05'."));
            return null;
        }

        into.Clear = new Limits((least.Value + most.Value) / 2, least.Value, most.Value);
        return "clear";
    }

    private Typed? WithUnit(Cursor c, string expected, (string Word, double Factor)[] units)
    {
        var start = c.At;
        if (numbers.Take(c, expected) is not { } number)
        {
            return null;
        }

        var bare = evaluator.Bare(number)?.ToDouble();
        if (bare is null)
        {
            c.Quiet();
            return null;
        }

        // The longest unit that stands here: 'N m' before 'N'.
        var unit = units.Where(u => c.Sees(u.Word)).OrderByDescending(u => u.Word.Length).FirstOrDefault();
        if (unit.Word is null || (units == Forces && (c.Sees("N m") || c.Sees("N mm") || c.Sees("lbf in") || c.Sees("lbf ft"))))
        {
            c.Fail(FindingCatalogue.WrongUnit(c.Here, c.Peek()?.Text ?? string.Empty, string.Join(" or ", units.Take(3).Select(u => u.Word))));
            return null;
        }

        if (bare is <= 0 or > 1e7)
        {
            c.Fail(FindingCatalogue.AbsurdNumber(number.Where, number.Text, bare <= 0 ? $"{expected} is above 0" : $"{expected} is less than that in any shop", "Write what is meant."));
            return null;
        }

        _ = c.Take(unit.Word);
        return new Typed(bare.Value * unit.Factor, c.Statement.TextOf(start, c.At - 1), c.Statement.SpanOf(start, c.At - 1));
    }

    private static Typed? Checked(Cursor c, Typed? value)
    {
        if (value is null)
        {
            c.Quiet();
        }

        return value;
    }
}
