using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Findings;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Reading;

/// <summary>Reads the short headings of a document.</summary>
internal static class HeadReader
{
    // Millimetres, with a finding, where nothing says.
    public static LengthUnit Unit(Statement? line, FindingBag bag, SourceSpan start)
    {
        if (line is null)
        {
            bag.Add(FindingCatalogue.UnitMissing(start));
            return LengthUnit.Millimetre;
        }

        var c = new Cursor(line, bag) { At = 1 };
        var unit = c.TakeAny("mm", "in", "inch", "inches");
        if (unit is null)
        {
            c.Fail("'mm' or 'in'", "Write 'unit mm' or 'unit in'.");
        }

        _ = c.ExpectEnd("Write 'unit mm' or 'unit in'.");
        return unit is null or "mm" ? LengthUnit.Millimetre : LengthUnit.Inch;
    }

    public static string Title(Statement? line) => line is null || line.Tokens.Count < 2 ? string.Empty : string.Join(' ', line.TextOf(1, line.Tokens.Count - 1).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
