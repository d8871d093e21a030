using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>A piece of a page that is never split, and the height it needs.</summary>
/// <param name="Html">Its markup.</param>
/// <param name="Height">Millimetres.</param>
internal sealed record Piece(string Html, double Height)
{
    /// <summary>The row of the right column it belongs to: it stands on no page before that row's.</summary>
    public int Row { get; init; }

    /// <summary>Whether it is kept on one page with the piece after it.</summary>
    public bool KeepsNext { get; init; }

    /// <summary>The piece in a box of its height.</summary>
    /// <returns>Markup.</returns>
    public string Boxed() => $"<div class=\"pc\" style=\"min-height:{Markup.Number(Height)}mm\">{Html}</div>";
}
