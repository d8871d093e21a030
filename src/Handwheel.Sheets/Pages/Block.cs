namespace Handwheel.Sheets.Pages;

/// <summary>What belongs together on a page: a heading and one or two columns of pieces.</summary>
internal sealed record Block
{
    /// <summary>Width of a page's content, millimetres.</summary>
    public const double PageWide = 186;

    /// <summary>Width of an overview's left column.</summary>
    public const double OverviewLeft = 114;

    /// <summary>Width of an overview's right column.</summary>
    public const double OverviewRight = 67;

    /// <summary>Width of a step's left column.</summary>
    public const double StepLeft = 64;

    /// <summary>Width of a step's right column.</summary>
    public const double StepRight = 118.4;

    /// <summary>A name by which its page is found again: a step's id; empty for none.</summary>
    public string Key { get; init; } = string.Empty;

    /// <summary>What the page's heading says beside the title where this block comes first on it.</summary>
    public string Under { get; init; } = string.Empty;

    /// <summary>How it divides the width.</summary>
    public required Columns Columns { get; init; }

    /// <summary>Its heading, told whether it goes on from the page before and whether it goes on over the next; null: each column brings its own.</summary>
    public Func<bool, bool, Piece>? Head { get; init; }

    /// <summary>What heads its right column again where it goes on; null: nothing.</summary>
    public Piece? RightAgain { get; init; }

    /// <summary>Its left (or only) column.</summary>
    public required IReadOnlyList<Piece> Left { get; init; }

    /// <summary>Its right column.</summary>
    public IReadOnlyList<Piece> Right { get; init; } = [];

    /// <summary>How many pieces of its right column stand on pages before.</summary>
    public int RightTaken { get; init; }

    /// <summary>Whether it begins a new page.</summary>
    public bool Breaks { get; init; }

    /// <summary>Its whole height where it ends on the page.</summary>
    public double Height => HeadHeight(More) + Math.Max(Left.Sum(p => p.Height), Right.Sum(p => p.Height)) + Paginator.Gap;

    private bool GoesOn { get; init; }

    private bool More { get; init; }

    private static Piece Space { get; } = new(string.Empty, Paginator.Gap);

    /// <summary>The height of its heading.</summary>
    /// <param name="more">Whether it goes on over the next page.</param>
    /// <returns>Millimetres.</returns>
    public double HeadHeight(bool more) => (Head?.Invoke(GoesOn, more).Height ?? 0) + (GoesOn && Right.Count > 0 ? RightAgain?.Height ?? 0 : 0);

    /// <summary>Two blocks as one, column under column, so that neither waits for the other's.</summary>
    /// <param name="next">The block that follows.</param>
    /// <returns>Both.</returns>
    public Block Then(Block next) => this with { Left = [.. Left, Space, .. next.Left], Right = next.Right.Count == 0 ? Right : [.. Right, Space, .. next.Right] };

    /// <summary>What is left of it after so many pieces.</summary>
    /// <param name="left">Pieces of the left column taken.</param>
    /// <param name="right">Pieces of the right column taken.</param>
    /// <returns>The rest.</returns>
    public Block From(int left, int right) => left + right == 0 ? this
        : this with { Key = string.Empty, Breaks = false, GoesOn = true, RightTaken = right, Left = [.. Left.Skip(left)], Right = [.. Right.Skip(right)] };

    /// <summary>Its first pieces, where the rest goes on over the page.</summary>
    /// <param name="left">Pieces of the left column.</param>
    /// <param name="right">Pieces of the right column.</param>
    /// <returns>The part.</returns>
    public Block To(int left, int right) => this with { More = true, Left = [.. Left.Take(left)], Right = [.. Right.Take(right)] };

    /// <summary>Its markup.</summary>
    /// <returns>Markup.</returns>
    public string Html()
    {
        var left = string.Concat(Left.Select(p => p.Boxed()));
        var right = (GoesOn && Right.Count > 0 ? RightAgain?.Boxed() : null) + string.Concat(Right.Select(p => p.Boxed()));
        var kind = Columns switch
        {
            Columns.Overview => "over",
            Columns.Step => "stp",
            _ => "whole",
        };
        var body = Columns == Columns.Whole ? $"<div class=\"one\">{left}</div>" : $"<div class=\"left\">{left}</div><div class=\"right\">{right}</div>";
        return $"<div class=\"block {kind}\">{Head?.Invoke(GoesOn, More).Boxed()}<div class=\"cols\">{body}</div></div>";
    }
}
