using System.Globalization;
using Handwheel.Jobs.Findings;

namespace Handwheel.Jobs.Reading;

/// <summary>Whole numbers that count something.</summary>
internal static class Counts
{
    // A count between two bounds; null with a finding.
    public static int? Take(Cursor c, int least, int most, string expected)
    {
        if (c.Peek() is not { Kind: TokenKind.Number } token)
        {
            c.Fail(expected, "Write a whole number.");
            return null;
        }

        if (int.TryParse(token.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= least && count <= most)
        {
            c.At++;
            return count;
        }

        c.Fail(FindingCatalogue.AbsurdNumber(c.Here, token.Text, FormattableString.Invariant($"{expected} is a whole number from {least} to {most}"), "Write a whole number."));
        return null;
    }
}
