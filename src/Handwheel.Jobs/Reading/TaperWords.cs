using Handwheel.Jobs.Findings;
using Handwheel.Trade.Tapers;

namespace Handwheel.Jobs.Reading;

/// <summary>Tapers as they are spoken: <c>Morse 2</c>, <c>7/24 30</c>, <c>R8</c>.</summary>
internal static class TaperWords
{
    private const string Mend = "Write 'Morse 2', 'Jacobs 33', 'Brown and Sharpe 7', '7/24 30' or 'R8', or name a cone of the drawing.";

    // The taper that stands here; null with a finding.
    public static Taper? Take(Cursor c)
    {
        var start = c.At;
        var family = (c.TakePiece()?.Text ?? string.Empty).ToLowerInvariant() switch
        {
            "morse" or "mt" => "Morse",
            "jacobs" or "jt" => "Jacobs",
            "jarno" => "Jarno",
            "brown" when c.TakeAny("and Sharpe", "& Sharpe") is not null => "Brown & Sharpe",
            "7/24" => "7/24",
            "r8" => "R8",
            _ => null,
        };
        _ = family is not null && c.TakeAny("no", "number", "taper") is not null;
        var number = family is null or "R8" ? string.Empty : c.TakePiece()?.Text ?? string.Empty;
        if (family is not null && TaperTable.Find(family, number) is { } found)
        {
            return found;
        }

        var read = c.At > start ? c.Statement.TextOf(start, c.At - 1) : string.Empty;
        c.Fail(FindingCatalogue.UnknownWord(c.Statement.SpanOf(start, Math.Max(start, c.At - 1)), read, "a taper of the trade", null, Mend));
        return null;
    }
}
