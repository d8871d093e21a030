using System.Globalization;
using System.Text;

namespace Handwheel.Sheets.Text;

/// <summary>Text made safe to stand in a page.</summary>
internal static class Markup
{
    /// <summary>Escapes text for HTML and SVG, in content and in quoted attributes; characters no page may hold are dropped.</summary>
    /// <param name="text">Anything a person typed.</param>
    /// <returns>Safe text.</returns>
    public static string Escape(string text)
    {
        var safe = new StringBuilder(text.Length + 16);
        foreach (var rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '&' => safe.Append("&amp;"),
                '<' => safe.Append("&lt;"),
                '>' => safe.Append("&gt;"),
                '"' => safe.Append("&quot;"),
                '\'' => safe.Append("&#39;"),
                '\t' or '\n' or '\r' => safe.Append(' '),
                < 0x20 or 0x7F or 0xFFFE or 0xFFFF => safe,
                >= 0x202A and <= 0x202E or >= 0x2066 and <= 0x2069 => safe,
                _ => safe.Append(rune.ToString()),
            };
        }

        return safe.ToString();
    }

    /// <summary>A formula as it is printed: roots, squares and minus signs as the trade writes them, escaped.</summary>
    /// <param name="formula">A working's formula with its numbers put in.</param>
    /// <returns>Safe text.</returns>
    public static string Formula(string formula) => Escape(FormulaText(formula));

    /// <summary>The same, not escaped, for measuring.</summary>
    /// <param name="formula">A working's formula.</param>
    /// <returns>The text.</returns>
    public static string FormulaText(string formula) => formula
        .Replace("sqrt(", "\u221A(", StringComparison.Ordinal)
        .Replace("^2", "\u00B2", StringComparison.Ordinal)
        .Replace("^3", "\u00B3", StringComparison.Ordinal)
        .Replace(" * ", " \u00D7 ", StringComparison.Ordinal)
        .Replace(" - ", " \u2212 ", StringComparison.Ordinal)
        .Replace("-acos(", "\u2212acos(", StringComparison.Ordinal)
        .Replace("-asin(", "\u2212asin(", StringComparison.Ordinal)
        .Replace("-(", "\u2212(", StringComparison.Ordinal);

    /// <summary>Figures for HTML: a true minus, and the point drawn close to the digit that follows it.</summary>
    /// <param name="figures">A printed reading.</param>
    /// <returns>Safe markup.</returns>
    public static string Figures(string figures)
    {
        var safe = Escape(TrueMinus(figures));
        var close = new StringBuilder(safe.Length + 16);
        for (var i = 0; i < safe.Length; i++)
        {
            var point = safe[i] == '.' && i > 0 && i + 1 < safe.Length && char.IsAsciiDigit(safe[i - 1]) && char.IsAsciiDigit(safe[i + 1]);
            _ = point ? close.Append("<i>.</i>") : close.Append(safe[i]);
        }

        return close.ToString();
    }

    /// <summary>A hyphen before a figure as a true minus sign, and minutes as a prime.</summary>
    /// <param name="figures">A printed reading.</param>
    /// <returns>The reading as the sheet prints it.</returns>
    public static string TrueMinus(string figures)
    {
        var text = figures
            .Replace(" deg ", "\u00B0", StringComparison.Ordinal)
            .Replace('\'', '\u2032')
            .Replace('"', '\u2033')
            .ToCharArray();
        for (var i = 0; i + 1 < text.Length; i++)
        {
            if (text[i] == '-' && (char.IsAsciiDigit(text[i + 1]) || text[i + 1] == '.') && (i == 0 || text[i - 1] is ' ' or '\u00A0' or '('))
            {
                text[i] = '\u2212';
            }
        }

        return new(text);
    }

    /// <summary>A number for SVG or CSS: up to three decimals, never a culture's.</summary>
    /// <param name="value">The number; finite.</param>
    /// <returns>Text.</returns>
    public static string Number(double value)
    {
        var text = value.ToString("0.###", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }
}
