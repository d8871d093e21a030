using Handwheel.Jobs.Findings;
using Handwheel.Jobs.Steps;

namespace Handwheel.Jobs.Reading;

// Reads typed moves: readings of the holding, as they would be cranked; a rotary's is on its own rim, so that theta is the reading times its sense.
internal sealed class MoveReader(NumberReader numbers, Evaluator evaluator, ClauseReader clauses, int sense)
{
    private const string MoveMend = "A typed move is 'move x to 12.5', 'cut x to 12.5, y to 3 with em10', 'plunge z to -3 with em10'.";
    private const string TurnMend = "A typed turn is 'turn rotary clockwise once at x 5, y 0, z -8 with em10' or 'turn rotary counterclockwise to 90 deg at x 5, y 0, z -8 with em10'.";

    public MoveStep? Read(Cursor c, StepHead head, string verb)
    {
        var draft = new MoveStep { Id = head.Id, Text = head.Text, Where = head.Where, Cutting = verb != "move" };
        var read = verb == "turn" ? Turn(c, draft) : Places(c, draft, true);
        if (read is null)
        {
            return null;
        }

        var said = new Clauses();
        if (!clauses.Read(c, said, verb, "with", "speed"))
        {
            return null;
        }

        if (read.X is null && read.Y is null && read.Z is null && !read.TurnsRotary)
        {
            c.Fail(FindingCatalogue.Missing(head.Where, "Where to", MoveMend));
            return null;
        }

        return read with { Cutter = said.Cutter, CutterWhere = said.CutterWhere, Speed = said.Speed };
    }

    private MoveStep? Turn(Cursor c, MoveStep draft)
    {
        _ = c.Take("the");
        var indexer = c.Take("indexer");
        if (!indexer && !c.Expect("rotary", TurnMend))
        {
            return null;
        }

        var way = c.TakeAny("clockwise", "counterclockwise");
        if (way is null)
        {
            c.Fail("'clockwise' or 'counterclockwise' (the work, seen from above)", TurnMend);
            return null;
        }

        draft = draft with { TurnsRotary = true, Clockwise = way == "clockwise", Cutting = !indexer };
        var turns = c.TakeAny("once", "twice");
        if (turns is not null)
        {
            draft = draft with { Turns = turns == "once" ? 1 : 2 };
        }
        else if (c.TakeAny("to", "by") is { } word)
        {
            if (evaluator.TypedAngle(numbers.Take(c, "an angle")) is not { } angle)
            {
                c.Quiet();
                return null;
            }

            draft = word == "to" ? draft with { T = angle with { Value = indexer ? angle.Value : angle.Value * sense } } : draft with { Turns = angle.Value / (2 * Math.PI) };
        }
        else
        {
            c.Fail("'once', 'twice', 'by 90 deg' or 'to 90 deg'", TurnMend);
            return null;
        }

        c.SkipCommas();
        return c.Take("at") ? Places(c, draft, false) : draft;
    }

    private MoveStep? Places(Cursor c, MoveStep draft, bool toWord)
    {
        while (c.TakeAny("x", "y", "z") is { } axis)
        {
            if (toWord && !c.Expect("to", MoveMend))
            {
                return null;
            }

            if (evaluator.TypedLength(numbers.Take(c, $"the reading of {axis}")) is not { } value)
            {
                c.Quiet();
                return null;
            }

            draft = axis switch { "x" => draft with { X = value }, "y" => draft with { Y = value }, _ => draft with { Z = value } };
            _ = c.TakeAny(",", "and");
        }

        return c.Failed ? null : draft;
    }
}
