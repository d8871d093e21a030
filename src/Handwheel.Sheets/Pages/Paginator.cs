namespace Handwheel.Sheets.Pages;

/// <summary>Sets blocks on pages: a block that fits on a page is kept whole, a longer one goes on over the page between two of its pieces.</summary>
internal static class Paginator
{
    /// <summary>White space after a block, millimetres.</summary>
    public const double Gap = 3.2;

    private const double Page = 297 - 9 - 8;
    private const double Footer = 6.5;

    /// <summary>Divides blocks into pages.</summary>
    /// <param name="blocks">The blocks in order.</param>
    /// <param name="firstHead">Height of the first page's heading.</param>
    /// <param name="head">Height of every other page's heading.</param>
    /// <returns>Each page's blocks.</returns>
    public static IReadOnlyList<IReadOnlyList<Block>> Divide(IReadOnlyList<Block> blocks, double firstHead, double head)
    {
        var pages = new List<List<Block>> { new() };
        var whole = Page - Footer - head;
        var room = Page - Footer - firstHead;
        foreach (var block in blocks)
        {
            if (pages[^1].Count > 0 && (block.Breaks || StartsOver(block, room, whole)))
            {
                pages.Add([]);
                room = whole;
            }

            var rest = block;
            while (rest.Height > room)
            {
                var (fits, left) = Split(rest, room, force: pages[^1].Count == 0);
                if (fits is not null)
                {
                    pages[^1].Add(fits);
                }

                if (left is null)
                {
                    rest = null;
                    break;
                }

                rest = left;
                pages.Add([]);
                room = whole;
            }

            if (rest is not null)
            {
                pages[^1].Add(rest);
                room -= rest.Height;
            }
            else
            {
                room = 0;
            }
        }

        return [.. pages.Where(p => p.Count > 0)];
    }

    private static bool StartsOver(Block block, double room, double whole)
    {
        if (block.Height <= room)
        {
            return false;
        }

        // A block that fits on a page of its own goes there, unless it would leave most of this one bare.
        return block.Height <= whole ? room < 0.5 * whole || block.Height < 0.5 * whole : room < 0.3 * whole;
    }

    private static (Block? Fits, Block? Onward) Split(Block block, double room, bool force)
    {
        var space = room - (block.Head?.Height ?? 0) - Gap;
        var left = Fitting(block.Left, space, force);
        var right = Fitting(block.Right, space, force);
        if (left == 0 && right == 0)
        {
            return (null, block);
        }

        var rest = block with { Key = string.Empty, Breaks = false, Head = block.Again, Left = [.. block.Left.Skip(left)], Right = [.. block.Right.Skip(right)] };
        var fits = block with { Left = [.. block.Left.Take(left)], Right = [.. block.Right.Take(right)] };
        return (fits, rest.Left.Count == 0 && rest.Right.Count == 0 ? null : rest);
    }

    private static int Fitting(IReadOnlyList<Piece> pieces, double room, bool force)
    {
        var used = 0.0;
        var count = 0;
        while (count < pieces.Count && used + pieces[count].Height <= room)
        {
            used += pieces[count].Height;
            count++;
        }

        return count == 0 && force && pieces.Count > 0 ? 1 : count;
    }
}
