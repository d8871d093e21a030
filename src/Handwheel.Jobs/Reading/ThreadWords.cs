using System.Text.RegularExpressions;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

/// <summary>Threads as they are written: <c>M6</c>, <c>M6x0.75</c>, <c>1/4-20 UNC</c>, <c>#10-32</c>.</summary>
internal static partial class ThreadWords
{
    private const string Mend = "Write 'M6', 'M8x1', '1/4-20 UNC' or '#10-32 UNF'.";

    // Whether a thread stands here, and not a diameter.
    public static bool Sees(Cursor c)
    {
        var start = c.At;
        var piece = c.TakePiece()?.Text ?? string.Empty;
        c.At = start;
        return piece.Length > 0 && (char.IsLetter(piece[0]) || Unified().IsMatch(piece));
    }

    // The thread that stands here, as typed; null with a finding.
    public static string? Take(Cursor c)
    {
        var where = c.Here;
        if (c.TakePiece() is not { } piece)
        {
            c.Fail("a thread", Mend);
            return null;
        }

        if (!Metric().IsMatch(piece.Text) && !Unified().IsMatch(piece.Text))
        {
            c.Fail(FindingCatalogue.UnknownWord(where, piece.Text, "a thread", null, Mend));
            return null;
        }

        return c.TakeAny("UNC", "UNF", "UNEF", "UN", "UNS") is { } series ? $"{piece.Text} {series}" : piece.Text;
    }

    [GeneratedRegex("^[Mm][0-9]{1,3}(\\.[0-9]{1,2})?([xX][0-9](\\.[0-9]{1,2})?)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 100)]
    private static partial Regex Metric();

    [GeneratedRegex("^(#[0-9]{1,2}|[0-9](/[0-9]{1,2})?|[0-9]-[0-9]{1,2}/[0-9]{1,2})-[0-9]{1,2}$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 100)]
    private static partial Regex Unified();
}
