using Handwheel.Quantities;

namespace Handwheel.Jobs.Findings;

/// <summary>Findings about taps in their holes and about edges taken off.</summary>
public static partial class FindingCatalogue
{
    /// <summary>A tap reaches the floor of its hole.</summary>
    /// <param name="place">Where.</param>
    /// <param name="tap">The tap.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="lead">The tap&#39;s lead, millimetres; 0 where the shop does not say it.</param>
    /// <param name="deep">How far below the floor its end is driven, millimetres.</param>
    /// <returns>A halt <c>strike</c>.</returns>
    public static Finding TapAtFloor(FindingPlace place, string tap, LengthUnit unit, double lead, double deep) =>
        place.Says(
            Grade.Halt,
            "strike",
            $"{tap} reaches the floor of its hole: its end is driven {unit.Told(deep)} below it{(lead > 0 ? $", as its lead goes {unit.Told(lead)} ahead of the full thread" : string.Empty)}.",
            $"Drill {unit.Told(deep)} deeper and a little more, for the chips; or tap so much less deep. A bottoming tap brings the full thread lower.",
            Practice) with
        {
            Amount = deep,
            Unit = "mm",
        };

    /// <summary>A tap's core is larger than its hole.</summary>
    /// <param name="place">Where.</param>
    /// <param name="tap">The tap.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="core">Diameter of its core, millimetres.</param>
    /// <returns>A halt <c>strike</c>.</returns>
    public static Finding TapTooBig(FindingPlace place, string tap, LengthUnit unit, double core) =>
        place.Says(
            Grade.Halt,
            "strike",
            $"{tap} does not go into its hole: its core is {unit.Told(core)} across, and metal stands inside that.",
            "Drill the thread's tapping size first ('handwheel ask tap drill' tells it), on the same place; or take the tap that fits the hole.",
            "core of a tap, D - 1.0825 P (ISO 724)") with
        {
            Amount = core,
            Unit = "mm",
        };

    /// <summary>A tap is put to metal with no hole in it.</summary>
    /// <param name="place">Where.</param>
    /// <param name="tap">The tap.</param>
    /// <returns>A halt <c>plunge</c>.</returns>
    public static Finding TapWithoutHole(FindingPlace place, string tap) =>
        place.Says(Grade.Halt, "plunge", $"{tap} finds no hole here: it will not go down.", "Drill the thread's tapping size first, on the same place ('handwheel ask tap drill' tells it).", Practice);

    /// <summary>An edge is taken off that the drawing keeps.</summary>
    /// <param name="place">Where, and by which move.</param>
    /// <param name="unit">The job&#39;s unit.</param>
    /// <param name="depth">Greatest depth inside least metal, millimetres.</param>
    /// <param name="cutter">The chamfer cutter.</param>
    /// <param name="feature">The feature hurt.</param>
    /// <returns>A halt <c>gouge</c>.</returns>
    public static Finding GougeByChamfer(FindingPlace place, LengthUnit unit, double depth, string cutter, string feature) =>
        place.Says(
            Grade.Halt,
            "gouge",
            $"{cutter} chamfers an edge of the {feature} that the drawing keeps: it goes {unit.Told(depth)} deeper than the limits allow.",
            "The drawing has no such chamfer there. Draw it ('chamfered 0.5' after the feature's ends, or a cut of its own), or leave the step out.",
            "least metal of the drawing is never cut") with
        {
            Amount = depth,
            Unit = "mm",
        };
}
