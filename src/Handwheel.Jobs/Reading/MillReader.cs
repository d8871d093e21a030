using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Shops;

namespace Handwheel.Jobs.Reading;

// Reads the mill and the lines under it.
internal sealed class MillReader(ShopNumbers numbers, FindingBag bag)
{
    private const string Mend =
        "A mill is 'mill travels x 400, y 150, quill 100; quill pushes 500 N' and below it 'readout x, y, z by 0.005', 'handwheel x 5 a turn, 100 divisions, backlash 0.15, clockwise grows', 'speeds 80 140 260', 'nose 50 across', 'power 550 W', 'throat 180', 'daylight 300'.";

    private readonly Dictionary<string, AxisDraft> axes = new(StringComparer.Ordinal) { ["x"] = new(), ["y"] = new(), ["z"] = new() };
    private readonly List<double> speeds = [];
    private Mill mill = new() { Name = "mill", X = Empty, Y = Empty, Z = Empty, Speeds = [], Where = default };

    private static MachineAxis Empty => new() { Travel = 0, PerTurn = 0, Divisions = 0 };

    public Mill? Read(IReadOnlyList<Statement> lines)
    {
        mill = mill with { Where = lines[0].Where };
        foreach (var line in lines)
        {
            var c = new Cursor(line, bag);
            _ = c.TakeAny("mill");
            while (!c.AtEnd)
            {
                c.SkipCommas();
                Clause(c);
            }
        }

        return Complete(lines[0]);
    }

    private void Clause(Cursor c)
    {
        switch (c.TakeAny("travels", "quill pushes", "depth by quill", "depth by knee", "readout", "handwheel", "speeds", "nose", "power", "throat", "daylight", "called"))
        {
            case "travels":
                Travels(c);
                break;
            case "readout":
                Readout(c);
                break;
            case "handwheel":
                Handwheel(c);
                break;
            case "speeds":
                Speeds(c);
                break;
            case "quill pushes":
                mill = mill with { QuillPush = numbers.Force(c, "what the quill pushes") ?? 0 };
                break;
            case "depth by quill":
                mill = mill with { DepthByQuill = true };
                break;
            case "depth by knee":
                mill = mill with { DepthByQuill = false };
                break;
            case null:
                Fail(c);
                break;
            case var word:
                Sized(c, word);
                break;
        }
    }

    private void Sized(Cursor c, string word)
    {
        switch (word)
        {
            case "nose":
                mill = mill with { NoseAcross = numbers.Size(c, "the diameter of the spindle nose") ?? 0 };
                _ = c.Take("across");
                break;
            case "power":
                mill = mill with { Power = numbers.Power(c, "the motor's power") ?? 0 };
                break;
            case "throat":
                mill = mill with { Throat = numbers.Size(c, "from the spindle's axis to the column") ?? 0 };
                break;
            case "daylight":
                mill = mill with { Daylight = numbers.Size(c, "the free height under the spindle nose") ?? 0 };
                break;
            default:
                mill = mill with { Name = c.TakePiece()?.Text ?? mill.Name };
                break;
        }
    }

    private static void Fail(Cursor c)
    {
        if (!c.AtEnd)
        {
            c.Fail("what belongs to a mill", Mend);
        }
    }

    // x 400, y 150, quill 100 (or knee 300).
    private void Travels(Cursor c)
    {
        while (c.TakeAny("x", "y", "z", "quill", "knee") is { } axis)
        {
            mill = axis == "knee" ? mill with { DepthByQuill = false } : mill;
            axes[axis is "quill" or "knee" ? "z" : axis].Travel = numbers.Size(c, "the travel") ?? 0;
            if (c.Peek() is { Text: "," } && c.Peek(1) is { } next && next.Text.ToLowerInvariant() is "x" or "y" or "z" or "quill" or "knee" && !IsPush(c))
            {
                c.At++;
            }
        }
    }

    private static bool IsPush(Cursor c) => c.Peek(2) is { } after && after.Is("pushes");

    private List<AxisDraft> Named(Cursor c)
    {
        var named = new List<AxisDraft>();
        while (c.TakeAny("x", "y", "z", "quill", "knee") is { } axis)
        {
            named.Add(axes[axis is "quill" or "knee" ? "z" : axis]);
            _ = c.TakeAny(",", "and");
        }

        if (named.Count == 0)
        {
            c.Fail("an axis: x, y or z", Mend);
        }

        return named;
    }

    private void Readout(Cursor c)
    {
        var named = Named(c);
        if (!c.Failed && c.Expect("by", Mend) && numbers.Size(c, "the readout's step") is { } step)
        {
            named.ForEach(a => a.Readout = step);
            if (c.Take(", counts the other way") || c.Take("counts the other way"))
            {
                named.ForEach(a => a.OtherWay = true);
            }
        }
    }

    private void Handwheel(Cursor c)
    {
        var named = Named(c);
        if (c.Failed || numbers.Size(c, "the travel of one turn") is not { } turn || !c.Expect("a turn", Mend))
        {
            return;
        }

        named.ForEach(a => (a.PerTurn, a.Where) = (turn, c.Statement.Where));
        while (c.Take(","))
        {
            if (c.Take("backlash"))
            {
                var slack = numbers.Length(c, "the slack on reversing") ?? 0;
                named.ForEach(a => (a.Backlash, a.IsSlackSaid) = (slack, true));
            }
            else if (c.TakeAny("clockwise grows", "clockwise shrinks", "counts the other way") is { } way)
            {
                named.ForEach(a => (a.ClockwiseGrows, a.OtherWay) = (way == "counts the other way" ? a.ClockwiseGrows : way == "clockwise grows", a.OtherWay || way == "counts the other way"));
            }
            else if (Counts.Take(c, 1, 100_000, "how many divisions its dial has") is { } divisions && c.Expect("divisions", Mend))
            {
                named.ForEach(a => a.Divisions = divisions);
            }
            else
            {
                return;
            }
        }
    }

    private void Speeds(Cursor c)
    {
        while (numbers.Sees(c) && numbers.Bare(c, "a speed") is { } speed)
        {
            speeds.Add(speed);
            if (c.Peek() is { Text: "," } && c.Peek(1) is { Kind: TokenKind.Number })
            {
                c.At++;
            }
        }

        _ = c.Take("rpm");
    }

    private Mill? Complete(Statement heading)
    {
        // Without a readout the dial is read, and its slack is part of every reading.
        foreach (var (name, axis) in axes.Where(a => a.Value is { Readout: null, Divisions: > 0, IsSlackSaid: false }))
        {
            bag.Add(FindingCatalogue.Missing(heading.Where, $"The slack of the dial of {name}", $"Measure it and write 'handwheel {name} 5 a turn, 100 divisions, backlash 0.15': it is taken as none.") with { Grade = Grade.Caution });
        }

        foreach (var (name, axis) in axes)
        {
            if (axis.Travel <= 0)
            {
                bag.Add(FindingCatalogue.Missing(heading.Where, $"The mill's travel along {name}", Mend));
            }

            if (axis.PerTurn <= 0 || axis.Divisions <= 0)
            {
                bag.Add(FindingCatalogue.Missing(heading.Where, $"The handwheel of {name}, its travel a turn and its divisions", Mend));
            }
        }

        if (speeds.Count == 0)
        {
            bag.Add(FindingCatalogue.Missing(heading.Where, "The mill's spindle speeds", "Write 'speeds 80 140 260 480'."));
        }

        return mill with { X = axes["x"].Made(), Y = axes["y"].Made(), Z = axes["z"].Made(), Speeds = [.. speeds.Order()] };
    }
}
