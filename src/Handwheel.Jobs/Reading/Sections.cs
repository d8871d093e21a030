using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

/// <summary>Splits a document into statements, each tokenised; says what makes it no text at all.</summary>
internal static class Sections
{
    public static List<Statement> Statements(SourceText source, FindingBag bag)
    {
        var statements = new List<Statement>();
        List<Token>? open = null;
        for (var line = 1; line <= source.Lines.Count && !bag.Full; line++)
        {
            var text = source.LineAt(line);
            if (IsTooLong(source, line, bag))
            {
                continue;
            }

            var tokens = Lexer.Split(text, line);
            if (tokens.Count == 0)
            {
                continue;
            }

            var joined = open is null ? tokens : [.. open, .. tokens];
            open = null;
            if (tokens[^1].Text == ";" && joined.Count < ReadingLimits.LineCharacters * 4)
            {
                open = joined;
            }
            else
            {
                statements.Add(new Statement(source, joined));
            }
        }

        if (open is not null)
        {
            statements.Add(new Statement(source, open));
        }

        return statements;
    }

    // A finding for each line that is longer than the reader takes.
    public static void LongLines(SourceText source, FindingBag bag)
    {
        for (var line = 1; line <= source.Lines.Count && !bag.Full; line++)
        {
            IsTooLong(source, line, bag);
        }
    }

    private static bool IsTooLong(SourceText source, int line, FindingBag bag)
    {
        var text = source.LineAt(line);
        if (text.Length <= ReadingLimits.LineCharacters)
        {
            return false;
        }

        bag.Add(FindingCatalogue.TooMuch(
            source.Span(line, 0, 1),
            FormattableString.Invariant($"This line is {text.Length} characters long; at most {ReadingLimits.LineCharacters} are read, so it is left out."),
            "Write one statement a line."));
        return true;
    }

    // Whether it is text with something in it; a finding where not.
    public static bool IsText(SourceText source, FindingBag bag, string what)
    {
        for (var line = 1; line <= source.Lines.Count; line++)
        {
            var text = source.LineAt(line);
            var at = text.AsSpan().IndexOfAny('\0', '\uFFFD', '\uFFFE');
            if (at >= 0)
            {
                bag.Add(FindingCatalogue.NotText(source.Span(line, Math.Min(at, text.Length - 1), 1), "This is not a text file: it holds bytes that are no character."));
                return false;
            }
        }

        if (source.Lines.All(l => Lexer.CommentAt(l) == 0 || string.IsNullOrWhiteSpace(l[..Lexer.CommentAt(l)])))
        {
            bag.Add(FindingCatalogue.Missing(source.Span(1, 0, 1), $"Everything the {what} should say", "Write one, or start from an example."));
            return false;
        }

        if (source.Cut)
        {
            bag.Add(FindingCatalogue.TooMuch(
                source.Span(source.Lines.Count, 0, 1),
                FormattableString.Invariant($"The document is longer than {ReadingLimits.Characters} characters or {ReadingLimits.Lines} lines; what follows was not read."),
                "Split it into several jobs."));
        }

        return true;
    }
}
