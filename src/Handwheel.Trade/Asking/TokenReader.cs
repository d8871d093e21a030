using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Handwheel.Trade.Metals;

namespace Handwheel.Trade.Asking;

/// <summary>Takes a question apart into words and numbers with units.</summary>
internal static partial class TokenReader
{
    // Sizes as they are spoken.
    private static readonly (string Said, string Written)[] Said =
    [
        ("quarter twenty", "1/4-20"), ("quarter 20", "1/4-20"), ("half inch", "1/2 in"), ("half-inch", "1/2 in"), ("quarter inch", "1/4 in"), ("quarter-inch", "1/4 in"), ("three eighths", "3/8"), ("three eights", "3/8"), ("b and s", "b&s"), ("b & s", "b&s"),
        ("five sixteenths", "5/16"), ("three quarter", "3/4"), ("one inch", "1 in"), ("ten thirty two", "10-32"), ("eight thirty two", "8-32"), ("six thirty two", "6-32"),
        ("high speed steel", "hss"), ("high-speed steel", "hss"), ("brown and sharpe", "b&s"), ("brown & sharpe", "b&s"), ("end-mill", "end mill"),
        ("slot drill", "slotdrill"), ("slot-drill", "slotdrill"), ("hold down", "clamp"), ("hold-down", "clamp"), ("holding down", "clamp"), ("per foot", "foot"), ("a foot", "foot"), ("half moon", "woodruff"),
        ("set up on", "on"), ("fly cutter", "flycutter"), ("face mill", "facemill"), ("grub-screw", "grub screw"), ("ball nose", "ballnose"), ("ball-nose", "ballnose"), ("ball end mill", "ballnose"), ("ball mill", "ballnose"), ("bull nose", "bullnose"), ("cap-head", "cap head"), ("silver-steel", "silver steel"),
    ];

    /// <summary>Most characters of a question that are read.</summary>
    internal const int Longest = 400;

    /// <summary>Reads a question.</summary>
    /// <param name="text">The words after <c>ask</c>.</param>
    /// <returns>Tokens.</returns>
    internal static List<Token> Read(string text)
    {
        var pieces = SpokenNumbers.Write(Spaced(text)).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var tokens = new List<Token>();
        for (var i = 0; i < pieces.Length; i++)
        {
            var token = One(pieces[i]);
            if (token.IsNumber && token.Unit.Length == 0 && i + 1 < pieces.Length && UnitOf(pieces, i + 1) is { } unit)
            {
                token.Unit = unit.Unit;
                i += unit.Pieces;
            }

            tokens.Add(token);
        }

        return Minutes(Mixed(tokens));
    }

    private static (string Unit, int Pieces)? UnitOf(string[] pieces, int at)
    {
        var word = pieces[at].ToLowerInvariant();
        var next = at + 1 < pieces.Length ? pieces[at + 1].ToLowerInvariant() : string.Empty;
        if (Joined(word, next) is { } joined)
        {
            return (joined, 2);
        }

        // "6 in brass": the word before a metal is no inch.
        if (word == "t" || (word == "in" && next.Length > 0 && (StartsMetal(pieces, at + 1) || IntoSheet(pieces, at + 1) || next is "ft" or "nm" or "n" or "newton" or "inch" or "inches" or "mm" or "metric" or "ft-lb" or "foot")))
        {
            return null;
        }

        if (word is "mill" or "mills" or "mil")
        {
            return SpokenNumbers.IsMillimetre(word, next) ? ("mm", 1) : word == "mil" ? ("thou", 1) : null;
        }

        return Units.Of(word) is { } unit ? (unit, 1) : null;
    }

    // "6 in 1.5 sheet".
    private static bool IntoSheet(string[] pieces, int at) =>
        One(pieces[at]).IsNumber && pieces[(at + 1)..].Any(p => p.ToLowerInvariant() is "sheet" or "plate" or "thick" or "stock");

    private static string? Joined(string word, string next) => (word, next) switch
    {
        ("n", "m") => "N m",
        ("ft", "lb" or "lbs" or "lbf") => "ft lbf",
        ("in", "lb" or "lbs" or "lbf") => "lbf in",
        ("lb" or "lbf", "in" or "ft") => next == "in" ? "lbf in" : "ft lbf",
        _ => null,
    };

    private static bool StartsMetal(string[] pieces, int at)
    {
        for (var length = 1; length <= 3 && at + length <= pieces.Length; length++)
        {
            if (MetalTable.Find(string.Join(' ', pieces[at..(at + length)])) is not null)
            {
                return true;
            }
        }

        return (pieces[at].ToLowerInvariant() is "a" or "the" or "some") && at + 1 < pieces.Length && StartsMetal(pieces, at + 1);
    }

    private static Token One(string piece)
    {
        var match = NumberShape().Match(piece);
        if (!match.Success)
        {
            return new Token { Raw = piece };
        }

        var unit = match.Groups["unit"].Value.ToLowerInvariant();
        var known = unit.Length == 0 ? string.Empty : Units.Of(unit);
        var under = match.Groups["under"];
        var value = double.Parse(match.Groups["over"].Value, CultureInfo.InvariantCulture);
        if (under.Success)
        {
            value /= double.Parse(under.Value, CultureInfo.InvariantCulture);
        }

        // A metal's name that looks like a number with a letter (1.4301, 6061 stay numbers until a metal is looked for).
        if (known is null || !double.IsFinite(value) || value > 1e9 || unit == "t")
        {
            return new Token { Raw = piece };
        }

        var point = match.Groups["over"].Value.IndexOf('.', StringComparison.Ordinal);
        return new Token
        {
            Raw = piece, IsNumber = true, Value = value, Unit = known, IsFraction = under.Success,
            Decimals = point < 0 ? 0 : match.Groups["over"].Value.Length - point - 1,
        };
    }

    private static List<Token> Mixed(List<Token> tokens)
    {
        for (var i = 0; i + 1 < tokens.Count; i++)
        {
            var (whole, part) = (tokens[i], tokens[i + 1]);
            if (whole is { IsNumber: true, IsFraction: false, Decimals: 0, Unit: "" } && part is { IsNumber: true, IsFraction: true, Value: < 1 }
                && part.Raw.Contains('/', StringComparison.Ordinal) && !(i > 0 && tokens[i - 1].Low is "grade" or "class" or "no" or "number"))
            {
                tokens[i] = new Token { Raw = whole.Raw + " " + part.Raw, IsNumber = true, Value = whole.Value + part.Value, Unit = part.Unit, IsFraction = true };
                tokens.RemoveAt(i + 1);
            }
        }

        return tokens;
    }

    // 48 deg 40 min 30 sec is one number.
    private static List<Token> Minutes(List<Token> tokens)
    {
        for (var i = 0; i + 1 < tokens.Count; i++)
        {
            var (main, part) = (tokens[i], tokens[i + 1]);
            if (main is { IsNumber: true, Unit: "deg" } && part is { IsNumber: true, Unit: "min" or "sec" })
            {
                tokens[i] = new Token { Raw = main.Raw + " " + part.Raw, IsNumber = true, Value = main.Value + (part.Value / (part.Unit == "min" ? 60 : 3600)), Unit = "deg" };
                tokens.RemoveAt(i + 1);
                i--;
            }
        }

        return tokens;
    }

    private static string Spaced(string text)
    {
        var spaced = new StringBuilder();
        foreach (var c in text.Length > Longest ? text[..Longest] : text)
        {
            spaced.Append(c switch
            {
                '×' => "x",
                'Ø' or 'ø' or '⌀' or '?' or '!' or ';' or '=' or '(' or ')' or '[' or ']' or '\t' or '\n' or '\r' or '~' => " ",
                '°' => " deg ",
                '′' => " min ",
                '’' or '\'' => spaced.Length > 0 && char.IsAsciiDigit(spaced[^1]) ? " min " : "'",
                '″' or '”' or '“' => "\"",
                '–' or '—' or '−' => "-",
                '½' => " 1/2",
                '¼' => " 1/4",
                '¾' => " 3/4",
                _ => c.ToString(),
            });
        }

        var plain = CommaShape().Replace(spaced.ToString(), " ");
        foreach (var (said, written) in Said)
        {
            plain = plain.Replace(said, written, StringComparison.OrdinalIgnoreCase);
        }

        return plain;
    }

    [GeneratedRegex("^(?<over>[0-9]*\\.?[0-9]+)(?:/(?<under>[1-9][0-9]*))?(?<unit>[a-zA-Zµμ%\"][-a-zA-Z0-9/%\"]*)?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NumberShape();

    [GeneratedRegex(",(?=\\s|$)|(?<=\\s):(?=\\s)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex CommaShape();
}
