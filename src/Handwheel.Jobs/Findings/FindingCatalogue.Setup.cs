using System.Globalization;
using Handwheel.Jobs.Documents;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Findings;

/// <summary>Findings about what is set up: the moves file, zeros, what is on hand, travels, what holds.</summary>
public static partial class FindingCatalogue
{
    /// <summary>A moves file cannot be read.</summary>
    /// <param name="where">The place in the file.</param>
    /// <param name="why">What was read and what was expected.</param>
    /// <returns>A halt <c>moves-file</c>.</returns>
    public static Finding MovesFileUnread(SourceSpan where, string why) => new()
    {
        Grade = Grade.Halt,
        Code = "moves-file",
        Message = $"The moves file cannot be read here: {why}.",
        Mend = "Write it anew with check --write-moves, or mend the place named.",
        Rule = "a moves file is JSON (RFC 8259), numbers in millimetres and degrees",
        Where = where,
    };

    /// <summary>A move rests on no touch-off of its holding and cutter.</summary>
    /// <param name="place">The first such move.</param>
    /// <param name="axis">The axis: <c>x</c>.</param>
    /// <param name="why">What is missing, a clause.</param>
    /// <returns>A halt <c>zero</c>.</returns>
    public static Finding ZeroMissing(FindingPlace place, string axis, string why) =>
        place.Says(
            Grade.Halt,
            "zero",
            $"The reading of {axis} rests on nothing here: {why}.",
            $"Touch off {axis} in this holding with this cutter before the move.",
            "every reading rests on a touch-off of this holding, and for z of this cutter");

    /// <summary>A face named for a zero of Z is not cut yet, or no cutter reaches it; it is touched off on the top of the work instead.</summary>
    /// <param name="place">The step.</param>
    /// <param name="feature">Whose face.</param>
    /// <param name="cutter">What was to touch it.</param>
    /// <returns>A caution <c>zero</c>.</returns>
    public static Finding ZeroElsewhere(FindingPlace place, string feature, string cutter) => place.Says(
        Grade.Caution,
        "zero",
        $"The {feature}'s face that looks up is not cut yet, or {cutter} does not reach it: it is touched off on the top of the work instead, and Z is as true as that.",
        "Name a face that stands ('zero z on bar top'), or cut it first.",
        Practice);

    /// <summary>A zero is to be found on what is not cut yet; the sheet brings its drawn place there by the stock&#39;s sides instead.</summary>
    /// <param name="place">The step.</param>
    /// <param name="feature">What is not cut yet.</param>
    /// <param name="with">What was to find it: <c>indicator</c>.</param>
    /// <returns>A caution <c>zero</c>.</returns>
    public static Finding NotCutYet(FindingPlace place, string feature, string with) =>
        place.Says(
            Grade.Caution,
            "zero",
            $"The {feature} is not cut yet: no {with} finds it. The sheet brings its place over the rotary's centre by the sides of the stock, and it lies as true as those are.",
            "Nothing to mend where the stock's sides are square and measured; else true them first, or cut something that stands there (a spot, a hole) and find that.",
            Practice);

    /// <summary>Turned work is cut and nothing in its holding found the rotary&#39;s centre.</summary>
    /// <param name="place">The first such move.</param>
    /// <returns>A halt <c>zero</c>.</returns>
    public static Finding CentreUnfound(FindingPlace place) =>
        place.Says(
            Grade.Halt,
            "zero",
            "The work is turned here and the rotary's centre was not found in this holding: where its axis stands on X and Y is not known, so every cut after a turn lands somewhere else.",
            "Write 'zero x, y on rotary centre' at the start of the holding, instead of the zeros on sides or jaw: spindle over the rotary's centre by indicator, X and Y set to 0 there, then the work is set in from that zero. Or bring a hole or boss over the centre: 'zero x, y at hub on rotary centre'.",
            "a turned reading rests on the rotary's axis, and that has to be found");

    /// <summary>A touch-off puts the readout off the truth.</summary>
    /// <param name="place">The touch-off&#39;s step.</param>
    /// <param name="axis">The axis.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="off">By how much the readout then reads short of the truth, millimetres (degrees for t).</param>
    /// <returns>A caution <c>zero</c>.</returns>
    public static Finding ZeroOff(FindingPlace place, string axis, LengthUnit unit, double off)
    {
        var amount = axis == "t" ? string.Create(CultureInfo.InvariantCulture, $"{off:+0.000;-0.000} deg") : unit.Signed(off) + " " + unit.Symbol();
        return place.Says(
            Grade.Caution,
            "zero",
            $"This touch-off leaves {axis} {amount} off: every cut that rests on it lands that far from where its reading says.",
            "Check the surface, the paper, half the finder or cutter, and the value set.",
            "a readout set on a surface says where that surface truly is") with
        {
            Amount = off,
            Unit = axis == "t" ? "deg" : "mm",
        };
    }

    /// <summary>The surface of a touch-off is gone, or was never there.</summary>
    /// <param name="place">The touch-off&#39;s step.</param>
    /// <param name="surface">The surface in words.</param>
    /// <param name="why">What is found instead, a clause.</param>
    /// <returns>A halt <c>lost-reference</c>.</returns>
    public static Finding LostReference(FindingPlace place, string surface, string why) =>
        place.Says(
            Grade.Halt,
            "lost-reference",
            $"There is no {surface} to touch here: {why}.",
            "Touch off on a surface that still stands, and set the readout to where that is.",
            "a touch-off rests on metal that is there");

    /// <summary>A cutter, holder or gauge is not in the shop.</summary>
    /// <param name="place">Where it is used.</param>
    /// <param name="what">What it is: <c>cutter</c>.</param>
    /// <param name="name">Its name.</param>
    /// <param name="nearest">The nearest name on hand; null: none near.</param>
    /// <returns>A halt <c>on-hand</c>.</returns>
    public static Finding NotOnHand(FindingPlace place, string what, string name, string? nearest) =>
        place.Says(
            Grade.Halt,
            "on-hand",
            $"The {what} {name} is not in the shop" + (nearest is null ? "." : $"; the nearest name is {nearest}."),
            "Write it into the shop once it is on hand, or take another.",
            "only what is on hand can be used");

    /// <summary>A cutter of the wrong kind for its work.</summary>
    /// <param name="place">Where.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="work">What it is asked to do.</param>
    /// <returns>A halt <c>on-hand</c>.</returns>
    public static Finding WrongKind(FindingPlace place, string cutter, string kind, string work) =>
        place.Says(Grade.Halt, "on-hand", $"{cutter} is a {kind}; it is asked to {work}.", "Take a cutter made for it.", Practice);

    /// <summary>A reading lies beyond an axis&#39;s travel.</summary>
    /// <param name="place">The move.</param>
    /// <param name="axis">The axis.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="reading">The reading, millimetres.</param>
    /// <param name="least">Least reading there is.</param>
    /// <param name="most">Greatest reading there is.</param>
    /// <returns>A halt <c>travel</c>.</returns>
    public static Finding Travel(FindingPlace place, string axis, LengthUnit unit, double reading, double? least, double? most)
    {
        var low = reading < least;
        var limit = (low ? least : most) ?? 0;
        return place.Says(
            Grade.Halt,
            "travel",
            $"{axis} {unit.Signed(reading)} is out of travel: as set up it ends at {unit.Signed(limit)}.",
            "Set the work up nearer, or hold it another way.",
            "the machine's travel as the shop gives it and the holding as set up") with
        {
            Amount = Math.Abs(reading - limit),
            Unit = axis == "t" ? "deg" : "mm",
        };
    }

    /// <summary>An axis stands free while another cuts.</summary>
    /// <param name="place">The first such move.</param>
    /// <param name="axes">The axes left free: <c>y and t</c>.</param>
    /// <returns>A note <c>lock</c>.</returns>
    public static Finding Lock(FindingPlace place, string axes) =>
        place.Says(Grade.Note, "lock", $"{axes} is not locked while another axis cuts: the cutter can push it.", "Lock it before this cut.", Practice);

    /// <summary>A face to be clamped on or touched carries a burr.</summary>
    /// <param name="place">Where.</param>
    /// <param name="what">Which face and since when, a sentence without its point.</param>
    /// <returns>A caution <c>burr</c>.</returns>
    public static Finding Burr(FindingPlace place, string what) =>
        place.Says(Grade.Caution, "burr", $"{what}.", "File or stone the edge before the work is held or touched there.", Practice);

    /// <summary>A retract or a change of cutter without room above the work.</summary>
    /// <param name="place">Where.</param>
    /// <param name="what">What happens, a sentence without its point.</param>
    /// <returns>A caution <c>knock</c>.</returns>
    public static Finding Knock(FindingPlace place, string what) =>
        place.Says(Grade.Caution, "knock", $"{what}.", "Lift clear of the work first.", Practice);

    /// <summary>Little holds the work.</summary>
    /// <param name="place">The holding.</param>
    /// <param name="what">What holds and how little, a sentence without its point.</param>
    /// <param name="grade">Halt where nothing holds, caution where it is little.</param>
    /// <returns>A finding <c>grip</c>.</returns>
    public static Finding Grip(FindingPlace place, string what, Grade grade) =>
        place.Says(grade, "grip", $"{what}.", "Hold more of it, on parallels lower or jaws wider; soft jaws for a part that is not square.", Practice);

    /// <summary>Hard flat jaws meet the work on lines or points alone, or squeeze it out.</summary>
    /// <param name="place">The holding.</param>
    /// <param name="what">What is borne on, a sentence without its point.</param>
    /// <param name="grade">Halt where the work is squeezed out, caution where lines hold it.</param>
    /// <param name="mend">What holds it better.</param>
    /// <returns>A finding <c>grip</c>.</returns>
    public static Finding GripOnLines(FindingPlace place, string what, Grade grade, string mend) =>
        place.Says(grade, "grip", $"{what}.", mend, Practice);

    /// <summary>A zero rests on a face sawn by hand.</summary>
    /// <param name="place">The touch-off.</param>
    /// <param name="what">What is touched and how rough it is, a sentence without its point.</param>
    /// <returns>A caution <c>zero</c>.</returns>
    public static Finding ZeroOnSawn(FindingPlace place, string what) =>
        place.Says(Grade.Caution, "zero", $"{what}.", "Touch off on a face that a cutter made. Where there is none, leave metal on the sawn face ('allow 0.5'), measure the work over it once it is cleaned up, and take the last cut by that.", Practice);

    /// <summary>The work stands on a face sawn by hand.</summary>
    /// <param name="place">The holding.</param>
    /// <param name="what">What it stands on and how rough that is, a sentence without its point.</param>
    /// <returns>A caution <c>grip</c>.</returns>
    public static Finding StandsOnSawn(FindingPlace place, string what) =>
        place.Says(Grade.Caution, "grip", $"{what}.", "Face the sawn side first, the finished side down; or stand the work on a face that a cutter made.", Practice);
}
