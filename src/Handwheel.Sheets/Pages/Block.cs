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

    /// <summary>Its heading; null: each column brings its own.</summary>
    public Piece? Head { get; init; }

    /// <summary>Its heading where it goes on over a page; null: none.</summary>
    public Piece? Again { get; init; }

    /// <summary>Its left (or only) column.</summary>
    public required IReadOnlyList<Piece> Left { get; init; }

    /// <summary>Its right column.</summary>
    public IReadOnlyList<Piece> Right { get; init; } = [];

    /// <summary>Whether it begins a new page.</summary>
    public bool Breaks { get; init; }

    /// <summary>Its whole height.</summary>
    public double Height => (Head?.Height ?? 0) + Math.Max(Left.Sum(p => p.Height), Right.Sum(p => p.Height)) + Paginator.Gap;

    /// <summary>Two blocks as one, column under column, so that neither waits for the other's.</summary>
    /// <param name="next">The block that follows.</param>
    /// <returns>Both.</returns>
    public Block Then(Block next) => this with { Left = [.. Left, Space, .. next.Left], Right = [.. Right, Space, .. next.Right] };

    private static Piece Space { get; } = new(string.Empty, Paginator.Gap);

    /// <summary>Its markup.</summary>
    /// <returns>Markup.</returns>
    public string Html()
    {
        var left = string.Concat(Left.Select(p => p.Boxed()));
        var right = string.Concat(Right.Select(p => p.Boxed()));
        var kind = Columns switch
        {
            Columns.Overview => "over",
            Columns.Step => "stp",
            _ => "whole",
        };
        var body = Columns == Columns.Whole ? $"<div class=\"one\">{left}</div>" : $"<div class=\"left\">{left}</div><div class=\"right\">{right}</div>";
        return $"<div class=\"block {kind}\">{Head?.Boxed()}<div class=\"cols\">{body}</div></div>";
    }
}
