using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

/// <summary>Goes through a statement token by token. A statement has at most one finding of its own shape: after the first the rest of it is left.</summary>
internal sealed class Cursor
{
    private readonly FindingBag bag;

    public Cursor(Statement statement, FindingBag bag)
    {
        Statement = statement;
        this.bag = bag;
    }

    /// <summary>The statement.</summary>
    public Statement Statement { get; }

    /// <summary>The index of the token it stands at.</summary>
    public int At { get; set; }

    /// <summary>Whether something was wrong.</summary>
    public bool Failed { get; private set; }

    /// <summary>Whether nothing is left, or reading it was given up.</summary>
    public bool AtEnd => Failed || At >= Statement.Tokens.Count;

    /// <summary>The place of the token it stands at; just past the last where none is left.</summary>
    public SourceSpan Here => Statement.SpanOf(At, At);

    public Token? Peek(int ahead = 0) => !Failed && At + ahead < Statement.Tokens.Count ? Statement.Tokens[At + ahead] : null;

    // Whether the words of the phrase come next, in any case.
    public bool Sees(string phrase)
    {
        var ahead = 0;
        foreach (var word in phrase.AsSpan().Split(' '))
        {
            if (Peek(ahead++) is not { } token || !token.Text.AsSpan().Equals(phrase.AsSpan(word), StringComparison.OrdinalIgnoreCase))
            {
                return false;
            }
        }

        return true;
    }

    public bool Take(string phrase)
    {
        if (!Sees(phrase))
        {
            return false;
        }

        At += phrase.Count(c => c == ' ') + 1;
        return true;
    }

    // The first of the phrases that comes next, taken; null for none.
    public string? TakeAny(params ReadOnlySpan<string> phrases)
    {
        foreach (var phrase in phrases)
        {
            if (Take(phrase))
            {
                return phrase;
            }
        }

        return null;
    }

    public bool SeesAny(params ReadOnlySpan<string> phrases)
    {
        foreach (var phrase in phrases)
        {
            if (Sees(phrase))
            {
                return true;
            }
        }

        return false;
    }

    public bool Expect(string phrase, string mend)
    {
        if (Take(phrase))
        {
            return true;
        }

        Fail($"'{phrase}'", mend);
        return false;
    }

    // A word as one piece: letters, digits and signs up to a space, a comma or a semicolon: the name of a cutter or a holder.
    public (string Text, SourceSpan Where)? TakePiece()
    {
        if (Peek() is not { } first || first.Text is "," or ";")
        {
            return null;
        }

        var start = At++;
        while (Peek() is { Spaced: false } next && next.Text is not ("," or ";"))
        {
            At++;
        }

        return (Statement.TextOf(start, At - 1), Statement.SpanOf(start, At - 1));
    }

    public void SkipCommas()
    {
        while (Peek() is { Text: "," or ";" })
        {
            At++;
        }
    }

    // The rest of the line is not understood: one finding, and the line is given up.
    public void Fail(string expected, string mend)
    {
        var read = Peek() is { } token ? token.Text : string.Empty;
        Fail(FindingCatalogue.NotUnderstood(Here, read, expected, OtherWords.Hint(read) + mend));
    }

    public void Fail(Finding finding)
    {
        if (!Failed)
        {
            bag.Add(finding);
        }

        Failed = true;
    }

    // What was wrong has its finding already, here or where what it names was typed: the rest of the line is left.
    public void Quiet()
    {
        if (!Failed && !bag.Halts)
        {
            Fail("more of this line", "The language reference shows each statement with an example.");
        }

        Failed = true;
    }

    // Something is wrong, but the line can be read on.
    public void Report(Finding finding) => bag.Add(finding);

    public bool ExpectEnd(string mend)
    {
        if (AtEnd)
        {
            return !Failed;
        }

        Fail("the end of the line", mend);
        return false;
    }
}
