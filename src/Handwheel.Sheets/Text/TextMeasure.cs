namespace Handwheel.Sheets.Text;

/// <summary>How wide text runs, from the advance widths of the faces the sheet carries, so that a page can be laid out before anyone draws it.</summary>
internal static class TextMeasure
{
    /// <summary>Millimetres in one point (1/72 inch).</summary>
    public const double MillimetresPerPoint = 25.4 / 72;

    private const double FigureAdvance = 0.65;
    private const double UnknownAdvance = 0.75;

    // Advance widths of Atkinson Hyperlegible, thousandths of an em, U+0020 to U+007E.
    private static readonly short[] Plain =
    [
        280, 281, 301, 655, 594, 927, 705, 160, 300, 300, 433, 602, 205, 368, 205, 377, 648, 402, 549, 574, 614, 583, 598, 510, 615, 598, 205, 205, 553, 602,
        553, 520, 780, 626, 619, 656, 673, 567, 548, 710, 690, 414, 510, 627, 539, 820, 689, 727, 601, 753, 618, 596, 558, 690, 589, 840, 623, 595, 607, 315,
        377, 315, 552, 396, 268, 526, 566, 500, 564, 539, 311, 560, 546, 278, 254, 490, 239, 841, 546, 552, 566, 576, 340, 471, 324, 536, 441, 654, 461, 429,
        460, 319, 233, 319, 555,
    ];

    private static readonly short[] Bold =
    [
        320, 283, 410, 783, 619, 977, 702, 222, 366, 366, 434, 618, 243, 374, 243, 442, 652, 448, 586, 605, 626, 612, 632, 543, 625, 561, 243, 243, 573, 618,
        573, 614, 754, 690, 639, 673, 686, 580, 544, 719, 679, 458, 560, 659, 537, 842, 700, 764, 626, 781, 654, 619, 617, 663, 656, 883, 699, 687, 621, 333,
        442, 333, 589, 430, 314, 553, 596, 520, 596, 566, 367, 597, 572, 315, 259, 567, 314, 886, 572, 573, 596, 601, 372, 534, 379, 570, 526, 723, 533, 518,
        516, 370, 234, 370, 533,
    ];

    /// <summary>The width of one line of text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">Its face.</param>
    /// <param name="points">Its size, points.</param>
    /// <returns>Millimetres.</returns>
    public static double Width(string text, Face face, double points)
    {
        var ems = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            ems += Advance(rune.Value, face);
        }

        return ems * points * MillimetresPerPoint;
    }

    /// <summary>How many lines text takes when broken at spaces (a word too long is broken where it must be).</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">Its face.</param>
    /// <param name="points">Its size, points.</param>
    /// <param name="width">The width to fill, millimetres.</param>
    /// <returns>At least 1.</returns>
    public static int Lines(string text, Face face, double points, double width)
    {
        // A browser breaks a hair earlier than the sum of advances says.
        var room = (width * 0.985) - 0.3;
        var space = Width(" ", face, points);
        var lines = 1;
        var used = 0.0;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var wide = Width(word, face, points);
            if (used > 0 && used + space + wide > room)
            {
                lines++;
                used = 0;
            }

            while (wide > room)
            {
                lines++;
                wide -= room;
            }

            used += (used > 0 ? space : 0) + wide;
        }

        return lines;
    }

    /// <summary>Text broken at spaces into lines, each within a width where no word is wider.</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">Its face.</param>
    /// <param name="points">Its size, points.</param>
    /// <param name="width">The width to fill, millimetres.</param>
    /// <returns>The lines in order.</returns>
    public static IReadOnlyList<string> Wrapped(string text, Face face, double points, double width)
    {
        var lines = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && Lines($"{lines[^1]} {word}", face, points, width) == 1)
            {
                lines[^1] += " " + word;
            }
            else
            {
                lines.Add(word);
            }
        }

        return lines;
    }

    private static double Advance(int rune, Face face)
    {
        if (face is Face.Figure or Face.FigureBold)
        {
            return rune is >= 0x2E80 ? 1 : FigureAdvance;
        }

        var table = face == Face.Bold ? Bold : Plain;
        return rune is >= 0x20 and <= 0x7E ? table[rune - 0x20] / 1000.0 : rune >= 0x2E80 ? 1 : UnknownAdvance;
    }
}
