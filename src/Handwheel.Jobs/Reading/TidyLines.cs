using System.Text;

namespace Handwheel.Jobs.Reading;

/// <summary>Takes a document apart into lines with columns; goes through it once.</summary>
internal sealed class TidyLines
{
    private static readonly string[] Heads =
        ["job", "unit", "metal", "shop", "make", "drawing", "design", "stock", "holding"];

    private static readonly string[] Bodies =
        ["drawing", "design", "stock", "holding", "by", "mill"];

    private static readonly string[] MillLines = ["readout", "handwheel", "speeds", "quill", "knee", "nose", "power", "throat", "daylight", "depth", "travels"];

    private readonly SourceText source;
    private readonly bool isShop;
    private readonly List<TidyLine?> lines = [];
    private string section = string.Empty;
    private bool goesOn;
    private int block;

    public TidyLines(SourceText source)
    {
        this.source = source;
        isShop = IsShop(source);
    }

    public List<TidyLine?> Split()
    {
        for (var line = 1; line <= source.Lines.Count; line++)
        {
            var raw = source.LineAt(line);
            Add(raw, Lexer.Split(raw, line).ConvertAll(t => t with { Text = raw.Substring(t.Start, t.Length) }));
        }

        return lines;
    }

    private void Add(string raw, List<Token> tokens)
    {
        var comment = raw[Lexer.CommentAt(raw)..].TrimEnd();
        if (tokens.Count > 0)
        {
            Said(raw, tokens, comment);
        }
        else if (comment.Length > 0)
        {
            lines.Add(new TidyLine(char.IsWhiteSpace(raw[0]) && section.Length > 0 ? 2 : 0, [string.Empty], comment, block));
        }
        else
        {
            lines.Add(null);
            block++;
        }
    }

    private void Said(string raw, List<Token> tokens, string comment)
    {
        var word = goesOn ? null : Head(tokens);
        if (word is not null)
        {
            block += Bodies.Contains(word) && (!isShop || section.Length > 0) ? 1 : 0;
            section = Bodies.Contains(word) ? word : string.Empty;
        }

        var columns = goesOn ? Cut(tokens) : Columns(tokens, raw, word);
        lines.Add(new TidyLine(goesOn ? 6 : word is null && section.Length > 0 ? 2 : 0, columns, comment, block));
        goesOn = tokens[^1].Text == ";";
    }

    // A shop has a mill or a cutter, and no job.
    private static bool IsShop(SourceText source) => !source.Lines.Any(l => l.Split((char[]?)null, 2, StringSplitOptions.RemoveEmptyEntries) is [var first, ..] && first.ToLowerInvariant() is "job" or "drawing");

    // The heading word of a line; null for a line below one.
    private string? Head(List<Token> tokens)
    {
        var first = tokens[0].Text.ToLowerInvariant();
        if (isShop)
        {
            return section == "mill" && MillLines.Contains(first) ? null : first;
        }

        return Heads.Contains(first) || (first == "by" && tokens.Count > 1 && tokens[1].Is("hand")) ? first : null;
    }

    private List<string> Columns(List<Token> tokens, string raw, string? word)
    {
        if (word is "job" or "metal" or "shop")
        {
            // What a person calls it stays as it is; only its spaces are made single.
            var title = tokens.Count > 1 && tokens[1].Spaced ? 1 : 0;
            var text = string.Join(' ', raw[tokens[title].Start..tokens[^1].End].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
            return title == 1 ? [raw[tokens[0].Start..tokens[0].End], text] : [text];
        }

        if (word is not null)
        {
            return isShop || word is "unit" or "make" ? Cut(tokens, Enumerable.Range(0, tokens.Count).FirstOrDefault(i => Apart(tokens, i))) : Cut(tokens);
        }

        return section == "drawing" ? Drawing(tokens) : Cut(tokens);
    }

    // name | shape and place | ends and the rest; size | what | its value.
    private static List<string> Drawing(List<Token> tokens)
    {
        var shape = tokens.FindIndex(1, t => FeatureReader.ShapeWords.Contains(t.Text.ToLowerInvariant()));
        if (tokens[0].Is("size") || tokens[0].Is("others") || shape < 0)
        {
            return Cut(tokens, 1, tokens.FindIndex(1, t => t.Kind is TokenKind.Number or TokenKind.Comma or TokenKind.Broken || t.Text is "(" or "+/-" or "+" or "-"));
        }

        var ends = tokens.FindIndex(shape, t => t.Is("from") || t.Is("through"));
        ends = ends > 0 && tokens[ends - 1].Text.ToLowerInvariant() is "seen" or "deep" or "high" or "down" ? -1 : ends;
        return Cut(tokens, shape, tokens.Exists(t => t.Text == ";") ? -1 : ends);
    }

    private static bool Apart(List<Token> tokens, int at) =>
        at > 0 && at < tokens.Count && tokens[at].Text is not ("," or ";" or ")") && tokens[at - 1].Text != "(" && (tokens[at].Spaced || tokens[at - 1].Text is "," or ";");

    // Columns start at these tokens, where they stand apart from what is before them.
    private static List<string> Cut(List<Token> tokens, params int[] starts)
    {
        var columns = new List<string>();
        var from = 0;
        foreach (var start in starts)
        {
            if (start > from && Apart(tokens, start))
            {
                columns.Add(Joined(tokens[from..start], 0));
                from = start;
            }
        }

        columns.Add(Joined(tokens[from..], 0));
        return columns;
    }

    // Tokens with single spaces: none before a comma, none inside a parenthesis that is closed, one after a comma.
    private static string Joined(List<Token> tokens, int from)
    {
        var text = new StringBuilder();
        var sound = Closed(tokens, from);
        for (var i = from; i < tokens.Count; i++)
        {
            var before = i > from ? tokens[i - 1].Text : string.Empty;
            var tight = i == from || tokens[i].Text is "," or ";" || (sound && (tokens[i].Text == ")" || before == "("));
            text.Append(!tight && (before is "," or ";" || tokens[i].Spaced) ? " " : string.Empty).Append(tokens[i].Text);
        }

        return text.ToString();
    }

    // Whether every parenthesis stands after a space and is closed: then it is a sum's, and no part of a name.
    private static bool Closed(List<Token> tokens, int from)
    {
        var depth = 0;
        for (var i = from; i < tokens.Count && depth >= 0; i++)
        {
            var opens = tokens[i].Text == "(";
            depth += opens ? 1 : tokens[i].Text == ")" ? -1 : 0;
            depth = opens && depth == 1 && !tokens[i].Spaced && i > from && tokens[i - 1].Text is not ("-" or "+" or "," or ";") ? -1 : depth;
        }

        return depth == 0;
    }
}
