using System.Globalization;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Findings;

/// <summary>Findings about what is cut: metal lost, metal left, sizes, what comes free, what is struck.</summary>
public static partial class FindingCatalogue
{
    private const string Practice = "common practice, no source";

    private const string LimitsRule = "limits of the drawing, two-point (ISO 14405-1)";

    /// <summary>Metal was removed that even least metal keeps.</summary>
    /// <param name="place">Where, and by which move.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="depth">Greatest depth inside least metal, millimetres.</param>
    /// <param name="feature">The feature hurt, or <c>part</c>.</param>
    /// <param name="whole">Whether all of that feature is gone.</param>
    /// <param name="mend">The right reading with its working, where it can be worked out; null else.</param>
    /// <returns>A halt <c>gouge</c>.</returns>
    public static Finding Gouge(FindingPlace place, LengthUnit unit, double depth, string feature, bool whole, string? mend)
    {
        var by = place.Move is { } move ? string.Create(CultureInfo.InvariantCulture, $"move {move}") : $"step {place.Step}";
        var message = whole
            ? $"The {feature} is gone: all of it is cut away, {unit.Told(depth)} deep, first at {by}."
            : $"The {feature} is gouged {unit.Told(depth)} deeper than its limits allow, first at {by}.";
        return place.Says(Grade.Halt, "gouge", message, mend ?? "Mend the reading, the depth or the cutter of that move so that it stays outside the part.", "least metal of the drawing is never cut") with
        {
            Amount = depth,
            Unit = "mm",
        };
    }

    /// <summary>The bare stock lacks metal that the part needs.</summary>
    /// <param name="place">Where it lacks most.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="depth">How much, millimetres.</param>
    /// <param name="feature">The feature that is short.</param>
    /// <returns>A halt <c>stock-short</c>.</returns>
    public static Finding StockShort(FindingPlace place, LengthUnit unit, double depth, string feature) =>
        place.Says(
            Grade.Halt,
            "stock-short",
            $"The stock does not hold the part: the {feature} lacks {unit.Told(depth)} of metal before anything is cut.",
            "Take a larger piece, or lay the part elsewhere in it.",
            "the part lies wholly within its stock") with
        {
            Amount = depth,
            Unit = "mm",
        };

    /// <summary>Metal is left on the released part that even most metal does not have.</summary>
    /// <param name="place">Where it stands highest.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="height">How far it stands outside most metal, millimetres.</param>
    /// <param name="feature">The feature it stands on.</param>
    /// <param name="corner">The cut in whose inside corner it stands; null where it stands in none.</param>
    /// <returns>A halt <c>leftover</c>.</returns>
    public static Finding Leftover(FindingPlace place, LengthUnit unit, double height, string feature, string? corner = null) =>
        place.Says(
            Grade.Halt,
            "leftover",
            $"Metal is left on the {feature}: it stands {unit.Told(height)} outside what its limits allow.",
            corner is null
                ? "Add the pass, the depth or the work by hand that takes it off."
                : $"It stands in a corner of the {corner}, drawn sharp: draw it as its cutter leaves it ('corner radius', 'fillet', a slot's round end), or add the work by hand that squares it.",
            "the finished part lies within most metal of the drawing") with
        {
            Amount = height,
            Unit = "mm",
        };

    /// <summary>A size as cut lies outside its limits.</summary>
    /// <param name="place">The step that made it.</param>
    /// <param name="name">The size&#39;s name.</param>
    /// <param name="found">What it comes to, in the words of its unit.</param>
    /// <param name="limits">Its limits, in the words of its unit.</param>
    /// <param name="outside">How far outside, millimetres or radians.</param>
    /// <param name="angle">Whether it is an angle.</param>
    /// <returns>A halt <c>size</c>.</returns>
    public static Finding SizeOutside(FindingPlace place, string name, string found, string limits, double outside, bool angle) =>
        place.Says(
            Grade.Halt,
            "size",
            $"{name}: it comes to {found}, outside {limits}.",
            "Mend the readings of the steps that cut its two faces.",
            LimitsRule) with
        {
            Amount = angle ? outside * 180 / Math.PI : outside,
            Unit = angle ? "deg" : "mm",
        };

    /// <summary>A size cannot be measured on the part as cut.</summary>
    /// <param name="place">The size&#39;s line.</param>
    /// <param name="name">The size&#39;s name.</param>
    /// <param name="why">Why not.</param>
    /// <param name="grade">Halt where its faces are gone, caution where the drawing gives no line to measure along.</param>
    /// <returns>A finding <c>size</c>.</returns>
    public static Finding SizeNotMeasured(FindingPlace place, string name, string why, Grade grade) =>
        place.Says(grade, "size", $"{name}: it cannot be measured, {why}.", grade == Grade.Note ? "Nothing, where the drawing means it so; else state a size that the solid has." : "See that both of its faces are cut; then measure it by hand.", LimitsRule);

    /// <summary>Sizes that no line of the drawing asks for (those of <c>others</c>) and that the drawing has no two faces for, all in one.</summary>
    /// <param name="place">Where.</param>
    /// <param name="names">Their names, with commas between.</param>
    /// <returns>A note <c>size</c>.</returns>
    public static Finding SizesNotMeasured(FindingPlace place, string names) =>
        place.Says(Grade.Note, "size", $"Sizes that no line asks for cannot be measured, for the drawing has no two faces for them on any line: {names}.", "Nothing, where the drawing means it so; else state a size that the solid has.", LimitsRule);

    /// <summary>The part comes free elsewhere than it is meant to.</summary>
    /// <param name="place">Where it comes free.</param>
    /// <param name="happened">What happens, as a sentence without its point.</param>
    /// <param name="meant">What was meant, as a sentence without its point.</param>
    /// <returns>A halt <c>release</c>.</returns>
    public static Finding Release(FindingPlace place, string happened, string meant) =>
        place.Says(
            Grade.Halt,
            "release",
            $"{happened}; {meant}.",
            "Leave a web until then, change the order, or write the step that frees it.",
            "a part comes free only where the job says so, with nothing turning in it");

    /// <summary>Whether the part comes free could not be decided.</summary>
    /// <param name="place">Where.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="spacing">The spacing reached, millimetres.</param>
    /// <returns>A caution <c>release</c>.</returns>
    public static Finding ReleaseUndecided(FindingPlace place, LengthUnit unit, double spacing) =>
        place.Says(
            Grade.Caution,
            "release",
            $"Whether the part holds on here is undecided: what holds it, or the gap beside it, is thinner than {unit.Told(4 * spacing)}.",
            "Leave a thicker web, or part it clean.",
            "a web or gap counts when it exceeds four spacings of the grid");

    /// <summary>A cutter passes through a piece that has come free.</summary>
    /// <param name="place">Where.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="piece">Which piece: <c>part</c> or <c>piece cut off</c>.</param>
    /// <returns>A halt <c>loose</c>.</returns>
    public static Finding Loose(FindingPlace place, string cutter, string piece) =>
        place.Says(
            Grade.Halt,
            "loose",
            $"{cutter} cuts into the {piece} after it has come free: it can be thrown, or jam the cutter.",
            "Stop and take the piece out before this move, or free it later.",
            Practice);

    /// <summary>Something that does not cut, or may not be cut, is touched.</summary>
    /// <param name="place">Where.</param>
    /// <param name="what">What touches: <c>em10's shank</c>, <c>saw1's screw</c>.</param>
    /// <param name="struck">What is struck: <c>fixed jaw</c>, <c>metal</c>.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="depth">How far they overlap, millimetres.</param>
    /// <param name="mend">What would mend it; null for the usual.</param>
    /// <returns>A halt <c>strike</c>.</returns>
    public static Finding Strike(FindingPlace place, string what, string struck, LengthUnit unit, double depth, string? mend = null) =>
        place.Says(
            Grade.Halt,
            "strike",
            $"{what} strikes the {struck}, {unit.Told(depth)} into it.",
            mend ?? "Hold the work higher, let the cutter stand out further, or keep the move clear of it.",
            "nothing but a cutting edge touches metal, and nothing touches what holds") with
        {
            Amount = depth,
            Unit = "mm",
        };

    /// <summary>A move that should go free of metal runs into it.</summary>
    /// <param name="place">Where.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="depth">How far, millimetres.</param>
    /// <returns>A halt <c>strike</c>.</returns>
    public static Finding StrikeFree(FindingPlace place, string cutter, LengthUnit unit, double depth) =>
        place.Says(
            Grade.Halt,
            "strike",
            $"{cutter} runs into metal on a move that is meant to go free, {unit.Told(depth)} deep.",
            "Lift or go round before this move, or make it a cut.",
            "a free move meets no metal") with
        {
            Amount = depth,
            Unit = "mm",
        };

    /// <summary>The nearest that something passes by what holds could not be told from a strike.</summary>
    /// <param name="place">Where.</param>
    /// <param name="what">What passes.</param>
    /// <param name="near">What it passes.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="clearance">The clearance found, millimetres.</param>
    /// <returns>A caution <c>strike</c>.</returns>
    public static Finding StrikeNear(FindingPlace place, string what, string near, LengthUnit unit, double clearance) =>
        place.Says(
            Grade.Caution,
            "strike",
            $"{what} passes the {near} with only {unit.Told(clearance)} to spare.",
            "Check by hand, spindle still, before cutting; or give it more room.",
            Practice) with
        {
            Amount = clearance,
            Unit = "mm",
        };

    /// <summary>The work or what holds it is swung against the column.</summary>
    /// <param name="place">Where.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="reach">How far it swings out from the spindle, millimetres.</param>
    /// <param name="throat">What there is, millimetres.</param>
    /// <returns>A halt <c>strike</c>.</returns>
    public static Finding StrikeColumn(FindingPlace place, LengthUnit unit, double reach, double throat) =>
        place.Says(
            Grade.Halt,
            "strike",
            $"The work or its vise swings {unit.Told(reach)} behind the spindle; the column stands at {unit.Told(throat)}.",
            "Hold it shorter, or turn the other way round.",
            "the machine's throat, as the shop gives it") with
        {
            Amount = reach - throat,
            Unit = "mm",
        };

    /// <summary>A cutter is plunged that has no edge at its centre.</summary>
    /// <param name="place">Where.</param>
    /// <param name="cutter">The cutter.</param>
    /// <returns>A halt <c>plunge</c>.</returns>
    public static Finding PlungeWithoutCentre(FindingPlace place, string cutter) =>
        place.Says(
            Grade.Halt,
            "plunge",
            $"{cutter} has no edge at its centre and is plunged into metal: it will not go down.",
            "Drill first where it goes in, come in from the side, or take a cutter that cuts to its centre.",
            Practice);

    /// <summary>A drill starts on a slope, across an edge, or unspotted.</summary>
    /// <param name="place">Where.</param>
    /// <param name="cutter">The drill.</param>
    /// <param name="how">How it starts: <c>on a slope of 12 deg</c>, <c>across an edge</c>, <c>unspotted</c>.</param>
    /// <param name="grade">Halt on a slope or an edge, caution unspotted.</param>
    /// <returns>A finding <c>plunge</c>.</returns>
    public static Finding PlungeDrill(FindingPlace place, string cutter, string how, Grade grade) =>
        place.Says(grade, "plunge", $"{cutter} starts {how}: it will wander or break.", "Spot the place first, on a face square to the drill.", Practice);

    /// <summary>A climb cut.</summary>
    /// <param name="place">Where.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="why">Why it matters here: <c>0.150 mm of backlash on x</c>, <c>a small cutter</c>.</param>
    /// <param name="grade">Halt beside a thin web or with a small cutter, caution else.</param>
    /// <returns>A finding <c>direction</c>.</returns>
    public static Finding Direction(FindingPlace place, string cutter, string why, Grade grade) =>
        place.Says(
            grade,
            "direction",
            $"{cutter} climbs here (metal to the right of its feed), with {why}: it can pull the work in.",
            "Feed the other way along this edge, or turn the work the other way.",
            "climb and conventional milling: metal on the right of the feed is climb with the spindle turning clockwise from above (common practice, no source)");

    /// <summary>A saw is drawn back through its own kerf while it turns.</summary>
    /// <param name="place">Where.</param>
    /// <param name="cutter">The saw.</param>
    /// <returns>A caution <c>direction</c>.</returns>
    public static Finding DirectionInKerf(FindingPlace place, string cutter) =>
        place.Says(
            Grade.Caution,
            "direction",
            $"{cutter} goes back through its own kerf on a free move, and nothing says that the spindle is stopped: turning, it climbs along what it has cut and can pull the work in.",
            "Stop the spindle first, then leave the kerf sideways, away from what the saw has left.",
            "a saw is stopped before it is drawn out of its kerf (common practice, no source)");

    /// <summary>A cutter that stands is pushed into metal.</summary>
    /// <param name="place">Where.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="deep">How deep, millimetres.</param>
    /// <returns>A halt <c>spindle</c>.</returns>
    public static Finding SpindleStopped(FindingPlace place, string cutter, LengthUnit unit, double deep) =>
        place.Says(
            Grade.Halt,
            "spindle",
            $"{cutter} is pushed {unit.Told(deep)} into metal with the spindle stopped.",
            "Start the spindle before this move, or keep the move clear of the metal.",
            "only a turning cutter cuts (common practice, no source)") with
        {
            Amount = deep,
            Unit = "mm",
        };

    /// <summary>Hands come near a cutter that turns.</summary>
    /// <param name="place">Where.</param>
    /// <param name="doing">What is done there, a clause: <c>hub across is measured</c>.</param>
    /// <param name="cutter">What turns.</param>
    /// <returns>A halt <c>spindle</c>.</returns>
    public static Finding SpindleTurns(FindingPlace place, string doing, string cutter) =>
        place.Says(
            Grade.Halt,
            "spindle",
            $"{char.ToUpperInvariant(doing[0])}{doing[1..]} while {cutter} turns.",
            "Stop the spindle first, and lift the cutter clear.",
            "no hands at the work while the spindle turns (common practice, no source)");

    /// <summary>The section that still holds the part, as measured.</summary>
    /// <param name="place">Where.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="thick">Its mean thickness, millimetres.</param>
    /// <param name="least">Its least, millimetres.</param>
    /// <param name="thin">Under what it counts as thin, millimetres.</param>
    /// <returns>A finding <c>web</c>: a note, or a caution when thin.</returns>
    public static Finding Web(FindingPlace place, LengthUnit unit, double thick, double least, double thin) =>
        place.Says(
            least < thin ? Grade.Caution : Grade.Note,
            "web",
            $"What holds the part here is {unit.Told(thick)} thick on the whole{(least < 0.98 * thick ? $", {unit.Told(least)} at its thinnest" : string.Empty)}.",
            "From here on feed slowly and lightly; spindle stopped, slip a shim into the kerf behind the saw before it is through: the part goes nowhere when the web lets go.",
            "thin is what the shop says, 1 mm unless told") with
        {
            Amount = thick,
            Unit = "mm",
        };

    /// <summary>The thinnest wall beside a cut, as measured.</summary>
    /// <param name="place">Where.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="thick">Its thickness, millimetres.</param>
    /// <returns>A caution <c>wall</c>.</returns>
    public static Finding Wall(FindingPlace place, LengthUnit unit, double thick) =>
        place.Says(
            Grade.Caution,
            "wall",
            $"The wall beside this cut is {unit.Told(thick)} thick at its thinnest: it can spring away and come back.",
            "Take a light last pass, or cut it while there is still metal behind it.",
            Practice) with
        {
            Amount = thick,
            Unit = "mm",
        };

    /// <summary>A cutter is too short for its cut.</summary>
    /// <param name="place">Where.</param>
    /// <param name="cutter">The cutter.</param>
    /// <param name="what">What does not reach: <c>flutes</c>, <c>stick-out</c>.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="has">What it has, millimetres.</param>
    /// <param name="needs">What the cut needs, millimetres.</param>
    /// <param name="grade">Halt or caution.</param>
    /// <returns>A finding <c>reach</c>.</returns>
    public static Finding Reach(FindingPlace place, string cutter, string what, LengthUnit unit, double has, double needs, Grade grade) =>
        place.Says(
            grade,
            "reach",
            $"{cutter}'s {what} is {unit.Told(has)}; this cut goes {unit.Told(needs)} deep.",
            "Take a longer cutter, let it stand out further, or clear the metal above first.",
            "metal above the flutes rubs the shank, and chips find no way out (common practice, no source)") with
        {
            Amount = needs - has,
            Unit = "mm",
        };

    /// <summary>Steps in an order that does harm.</summary>
    /// <param name="place">Where.</param>
    /// <param name="what">What is out of order, a sentence without its point.</param>
    /// <param name="mend">What would mend it.</param>
    /// <returns>A caution <c>order</c>.</returns>
    public static Finding Order(FindingPlace place, string what, string mend) =>
        place.Says(Grade.Caution, "order", $"{what}.", mend, Practice);

    /// <summary>A size is first measured when it can no longer be corrected.</summary>
    /// <param name="place">Where it is measured.</param>
    /// <param name="size">The size.</param>
    /// <param name="why">Why not, a clause.</param>
    /// <returns>A caution <c>unmeasured</c>.</returns>
    public static Finding Unmeasured(FindingPlace place, string size, string why) =>
        place.Says(Grade.Caution, "unmeasured", $"{size}: {why}.", "Measure while metal is still left on it, before its last pass.", Practice);

    /// <summary>The part was not followed far enough to say.</summary>
    /// <param name="place">Where.</param>
    /// <param name="what">What could not be followed, a sentence without its point.</param>
    /// <returns>A halt <c>follow</c>.</returns>
    public static Finding NotFollowed(FindingPlace place, string what) =>
        place.Says(Grade.Halt, "follow", $"{what}.", "Mend the facts named; what follows was proved without them.", "the proof follows only what it is told");
}
