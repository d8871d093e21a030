namespace Handwheel.Trade.Screws;

/// <summary>Sizes of a screw's head and of the pocket that takes it; all mm.</summary>
/// <param name="Size">M5, #10, 1/4.</param>
/// <param name="Kind">socket head cap, button socket, flat socket, flat slotted or crosshead, pan crosshead, set screw, hexagon.</param>
/// <param name="HeadDiameter">Greatest head diameter; sharp edge of a flat head; across flats of a hexagon; NaN for a set screw.</param>
/// <param name="HeadHeight">Height; NaN where it follows from the angle, or there is no head.</param>
/// <param name="Wrench">Key across flats; NaN for a slot.</param>
/// <param name="Pocket">Counterbore or countersink diameter; NaN where none is usual.</param>
/// <param name="PocketDepth">Counterbore depth that hides the head; NaN for a countersink.</param>
/// <param name="AngleDeg">Angle of a flat head; NaN for others.</param>
/// <param name="Basis">Where from.</param>
public sealed record ScrewHead(
    string Size, string Kind, double HeadDiameter, double HeadHeight, double Wrench, double Pocket, double PocketDepth, double AngleDeg, Basis Basis)
{
    /// <summary>Where the pocket comes from; the head's own source where not said.</summary>
    public Basis? PocketBasis { get; init; }
}
