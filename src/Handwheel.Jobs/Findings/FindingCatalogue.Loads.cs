namespace Handwheel.Jobs.Findings;

/// <content>Findings that rest on forces: loads, what holds, designs. Each is an estimate and says of what.</content>
public static partial class FindingCatalogue
{
    private const string Estimate = "an estimate: the cutter's and the machine's maker come first";

    /// <summary>A cut asks more than its cutter stands or the machine gives, or nearly so.</summary>
    /// <param name="place">Where.</param>
    /// <param name="what">What is asked and what stands it, a sentence without its point.</param>
    /// <param name="mend">What mends it.</param>
    /// <param name="amount">The load.</param>
    /// <param name="of">Its unit.</param>
    /// <param name="grade">Halt beyond what stands, caution near it.</param>
    /// <param name="source">The formulas&#39; source.</param>
    /// <returns>A finding <c>load</c>.</returns>
    public static Finding Load(FindingPlace place, string what, string mend, double amount, string of, Grade grade, string source) =>
        place.Says(grade, "load", what + ".", mend, $"{source}; {Estimate}") with { Amount = amount, Unit = of };

    /// <summary>A line of the design that does not stand, or only nearly.</summary>
    /// <param name="place">The line&#39;s place.</param>
    /// <param name="what">What it comes to, a sentence without its point.</param>
    /// <param name="mend">What mends it.</param>
    /// <param name="margin">How many times over it stands; null where it is a yes or no.</param>
    /// <param name="grade">Halt where it does not stand, caution where it is near.</param>
    /// <param name="source">The formulas&#39; source.</param>
    /// <returns>A finding <c>design</c>.</returns>
    public static Finding Design(FindingPlace place, string what, string mend, double? margin, Grade grade, string source) =>
        place.Says(grade, "design", Sentence(what) + ".", mend, $"{source}; an estimate: a licensed engineer, local codes and the maker come first") with { Amount = margin, Unit = margin is null ? null : "1" };

    /// <summary>A web&#39;s finding with what it stands: under once a halt, under twice a caution.</summary>
    /// <param name="web">The finding of its thickness.</param>
    /// <param name="told">What loads it and how many times over it stands, a sentence without its point.</param>
    /// <param name="margin">How many times over it stands.</param>
    /// <returns>A finding <c>web</c>.</returns>
    public static Finding WebStands(Finding web, string told, double margin) => Stands(
        web,
        told,
        margin,
        "Leave a thicker web, do the cuts above it before the saw, or take less a pass with a block under the part.",
        "a strip fixed along both edges, Shigley 9th ed. Table A-9");

    /// <summary>A wall&#39;s finding with what it stands: under once a halt, under twice a caution.</summary>
    /// <param name="wall">The finding of its thickness.</param>
    /// <param name="told">How far it springs and how many times over it stands, a sentence without its point.</param>
    /// <param name="margin">How many times over it stands.</param>
    /// <returns>A finding <c>wall</c>.</returns>
    public static Finding WallStands(Finding wall, string told, double margin) => Stands(
        wall,
        told,
        margin,
        "Take less depth and width a pass from both sides in turn, or back the wall up while it is cut.",
        "a strip standing on its foot, Shigley 9th ed. Table A-9");

    /// <summary>What holds the work does not hold it against the heaviest cut, or only nearly.</summary>
    /// <param name="place">The cut.</param>
    /// <param name="what">What presses and what pulls, a sentence without its point.</param>
    /// <param name="margin">How many times over it holds.</param>
    /// <param name="friction">The coefficient of friction reckoned with.</param>
    /// <param name="source">The rule&#39;s source.</param>
    /// <returns>A halt <c>grip</c> under once, else a caution.</returns>
    public static Finding GripForce(FindingPlace place, string what, double margin, double friction, string source) => place.Says(
        margin < 1 ? Grade.Halt : Grade.Caution,
        "grip",
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{what}. It holds that about {margin:0.0} times over; 2.5 times is usual for a smooth cut."),
        "Take less a pass, hold it deeper or nearer to the cut, put a stop against the cut, or say what the vise grips with ('grips 6 kN').",
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{source}; friction {friction:0.00}; {Estimate}")) with
    {
        Amount = margin,
        Unit = "1",
    };

    private static Finding Stands(Finding thin, string told, double margin, string mend, string source) => thin with
    {
        Grade = margin < 1 ? Grade.Halt : margin < 2 ? Grade.Caution : thin.Grade,
        Message = $"{thin.Message} {told}{(margin < 1 ? ": it will not stand" : margin < 2 ? ": too near for an estimate" : string.Empty)}.",
        Mend = margin < 2 ? mend : thin.Mend,
        Rule = $"{source}; {Estimate}; {thin.Rule}",
    };

    private static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
