using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Reading;

// Reads work by hand.
internal sealed class HandReader(FeatureNames names, NumberReader numbers, Evaluator evaluator, Func<string, bool> isSize, Func<string, string?> drilledWith)
{
    public static readonly string[] Verbs = ["press", "run", "break", "file", "rub", "saw", "tap", "deburr", "do"];

    private static readonly string[] Faces = ["underside", "top", "near flank", "far flank", "near side", "far side", "left end", "right end"];

    public HandStep? Read(Cursor c, StepHead head)
    {
        var step = new HandStep { Id = head.Id, Text = head.Text, Where = head.Where, Work = HandWork.Other };
        var verb = c.TakeAny(Verbs);
        var read = verb switch
        {
            "press" => Press(c, step),
            "run" => Run(c, step),
            "break" => Break(c, step),
            "file" or "rub" or "saw" => Faced(c, step with { Work = verb switch { "file" => HandWork.File, "rub" => HandWork.Rub, _ => HandWork.Saw } }),
            "tap" => Tap(c, step),
            "deburr" => Rest(c, step with { Work = HandWork.BreakEdges }),
            "do" => Rest(c, step),
            _ => Unknown(c),
        };
        return read is not null && c.ExpectEnd("Write other work after 'do': 'do wash the part'.") ? read : null;
    }

    private static HandStep? Unknown(Cursor c)
    {
        var read = c.Peek()?.Text ?? string.Empty;
        c.Fail(FindingCatalogue.UnknownWord(c.Here, read, "work by hand", Nearest.To(read, Verbs), OtherWords.Hint(read) + Nearest.Listed("It starts with one of", Verbs) + " Anything else stands after 'do'."));
        return null;
    }

    private static HandStep Rest(Cursor c, HandStep step)
    {
        c.At = c.Statement.Tokens.Count;
        return step;
    }

    private HandStep? Press(Cursor c, HandStep step)
    {
        if (names.Take(c) is not { } feature)
        {
            return null;
        }

        var said = new Clauses();
        return new ClauseReader(names, numbers, evaluator).Read(c, said, "press", "with", "square", "to", "through")
            ? step with { Work = HandWork.Press, Feature = feature.Name, Cutter = said.Cutter, CutterWhere = said.CutterWhere, SquareTo = said.SquareTo } : null;
    }

    // run d4 through again: through the hole it drilled.
    private HandStep? Run(Cursor c, HandStep step)
    {
        const string mend = "Write 'run d4 through pilot' or 'run d4 through again'.";
        if (c.TakePiece() is not { } cutter)
        {
            c.Fail("the drill or reamer that is run through", mend);
            return null;
        }

        if (!c.Expect("through", mend))
        {
            return null;
        }

        var feature = c.Take("again") ? drilledWith(cutter.Text) : names.Take(c)?.Name;
        _ = c.Take("again");
        if (feature is null && !c.Failed)
        {
            c.Fail(FindingCatalogue.NotThere(cutter.Where, $"Nothing was drilled with {cutter.Text} before this line.", "Name the hole: 'run d4 through pilot'."));
        }

        return step with { Work = HandWork.Run, Feature = feature is { Length: > 0 } ? feature : null, Cutter = cutter.Text, CutterWhere = cutter.Where };
    }

    private HandStep? Break(Cursor c, HandStep step)
    {
        if (c.TakeAny("the web", "web") is not null)
        {
            var file = c.TakeAny(", file to the line", "and file to the line", ", file to line") is not null;
            return step with { Work = HandWork.BreakWeb, FileToLine = file };
        }

        var feature = c.TakeAny("all edges", "edges", "the edges") is null ? names.Take(c) : null;
        if (c.Failed)
        {
            return null;
        }

        _ = c.TakeAny("edges", "edge");
        var amount = c.AtEnd ? null : evaluator.TypedSize(numbers.Take(c, "how much the edges are broken"));
        return step with { Work = HandWork.BreakEdges, Feature = feature?.Name, Amount = amount };
    }

    private HandStep? Tap(Cursor c, HandStep step)
    {
        if (names.Take(c) is not { } feature)
        {
            return null;
        }

        var said = new Clauses();
        return new ClauseReader(names, numbers, evaluator).Read(c, said, "tap", "with", "to", "through")
            ? step with { Work = HandWork.Tap, Feature = feature.Name, Cutter = said.Cutter, CutterWhere = said.CutterWhere } : null;
    }

    // rub underside to arm high; file far flank to the line; file hub 0.1.
    private HandStep? Faced(Cursor c, HandStep step)
    {
        _ = c.TakeAny("the", "along");
        var face = c.TakeAny(Faces);
        var feature = face is null || c.Take("of") ? names.Take(c) : null;
        if (c.Failed)
        {
            return null;
        }

        face ??= c.TakeAny(Faces);
        step = step with { Face = face ?? feature?.Name, Feature = feature?.Name };
        if (c.AtEnd)
        {
            return step;
        }

        if (step.Work == HandWork.Saw)
        {
            return Sawn(c, step);
        }

        return !c.Take("to") ? step with { Amount = evaluator.TypedSize(numbers.Take(c, "'to' a size, 'to the line', or how much is taken")) }
            : c.TakeAny("the line", "line") is not null ? step with { FileToLine = true } : Sized(c, step);
    }

    // saw right end to the line, allow 2
    private HandStep? Sawn(Cursor c, HandStep step)
    {
        var line = c.TakeAny("to the line", "to line") is not null;
        c.SkipCommas();
        return c.AtEnd ? step with { FileToLine = line }
            : c.Expect("allow", "Write 'saw right end to the line, allow 2' for what is left on.")
                ? step with { FileToLine = line, Allow = evaluator.TypedSize(numbers.Take(c, "what is left on")) } : null;
    }

    private HandStep? Sized(Cursor c, HandStep step)
    {
        var start = c.At;
        while (!c.AtEnd)
        {
            c.At++;
        }

        var name = FeatureNames.Name(c.Statement.Tokens.Skip(start));
        if (isSize(name))
        {
            return step with { Size = name };
        }

        c.Fail(FindingCatalogue.NotThere(c.Statement.SpanOf(start, c.Statement.Tokens.Count - 1), $"The drawing has no size '{name}'.", "Name a size of the drawing as it is written there: 'rub underside to arm high'."));
        return null;
    }
}
