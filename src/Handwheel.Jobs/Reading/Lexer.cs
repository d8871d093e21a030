using System.Globalization;

namespace Handwheel.Jobs.Reading;

/// <summary>Splits a line into tokens; a comment starts at <c>--</c>.</summary>
internal sealed class Lexer
{
    private readonly string text;
    private readonly int line;
    private int at;
    private int depth;

    private Lexer(string text, int line)
    {
        this.text = text;
        this.line = line;
    }

    // Where the comment of a line starts; the line's length where there is none.
    public static int CommentAt(string text)
    {
        var found = text.IndexOf("--", StringComparison.Ordinal);
        return found < 0 ? text.Length : found;
    }

    public static List<Token> Split(string text, int line)
    {
        var lexer = new Lexer(text[..CommentAt(text)], line);
        var tokens = new List<Token>();
        while (lexer.Next() is { } token)
        {
            tokens.Add(token);
        }

        return tokens;
    }

    private char this[int index] => index < text.Length ? text[index] : '\0';

    private Token? Next()
    {
        var before = at;
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        if (at >= text.Length)
        {
            return null;
        }

        var spaced = at > before || at == 0;
        var start = at;
        var kind = Digits(at) ? Number() : StartsWord(at) ? Word() : Sign();
        return new Token(kind, Plain(text[start..at], kind), line, start, at - start, spaced);
    }

    private bool Digits(int index) => char.IsAsciiDigit(this[index]) || (this[index] == '.' && char.IsAsciiDigit(this[index + 1]));

    private TokenKind Number()
    {
        var points = 0;
        var commas = 0;
        while (char.IsAsciiDigit(this[at]) || (this[at] is '.' or ',' && char.IsAsciiDigit(this[at + 1])) || (this[at] == '.' && points == 0))
        {
            points += this[at] == '.' ? 1 : 0;
            commas += this[at] == ',' ? 1 : 0;
            at++;
        }

        var exponent = Exponent();
        return commas > 0 ? TokenKind.Comma : points > 1 || exponent ? TokenKind.Broken : TokenKind.Number;
    }

    private bool Exponent()
    {
        if (this[at] is not ('e' or 'E'))
        {
            return false;
        }

        var next = this[at + 1] is '+' or '-' ? at + 2 : at + 1;
        if (!char.IsAsciiDigit(this[next]))
        {
            return false;
        }

        at = next;
        while (char.IsAsciiDigit(this[at]))
        {
            at++;
        }

        return true;
    }

    private bool StartsWord(int index) => char.IsLetter(text[index]) || text[index] is '_' or '#' || Paired(index) || IsMark(index);

    private bool Paired(int index) => char.IsSurrogate(this[index]);

    private bool IsMark(int index) => CharUnicodeInfo.GetUnicodeCategory(this[index])
        is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format;

    private TokenKind Word()
    {
        while (at < text.Length && InWord(at))
        {
            at++;
        }

        return TokenKind.Word;
    }

    private bool InWord(int index) => this[index] switch
    {
        '.' => char.IsAsciiDigit(this[index + 1]),
        '-' => depth == 0 && char.IsLetterOrDigit(this[index + 1]),
        '\'' or '\u2019' => char.IsLetter(this[index + 1]),
        var c => char.IsLetterOrDigit(c) || StartsWord(index),
    };

    private TokenKind Sign()
    {
        if (string.CompareOrdinal(text, at, "+/-", 0, 3) == 0)
        {
            at += 3;
            return TokenKind.Sign;
        }

        depth += text[at] == '(' ? 1 : text[at] == ')' && depth > 0 ? -1 : 0;
        at++;
        return TokenKind.Sign;
    }

    private static string Plain(string raw, TokenKind kind) => kind switch
    {
        TokenKind.Word => raw.Replace('\u2019', '\''),
        TokenKind.Sign => raw[0] switch
        {
            '\u2212' or '\u2013' => "-",
            '\u00B1' => "+/-",
            '\u2019' or '\u2032' => "'",
            '\u201D' or '\u2033' => "\"",
            '\u00D7' => "*",
            _ => raw,
        },
        _ => raw,
    };
}
