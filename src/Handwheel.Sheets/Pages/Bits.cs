using System.Globalization;
using Handwheel.Jobs.Findings;
using Handwheel.Sheets.Text;

namespace Handwheel.Sheets.Pages;

/// <summary>Small things that stand all over a sheet.</summary>
internal static class Bits
{
    /// <summary>A box to tick.</summary>
    public const string Box = "<b class=\"bx\"></b>";

    /// <summary>A small box to tick.</summary>
    public const string SmallBox = "<b class=\"bx sm\"></b>";

    /// <summary>Symbols every page uses.</summary>
    public const string Symbols = """
        <svg class="defs" width="0" height="0" aria-hidden="true">
        <symbol id="cw" viewBox="0 0 16 14"><circle cx="7.4" cy="9" r="3.4" fill="none" stroke="#1c1a17" stroke-width="1.1"/><circle cx="7.4" cy="9" r=".9" fill="#1c1a17"/><circle cx="9.8" cy="11.4" r="1.3" fill="#1c1a17"/><path d="M1.6 7.6A6.2 6.2 0 0 1 12.6 5.2" fill="none" stroke="#1c1a17" stroke-width="1.4"/><path d="M14.6 8.2L10.4 6.4L14.2 3.2Z" fill="#1c1a17"/></symbol>
        <symbol id="ccw" viewBox="0 0 16 14"><circle cx="8.6" cy="9" r="3.4" fill="none" stroke="#1c1a17" stroke-width="1.1"/><circle cx="8.6" cy="9" r=".9" fill="#1c1a17"/><circle cx="6.2" cy="11.4" r="1.3" fill="#1c1a17"/><path d="M14.4 7.6A6.2 6.2 0 0 0 3.4 5.2" fill="none" stroke="#1c1a17" stroke-width="1.4"/><path d="M1.4 8.2L5.6 6.4L1.8 3.2Z" fill="#1c1a17"/></symbol>
        <symbol id="go" viewBox="0 0 14 8"><path d="M0 4H12M9 1L12.6 4L9 7" fill="none" stroke="#1c1a17" stroke-width="1"/></symbol>
        <symbol id="gocut" viewBox="0 0 14 8"><path d="M0 4H9" fill="none" stroke="#164a8c" stroke-width="1.8"/><path d="M13.6 4L8 .8V7.2Z" fill="#164a8c"/></symbol>
        <symbol id="halt" viewBox="0 0 16 16"><path d="M5 .8H11L15.2 5V11L11 15.2H5L.8 11V5Z" fill="#b3261e" stroke="#1c1a17" stroke-width="1.2"/><path d="M4 8H12" stroke="#fff" stroke-width="2.4"/></symbol>
        <symbol id="caution" viewBox="0 0 16 16"><path d="M8 1.2L15.3 14.6H.7Z" fill="#e0a021" stroke="#1c1a17" stroke-width="1.2" stroke-linejoin="round"/><path d="M8 5.6V10" stroke="#1c1a17" stroke-width="1.7"/><circle cx="8" cy="12.2" r="1" fill="#1c1a17"/></symbol>
        <symbol id="note" viewBox="0 0 16 16"><circle cx="8" cy="8" r="6.6" fill="none" stroke="#164a8c" stroke-width="1.5"/><circle cx="8" cy="8" r="2" fill="#164a8c"/></symbol>
        <symbol id="wheel" viewBox="0 0 16 16"><circle cx="7.5" cy="8.5" r="6" fill="none" stroke="#164a8c" stroke-width="1.3"/><circle cx="7.5" cy="8.5" r="1.6" fill="none" stroke="#164a8c" stroke-width="1.1"/><path d="M7.5 10V14.4M6.2 7.6L2.4 5.4M8.8 7.6L12 5.2" stroke="#164a8c" stroke-width="1.1"/><circle cx="12.6" cy="3.4" r="2" fill="#164a8c"/></symbol>
        </svg>
        """;

    /// <summary>A symbol in line.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="wide">Width, millimetres.</param>
    /// <param name="tall">Height, millimetres.</param>
    /// <returns>Markup.</returns>
    public static string Symbol(string id, double wide, double tall) =>
        $"<svg class=\"sy\" width=\"{Markup.Number(wide)}mm\" height=\"{Markup.Number(tall)}mm\" aria-hidden=\"true\"><use href=\"#{id}\"/></svg>";

    /// <summary>A grade's mark: octagon, triangle or ring.</summary>
    /// <param name="grade">The grade.</param>
    /// <param name="size">Its size, millimetres.</param>
    /// <returns>Markup.</returns>
    public static string Mark(Grade grade, double size) => Symbol(Word(grade), size, size);

    /// <summary>A grade in a word.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns><c>halt</c>, <c>caution</c> or <c>note</c>.</returns>
    public static string Word(Grade grade) => grade switch
    {
        Grade.Halt => "halt",
        Grade.Caution => "caution",
        _ => "note",
    };

    /// <summary>A whole number as text.</summary>
    /// <param name="number">The number.</param>
    /// <returns>Text.</returns>
    public static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A number to a fixed count of decimals.</summary>
    /// <param name="number">The number.</param>
    /// <param name="decimals">Decimals.</param>
    /// <returns>Text.</returns>
    public static string Fixed(double number, int decimals) => Math.Round(number, decimals, MidpointRounding.AwayFromZero).ToString("F" + Count(decimals), CultureInfo.InvariantCulture);

    /// <summary>A span of time in words.</summary>
    /// <param name="minutes">Minutes.</param>
    /// <returns><c>about 25 min</c>, <c>about 2 h</c>; empty for none.</returns>
    public static string Time(double minutes) => minutes switch
    {
        <= 0 => string.Empty,
        < 8 => $"about {Fixed(Math.Max(1, minutes), 0)} min",
        < 55 => $"about {Fixed(Math.Ceiling(minutes / 5) * 5, 0)} min",
        _ => $"about {Markup.Number(Math.Ceiling(minutes / 30) / 2)} h",
    };

    /// <summary>A heading on a blue rule with something small at its right.</summary>
    /// <param name="title">Heading.</param>
    /// <param name="right">What stands at the right.</param>
    /// <returns>A piece.</returns>
    public static Piece Heading(string title, string right = "") =>
        new($"<div class=\"hd\"><h2>{Markup.Escape(title)}</h2><span>{Markup.Escape(right)}</span></div>", 7.2);

    /// <summary>A heading kept with the first piece under it.</summary>
    /// <param name="heading">The heading.</param>
    /// <param name="under">What stands under it.</param>
    /// <returns>Pieces.</returns>
    public static IReadOnlyList<Piece> Headed(Piece heading, IEnumerable<Piece> under)
    {
        var pieces = under.ToArray();
        return pieces.Length == 0 ? [heading] : [new(heading.Boxed() + pieces[0].Boxed(), heading.Height + pieces[0].Height), .. pieces.Skip(1)];
    }

    /// <summary>Pieces kept together as one where that is not too tall.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <returns>One piece, or all.</returns>
    public static IReadOnlyList<Piece> Together(IReadOnlyList<Piece> pieces)
    {
        var tall = pieces.Sum(p => p.Height);
        return tall < 100 ? [new(string.Concat(pieces.Select(p => p.Boxed())), tall)] : pieces;
    }

    /// <summary>A paragraph of text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Width it fills.</param>
    /// <param name="look">Style class.</param>
    /// <param name="points">Size.</param>
    /// <returns>A piece.</returns>
    public static Piece Paragraph(string text, double width, string look = "para", double points = 8.6) =>
        new($"<p class=\"{look}\" style=\"font-size:{Markup.Number(points)}pt\">{Markup.Escape(text)}</p>", (TextMeasure.Lines(text, Face.Plain, points, width - 3) * points * 0.46) + 1.6);
}
