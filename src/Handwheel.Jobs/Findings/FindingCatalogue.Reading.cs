using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Findings;

/// <content>What reading a document has to say. One method a code; the caller gives the place and the words.</content>
public static partial class FindingCatalogue
{
    /// <summary>Something stands where something else was expected.</summary>
    /// <param name="where">The place.</param>
    /// <param name="read">What was read there, as typed.</param>
    /// <param name="expected">What was expected, in words.</param>
    /// <param name="mend">How to mend it.</param>
    /// <returns>The finding <c>not-understood</c>.</returns>
    public static Finding NotUnderstood(SourceSpan where, string read, string expected, string mend) =>
        Reading("not-understood", where, read.Length == 0 ? $"The line ends here, and {expected} was expected." : $"Read '{read}' where {expected} was expected.", mend);

    /// <summary>A word that is not known here.</summary>
    /// <param name="where">The place.</param>
    /// <param name="read">The word as typed.</param>
    /// <param name="what">What kind of word was expected: <c>a feature</c>, <c>a cutter of the shop</c>.</param>
    /// <param name="nearest">The nearest known word; null where none is near.</param>
    /// <param name="known">The known words in short.</param>
    /// <returns>The finding <c>unknown-word</c>.</returns>
    public static Finding UnknownWord(SourceSpan where, string read, string what, string? nearest, string known) =>
        Reading(
            "unknown-word",
            where,
            $"'{read}' is not {what}.",
            nearest is null ? known : $"Write '{nearest}' if that is meant. {known}");

    /// <summary>A comma inside a number.</summary>
    /// <param name="where">The place.</param>
    /// <param name="read">As typed.</param>
    /// <returns>The finding <c>comma</c>.</returns>
    public static Finding Comma(SourceSpan where, string read) =>
        Reading(
            "comma",
            where,
            $"Read '{read}': a comma is never a decimal point, and two numbers have a space after the comma.",
            $"Write '{read.Replace(',', '.')}' for one number, '{read.Replace(",", ", ", StringComparison.Ordinal)}' for several.");

    /// <summary>A number that cannot be, or cannot be meant.</summary>
    /// <param name="where">The place.</param>
    /// <param name="read">As typed.</param>
    /// <param name="why">What is wrong with it, the end of a sentence.</param>
    /// <param name="mend">How to mend it.</param>
    /// <returns>The finding <c>absurd-number</c>.</returns>
    public static Finding AbsurdNumber(SourceSpan where, string read, string why, string mend) =>
        Reading("absurd-number", where, $"Read '{read}': {why}.", mend);

    /// <summary>A number in a unit of the wrong kind, or an unknown one.</summary>
    /// <param name="where">The place.</param>
    /// <param name="read">As typed.</param>
    /// <param name="expected">What was expected: <c>a length (mm or in)</c>.</param>
    /// <returns>The finding <c>wrong-unit</c>.</returns>
    public static Finding WrongUnit(SourceSpan where, string read, string expected) =>
        Reading("wrong-unit", where, $"Read '{read}' where {expected} was expected.", $"Write {expected}.");

    /// <summary>The document does not say which unit its bare numbers are in.</summary>
    /// <param name="where">The place.</param>
    /// <returns>The finding <c>unit-missing</c>.</returns>
    public static Finding UnitMissing(SourceSpan where) =>
        Reading("unit-missing", where, "Nothing says which unit bare numbers are in; read on as if they were millimetres.", "Write 'unit mm' or 'unit in' near the top.");

    /// <summary>Limits that allow nothing, or of another kind than their size.</summary>
    /// <param name="where">The place.</param>
    /// <param name="why">What is wrong, a sentence.</param>
    /// <param name="mend">How to mend it.</param>
    /// <returns>The finding <c>limits</c>.</returns>
    public static Finding LimitsWrong(SourceSpan where, string why, string mend) => Reading("limits", where, why, mend);

    /// <summary>A dimension that nothing limits.</summary>
    /// <param name="where">The place.</param>
    /// <param name="what">The dimension.</param>
    /// <returns>The finding <c>no-limits</c>.</returns>
    public static Finding NoLimits(SourceSpan where, string what) =>
        Reading("no-limits", where, $"Nothing limits {what}, and perhaps more: it has no limits of its own and the drawing has no 'others'.", "Write 'others +/-0.1' (or what the drawing allows) at its end.");

    /// <summary>Something said twice.</summary>
    /// <param name="where">The second place.</param>
    /// <param name="what">What was said twice.</param>
    /// <param name="first">Where it was said first.</param>
    /// <returns>The finding <c>said-twice</c>.</returns>
    public static Finding SaidTwice(SourceSpan where, string what, SourceSpan first) =>
        Reading("said-twice", where, $"{what} is said twice: first in line {Invariant(first.Line)}.", "Keep one of the two, or give one another name.");

    /// <summary>A value that needs itself.</summary>
    /// <param name="where">The place.</param>
    /// <param name="chain">The way round, as words.</param>
    /// <returns>The finding <c>circular</c>.</returns>
    public static Finding Circular(SourceSpan where, string chain) =>
        Reading("circular", where, $"This needs itself to be worked out: {chain}.", "Give one of them as a number.");

    /// <summary>Something a document must have and has not.</summary>
    /// <param name="where">The place it belongs to.</param>
    /// <param name="what">What is missing, the start of a sentence.</param>
    /// <param name="mend">How to mend it.</param>
    /// <returns>The finding <c>missing</c>.</returns>
    public static Finding Missing(SourceSpan where, string what, string mend) => Reading("missing", where, $"{what} is missing.", mend);

    /// <summary>Two things said that cannot both be.</summary>
    /// <param name="where">The place of the later one.</param>
    /// <param name="what">What contradicts what, with both numbers, a sentence.</param>
    /// <param name="mend">How to mend it.</param>
    /// <returns>The finding <c>contradiction</c>.</returns>
    public static Finding Contradiction(SourceSpan where, string what, string mend) => Reading("contradiction", where, what, mend);

    /// <summary>A size or place named that the solid does not have.</summary>
    /// <param name="where">The place.</param>
    /// <param name="what">What it has not, a sentence.</param>
    /// <param name="mend">How to mend it.</param>
    /// <returns>The finding <c>not-there</c>.</returns>
    public static Finding NotThere(SourceSpan where, string what, string mend) => Reading("not-there", where, what, mend);

    /// <summary>The part does not fit in its stock.</summary>
    /// <param name="where">The stock's place.</param>
    /// <param name="what">Where and by how much, a sentence.</param>
    /// <param name="amount">By how much, millimetres.</param>
    /// <returns>The finding <c>stock-short</c>.</returns>
    public static Finding SmallStock(SourceSpan where, string what, double amount) =>
        Reading("stock-short", where, what, "Take larger stock, or place it otherwise (x from, y from, z top).") with { Amount = amount, Unit = "mm" };

    /// <summary>Jaws, parallels and stock that do not go together.</summary>
    /// <param name="where">The place.</param>
    /// <param name="what">What does not fit, with its numbers, a sentence.</param>
    /// <param name="mend">How to mend it.</param>
    /// <returns>The finding <c>jaws</c>.</returns>
    public static Finding Jaws(SourceSpan where, string what, string mend) => Reading("jaws", where, what, mend);

    /// <summary>A cutter that cannot do what its line asks.</summary>
    /// <param name="where">The cutter's place.</param>
    /// <param name="cutter">Its name and kind.</param>
    /// <param name="verb">What it is asked to do.</param>
    /// <param name="takes">What that takes.</param>
    /// <returns>The finding <c>wrong-cutter</c>.</returns>
    public static Finding WrongCutter(SourceSpan where, string cutter, string verb, string takes) =>
        Reading("wrong-cutter", where, $"{cutter} does not {verb}.", $"To {verb} takes {takes}.");

    /// <summary>A document that is no text.</summary>
    /// <param name="where">The place of the first thing that is none.</param>
    /// <param name="why">What was read, a sentence.</param>
    /// <returns>The finding <c>not-text</c>.</returns>
    public static Finding NotText(SourceSpan where, string why) =>
        Reading("not-text", where, why, "A job or a shop is a plain text file (UTF-8) with one statement a line.");

    /// <summary>More than the reader takes on.</summary>
    /// <param name="where">Where reading stopped.</param>
    /// <param name="what">What there is too much of, a sentence.</param>
    /// <param name="mend">How to mend it.</param>
    /// <returns>The finding <c>too-much</c>.</returns>
    public static Finding TooMuch(SourceSpan where, string what, string mend) => Reading("too-much", where, what, mend);

    private static Finding Reading(string code, SourceSpan where, string message, string mend) =>
        new() { Grade = Grade.Halt, Code = code, Message = message, Mend = mend, Where = where };

    private static string Invariant(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
