namespace Handwheel.Sheets.Pages;

/// <summary>
/// Divides blocks over pages. Of all ways to do it the one is taken that wastes least paper and breaks fewest steps: what is bare at a page's foot costs by
/// its square, a broken step costs a fixed sum, and a step is broken only between rows, never next to its heading.
/// </summary>
internal sealed class Paginator
{
    /// <summary>Room between blocks, millimetres.</summary>
    public const double Gap = 3.2;

    // One page prints on A4 and on US letter alike: as wide as A4, as tall as letter.
    private const double Page = 279 - 9 - 8;
    private const double Footer = 6.5;
    private const double PageCosts = 20;
    private const double BareCosts = 100;
    private const double BrokenStepCosts = 4;

    // The least of a step that stands alone at a foot or at a head.
    private const double LeastPart = 30;

    private readonly IReadOnlyList<Block> _blocks;
    private readonly double _first;
    private readonly double _next;
    private readonly Dictionary<Spot, (double Cost, Spot? End)> _best = [];

    private Paginator(IReadOnlyList<Block> blocks, double firstHead, double head)
    {
        _blocks = blocks;
        _first = Room(firstHead);
        _next = Room(head);
    }

    /// <summary>What is left of a page under a heading and above the footer.</summary>
    /// <param name="head">Height of its heading.</param>
    /// <returns>Millimetres.</returns>
    public static double Room(double head) => Page - Footer - head;

    /// <summary>Divides blocks over pages.</summary>
    /// <param name="blocks">The blocks in order.</param>
    /// <param name="firstHead">Height of the first page's heading.</param>
    /// <param name="head">Height of each later page's heading.</param>
    /// <returns>Pages of blocks.</returns>
    public static IReadOnlyList<IReadOnlyList<Block>> Divide(IReadOnlyList<Block> blocks, double firstHead, double head)
    {
        var paginator = new Paginator(blocks, firstHead, head);
        var pages = new List<IReadOnlyList<Block>>();
        Spot? at = new Spot(0, 0, 0);
        for (var first = true; at is { } from && from.Block < blocks.Count; first = false)
        {
            at = paginator.Best(from, first).End;
            pages.Add(paginator.Between(from, at));
        }

        return pages;
    }

    // The cheapest way to fill pages from a spot on: what it costs, and where its first page ends.
    private (double Cost, Spot? End) Best(Spot from, bool first)
    {
        if (_best.TryGetValue(from, out var known))
        {
            return known;
        }

        var room = first ? _first : _next;
        (double Cost, Spot? End) best = (double.PositiveInfinity, null);
        foreach (var (end, used, broken) in Ends(from, room))
        {
            var last = end.Block >= _blocks.Count;
            var bare = last ? 0 : Math.Max(0, 1 - (used / room));
            var cost = PageCosts + (BareCosts * bare * bare) + broken + (last ? 0 : Best(end, first: false).Cost);
            if (cost < best.Cost)
            {
                best = (cost, end);
            }
        }

        return _best[from] = best;
    }

    // Every place at which a page begun at a spot may end, the height used till there, and what breaking there costs.
    private IEnumerable<(Spot End, double Used, double Broken)> Ends(Spot from, double room)
    {
        var used = 0.0;
        for (var i = from.Block; i < _blocks.Count; i++)
        {
            if (i > from.Block && _blocks[i].Breaks)
            {
                yield break;
            }

            var (left, right) = i == from.Block ? (from.Left, from.Right) : (0, 0);
            var rest = _blocks[i].From(left, right);
            foreach (var (l, r) in Breaks(rest, room - used, alone: i == from.Block))
            {
                yield return (new(i, left + l, right + r), used + rest.To(l, r).Height, rest.Columns == Columns.Step ? BrokenStepCosts : 0);
            }

            if (used + rest.Height > room)
            {
                yield break;
            }

            used += rest.Height;
            yield return (new(i + 1, 0, 0), used, 0);
        }
    }

    // How many pieces of either column may stay on the page where the rest goes on.
    private IEnumerable<(int Left, int Right)> Breaks(Block block, double room, bool alone)
    {
        var space = room - block.HeadHeight(more: true) - Gap;
        if (block.Columns != Columns.Step)
        {
            // A heading and what it heads are kept together where a page has room for them.
            if (block.Height <= _next)
            {
                yield break;
            }

            var (l, r) = (Fitting(block.Left, space, alone), Fitting(block.Right, space, alone && block.Left.Count == 0));
            if (l + r > 0 && l + r < block.Left.Count + block.Right.Count)
            {
                yield return (l, r);
            }

            yield break;
        }

        var tall = 0.0;
        var all = block.Right.Sum(p => p.Height);
        for (var r = 1; r < block.Right.Count; r++)
        {
            tall += block.Right[r - 1].Height;
            if (tall > space && (r > 1 || !alone))
            {
                yield break;
            }

            var crowded = alone && block.Height > room;
            if (block.Right[r - 1].KeepsNext || (!crowded && (tall < LeastPart || all - tall < LeastPart)))
            {
                continue;
            }

            // Pictures and workings of rows that come later go with those rows.
            var mine = block.Left.TakeWhile(p => p.Row <= r + block.RightTaken - 1).ToArray();
            yield return (Fitting(mine, space, force: false), r);
        }
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

    private List<Block> Between(Spot from, Spot? to)
    {
        var page = new List<Block>();
        for (var i = from.Block; i < _blocks.Count && i <= (to?.Block ?? int.MaxValue); i++)
        {
            var (left, right) = i == from.Block ? (from.Left, from.Right) : (0, 0);
            var block = _blocks[i].From(left, right);
            if (i < to?.Block)
            {
                page.Add(block);
            }
            else if (to is { } end && end.Left + end.Right > left + right)
            {
                page.Add(block.To(end.Left - left, end.Right - right));
            }
        }

        return page;
    }

    private readonly record struct Spot(int Block, int Left, int Right);
}
