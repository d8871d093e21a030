using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Reading;

/// <summary>One statement: the tokens of a line, or of several where a line ends in a semicolon.</summary>
/// <param name="Source">Its document.</param>
/// <param name="Tokens">Its tokens, at least one.</param>
internal sealed record Statement(SourceText Source, IReadOnlyList<Token> Tokens)
{
    /// <summary>Its first line.</summary>
    public int Line => Tokens[0].Line;

    /// <summary>The place of all of it that stands on its first line.</summary>
    public SourceSpan Where => SpanOf(0, Tokens.Count - 1);

    /// <summary>As typed, comment and edge spaces taken off; lines joined by a space.</summary>
    public string Text => TextOf(0, Tokens.Count - 1);

    // The place of tokens first to last, as far as they stand on one line; just past the end where there is no such token.
    public SourceSpan SpanOf(int first, int last)
    {
        if (first >= Tokens.Count)
        {
            return Source.Span(Tokens[^1].Line, Tokens[^1].End, 1);
        }

        var from = Tokens[first];
        var to = from;
        for (var i = first; i <= last && i < Tokens.Count && Tokens[i].Line == from.Line; i++)
        {
            to = Tokens[i];
        }

        return Source.Span(from.Line, from.Start, to.End - from.Start);
    }

    public string TextOf(int first, int last)
    {
        if (last < first)
        {
            return string.Empty;
        }

        if (Tokens[first].Line == Tokens[last].Line)
        {
            return Source.LineAt(Tokens[first].Line)[Tokens[first].Start..Tokens[last].End];
        }

        var parts = Tokens.Skip(first).Take(last - first + 1).GroupBy(t => t.Line)
            .Select(g => Source.LineAt(g.Key)[g.First().Start..g.Last().End]);
        return string.Join(" ", parts);
    }
}
