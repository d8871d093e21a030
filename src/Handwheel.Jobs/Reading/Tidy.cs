using System.Text;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

/// <summary>Lines a document up: indents, columns, comments. Changes no meaning, keeps every comment, and what it wrote it leaves as it is.</summary>
public static class Tidy
{
    private const int MostAligned = 48;

    /// <summary>Why a document is left as it is: it is no text, or longer than the reader takes.</summary>
    /// <param name="fileName">Its name.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The findings; none where it can be tidied.</returns>
    public static IReadOnlyList<Finding> Hindrances(string fileName, string text) => Hindrances(new SourceText(fileName, text));

    /// <summary>The document, tidied.</summary>
    /// <param name="fileName">Its name.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The same statements with spaces set anew; the text itself where it is no text or longer than the reader takes.</returns>
    public static string Text(string fileName, string text)
    {
        var source = new SourceText(fileName, text);
        if (Hindrances(source).Count > 0)
        {
            return text;
        }

        var lines = new TidyLines(source).Split();
        var written = new StringBuilder();
        foreach (var block in Blocks(lines))
        {
            Write(written, block);
        }

        return written.ToString().Trim('\n') + "\n";
    }

    private static IReadOnlyList<Finding> Hindrances(SourceText source)
    {
        var bag = new FindingBag();
        if (Sections.IsText(source, bag, "document"))
        {
            Sections.LongLines(source, bag);
        }

        return bag.InOrder([source]);
    }

    // Empty lines are kept, one at a time.
    private static IEnumerable<List<TidyLine>> Blocks(List<TidyLine?> lines)
    {
        var open = new List<TidyLine>();
        var empty = false;
        foreach (var line in lines)
        {
            if (line is null || (open.Count > 0 && line.Block != open[^1].Block))
            {
                if (open.Count > 0)
                {
                    yield return open;
                    open = [];
                }

                if (line is null && !empty)
                {
                    yield return open;
                }
            }

            empty = line is null;
            if (line is not null)
            {
                open.Add(line);
            }
        }

        yield return open;
    }

    private static void Write(StringBuilder written, List<TidyLine> block)
    {
        if (block.Count == 0)
        {
            written.Append('\n');
            return;
        }

        var first = Width(block, 0);
        var second = Width(block, 1);
        var lines = block.ConvertAll(l => new string(' ', l.Indent) + Aligned(l.Columns, first, second, l.Indent > 0 ? "  " : " "));
        var comment = lines.Zip(block).Where(x => x.Second.Comment.Length > 0 && x.First.Trim().Length > 0 && x.First.Length <= 60).Select(x => x.First.Length).DefaultIfEmpty(0).Max();
        foreach (var (line, tidied) in lines.Zip(block))
        {
            var note = tidied.Comment;
            written.Append(note.Length == 0 ? line : line.Trim().Length == 0 ? line + note : line.PadRight(comment) + "  " + note).Append('\n');
        }
    }

    // The width of a column: its widest entry that another column follows, to a most.
    private static int Width(List<TidyLine> block, int column) =>
        block.Where(l => l.Columns.Count > column + 1).Select(l => l.Columns[column].Length).Where(w => w <= MostAligned).DefaultIfEmpty(0).Max();

    private static string Aligned(IReadOnlyList<string> columns, int first, int second, string gap) => columns.Count switch
    {
        1 => columns[0],
        2 => columns[0].PadRight(first) + gap + columns[1],
        _ => columns[0].PadRight(first) + gap + columns[1].PadRight(second) + gap + columns[2],
    };
}
